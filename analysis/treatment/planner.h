// SPDX-License-Identifier: GPL-3.0-or-later
// From a situation to a drafted plan: what to do, in which order, proven by draws over the errors of
// readings and volume. No sentences here: findings and steps carry ids, the station gives them words.
#pragma once

#include <cstdint>
#include <optional>
#include <span>
#include <string>
#include <vector>

#include "analysis/treatment/draft.h"

namespace brimline {

struct PlanOptions {
  int draws = 1000;        // of the proof; 0: none made
  std::uint64_t seed = 1;  // of the draws
};

struct DraftedPlan {
  bool home_plan = true;
  std::string why_not;  // id of the reason, where there is no home plan
  std::vector<Finding> findings;
  std::vector<DraftStep> steps;
  Swim swim;
  std::map<AnalyteId, Predicted> predicted;
  std::optional<Proof> proof;
  Retest retest;
  std::vector<Remains> remains;  // without their text
  Cost cost;
  std::vector<std::string> cautions;  // ids, for the whole sheet
};

DraftedPlan draft_plan(const Situation& s, const TargetSet& targets, std::span<const Product> shelf,
                       const PlanOptions& options);

// Id of the reason why there can be no home plan; nothing where there can be.
std::optional<std::string> why_no_home_plan(const Situation& s);

// The parts of a plan, in planner.cpp's order. Each looks at the water as it will be by then.
void plan_dilution(Draft& d);
void plan_metals(Draft& d);
void plan_sanitizer(Draft& d);  // what is no part of the program: bromide, biguanide, peroxide
void plan_lowered_chlorine(Draft& d);
void plan_debris(Draft& d);
void plan_clearing(Draft& d);  // brush, vacuum, filter, clarifier
void plan_phosphate(Draft& d);
void plan_winter(Draft& d);
// Whether stabilizer may be raised now: outdoors, once chlorine holds and nothing is being burnt off.
bool stabilizer_may_rise(const Draft& d);
bool combined_high(const Draft& d);  // beyond its error, as it is thinned by now

// New plaster hydrates for 28 days: a plasterers' council start-up text, second hand.
inline constexpr double kPlasterCures = 28;

// What the program of doses may pour and in which order.
struct DoseOrder {
  bool chlorine = false;               // free chlorine is one of the goals
  std::optional<double> exactly_mg_l;  // a shock or a demand: where it must stand
  bool shock = false;                  // all at once
  bool chlorine_first = false;         // unsafe water does not wait for balance
  bool stabilizer = false, salt = false;
  std::string chlorine_note = "raise_chlorine";
  std::vector<std::string> chlorine_for = {"free_chlorine_low"};
};
void plan_doses(Draft& d, const DoseOrder& order);
constexpr double kNearPh = 7.9;  // up to here chlorine does not wait for acid; our own, from memory
void plan_urgent_air(Draft& d);
void plan_urgent_acid(Draft& d, double high);  // down to the aimed pH where it is above `high`

// What the sanitizer part is going to do: decides the order.
enum class ChlorineNeed { none, raise, shock, not_yet };
struct ChlorinePlan {
  ChlorineNeed need = ChlorineNeed::none;
  double to_add_mg_l = 0;  // as Cl2
  std::string note;
  std::vector<std::string> for_findings;
};
ChlorinePlan chlorine_plan(const Draft& d);

struct ProofResult {
  Proof proof;
  std::map<AnalyteId, double> sd;  // of the last water, by reading
  std::vector<int> harm_by_step;   // draws in which each step was the first to do harm
};
ProofResult prove(const Draft& d, const PlanOptions& options, bool swim_after_dose);
// The last of a plan, once its steps stand in the draft and `plan.findings` are there: proof, swimming,
// retest, what remains. Gives the proof.
ProofResult finish_plan(DraftedPlan& plan, const Draft& d, const PlanOptions& options);

}  // namespace brimline
