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
  std::vector<std::string> cautions;  // ids, for the whole sheet
};

DraftedPlan draft_plan(const Situation& s, const TargetSet& targets, std::span<const Product> shelf,
                       const PlanOptions& options);

// Id of the reason why there can be no home plan; nothing where there can be.
std::optional<std::string> why_no_home_plan(const Situation& s);

// The parts of a plan, in planner.cpp's order. Each looks at the water as it will be by then.
void plan_dilution(Draft& d);
void plan_metals(Draft& d);
void plan_balance(Draft& d);
void plan_urgent_ph(Draft& d, double low, double high);                // only until pH is inside
void plan_raised_ph(Draft& d, double target, const std::string& why);  // where it is lower
void plan_calcium(Draft& d);
void plan_salt(Draft& d);
void plan_sanitizer(Draft& d);
void plan_stabilizer(Draft& d);
void plan_clearing(Draft& d);  // brush, vacuum, filter, clarifier
void plan_phosphate(Draft& d);

// What the sanitizer part is going to do: decides the order.
enum class ChlorineNeed { none, raise, shock, not_yet };
struct ChlorinePlan {
  ChlorineNeed need = ChlorineNeed::none;
  double to_add_mg_l = 0;  // as Cl2
  std::string note;
  std::vector<std::string> for_findings;
};
ChlorinePlan chlorine_plan(const Draft& d);

// Swimming above this is not advised: common label wording, from memory. mg/L Cl2.
double re_entry_mg_l(const Situation& s);

struct ProofResult {
  Proof proof;
  std::map<AnalyteId, double> sd;  // of the last water, by reading
  std::vector<int> harm_by_step;   // draws in which each step was the first to do harm
};
ProofResult prove(const Draft& d, const PlanOptions& options, bool swim_after_dose);

}  // namespace brimline
