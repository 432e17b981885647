// SPDX-License-Identifier: GPL-3.0-or-later
// The sentences of the overnight test: what to do on each page, what is due, what came out.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "analysis/panel/demand.h"
#include "station/overnight/overnight_test.h"
#include "station/wording/words.h"

namespace brimline {

// "Free chlorine is used up: an overnight test tells how much this water needs."
std::string demand_sign_words(const Words& words, DemandSign sign);
// Why these doses are advised.
std::string reach_reason_words(const Words& words, const DemandReachAdvice& advice);
// "7 bottles, 0 to 40 mg/L"
std::string reach_words(const Words& words, DemandReach reach);

// What is done on the page of this stage, in order. `ph` as read from the bottle.
std::vector<std::string> overnight_steps(const Words& words, const OvernightTest& test,
                                         std::optional<double> ph);
// The cautions of that page.
std::vector<std::string> overnight_cautions(const Words& words, OvernightStage stage);

// "12.5 % trade is 125 g of chlorine in a litre, so 8.0 mL hold the 1 g wanted."
std::string bleach_words(const Words& words, const Bleach& bleach);
// What the strength check says of the stock; empty before it.
std::string check_words(const Words& words, const OvernightTest& test);

// "24-hour readings tomorrow 10:20", "24-hour readings overdue by 3 hours", "the result is in".
std::string overnight_due_words(const Words& words, const OvernightTest& test, const Instant& now);
// True where the clerk should act: something is due, or the result waits to be told.
bool overnight_calls(const OvernightTest& test, const Instant& now);

// What one bottle says, in a word or two.
std::string demand_word_words(const Words& words, DemandWord word);
// What the sheet tells the customer of it: the demand, between which bounds, and the dose.
std::string demand_finding(const Words& words, const DemandResult& result);
// Where the water stands as an overnight test, in place of being asked for another litre.
std::string test_running_words(const Words& words, const Instant& start, const Instant& due);

// The result in sentences: the demand with its error and the dose, or why it was not enough.
std::vector<std::string> demand_lines(const Words& words, const DemandResult& result);

}  // namespace brimline
