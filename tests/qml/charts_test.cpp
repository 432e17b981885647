// SPDX-License-Identifier: GPL-3.0-or-later
// Control charts in the Back room, by hand: a standard written down, measured, stopped by a rule, and
// cleared.
#include "tests/qml/counter_fixture.h"

namespace brimline::test {
namespace {

class ChartsAtTheCounter : public CounterTest {
 protected:
  ChartDesk& charts() const { return *kiosk_->desk().charts(); }

  void open_charts(const char* clock) {
    open_counter(clock);
    kiosk_->desk().setPlace(Desk::BackRoom);
    kiosk_->desk().back()->setShelf("charts");
  }
  void write(const QString& field, const QString& text) {
    ASSERT_TRUE(hand_->touch(field)) << field.toStdString();
    hand_->type(text);
  }
  void keep_standard() {
    write("standard_instrument", "bench_lines");
    write("standard_name", "Weak glass");
    write("standard_value", "1.00");
    write("standard_sd", "0.05");
    ASSERT_TRUE(hand_->touch("standard_analyte_free_chlorine"));
    ASSERT_TRUE(hand_->touch("keep_standard"));
    ASSERT_EQ(kiosk_->counter().quality().standards.size(), 1u) << charts().says().toStdString();
  }
  void measure(const char* value) {
    write("chart_value", value);
    ASSERT_TRUE(hand_->touch("keep_measurement"));
  }
  QVariantMap bench_row(const QString& analyte) const {
    RowModel& rows = *kiosk_->desk().bench()->readings();
    for (int i = 0; i < rows.count(); ++i)
      if (rows.row(i).value("analyte") == analyte) return rows.row(i);
    return {};
  }
  QString standing_of_a_new_bottle() {
    kiosk_->desk().startBottle();
    Reading reading;
    reading.analyte = "free_chlorine";
    reading.value = 2;
    reading.method = Method::photometer;
    reading.instrument = "bench_lines";
    EXPECT_TRUE(kiosk_->counter().add_reading(reading));
    return bench_row("free_chlorine").value("standing").toString();
  }
};

TEST_F(ChartsAtTheCounter, AStoppedAnalyteIsClearedByName) {
  open_charts("2026-06-14T09:00:00-05:00");
  keep_standard();
  measure("1.02");
  EXPECT_EQ(charts().charts()->row(0).value("standing").toString(), "right");
  measure("1.17");  // 3.4 sd
  EXPECT_TRUE(charts().stopped());
  EXPECT_EQ(kiosk_->desk().places()->row(Desk::BackRoom).value("line").toString(), "1 check due");
  EXPECT_TRUE(hand_->text_of("chart_story").contains("1-3s")) << hand_->text_of("chart_story").toStdString();
  EXPECT_EQ(standing_of_a_new_bottle(), "kept; says nothing");
  close_counter();

  open_charts("2026-06-14T10:00:00-05:00");  // the stop outlives a restart
  EXPECT_TRUE(charts().stopped());
  measure("1.00");
  EXPECT_TRUE(charts().stopped());  // a good one does not clear it
  EXPECT_TRUE(small_targets(kiosk_->window()).isEmpty())
      << small_targets(kiosk_->window()).join(", ").toStdString();
  ASSERT_TRUE(hand_->touch("clear_stop"));
  EXPECT_TRUE(charts().stopped());  // nobody is named
  write("clear_by", "A. Sample");
  ASSERT_TRUE(hand_->touch("clear_stop"));
  EXPECT_TRUE(charts().stopped());  // nor a reason told
  write("clear_reason", "New cell");
  ASSERT_TRUE(hand_->touch("clear_stop"));
  EXPECT_FALSE(charts().stopped());
  ASSERT_EQ(kiosk_->counter().quality().clearances.size(), 1u);
  EXPECT_EQ(kiosk_->counter().quality().clearances[0].by, "A. Sample");
  close_counter();
  open_charts("2026-06-14T11:00:00-05:00");
  EXPECT_EQ(standing_of_a_new_bottle(), "kept");
}

TEST_F(ChartsAtTheCounter, TheInstrumentsNextValueIsTheCheckOnlyWhereAwaited) {
  open_charts("2026-06-14T09:00:00-05:00");
  keep_standard();
  const InstrumentReading heard{"free_chlorine", 1.04, std::nullopt, std::nullopt, std::nullopt, 0.05};
  EXPECT_FALSE(charts().take(heard, "bench_lines"));
  ASSERT_TRUE(hand_->touch("measure_on_line"));
  EXPECT_FALSE(charts().take(heard, "another"));
  InstrumentReading other = heard;
  other.analyte = "ph";
  EXPECT_FALSE(charts().take(other, "bench_lines"));
  kiosk_->desk().onHappened({*Instant::parse("2026-06-14T09:00:10-05:00"), "bench_lines", heard});
  ASSERT_EQ(kiosk_->counter().quality().measurements.size(), 1u);
  EXPECT_EQ(kiosk_->counter().quality().measurements[0].value, 1.04);
  EXPECT_FALSE(kiosk_->counter().quality().measurements[0].typed);
  EXPECT_FALSE(charts().take(heard, "bench_lines"));  // one value for one wait
}

// Cushny & Peebles 1905, as in Student 1908: the mean of ten paired differences is 1.58, 95 % 0.700 to 2.460
// (from memory).
TEST_F(ChartsAtTheCounter, ANewLotIsLaidBesideTheOld) {
  open_charts("2026-06-14T09:00:00-05:00");
  const char* pairs = ".7 1.9; -1.6 .8; -.2 1.1; -1.2 .1; -.1 -.1; 3.4 4.4; 3.7 5.5; .8 1.6; 0 4.6; 2 3.4";
  ASSERT_TRUE(hand_->tab_to("lot_pairs"));  // by the keyboard alone
  hand_->type(pairs);
  ASSERT_TRUE(hand_->tab_to("lot_allowed"));
  hand_->type("3");
  ASSERT_TRUE(hand_->press("compare_lots"));
  const QString said = hand_->text_of("lots_say");
  EXPECT_TRUE(said.contains("1.58") && said.contains("0.7") && said.contains("2.46")) << said.toStdString();
  EXPECT_TRUE(said.contains("alike"));
  EXPECT_FALSE(charts().compareLots(pairs, "1"));
  EXPECT_FALSE(charts().compareLots(pairs, "0"));
  EXPECT_FALSE(charts().compareLots("1 2", "1"));
  EXPECT_FALSE(charts().compareLots("1 two; 1 2", "1"));
}

TEST_F(ChartsAtTheCounter, WhatIsMistypedIsNotKept) {
  open_charts("2026-06-14T09:00:00-05:00");
  keep_standard();
  for (const char* text : {"", "one", "-1", "1e99", "nan"}) {
    EXPECT_FALSE(charts().keepMeasurement(text)) << text;
    EXPECT_TRUE(charts().says().startsWith("Not kept")) << text;
  }
  EXPECT_TRUE(charts().keepMeasurement("1,03"));
  EXPECT_FALSE(charts().addStandard(
      {{"instrument", "x"}, {"analyte", "ph"}, {"name", "n"}, {"value", "7"}, {"sd", "0"}, {"days", "7"}}));
  EXPECT_EQ(kiosk_->counter().quality().measurements.size(), 1u);
  EXPECT_EQ(kiosk_->counter().quality().standards.size(), 1u);
}

}  // namespace
}  // namespace brimline::test
