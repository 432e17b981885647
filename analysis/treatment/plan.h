// SPDX-License-Identifier: GPL-3.0-or-later
// The plan: what the customer is told to do, in order, with the water predicted after each step.
#pragma once

#include <map>
#include <optional>
#include <string>
#include <vector>

#include "analysis/findings/finding.h"

namespace brimline {

enum class Action {
  drain_refill,
  add,
  aerate,
  brush,
  vacuum,
  filter,
  clean_filter,
  circulate,
  remove_tablets,
  set_generator,
  cool,
  retest,
  call_professional
};

// An amount of product; the unit is L, mL, kg or g.
struct ProductAmount {
  double value = 0;
  std::string unit;
  friend bool operator==(const ProductAmount&, const ProductAmount&) = default;
};

// The water once a step has mixed, as the counter will read it; what was never read is absent.
struct After {
  std::map<AnalyteId, double> readings;  // e.g. ph at the sample's temperature, total_alkalinity
  std::map<std::string, double> vessel;  // at the vessel's own temperature: ph, si_calcite, hocl
  friend bool operator==(const After&, const After&) = default;
};

struct Step {
  int order = 1;
  Action action = Action::add;
  std::optional<std::string> chemical;          // id of analysis/substances
  std::optional<std::string> product;           // id on the shelf
  std::optional<double> active_mol;             // whole step, moles of the anhydrous formula
  std::optional<ProductAmount> amount;          // whole step
  bool from_home = false;                       // of what the customer already has
  std::optional<std::string> amount_household;  // one portion as the customer measures it
  int portions = 1;
  double portion_gap_h = 0;
  double start_h = 0;              // hours from when the customer gets home
  double wait_h = 0;               // after the last portion, before the next step
  std::optional<double> fraction;  // of the volume, for drain_refill
  std::vector<std::string> for_findings;
  std::string text;
  std::vector<std::string> cautions;
  std::optional<After> after;
  friend bool operator==(const Step&, const Step&) = default;
};

struct Swim {
  bool now = false;
  std::vector<std::string> because;  // finding ids
  std::optional<int> after_step;
  std::optional<double> not_before_h;  // hours from when the customer gets home
  friend bool operator==(const Swim&, const Swim&) = default;
};

struct Predicted {
  double value = 0;
  std::optional<double> sd;
  friend bool operator==(const Predicted&, const Predicted&) = default;
};

// Draws over the reading and volume errors, each plan step run through the full model.
struct Proof {
  int draws = 0;
  double in_target = 0;  // share of draws that end inside every target
  double harm = 0;       // share that could do harm, as the contract defines it
  friend bool operator==(const Proof&, const Proof&) = default;
};

struct Retest {
  double after_h = 24;  // from the last step's end
  std::vector<AnalyteId> analytes;
  friend bool operator==(const Retest&, const Retest&) = default;
};

// What stands outside its target when the plan is done, why, and what comes next.
struct Remains {
  AnalyteId analyte;  // also "si_calcite"
  double value = 0;   // predicted at the plan's end
  Target target;
  std::string reason;  // "cut_for_harm"; for ever
  std::string text;    // plain words, in the language of the sheet
  friend bool operator==(const Remains&, const Remains&) = default;
};

// What the doses cost: what must be bought, in the shop's money, and what the choice of doses weighed
// (money a cubic metre, steps, distance from target), by which a dearer shelf is never better.
struct Cost {
  double to_buy = 0;
  double weighed = 0;
  friend bool operator==(const Cost&, const Cost&) = default;
};

// A trained hand changed the plan; `step` is the order in the plan as it was first drafted.
struct HandChange {
  int step = 0;
  std::string what;  // "dose", "product" or "leave_out"
  std::string staff, reason;
  std::string before, after;  // in words, of the sheet's language
  friend bool operator==(const HandChange&, const HandChange&) = default;
};

struct Basis {
  std::string program, targets, shelf;
  friend bool operator==(const Basis&, const Basis&) = default;
};

struct Plan {
  bool home_plan = true;
  std::optional<std::string> why_not;  // says why not and what instead, when home_plan is false
  Swim swim;
  std::vector<Finding> findings;
  std::vector<Step> steps;
  std::map<AnalyteId, Predicted> predicted;
  std::optional<Proof> proof;
  std::optional<Retest> retest;
  std::vector<Remains> remains;
  std::optional<Cost> cost;
  std::vector<HandChange> changes;
  std::vector<std::string> cautions;
  Basis basis;
  friend bool operator==(const Plan&, const Plan&) = default;
};

}  // namespace brimline
