// SPDX-License-Identifier: GPL-3.0-or-later
// The overnight test as it goes on behind the counter: set up one day, read an hour and a day later. When
// it is done its bottles become the visit's demand test (analysis/panel/demand.h).
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "analysis/panel/bottle.h"
#include "analysis/panel/demand_setup.h"
#include "analysis/panel/names.h"

namespace brimline {

// Where the clerk is: three pages of setting up, then waiting and reading, then told.
enum class OvernightStage { bottles, stock, pour, running, result, closed };

// The two times each bottle is read.
enum class OvernightDue { hour, day };
inline constexpr double kHourDue = 1, kDayDue = 24;  // hours after the start

// Liquid chlorine the stock is made from.
struct Bleach {
  std::string product;       // id on the shelf; empty: typed from a label
  double available_g_l = 0;  // grams Cl2 in a litre: trade percent times ten
  friend bool operator==(const Bleach&, const Bleach&) = default;
};

struct OvernightBottle {
  double aimed_mg_l = 0;  // on the label
  double stock_ml = 0;    // as poured
  friend bool operator==(const OvernightBottle&, const OvernightBottle&) = default;
};

// One number read from one bottle. Nothing is overwritten: a later one of the same kind counts instead,
// and one taken back stays, withdrawn.
struct OvernightReading {
  Instant at;
  int bottle = 0;  // from 0
  OvernightDue due = OvernightDue::hour;
  AnalyteId analyte;    // free_chlorine or total_chlorine
  double value = 0;     // mg/L Cl2 in the bottle: already multiplied by `dilution`
  double dilution = 1;  // (sample + water) / sample
  std::optional<Clip> clipped;
  std::optional<std::string> instrument;
  bool withdrawn = false;
  friend bool operator==(const OvernightReading&, const OvernightReading&) = default;
};

struct OvernightTest {
  std::string visit;  // id
  int number = 1;     // the visit's first, second ... overnight test
  OvernightStage stage = OvernightStage::bottles;
  DemandReach reach = DemandReach::usual;
  double sample_ml = 100;  // in each bottle
  std::optional<Bleach> bleach;
  std::optional<Temperature> temperature;  // at which the bottles stand
  std::optional<double> check_mg_l;        // what the strength check read; absent: not made yet
  std::optional<Instant> started_at;
  std::vector<OvernightBottle> bottles;  // as poured; empty until started
  std::vector<OvernightReading> readings;
  bool given_up = false;
  friend bool operator==(const OvernightTest&, const OvernightTest&) = default;
};

// What each bottle gets with the choices made: the stock as checked, else as aimed at.
std::vector<OvernightBottle> bottles_to_pour(const OvernightTest& test);
double stock_strength(const OvernightTest& test);  // mg/L Cl2
double sample_needed_ml(const OvernightTest& test);

// Every bottle has its chlorine: the clock starts. Nothing to start without a sound strength check.
bool may_start(const OvernightTest& test);
void start(OvernightTest& test, const Instant& now);

Instant due_at(const Instant& started, OvernightDue due);
// The time whose readings are taken at `now`: the day's from twelve hours on.
OvernightDue due_for(const OvernightTest& test, const Instant& now);
// What the test waits for next; nothing once the day's readings are all there, or before the start. An
// hour's reading that was not taken in the first twelve hours is not waited for.
std::optional<OvernightDue> waits_for(const OvernightTest& test, const Instant& now);

// The reading that counts; null: none.
const OvernightReading* standing(const OvernightTest& test, int bottle, OvernightDue due,
                                 std::string_view analyte);
// Free chlorine of every bottle at that time, and total wherever more free chlorine was found than this.
inline constexpr double kNoFreeLeft = 0.05;  // mg/L Cl2
bool complete(const OvernightTest& test, OvernightDue due);
// Takes back the last reading that counts; false: there is none.
bool withdraw_last(OvernightTest& test);

// The contract's form. `hours` is the mean time of the day's readings; a clipped total reading that
// proves nothing is left out.
DemandTest demand_test_of(const OvernightTest& test);

template <>
std::span<const Named<OvernightStage>> names();
template <>
std::span<const Named<OvernightDue>> names();
template <>
std::span<const Named<DemandReach>> names();

}  // namespace brimline
