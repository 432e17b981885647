// SPDX-License-Identifier: GPL-3.0-or-later
// The sheet's words: every step and reading is on it, in the customer's own clock.
#include "printing/sheet.h"

#include <gmock/gmock.h>

#include <algorithm>
#include <cmath>
#include <regex>

#include "printing/readings_table.h"
#include "station/wording/amount_words.h"
#include "station/wording/clock_words.h"
#include "station/wording/sheet_words.h"
#include "station/wording/visit_code.h"
#include "tests/printing/sample_visit.h"

namespace brimline {
namespace {

using testing::Contains;
using testing::HasSubstr;
using testing::Not;

Instant at(const char* text) {
  return *Instant::parse(text);
}

Sheet sheet_of(const Visit& visit, const Visit* earlier = nullptr) {
  return make_sheet(visit, earlier, sample_shop(), Words("en"));
}

// The Gregorian calendar: 14 June 2026 is a Sunday (ISO 8601, week 24, day 7).
TEST(ClockWords, AreSaidFromTheDayTheCustomerGetsHome) {
  const Words en("en");
  const Instant home = at("2026-06-14T17:30:00-05:00");
  EXPECT_EQ(clock_words(en, home, home), "today 17:30");
  EXPECT_EQ(clock_words(en, home, later(home, 2.5)), "tonight 20:00");
  EXPECT_EQ(clock_words(en, home, later(home, 14.5)), "tomorrow 08:00");
  EXPECT_EQ(clock_words(en, home, later(home, 38.5)), "Tuesday 08:00");
  EXPECT_EQ(clock_words(en, home, later(home, 6.5)), "tomorrow 00:00");
  EXPECT_EQ(clock_words(en, home, later(home, 7 * 24)), "Sun 21 Jun 17:30");
  // By a clock of twelve hours noon is neither a.m. nor p.m. (NIST, Times of Day FAQs).
  const Words us = en.with_clock(Clock::hours_12);
  EXPECT_EQ(clock_words(us, home, home), "today 5:30\u00a0p.m.");
  EXPECT_EQ(clock_words(us, home, later(home, 14.5)), "tomorrow 8:00\u00a0a.m.");
  EXPECT_EQ(clock_words(us, home, later(home, 18.5)), "tomorrow noon");
  EXPECT_EQ(clock_words(us, home, later(home, 18.75)), "tomorrow 12:15\u00a0p.m.");
  EXPECT_EQ(clock_words(us, home, later(home, 7)), "tomorrow 12:30\u00a0a.m.");
  EXPECT_EQ(date_words(en, home), "Sunday 14 June");
}

TEST(ClockWords, FollowTheCustomersClockNotUtc) {
  const Words en("en");
  const Instant home = at("2026-06-14T23:30:00-05:00");  // already Monday in UTC
  EXPECT_EQ(clock_words(en, home, home), "tonight 23:30");
  EXPECT_EQ(clock_words(en, home, later(home, 1)), "tomorrow 00:30");
}

TEST(ClockWords, NoWaitGetsShorterByRounding) {
  const Instant home = at("2026-06-14T17:31:00-05:00");
  for (const double hours : {0.01, 0.5, 1.0, 3.999, 4.0, 4.001, 17.3})
    EXPECT_GE(hours_between(home, later(home, hours)), hours - 1.0 / 3600) << hours;
}

// Nobody comes at five past, nor by night; and never sooner than was asked.
TEST(ClockWords, ByDayIsAFullOrHalfHour) {
  const auto told = [](const char* when) { return time_words(Words("en"), by_day(at(when))); };
  EXPECT_EQ(told("2026-06-14T17:30:00-05:00"), "17:30");
  EXPECT_EQ(told("2026-06-14T17:30:01-05:00"), "18:00");
  EXPECT_EQ(told("2026-06-14T08:05:00-05:00"), "08:30");
  EXPECT_EQ(told("2026-06-14T21:45:00-05:00"), "22:00");
  EXPECT_EQ(told("2026-06-14T06:05:00-05:00"), "07:00");
  EXPECT_EQ(by_day(at("2026-06-14T22:05:00-05:00")), at("2026-06-15T07:00:00-05:00"));
  EXPECT_EQ(by_day(at("2026-06-14T23:50:00-05:00")), at("2026-06-15T07:00:00-05:00"));
}

// What is a spa's hour is not four: the sheet says what holds for the vessel it is for.
TEST(Sheet, SaysHowLongNobodyGetsInForThisVessel) {
  Visit visit = sample_visit();
  visit.plan_as_told->cautions.clear();
  EXPECT_THAT(sheet_of(visit).before, Contains(HasSubstr("for 4 hours after a dose")));
  visit.vessel.kind = VesselKind::spa;
  EXPECT_THAT(sheet_of(visit).before, Contains(HasSubstr("for 1 hour after a dose")));
}

// What a plan leaves outside its target stands on the sheet, with what comes next.
TEST(Sheet, TellsWhatStaysOpen) {
  Visit visit = sample_visit();
  EXPECT_TRUE(sheet_of(visit).still_open.empty());
  visit.plan_as_told->remains.push_back(
      {"calcium_hardness", 520, {200, 400}, "needs_drain", "Calcium hardness stays at 520 mg/L CaCO3."});
  EXPECT_THAT(sheet_of(visit).still_open, testing::ElementsAre("Calcium hardness stays at 520 mg/L CaCO3."));
  EXPECT_FALSE(sheet_of(visit).titles.still_open.empty());
}

TEST(Sheet, TellsWhenOneMaySwim) {
  EXPECT_EQ(sheet_of(sample_visit()).answer,
            "No – not before tomorrow 8:00\u00a0a.m., and not for 4 hours after any dose.");
  Visit no_clock = sample_visit();
  no_clock.home_at.reset();
  EXPECT_EQ(sheet_of(no_clock).answer,
            "No – not for 14.5 hours after you start, after step 3, and not for 4 hours after any dose.");
  Visit safe = sample_visit();
  safe.plan_as_told->swim = {true, {}, std::nullopt, std::nullopt};
  EXPECT_THAT(sheet_of(safe).answer, HasSubstr("Yes"));
  safe.plan_as_told->swim.now = false;
  EXPECT_EQ(sheet_of(safe).answer, "No – not until we have tested the water again.");
}

// Nobody is told an hour of the night, nor an hour alone where it is the next bottle that opens the water.
TEST(Sheet, OpensByDayAndAfterTheRetestWhereThatDecides) {
  Visit visit = sample_visit();
  visit.plan_as_told->swim = {false, {}, 2, 10.5};  // 04:00
  EXPECT_EQ(sheet_of(visit).answer,
            "No – not before tomorrow 7:00\u00a0a.m., and not for 4 hours after any dose.");
  visit.plan_as_told->swim = {false, {}, 5, 48 + 24};
  EXPECT_EQ(sheet_of(visit).answer,
            "No – not until we have tested the water again, Wednesday 5:30\u00a0p.m. or later.");
  visit.plan_as_told->retest->after_h = 10;  // 03:30
  visit.plan_as_told->swim.not_before_h = 58;
  EXPECT_EQ(sheet_of(visit).answer,
            "No – not until we have tested the water again, Wednesday 7:00\u00a0a.m. or later.");
  EXPECT_THAT(sheet_of(visit).come_back, HasSubstr("Wednesday 17 June, 7:00\u00a0a.m."));
}

// A long plan does not keep people out of water that its first step mends: an earlier bottle may tell.
TEST(Sheet, ABottleComesSoonerWhereAnEarlyStepMendsTheWater) {
  Visit visit = sample_visit();
  Plan& plan = *visit.plan_as_told;
  for (Step& step : plan.steps) step.for_findings = {"calcium_hardness_low"};
  plan.steps.front().for_findings = {"ph_high"};
  plan.steps.back().start_h = 72;
  plan.swim = {false, {"ph_high"}, 5, plan_end_h(plan) + plan.retest->after_h};
  EXPECT_THAT(sheet_of(visit).because, Contains(HasSubstr("a day after step 1;")));
  plan.steps.back().for_findings = {"ph_high"};
  EXPECT_THAT(sheet_of(visit).because, Not(Contains(HasSubstr("Sooner"))));
}

TEST(Sheet, WithoutAPlanWhatToDoIsNowAndTheNextBottleWaits) {
  Visit visit = sample_visit();
  Plan& plan = *visit.plan_as_told;
  plan.home_plan = false;
  plan.swim = {false, {"incident"}, std::nullopt, std::nullopt};
  const std::string dosing = standing_lines(Words("en"), visit.vessel, true)[1];
  plan.cautions.push_back(dosing);
  plan.steps.resize(1);
  plan.steps[0] = Step{};
  plan.steps[0].order = 1;
  plan.steps[0].action = Action::call_professional;
  const Sheet sheet = sheet_of(visit);
  ASSERT_EQ(sheet.steps.size(), 1u);
  EXPECT_EQ(sheet.steps[0].when, "now");
  EXPECT_EQ(sheet.come_back, "Bring a fresh bottle once that is settled.");
  EXPECT_THAT(sheet.before, Not(Contains(dosing)));
}

TEST(Sheet, WithoutAVolumeAsksForIt) {
  Visit visit = sample_visit();
  visit.vessel.volume.reset();
  visit.plan_as_told->steps.clear();
  EXPECT_THAT(sheet_of(visit).come_back, HasSubstr("Come back with the volume"));
}

TEST(Sheet, SaysAMetricAmountOnce) {
  Step step;
  step.amount = ProductAmount{77.4, "mL"};
  step.amount_household = "77 mL";
  EXPECT_EQ(portion_words(Words("en"), step), "77 mL");
  step.amount_household = "2.6 fl oz";
  EXPECT_EQ(portion_words(Words("en"), step), "2.6 fl oz (76.9 mL)");
}

// US customary units by their exact definitions (NIST SP 811, appendix B): 1 fl oz = 29.57353 mL,
// 1 oz = 28.34952 g. What stands in brackets is what the words before it say, to the last of its digits.
TEST(Sheet, BothUnitsOfAnAmountAgree) {
  const Words words("en");
  const std::regex form(
      R"((?:([\d.]+) lb)? ?(?:([\d.]+) (?:fl oz|oz by weight|oz))? \(([\d.]+) (mL|L|g|kg)\))");
  for (int i = 0; i < 94; ++i)
    for (const bool liquid : {true, false}) {
      const double given = 3 * std::pow(1.07, i);
      Step step;
      step.amount = ProductAmount{given, liquid ? "mL" : "g"};
      step.amount_household = household_amount(words, *step.amount, Units::us);
      const std::string told = portion_words(words, step);
      std::smatch parts;
      ASSERT_TRUE(std::regex_match(told, parts, form)) << told;
      const auto number = [&](size_t part) {
        return parts[part].matched ? std::stod(parts[part].str()) : 0.0;
      };
      const double ounces = number(1) * 16 + number(2);
      const bool thousands = parts[4] == "L" || parts[4] == "kg";
      const double other = number(3) * (thousands ? 1000 : 1);
      EXPECT_NEAR(other, ounces * (liquid ? 29.57353 : 28.34952), 0.006 * other) << told;
    }
}

TEST(Sheet, SaysEachStepAsThePlanDoes) {
  const Visit visit = sample_visit();
  const Sheet sheet = sheet_of(visit);
  ASSERT_EQ(sheet.steps.size(), visit.plan_as_told->steps.size());
  for (size_t i = 0; i < sheet.steps.size(); ++i) {
    EXPECT_EQ(sheet.steps[i].text, visit.plan_as_told->steps[i].text);
    EXPECT_EQ(sheet.steps[i].cautions, visit.plan_as_told->steps[i].cautions);
  }
  EXPECT_EQ(sheet.steps[0].when, "today 5:30\u00a0p.m.");
  EXPECT_EQ(sheet.steps[0].day, "Sunday 14 June");
  EXPECT_EQ(sheet.steps[1].when, "tonight 10:00\u00a0p.m.");
  EXPECT_EQ(sheet.steps[1].day, "");
  EXPECT_EQ(sheet.steps[2].when, "tomorrow 8:00\u00a0a.m.");
}

// The contract: amount is for the whole step, the sheet prints the portion.
TEST(Sheet, PrintsThePortionAndABoxForEach) {
  const Sheet sheet = sheet_of(sample_visit());
  EXPECT_EQ(sheet.steps[0].amount, "4 1/2 cups (1.06 L)");
  EXPECT_EQ(sheet.steps[3].amount, "5 lb 15 oz (2.69 kg) each time, 2 times");
  ASSERT_EQ(sheet.steps[3].ticks.size(), 2u);
  EXPECT_EQ(sheet.steps[3].ticks[0].label, "tomorrow 8:00\u00a0p.m.");
  EXPECT_EQ(sheet.steps[3].ticks[1].label, "Tue 12:00\u00a0a.m.");
  EXPECT_TRUE(sheet.steps[2].amount.empty());
}

// Why nobody may swim stands beside the answer, not a page later.
TEST(Sheet, SaysWhyNobodyMaySwim) {
  Visit visit = sample_visit();
  Plan& plan = *visit.plan_as_told;
  ASSERT_FALSE(plan.swim.now);
  plan.findings.resize(1);
  plan.findings[0].id = "ph_high";
  plan.findings[0].text = "pH is 8.20; it should be at most 7.80. Eyes smart.";
  plan.swim.because = {"ph_high"};
  EXPECT_THAT(sheet_of(visit).because, testing::ElementsAre("pH is 8.20; it should be at most 7.80."));
  plan.swim.now = true;
  EXPECT_TRUE(sheet_of(visit).because.empty());
}

// Units and language together tell which clock the customer reads.
TEST(Sheet, TellsTimeByTheCustomersClock) {
  Visit visit = sample_visit();
  ASSERT_EQ(visit.customer->units, Units::us);
  EXPECT_EQ(make_sheet(visit, nullptr, sample_shop(), Words("fr")).steps[1].when.substr(0, 4), "ce s");
  visit.customer->units = Units::metric;
  EXPECT_EQ(sheet_of(visit).steps[1].when, "tonight 22:00");
  visit.customer->units.reset();
  EXPECT_EQ(sheet_of(visit).steps[1].when, "tonight 22:00");
}

TEST(Sheet, WithoutAClockCountsHours) {
  Visit visit = sample_visit();
  visit.home_at.reset();
  const Sheet sheet = sheet_of(visit);
  EXPECT_EQ(sheet.steps[0].when, "first");
  EXPECT_EQ(sheet.steps[1].when, "4.5 hours later");
  EXPECT_EQ(sheet.steps[2].when, "10 hours later");
  EXPECT_EQ(sheet.steps[0].day, "");
  EXPECT_THAT(sheet.come_back, HasSubstr("24 hours after the last step"));
}

TEST(Sheet, GivesNoDosesWhereThereIsNoHomePlan) {
  Visit visit = sample_refused_visit();
  Step dose = sample_visit().plan_as_told->steps.front();
  visit.plan_as_told->steps.push_back(dose);
  const Sheet sheet = sheet_of(visit);
  ASSERT_TRUE(sheet.why_not);
  EXPECT_EQ(*sheet.why_not, *visit.plan_as_told->why_not);
  for (const SheetStep& step : sheet.steps) {
    EXPECT_NE(step.text, dose.text);
    EXPECT_TRUE(step.amount.empty());
  }
  EXPECT_EQ(sheet.answer, "No.");
}

TEST(Sheet, ShowsEveryReadingBesideLastVisits) {
  const Visit visit = sample_visit(), earlier = sample_earlier_visit();
  const Sheet sheet = sheet_of(visit, &earlier);
  ASSERT_EQ(sheet.rows.size(), visit.bottle.readings.size());
  EXPECT_EQ(sheet.rows[0].value, "0.40");
  EXPECT_EQ(sheet.rows[0].unit, "mg/L Cl2");
  EXPECT_EQ(sheet.rows[0].last, "2.60");
  EXPECT_EQ(sheet.rows[1].name, "Free chlorine, again");  // beneath the first, not at the table's end
  EXPECT_EQ(sheet.rows[1].value, "0.42");
  EXPECT_EQ(sheet.rows[3].name, "pH");
  EXPECT_EQ(sheet.rows[3].target, "7.2–7.6");
  EXPECT_EQ(sheet.rows[3].standing, "high");
  EXPECT_EQ(sheet.rows[1].standing, "");  // told once, at the first
  EXPECT_EQ(sheet.rows[3].expected, "7.50 ± 0.08");
}

// Missing is not zero, and the end of a range is not a value.
TEST(Sheet, SaysWhatIsClippedAndWhatWasNotRead) {
  Visit visit = sample_visit();
  visit.bottle.readings[0].clipped = Clip::above;
  visit.plan_as_told->predicted["borate"] = {30, std::nullopt};
  const Sheet sheet = sheet_of(visit);
  EXPECT_EQ(sheet.rows[0].value, "more than 0.40");
  EXPECT_EQ(sheet.rows[0].spread, "");
  EXPECT_EQ(sheet.rows[0].last, "");
  EXPECT_EQ(sheet.rows.back().value, "not read");
}

TEST(Sheet, LaysTheFillWaterBesideTheVessels) {
  Visit visit = sample_visit();
  Reading fill;
  fill.analyte = "calcium_hardness";
  fill.value = 85;
  Reading alone = fill;
  alone.analyte = "phosphate";
  alone.value = 0.1;
  visit.bottle.fill_water = {fill, alone};
  const Sheet sheet = sheet_of(visit);
  const auto row = std::find_if(sheet.rows.begin(), sheet.rows.end(),
                                [](const SheetRow& r) { return r.name == "Calcium hardness"; });
  ASSERT_NE(row, sheet.rows.end());
  EXPECT_EQ(row->fill, "85");
  // What only the tap water was read for is no reading of this vessel.
  for (const SheetRow& one : sheet.rows) EXPECT_NE(one.value, "not read") << one.name;
}

// A chart needs a reading before this one, and is never drawn through a value at the end of its range.
TEST(Sheet, ChartsTheWeeklyReadingsOverTheVisits) {
  Visit visit = sample_visit();
  Visit before = sample_earlier_visit();
  before.bottle.taken_at = Instant::parse("2026-05-17T08:10:00-05:00");
  SheetOptions options;
  EXPECT_TRUE(make_sheet(visit, nullptr, sample_shop(), Words("en"), options).charts.empty());
  options.history = {before};
  const Sheet sheet = make_sheet(visit, &before, sample_shop(), Words("en"), options);
  ASSERT_EQ(sheet.charts.size(), 3u);  // free chlorine, pH, total alkalinity
  EXPECT_EQ(sheet.charts[1].name, "pH");
  ASSERT_EQ(sheet.charts[1].points.size(), 2u);
  EXPECT_DOUBLE_EQ(sheet.charts[1].points[0].value, 7.45);
  EXPECT_DOUBLE_EQ(sheet.charts[1].points[1].days, 28);  // 17 May to 14 June
  EXPECT_EQ(sheet.charts[1].points[1].date, "14 Jun");
  EXPECT_EQ(sheet.charts[1].low, "7.2");
  options.history.front().bottle.readings.front().clipped = Clip::above;
  EXPECT_EQ(make_sheet(visit, &before, sample_shop(), Words("en"), options).charts.size(), 2u);
}

// What became of last visit's plan stands beside its readings, in words; without a plan then, nothing does.
TEST(Sheet, SaysWhetherLastVisitsPlanWorked) {
  Visit visit = sample_visit(), before = sample_earlier_visit();
  EXPECT_TRUE(sheet_of(visit, &before).last_plan.empty());
  before.plan_as_told = visit.plan_as_told;  // whose findings are those of this bottle, so nothing has moved
  for (Finding& finding : before.plan_as_told->findings)
    if (finding.id == "ph_high") finding.value = 8.4;
  before.bottle.readings[1].value = 8.4;
  const Sheet sheet = sheet_of(visit, &before);
  EXPECT_EQ(sheet.titles.last_plan, "Did last visit’s plan work?");
  const auto ph = std::find_if(sheet.last_plan.begin(), sheet.last_plan.end(),
                               [](const std::string& line) { return line.starts_with("pH: "); });
  ASSERT_NE(ph, sheet.last_plan.end());
  EXPECT_TRUE(ph->starts_with("pH: partly. It was 8.40 and is 7.90")) << *ph;
}

TEST(Sheet, HangsAWaterlineUnderTheValueItSpeaksOf) {
  const Visit visit = sample_visit(), earlier = sample_earlier_visit();
  const Sheet sheet = sheet_of(visit, &earlier);
  ASSERT_EQ(sheet.findings.size(), 4u);
  for (size_t i = 0; i < sheet.findings.size(); ++i)
    EXPECT_EQ(plain(sheet.findings[i]), visit.plan_as_told->findings[i].text);
  const Sentence& ph = sheet.findings[1];
  ASSERT_EQ(ph.size(), 3u);
  EXPECT_EQ(std::get<std::string>(ph[0]), "The pH of ");
  const auto& line = std::get<Waterline>(ph[1]);
  EXPECT_DOUBLE_EQ(line.value, 7.9);
  EXPECT_EQ(line.last, 7.45);
  EXPECT_GT(line.half_width, 0);
  EXPECT_LT(line.low, *line.target.low);
  EXPECT_GT(line.high, *line.target.high);
}

TEST(Sheet, IsNotMisledByANumberInsideAnother) {
  Visit visit = sample_visit();
  Finding finding;
  finding.analyte = "calcium_hardness";
  finding.value = 150;
  finding.text = "Of 1150 and 150.5 and 2.150 the reading is 150.";
  const Sentence sentence = finding_sentence(finding, visit, nullptr, Words("en"));
  ASSERT_EQ(sentence.size(), 3u);
  EXPECT_EQ(std::get<std::string>(sentence[2]), "150.");
}

TEST(Sheet, PutsLabelAndLocalCodeFirst) {
  const Sheet sheet = sheet_of(sample_visit());
  ASSERT_FALSE(sheet.before.empty());
  EXPECT_THAT(sheet.before.front(), HasSubstr("label"));
  EXPECT_THAT(sheet.before.front(), HasSubstr("local code"));
  EXPECT_THAT(sheet.trouble.front(), HasSubstr("911"));
  // A sentence the plan brings along is not said twice.
  Visit twice = sample_visit();
  twice.plan_as_told->cautions = sheet.before;
  EXPECT_EQ(sheet_of(twice).before, sheet.before);
  const Sheet nameless = make_sheet(sample_visit(), nullptr, ShopDetails{}, Words("en"));
  EXPECT_THAT(nameless.trouble.front(), HasSubstr("your local emergency number"));
}

// FIPS 180-4, the example "abc": ba7816bf 8f01cfea ...
TEST(VisitCode, IsTheBeginningOfSha256AndNothingElse) {
  EXPECT_EQ(visit_code("abc"), "bl:ba7816bf8f01cfea");
  const Visit visit = sample_visit();
  const Sheet sheet = sheet_of(visit);
  EXPECT_EQ(sheet.code, visit_code(visit.id));
  EXPECT_THAT(sheet.code, testing::Not(HasSubstr(visit.id)));
}

}  // namespace
}  // namespace brimline
