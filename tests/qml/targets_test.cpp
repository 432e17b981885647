// SPDX-License-Identifier: GPL-3.0-or-later
// The shop's own targets, set in the Back room: the next plan goes by them, also after a restart.
#include "tests/qml/counter_fixture.h"

namespace brimline::test {
namespace {

class TargetsAtTheCounter : public CounterTest {
 protected:
  BackDesk& back() const { return *kiosk_->desk().back(); }
  QString row_named(const QString& start) const {
    const QVariantMap field = back().fields()->row(0);
    for (const QVariant& option : field.value("options").toList())
      if (option.toMap().value("word").toString().startsWith(start))
        return option.toMap().value("key").toString();
    return {};
  }
  QString value_of(const QString& key) const {
    for (int i = 0; i < back().fields()->count(); ++i)
      if (back().fields()->row(i).value("key") == key)
        return back().fields()->row(i).value("value").toString();
    return {};
  }
};

TEST_F(TargetsAtTheCounter, OneIsSetAndStandsAfterARestart) {
  open_counter("2026-06-14T09:00:00-05:00");
  back().setShelf("targets");
  const QString analyte = row_named("Total alkalinity");
  ASSERT_FALSE(analyte.isEmpty());
  back().setValue("target_analyte", analyte);
  const QString low = value_of("target_low");
  ASSERT_FALSE(low.isEmpty()) << analyte.toStdString() << back().fields()->count();
  back().setValue("target_high", "1");
  back().apply();
  EXPECT_TRUE(back().says().contains("targets.toml")) << back().says().toStdString();
  back().setValue("target_high", "612,5");
  back().setValue("target_aim", "");
  back().apply();
  EXPECT_FALSE(back().says().contains("targets.toml")) << back().says().toStdString();
  close_counter();
  open_counter("2026-06-14T09:10:00-05:00");
  back().setShelf("targets");
  back().setValue("target_analyte", analyte);
  EXPECT_EQ(value_of("target_low"), low);
  EXPECT_EQ(value_of("target_high"), "612.5");
  EXPECT_EQ(value_of("target_whose"), "shop");
  back().setValue("target_whose", "built_in");
  back().apply();
  EXPECT_NE(value_of("target_high"), "612.5");
}

}  // namespace
}  // namespace brimline::test
