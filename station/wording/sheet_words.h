// SPDX-License-Identifier: GPL-3.0-or-later
// The sentences of the take-home sheet that do not come from the plan itself.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "station/visit.h"
#include "station/wording/shop_details.h"
#include "station/wording/words.h"

namespace brimline {

// "No – not before tomorrow 08:00, after step 3." Without `home_at` the hours count from step 1.
std::string swim_answer(const Words& words, const Plan& plan, const std::optional<Instant>& home_at,
                        const Vessel& vessel);

// Where swimming waits for a bottle that the plan's last step puts off: from when on a bottle tells whether
// the step that mends what keeps everybody out has worked. Empty where none comes sooner.
std::string sooner_bottle(const Words& words, const Plan& plan, const std::optional<Instant>& home_at);

// "outdoor pool, 15,000 US gal (56.8 m³), chlorine": what is known of the vessel.
std::string vessel_words(const Words& words, const Vessel& vessel, std::optional<Units> units);

// Label and local code first, never mix, nobody in the water; before any step is read.
std::vector<std::string> standing_lines(const Words& words, const Vessel& vessel, bool with_doses);

// What to look out for while this plan is carried out; a row each in sheet_words.cpp.
std::vector<std::string> watch_lines(const Words& words, const Plan& plan);

// First aid and storing, with the shop's numbers.
std::vector<std::string> trouble_lines(const Words& words, const ShopDetails& shop);

// One portion as the customer measures it, with litres or grams behind: "2 1/4 cups (530 mL)";
// empty for a step that adds nothing.
std::string portion_words(const Words& words, const Step& step);

// Hours from home_at to the step's end: its last portion and the wait after it.
double end_h(const Step& step);
// Hours after coming home at which the last step has waited; 0 without steps.
double plan_end_h(const Plan& plan);

}  // namespace brimline
