// SPDX-License-Identifier: GPL-3.0-or-later
// A reading that belongs to no bottle is kept and asked about, by hand, also after the program was ended.
#include <QDir>
#include <QFile>

#include "tests/qml/counter_fixture.h"

namespace brimline::test {
namespace {

class OrphansAtTheCounter : public CounterTest {
 protected:
  void hear(const char* analyte, double value, std::optional<std::string> sample) {
    InstrumentReading reading;
    reading.analyte = analyte;
    reading.value = value;
    reading.sample = std::move(sample);
    kiosk_->desk().onHappened({kiosk_->counter().now(), "bench_lines", reading});
  }
};

TEST_F(OrphansAtTheCounter, AreKeptAskedAboutAndNeverGuessed) {
  open_counter("2026-06-14T09:00:00-05:00");
  hear("ph", 7.4, std::nullopt);  // no bottle on the counter
  hear("free_chlorine", 2.35, "B-9999");
  EXPECT_EQ(kiosk_->counter().orphans().size(), 2u);
  close_counter();
  open_counter("2026-06-14T09:05:00-05:00");
  EXPECT_EQ(kiosk_->counter().orphans().size(), 2u);
  kiosk_->desk().startBottle();
  kiosk_->desk().setPlace(Desk::Bench);
  EXPECT_TRUE(kiosk_->counter().visit().bottle.readings.empty());
  EXPECT_TRUE(kiosk_->desk().bench()->orphan().contains("7.40"))
      << kiosk_->desk().bench()->orphan().toStdString();
  ASSERT_TRUE(hand_->touch("orphan_here"));
  ASSERT_EQ(kiosk_->counter().visit().bottle.readings.size(), 1u);
  EXPECT_EQ(kiosk_->counter().visit().bottle.readings[0].analyte, "ph");
  EXPECT_EQ(kiosk_->counter().visit().bottle.readings[0].value, 7.4);
  EXPECT_TRUE(kiosk_->desk().bench()->orphan().contains("B-9999"));
  ASSERT_TRUE(hand_->touch("orphan_aside"));
  EXPECT_TRUE(kiosk_->counter().orphans().empty());
  EXPECT_EQ(kiosk_->counter().visit().bottle.readings.size(), 1u);
  EXPECT_TRUE(kiosk_->desk().bench()->orphan().isEmpty());
}

TEST_F(OrphansAtTheCounter, SeveralInstrumentsAreSetByHand) {
  open_counter("2026-06-14T09:00:00-05:00");
  BackDesk& back = *kiosk_->desk().back();
  back.setShelf("instrument");
  back.setValue("port", path("one"));
  back.setValue("profile", "bench_lines");
  back.setValue("line", "2");
  back.setValue("port", path("two"));
  back.setValue("profile", "lis_link");
  back.apply();
  EXPECT_EQ(kiosk_->bench().instruments().size(), 2u);
  close_counter();
  const Settings kept = load_settings(path("shop.ini"));
  EXPECT_EQ(kept.lines[0].profile, "bench_lines");
  EXPECT_EQ(kept.lines[1].port, path("two"));
  EXPECT_TRUE(kept.lines[2].port.isEmpty());
}

TEST_F(OrphansAtTheCounter, AProfileOfTheShopsOwnIsUsedWhateverItsFileIsCalled) {
  QDir().mkpath(path("profiles"));
  QFile from(BRIMLINE_SOURCE_DIR "/devices/profiles/bench_lines.toml");
  ASSERT_TRUE(from.open(QIODevice::ReadOnly));
  QByteArray text = from.readAll();
  text.replace("id = \"bench_lines\"", "id = \"mine\"").replace("name = \"Bench", "name = \"My bench");
  QFile to(path("profiles/written_by_hand.toml"));
  ASSERT_TRUE(to.open(QIODevice::WriteOnly));
  to.write(text);
  to.close();
  open_counter("2026-06-14T09:00:00-05:00");
  BackDesk& back = *kiosk_->desk().back();
  back.setShelf("instrument");
  QString key;
  for (const QVariant& option : back.fields()->row(2).value("options").toList())
    if (option.toMap().value("word").toString().startsWith("My bench"))
      key = option.toMap().value("key").toString();
  ASSERT_FALSE(key.isEmpty());
  back.setValue("port", path("one"));
  back.setValue("profile", key);
  back.apply();
  ASSERT_EQ(kiosk_->bench().instruments().size(), 1u);
  EXPECT_EQ(kiosk_->bench().instruments()[0]->profile().id, "mine");
}

}  // namespace
}  // namespace brimline::test
