// SPDX-License-Identifier: GPL-3.0-or-later
// The order of the chosen doses: each goes down as soon as its turn comes and its step's caps allow, the
// rest of it later; where pH must be moved by hand before a dose, the program is asked for that alone.
#include <algorithm>
#include <cmath>

#include "analysis/findings/edge.h"
#include "analysis/treatment/dose_choice.h"
#include "analysis/treatment/planner.h"
#include "analysis/water/doses.h"

namespace brimline {

namespace {

constexpr double kTenDays = 240;  // what comes later waits for another bottle
constexpr double kAerateHours = 24;
constexpr int kMostPasses = 3;
constexpr int kMostSteps = 16;     // of doses in one plan
constexpr int kMostAir = 2;        // rounds of acid and air in one plan; then another bottle
constexpr double kVeryLow = 6.95;  // below it even chlorine waits for pH
constexpr double kWorth = 0.3;     // of what a step could hold: less waits for a better moment

enum class Role { alkali, acid, air, chlorine, calcium, salt, stabilizer, other };

Role role_of(const std::string& id) {
  if (id.empty()) return Role::air;
  const Substance& sub = *find_substance(id);
  if (sub.is("acid")) return Role::acid;
  if (sub.is("alkali")) return Role::alkali;
  if (sub.is("chlorine") || sub.is("bromine_donor")) return Role::chlorine;
  if (sub.is("calcium")) return Role::calcium;
  if (sub.is("stabilizer")) return Role::stabilizer;
  return sub.is("salt") ? Role::salt : Role::other;
}

// CO2 to drive out so that pH rises to `target`, at most down to balance with air; mol/kgw.
double carbon_for_ph(const Draft& d, double target) {
  const auto w = d.water();
  const auto aired = w ? aerate(*w) : tl::unexpected(Refusal::does_not_balance);
  if (!aired) return 0;
  const double most = w->totals.carbon - aired->totals.carbon;
  if (most <= 0 || aired->ph <= target) return std::max(0.0, most);
  double low = 0, high = most;
  for (int i = 0; i < 40; ++i) {
    const double middle = (low + high) / 2;
    Totals t = d.totals;
    t.carbon -= middle;
    const auto ph = d.ph_with(t);
    (ph && *ph < target ? low : high) = middle;
  }
  return (low + high) / 2;
}

// Puts the doses down one by one.
class Sequence {
 public:
  Sequence(Draft& d, std::vector<ChosenDose> doses, const DoseOrder& order)
      : d_(d), left_(std::move(doses)), order_(order) {
    if (const auto aim = d_.aim("ph")) ph_ = aim->range;
    for (const ChosenDose& c : left_) told_[{c.supply, c.substance}] = c.mmol;
  }

  void put_down() {
    for (int i = 0; i < kMostSteps && d_.may_dose() && !left_.empty(); ++i) {
      std::erase_if(left_, [&](const ChosenDose& c) { return settled(c); });
      if (left_.empty()) break;
      if (d_.clock_h > kTenDays * (only(Role::calcium) || only(Role::stabilizer) ? 2 : 1)) break;
      if (!step(kWorth) && !step(0)) break;
      std::erase_if(left_, [](const ChosenDose& c) { return c.mmol < 1e-4; });
    }
    for (const ChosenDose& c : left_)
      if (!settled(c)) hold_back(c);
  }

 private:
  // The little that is left of a dose whose readings are inside by now is not worth a trip to the pool.
  bool settled(const ChosenDose& c) const {
    const double whole = told_.at({c.supply, c.substance});
    if (c.mmol < 0.01 * whole) return true;
    const bool moves_ph = role_of(c.substance) == Role::acid || role_of(c.substance) == Role::alkali;
    if (c.mmol > 0.15 * whole && !moves_ph) return false;
    switch (role_of(c.substance)) {
      case Role::calcium:
        return inside("calcium_hardness", c.mmol < 0.05 * whole ? -0.05 : 1) && inside("si_calcite", 0);
      case Role::stabilizer:
        return inside("cyanuric_acid", 0.5);
      case Role::acid:
      case Role::alkali:
        return alone(c) && inside("ph", 0.02) && inside("total_alkalinity", 0.5) && inside("si_calcite", 0);
      default:
        return false;
    }
  }

  // Whether nothing that is still to come moves pH the other way.
  bool alone(const ChosenDose& c) const {
    return std::all_of(left_.begin(), left_.end(), [&](const ChosenDose& x) {
      const Role role = role_of(x.substance);
      return &x == &c || role == Role::calcium || role == Role::salt ||
             (role == Role::stabilizer && role_of(c.substance) == Role::acid);
    });
  }

  // Once a shock is used up.
  bool inside(const char* analyte, double margin) const {
    const auto aim = d_.aim(analyte);
    const Totals then = d_.used_up();
    double value = d_.amount(analyte);
    if (std::string_view(analyte) == "ph") value = d_.ph_with(then).value_or(0);
    if (std::string_view(analyte) == "total_alkalinity") value = then.alkalinity * 1e3 * weight::kAlkalinity;
    if (std::string_view(analyte) == "si_calcite") {
      const auto w =
          d_.modelled ? solve(then, d_.s.bottle_temperature) : tl::unexpected(Refusal::does_not_balance);
      const auto warm = at_temperature(w.value_or(Water{}), d_.s.vessel_temperature);
      if (!d_.s.fresh("calcium_hardness") || !warm) return true;
      value = warm->si_calcite().value_or(0);
    }
    return !aim || ((!aim->range.low || value >= *aim->range.low + margin) &&
                    (!aim->range.high || value <= *aim->range.high - margin));
  }

  bool only(Role role) const {
    return std::all_of(left_.begin(), left_.end(),
                       [&](const ChosenDose& c) { return role_of(c.substance) == role; });
  }

  // Whose turn it is, by the water as it is by now.
  std::vector<Role> turns() const {
    const double ph = d_.water() ? d_.water()->ph : 7.5;
    const double low = ph_.low.value_or(7.2), high = ph_.high.value_or(7.8);
    std::vector<Role> out;
    const auto turn = [&](Role r) {
      if (std::find(out.begin(), out.end(), r) == out.end()) out.push_back(r);
    };
    if (ph < std::max(kVeryLow, low - 0.25)) turn(Role::alkali);
    if (ph > (order_.shock ? 7.65 : order_.chlorine_first ? std::max(high, kNearPh) : high)) turn(Role::acid);
    if (order_.chlorine_first) turn(Role::chlorine);
    if (ph < low) turn(Role::alkali);
    if (acid_ && ph < 7.4) turn(Role::air);
    turn(Role::alkali);
    turn(Role::acid);
    turn(Role::air);
    turn(Role::chlorine);
    turn(Role::other);
    turn(Role::calcium);
    turn(Role::salt);
    turn(Role::stabilizer);
    return out;
  }

  bool step(double worth) {
    for (const Role role : turns())
      for (ChosenDose& c : left_)
        if (role_of(c.substance) == role && (role == Role::air ? air(c) : pour(c, worth))) return true;
    return false;
  }

  bool pour(ChosenDose& c, double worth) {
    const Substance& sub = *find_substance(c.substance);
    const bool chlorine = role_of(c.substance) == Role::chlorine;
    const bool whole = chlorine && order_.shock;
    const double wanted = c.mmol * 1e-3;
    const double fits = whole ? wanted : d_.capped(sub, wanted);
    const double full = std::min(wanted, sub.cap.mmol_per_litre.value_or(1e9) * 1e-3);
    if (fits < std::max(worth * full, 0.03 * wanted)) return false;
    if (sub.is("ph_down") && air_is_spent()) return false;
    const double placed = d_.add(c.supply, fits < 0.97 * wanted ? fits : wanted, options(sub, whole));
    if (placed <= 0) return false;
    const bool scaled = d_.scales.contains(d_.steps.back().note);
    acid_ = acid_ || sub.is("ph_down");
    if (whole && d_.s.algae()) plan_clearing(d_);
    c.mmol = scaled ? 0 : c.mmol - placed * 1e3;
    return true;
  }

  bool air(ChosenDose& c) {
    const double ph = d_.water() ? d_.water()->ph : 9;
    const bool acid_waits = std::any_of(
        left_.begin(), left_.end(), [](const ChosenDose& x) { return role_of(x.substance) == Role::acid; });
    const double target = acid_waits ? 7.7 : ph_.high.value_or(7.8) - 0.1;
    if (rounds() >= kMostAir || ph >= target - 0.1) return false;
    const double carbon = std::min(carbon_for_ph(d_, target), c.mmol * 1e-3);
    if (carbon < 1e-6) return false;
    d_.act(Action::aerate, "aerate", {"total_alkalinity_high", "ph_low", "si_low"}, kAerateHours,
           Change{"", 0, 0, carbon, target});
    c.mmol -= carbon * 1e3;
    return true;
  }

  // Rounds of acid and air this plan holds.
  int rounds() const {
    return static_cast<int>(std::count_if(d_.steps.begin(), d_.steps.end(), [](const DraftStep& step) {
      return step.step.action == Action::aerate;
    }));
  }
  // Acid that counts on air to bring pH back waits for the next plan with it.
  bool air_is_spent() const {
    const double ph = d_.water() ? d_.water()->ph : 9;
    return rounds() >= kMostAir && ph <= ph_.high.value_or(7.8) &&
           std::any_of(left_.begin(), left_.end(), [](const ChosenDose& x) { return x.substance.empty(); });
  }

  AddOptions options(const Substance& sub, bool whole) const {
    AddOptions o;
    o.whole = whole;
    const bool alkalinity_low = below("total_alkalinity");
    switch (role_of(sub.id)) {
      case Role::acid:
        o.note = above("total_alkalinity") ? "lower_alkalinity" : "lower_ph";
        o.for_findings = {"ph_high", "total_alkalinity_high", "si_high"};
        break;
      case Role::alkali:
        o.note = sub.id == "sodium_carbonate"     ? (alkalinity_low ? "raise_ph_and_alkalinity" : "raise_ph")
                 : alkalinity_low                 ? "raise_alkalinity"
                 : acid_to_come()                 ? "alkalinity_before_acid"
                 : sub.id == "sodium_bicarbonate" ? "raise_alkalinity"
                                                  : "raise_ph";
        o.for_findings = {"total_alkalinity_low", "ph_low", "si_low"};
        break;
      case Role::chlorine:
        o.note = d_.s.chlorine() ? order_.chlorine_note : "raise_bromine";
        o.for_findings = order_.chlorine_for;
        if (!d_.s.chlorine()) o.for_findings = {"total_bromine_low"};
        break;
      case Role::calcium:
        o.note = "raise_calcium";
        o.for_findings = {"calcium_hardness_low", "si_low"};
        break;
      case Role::salt:
        o.note = "raise_salt";
        o.for_findings = {"salt_low"};
        break;
      case Role::stabilizer:
        o.note = "raise_stabilizer";
        o.for_findings = {"cyanuric_acid_low"};
        break;
      default:
        o.note = "raise_borate";
        o.for_findings = {"borate_low"};
    }
    return o;
  }

  bool acid_to_come() const {
    return std::any_of(left_.begin(), left_.end(),
                       [](const ChosenDose& x) { return role_of(x.substance) == Role::acid; });
  }

  bool below(const char* analyte) const {
    const auto aim = d_.aim(analyte);
    return aim && aim->range.low && d_.amount(analyte) < *aim->range.low;
  }
  bool above(const char* analyte) const {
    const auto aim = d_.aim(analyte);
    return aim && aim->range.high && d_.amount(analyte) > *aim->range.high;
  }

  void hold_back(const ChosenDose& c) {
    const bool slow = c.substance.empty() || (rounds() > 0 && role_of(c.substance) == Role::acid);
    const char* why = slow ? "air_over_days" : "next_bottle";
    for (const char* analyte : {"ph", "total_alkalinity"})
      if (role_of(c.substance) <= Role::air) d_.held_back.emplace(analyte, why);
    d_.held_back.emplace("si_calcite", why);
    if (role_of(c.substance) == Role::calcium) d_.held_back.emplace("calcium_hardness", why);
    if (role_of(c.substance) == Role::stabilizer) d_.held_back.emplace("cyanuric_acid", why);
    if (role_of(c.substance) == Role::chlorine)
      d_.held_back.emplace(d_.s.chlorine() ? "free_chlorine" : "total_bromine", why);
  }

  Draft& d_;
  std::vector<ChosenDose> left_;
  const DoseOrder& order_;
  std::map<std::pair<int, std::string>, double> told_;  // mmol of each dose as chosen
  Target ph_;
  bool acid_ = false;
};

bool chlorine_stands(const Draft& d) {
  const auto aim = d.aim("free_chlorine");
  return aim && d.amount("free_chlorine") >= std::max(aim->range.low.value_or(0), aim->row->low.value_or(0));
}

}  // namespace

// High alkalinity with low pH: acid would take pH lower still, so air comes first. It wants no volume.
void plan_urgent_air(Draft& d) {
  const auto ph = d.ph_with(d.totals);
  const auto aim = d.aim("ph"), alkalinity = d.aim("total_alkalinity");
  const Known* read = d.s.fresh("total_alkalinity");
  if (!ph || !aim || !aim->range.low || *ph >= *aim->range.low || !read || !alkalinity || !may_balance(d))
    return;
  if (standing(read->measured(), alkalinity->range) != Standing::above) return;
  const double carbon = carbon_for_ph(d, aim->range.high.value_or(7.8) - 0.1);
  if (carbon > 1e-6)
    d.act(Action::aerate, "aerate", {"ph_low", "total_alkalinity_high", "si_low"}, kAerateHours,
          Change{"", 0, 0, carbon, aim->range.high.value_or(7.8) - 0.1});
}

// Hypochlorous acid is 55 % of free chlorine at pH 7.5 and 28 % at 8.0 (CDC MAHC annex 5.7.3.1.2.2): where
// chlorine must not wait, acid comes before it. What else the water wants is chosen from there.
void plan_urgent_acid(Draft& d, double high) {
  const auto ph = d.ph_with(d.totals);
  const auto aim = d.aim("ph");
  if (!ph || !aim || *ph <= high || !may_balance(d)) return;
  const double wanted = std::min(aim->aim, high);
  const auto acid = d.choose({"hydrochloric_acid", "sodium_bisulfate"}, 0.25e-3 * d.kilograms());
  if (!acid) return;
  const std::string& id = d.supplies()[*acid].product.substance;
  double low = 0, most = 0.003;
  for (int i = 0; i < 30; ++i) {
    const double middle = (low + most) / 2;
    const auto t = add(d.totals, id, middle);
    const auto then = t ? d.ph_with(*t) : std::nullopt;
    (then && *then > wanted ? low : most) = middle;
  }
  for (int round = 0; round < 3 && low > 1e-6; ++round) {
    const double stock = d.supplies()[*acid].stock_mol.value_or(1e9) / d.kilograms();
    const double placed = d.add(*acid, std::min(low, stock), {{"ph_high", "si_high"}, "lower_ph"});
    low -= placed;
    if (placed <= 0 || d.ph_with(d.totals).value_or(0) <= high) return;
  }
}

void plan_doses(Draft& d, const DoseOrder& order) {
  // Again from where the caps of the first choice left the water.
  DoseOrder now = order;
  for (int pass = 0; pass < kMostPasses && d.may_dose(); ++pass) {
    const ChlorineGoal chlorine{now.chlorine, now.exactly_mg_l};
    const DoseChoice choice = choose_doses(d, chlorine, now.stabilizer, now.salt);
    if (!d.weighed) d.weighed = choice.weighed;
    for (const std::string& id : choice.no_product) d.not_sold.insert(id);
    if (choice.doses.empty()) break;
    const size_t before = d.steps.size();
    std::erase_if(d.held_back, [](const auto& held) {
      return held.second == "next_bottle" || held.second == "air_over_days";
    });
    Sequence(d, choice.doses, now).put_down();
    if (d.steps.size() == before || d.held_back.empty()) break;
    if (now.shock || chlorine_stands(d)) now.chlorine = false;  // a grain more is not worth an evening
  }
}

}  // namespace brimline
