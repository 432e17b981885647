// SPDX-License-Identifier: GPL-3.0-or-later
// The sentences of findings, steps, cautions and refusals, by their ids, in the reader's language.
#pragma once

#include <optional>
#include <set>
#include <string>
#include <string_view>
#include <vector>

#include "analysis/treatment/planner.h"
#include "station/visit.h"
#include "station/wording/amount_words.h"
#include "station/wording/words.h"

namespace brimline {

// Bromine tablets are neither weighed nor broken: what is missing is left to the feeder.
bool less_than_a_tablet(const DraftStep& d);

// Whose water is told of: what its sentences hang on.
struct WaterCase {
  Units units = Units::metric;
  std::optional<Volume> volume;
  std::optional<Sanitizer> sanitizer;
  std::optional<double> ph;
  std::set<std::string> dosed_for;  // findings that a dose of the plan is for
};

// One plain sentence with the reading it rests on.
std::string finding_text(const Words& words, const Finding& finding, const WaterCase& where = {});
// What the readings say of a sign the customer reported (a finding's id): its cause, or that they do not fit;
// empty where they say nothing either way.
std::string sign_cause(const Words& words, std::string_view sign, const std::vector<Finding>& findings,
                       const Bottle& bottle);
// What to do; `product` is absent where nothing is dosed.
std::string step_text(const Words& words, const DraftStep& step, std::string_view product_name,
                      const std::optional<std::string>& portion, const WaterCase& where = {});
// What holds chlorine up until the next bottle; empty where the step needs none.
std::string holding_text(const Words& words, const DraftStep& step, std::string_view product_name,
                         Units units);
// A caution by its id; the id itself where it is not known.
std::string caution_text(const Words& words, std::string_view id, const std::string& value = "");
// How long nobody gets in after a dose: 4 hours, 1 in a spa or plunge. Common practice, no source.
double hours_after_dose(const Vessel& vessel);
// Nobody in the water while dosing, and how long after a dose in this kind of vessel.
std::string nobody_in_text(const Words& words, const Vessel& vessel);
// Why there is no home plan, and what to do instead.
std::string why_not_text(const Words& words, std::string_view id);

// What stands outside its target at the end, why, and what comes next.
std::string remains_text(const Words& words, const Remains& remains);
// Why a change by hand is refused, by the refusal's id; `harm` is the share of draws, where that is why.
std::string refusal_text(const Words& words, std::string_view id, int step, double harm);
// A value with its analyte's decimals and unit.
std::string reading_in_words(const Words& words, const std::optional<AnalyteId>& analyte, double value);
// "7.9 ± 0.1": with the decimals that the first digit of its standard deviation asks for, and the unit.
std::string measured_in_words(const Words& words, const std::optional<AnalyteId>& analyte,
                              const Measured& measured);

// Ids that have a sentence, for tests.
std::vector<std::string> known_finding_ids();
std::vector<std::string> known_step_notes();
std::vector<std::string> known_caution_ids();
std::vector<std::string> known_remains_ids();
std::vector<std::string> known_why_not_ids();

}  // namespace brimline
