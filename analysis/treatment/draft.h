// SPDX-License-Identifier: GPL-3.0-or-later
// A plan in the making: the water as it will be after the steps so far, the clock, and the one way
// to put down a step. Every dose goes through `add`, which keeps the caps, the gaps and the quiet
// of the night; sentences are added later by the station.
#pragma once

#include <map>
#include <optional>
#include <set>
#include <span>
#include <string>
#include <vector>

#include "analysis/findings/targets.h"
#include "analysis/treatment/plan.h"
#include "analysis/treatment/product.h"
#include "analysis/treatment/situation.h"

namespace brimline {

// What a step does to the water; replayed over the draws of the proof.
struct Change {
  std::string chemical;    // empty: no dose
  double mol = 0;          // of it, into the whole vessel
  double drained = 0;      // share of the volume replaced by fill water
  double carbon_lost = 0;  // mol/kgw of CO2 driven out
  double to_ph = 0;        // where a test tells the customer to stop the air; 0: no air
};
// `kilograms`: of water in the vessel. Nothing is changed by a chemical dosed by label only.
Totals changed(const Totals& before, const Change& change, double kilograms, const Totals* fill);

struct DraftStep {
  Step step;
  Change change;
  std::string note;                  // which sentence it gets: "lower_ph"
  std::string product_name;          // of what is poured; empty: nothing is
  double swim_wait_h = 0;            // after its end
  int supply = -1;                   // of Draft::supplies(), for a dose
  bool whole = false;                // all or nothing
  std::optional<double> label_dose;  // mL or g a cubic metre, where it is not the product's own
  bool tablets = false;
  std::optional<double> density;  // kg/L of a liquid that is dosed by weight
  // Of the same product, an evening, where free chlorine has fallen below so many mg/L before the next
  // bottle.
  std::optional<ProductAmount> hold;
  double hold_below = 0;
};

// A product the plan may pour: of the shelf, or what stands at home.
struct Supply {
  Product product;
  bool at_home = false;
  std::optional<double> stock_mol;    // of it at home, not yet planned; absent: no limit known
  std::optional<double> stock_label;  // the same of what is dosed by label, L or kg
  double price_a_mol() const;         // in the shop's money; 0 where it holds none
};

// What is at home, with the strength of its own label; it is the shelf's product only where the strengths
// agree.
std::vector<Supply> supplies_at_home(const Situation& s, std::span<const Product> shelf);

// How a dose is put down.
struct AddOptions {
  std::vector<std::string> for_findings;
  std::string note;
  bool whole = false;  // all or nothing: no step cap, one evening
};

class Draft {
 public:
  Draft(const Situation& s, const TargetSet& targets, std::span<const Product> shelf);

  const Situation& s;
  const TargetSet& targets;
  Totals totals;           // once all steps so far have mixed
  bool modelled = false;   // pH can be computed
  bool ends = false;       // a retest must come before anything more
  size_t most_steps = 99;  // beyond these the proof lets nothing but a retest
  bool cut = false;        // the proof has shortened a dose
  double shock_ph = 7.8;   // acid comes before a shock above this
  double near_ph = 7.9;    // and before a dose that raises chlorine
  std::map<AnalyteId, std::string, std::less<>> held_back;  // what waits for another bottle, and why
  std::optional<double> weighed;                            // of the chosen doses
  double to_buy = 0;                                        // likewise
  bool new_water_likely = false;                            // a reading to be taken again may call for it
  std::set<std::string> not_sold;                           // chemicals wanted and neither sold nor at home
  double clock_h = 0;                                       // when the next step may start
  std::vector<DraftStep> steps;
  std::map<AnalyteId, double, std::less<>> others;  // readings no total stands for
  std::map<std::string, double> scales;             // cuts by the proof, by note

  double kilograms() const;                                // of water; only where the volume is known
  bool may_dose() const;                                   // volume known and no retest in the way
  std::optional<Aim> aim(std::string_view analyte) const;  // with the stabilizer as it is by now
  std::optional<Water> water() const;                      // at the bottle's temperature
  bool shocked() const;    // a dose stands that is to be used up before the water is judged
  Totals used_up() const;  // the totals once such a dose has been
  std::optional<double> ph_with(const Totals& t) const;
  double amount(std::string_view analyte) const;  // by now, in the analyte's unit

  const std::vector<Supply>& supplies() const { return supplies_; }
  // Which of them hold this chemical and may be poured here: what is at home first, then the cheapest of the
  // shelf.
  std::vector<int> best_supplies(std::string_view substance) const;
  // One for the first of `ids` that there is any of; nothing if none. What is at home only where it holds
  // `mol` of it, unless nothing else is sold.
  std::optional<int> choose(std::initializer_list<const char*> ids, double mol = 0) const;
  // Largest dose of at most `wanted` mol/kgw within the step caps.
  double capped(const Substance& substance, double wanted) const;
  // Puts down a dose; the mol/kgw it holds, 0 where it may not be.
  double add(int supply, double mol_per_kgw, const AddOptions& options);
  // Puts down a product dosed by its label; `label_dose` mL or g a cubic metre, the product's own if absent.
  bool add_by_label(int supply, const AddOptions& options, std::optional<double> label_dose = {});
  // Puts down anything that is not a dose; `hours` until the next step may start.
  void act(Action action, std::string note, std::vector<std::string> for_findings, double hours,
           Change change = {}, std::vector<std::string> cautions = {});
  double safe_high() const { return safe_high_; }  // computed pH that a step may lead to

  bool may_pour(const Product& product) const;  // in this vessel, beside what is planned so far
  double turnover_h() const;
  double wait_of(const Substance& substance) const;
  // Outdoor pools: chlorine goes in at dusk. Spas, swim spas and plunges stand covered.
  bool waits_for_dusk(const Substance& substance) const;

 private:
  // Less than one tablet is poured as grains of the same, where there are any.
  int grains_instead(int supply, double mol) const;
  double earliest(const Substance& substance) const;
  After after() const;
  void finish_dose(int supply, const Substance& substance, Step step, Change change,
                   const AddOptions& options);

  std::vector<Supply> supplies_;             // what is at home first
  double safe_low_ = 7.0, safe_high_ = 8.2;  // computed pH a step may lead to
};

// What the refill brings: read, or computed from what was, or nothing for what no tap holds; else absent.
std::optional<double> in_fill(const Situation& s, std::string_view analyte);
// Whether pH and alkalinity are known well enough to dose on them.
bool may_balance(const Draft& d);
// Swimming above this is not advised: common label wording, from memory. mg/L Cl2.
double re_entry_mg_l(const Situation& s);

// The clock of the customer: nothing starts from 22:00 to 07:00.
class Timetable {
 public:
  explicit Timetable(std::optional<Instant> home) : home_(home) {}
  // The first time from `hours` on at which a step of `portions` every `gap_h` may start.
  double start(double hours, int portions, double gap_h) const;
  // The first dusk (20:00 to 22:00) from `hours` on.
  double dusk(double hours) const;
  // The first hour from `hours` on at which a shop is open: 9:00 to 17:00.
  double shop_hours(double hours) const;

 private:
  double hour_of_day(double hours) const;
  bool quiet(double hours) const;
  std::optional<Instant> home_;
};

}  // namespace brimline
