// SPDX-License-Identifier: GPL-3.0-or-later
// What was kept in the Back room a moment ago is taken back by one touch, on the screen and in the files.
#include <QDir>
#include <QFile>

#include "tests/qml/counter_fixture.h"

namespace brimline::test {
namespace {

class UndoAtTheCounter : public CounterTest {
 protected:
  BackDesk& back() const { return *kiosk_->desk().back(); }
  // Every file beside the settings, by name, with its bytes.
  QMap<QString, QByteArray> files() const {
    QMap<QString, QByteArray> out;
    for (const QString& folder : {path("shelf"), path(".")})
      for (const QFileInfo& info : QDir(folder).entryInfoList({"*.toml", "*.ini"}, QDir::Files))
        if (QFile file(info.filePath()); file.open(QIODevice::ReadOnly))
          out[info.filePath()] = file.readAll();
    return out;
  }
  QString value_of(const QString& key) const {
    for (int i = 0; i < back().fields()->count(); ++i)
      if (back().fields()->row(i).value("key") == key)
        return back().fields()->row(i).value("value").toString();
    return {};
  }
  void put_on_shelf(const QString& name, const QString& price) {
    back().setValue("product_name", name);
    back().setValue("product_chemical", "calcium_chloride");
    back().setValue("product_percent", "77");
    back().setValue("product_price", price);
    back().apply();
  }
};

TEST_F(UndoAtTheCounter, ALookIsAsItWas) {
  open_counter("2026-06-14T09:00:00-05:00");
  kiosk_->desk().setPlace(Desk::BackRoom);
  ASSERT_TRUE(hand_->touch("group_shop"));
  ASSERT_TRUE(Hand::wait_for([&] { return hand_->touch("shelf_screen"); }, 3000));
  EXPECT_FALSE(hand_->find("undo_settings")) << "nothing has been kept";
  ASSERT_TRUE(hand_->touch("apply_settings"));
  EXPECT_FALSE(hand_->find("undo_settings")) << "nothing was changed";
  ASSERT_TRUE(hand_->touch("set_theme_dark"));
  ASSERT_TRUE(hand_->touch("apply_settings"));
  ASSERT_EQ(kiosk_->desk().theme(), "dark");
  ASSERT_TRUE(hand_->touch("undo_settings"));
  EXPECT_EQ(kiosk_->desk().theme(), "light");
  EXPECT_FALSE(hand_->find("undo_settings"));
  close_counter();
  open_counter("2026-06-14T09:00:00-05:00");
  EXPECT_EQ(kiosk_->desk().theme(), "light");
}

TEST_F(UndoAtTheCounter, AProductAndATargetAreAsTheyWere) {
  open_counter("2026-06-14T09:00:00-05:00");
  back().setShelf("products");
  put_on_shelf("Hardness flakes", "3.5");
  ASSERT_TRUE(back().canUndo()) << back().says().toStdString();
  const auto with_it = files();
  put_on_shelf("Hardness flakes", "4.5");
  ASSERT_NE(files(), with_it);
  back().undo();
  EXPECT_EQ(files(), with_it);
  EXPECT_EQ(value_of("product_price"), "3.5");
  EXPECT_FALSE(back().canUndo());
  back().setValue("product_there", "no");
  back().apply();
  ASSERT_TRUE(back().canUndo()) << back().says().toStdString();
  back().undo();
  EXPECT_EQ(files(), with_it);

  back().setShelf("targets");
  back().setValue("target_analyte", "total_alkalinity");
  const QString high = value_of("target_high");
  back().setValue("target_high", "612.5");
  back().apply();
  ASSERT_TRUE(back().canUndo()) << back().says().toStdString();
  back().undo();
  EXPECT_EQ(files(), with_it) << "a file that was not there is gone";
  EXPECT_EQ(value_of("target_high"), high);

  back().setValue("target_high", "612.5");
  back().apply();
  back().setShelf("products");
  EXPECT_FALSE(back().canUndo()) << "of another page";
}

}  // namespace
}  // namespace brimline::test
