// SPDX-License-Identifier: GPL-3.0-or-later
// What a demand test says, in sentences.
#include <algorithm>

#include "analysis/panel/demand.h"

namespace brimline {

namespace {

Statement say(const char* pattern, std::vector<StatementTerm> terms = {}) {
  return {"demand", pattern, std::move(terms)};
}

void say_found(const DemandResult& r, std::vector<Statement>& out) {
  out.push_back(say(phrase("demand", "The water used up %1 mg/L of chlorine in %2 hours."),
                    {MeasuredTerm{*r.demand}, number(r.at_hours, 0)}));
  if (r.temperature)
    out.push_back(say(phrase("demand", "The bottles stood at %1 C; warmer water is faster."),
                      {number(r.temperature->celsius(), 0)}));
  if (r.fast)
    out.push_back(say(phrase("demand", "%1 mg/L of that went in the first %2 h, %3 mg/L after."),
                      {number(r.fast->value, 1), number(r.fast_hours, 0), number(r.slow->value, 1)}));
  out.push_back(
      say(phrase("demand",
                 "It takes %1 mg/L, unstabilised, in one evening, to meet that and leave the residual "
                 "wanted."),
          {number(*r.dose, 1)}));
  if (!r.breakpoint_reached)
    out.push_back(
        say(phrase("demand", "Total chlorine was not read, so combined chlorine may still be there.")));
  if (!r.bottles_agree)
    out.push_back(
        say(phrase("demand",
                   "The bottles that hold chlorine do not agree: check the strength of the stock. The "
                   "weakest of them counts.")));
}

void say_what_to_do(const DemandResult& r, std::vector<Statement>& out) {
  const double demand = r.demand->value;
  if (demand > kBeyondHome)
    out.push_back(
        say(phrase("demand",
                   "That is more than a home can treat: a pool goes to a professional; an above-ground "
                   "spa may be emptied.")));
  else if (demand > kDiluteFirst)
    out.push_back(
        say(phrase("demand",
                   "Reckon first what changing part of the water costs: each share changed takes the "
                   "same share of the demand.")));
  else if (demand > kCleanFirst)
    out.push_back(
        say(phrase("demand",
                   "Clean the filter and take out leaves and dirt first; then dose, and test again the "
                   "next day.")));
  else
    out.push_back(say(
        phrase("demand", "Walls, filter and sun use more than a bottle can show: test again the next day.")));
}

bool any_bleached(const DemandResult& r) {
  return std::any_of(r.bottles.begin(), r.bottles.end(),
                     [](const DemandBottleResult& b) { return b.word == DemandWord::nothing; });
}

void say_not_found(const DemandResult& r, std::vector<Statement>& out) {
  const StatementTerm above = number(r.demand_above.value_or(0), 1);
  if (r.contradicted) {
    out.push_back(
        say(phrase("demand",
                   "The bottles contradict each other: a strong one is used up while a weaker one "
                   "holds chlorine. Look at the labels and set the test up again. Dose nothing on it.")));
    return;
  }
  if (r.bottles.empty())
    out.push_back(say(phrase("demand", "No bottle of the test was read. Dose nothing on it.")));
  else if (r.demand_below)
    out.push_back(
        say(phrase("demand",
                   "Not enough: the demand is above %1 mg/L and at most about %2 mg/L. Dose nothing on "
                   "it."),
            {above, number(*r.demand_below, 1)}));
  else if (any_bleached(r))
    out.push_back(say(phrase("demand",
                             "Not enough: the demand is above %1 mg/L, and the strongest bottles cannot be "
                             "believed. Dose nothing on it."),
                      {above}));
  else
    out.push_back(
        say(phrase("demand",
                   "Not enough: the strongest bottle was used up; the demand is above %1 mg/L. Dose "
                   "nothing on it."),
            {above}));
  if (r.demand_below || any_bleached(r))
    out.push_back(
        say(phrase("demand",
                   "Read the strong bottles again at 1+4 with chlorine-free water: a bleached bottle "
                   "looks like an empty one.")));
  else
    out.push_back(
        say(phrase("demand",
                   "Set up the bottles again with higher doses, until one holds chlorine with little "
                   "of it combined.")));
}

}  // namespace

std::vector<Statement> DemandResult::statements() const {
  std::vector<Statement> out;
  if (demand) {
    say_found(*this, out);
    say_what_to_do(*this, out);
  } else {
    say_not_found(*this, out);
  }
  return out;
}

std::string DemandResult::text() const {
  std::string out;
  for (const Statement& statement : statements()) out += (out.empty() ? "" : " ") + statement.text();
  return out;
}

}  // namespace brimline
