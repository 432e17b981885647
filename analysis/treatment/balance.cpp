// SPDX-License-Identifier: GPL-3.0-or-later
// Alkalinity, pH and calcium: each round looks at the water as it is by then and puts down one step,
// so caps and by-products of the step before are already in it.
#include <algorithm>
#include <cmath>

#include "analysis/treatment/planner.h"
#include "analysis/water/doses.h"

namespace brimline {

namespace {

constexpr int kMostRounds = 9;
constexpr int kMostAcidRounds = 2;  // of acid and air in one plan; then another bottle
constexpr double kAWeek = 168;      // a plan longer than this waits for another bottle
constexpr double kAerateHours = 24;
constexpr double kPerMg = 1e-3 / weight::kAlkalinity;  // eq/kgw per mg/L CaCO3

struct Balance {
  double ph = 7.5, alkalinity = 100;  // by now
  Target ph_range, alkalinity_range;
  double ph_aim = 7.5, alkalinity_aim = 100;
  bool alkalinity_known = false;
};

std::optional<Balance> look(const Draft& d) {
  const auto ph = d.aim("ph"), alkalinity = d.aim("total_alkalinity");
  const auto w = d.water();
  // Without these nothing may be dosed on pH; a stabilizer beyond the range hides the buffer.
  const auto cyanuric = d.s.known.find("cyanuric_acid");
  if (cyanuric != d.s.known.end() && (!cyanuric->second.usable || cyanuric->second.doubtful))
    return std::nullopt;
  if (!ph || !alkalinity || !w || !d.s.fresh("ph") || !d.s.fresh("total_alkalinity")) return std::nullopt;
  Balance b{w->ph,
            w->total_alkalinity(),
            ph->range,
            alkalinity->range,
            ph->aim,
            alkalinity->aim,
            d.s.fresh("total_alkalinity") != nullptr};
  return b;
}

// Dose of a chemical that brings pH to `target`; 0 where it is there already, `most` where it never gets
// there.
double dose_for_ph(const Draft& d, const char* chemical, double target, double most) {
  const auto ph = [&](double x) {
    const auto t = add(d.totals, chemical, x);
    return t ? d.ph_with(*t) : std::nullopt;
  };
  const auto start = ph(0), end = ph(most);
  if (!start) return 0;
  // A dose so large that no water holds it is past the target.
  if (end && (*end - target) * (*start - target) > 0) return std::abs(*start - target) < 1e-9 ? 0 : most;
  double low = 0, high = most;
  for (int i = 0; i < 40; ++i) {
    const double middle = (low + high) / 2;
    const auto p = ph(middle);
    (p && (*p - target) * (*start - target) > 0 ? low : high) = middle;
  }
  return (low + high) / 2;
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

bool dose(Draft& d, std::initializer_list<const char*> ids, double mol_per_kgw, const char* note,
          std::vector<std::string> for_findings) {
  const auto product = d.choose(ids);
  return product && d.add(*product, mol_per_kgw, {std::move(for_findings), note}) > 0;
}

bool lower_ph(Draft& d, double target, std::vector<std::string> why) {
  const auto product = d.choose({"hydrochloric_acid", "sodium_bisulfate"});
  if (!product) return false;
  const double most = 0.01;
  const double wanted = dose_for_ph(d, product->substance.c_str(), target, most);
  return d.add(*product, wanted, {std::move(why), "lower_ph"}) > 0;
}

bool raise_ph(Draft& d, const Balance& b, double target, std::vector<std::string> why) {
  const double soda = dose_for_ph(d, "sodium_carbonate", target, 0.003);
  const double end = b.alkalinity + 2 * soda / kPerMg;
  if (b.alkalinity_range.high && end > *b.alkalinity_range.high) {
    const double carbon = carbon_for_ph(d, target);
    if (carbon <= 1e-7) return false;
    d.act(Action::aerate, "aerate", std::move(why), kAerateHours, Change{"", 0, 0, carbon});
    return true;
  }
  return dose(d, {"sodium_carbonate"}, soda, "raise_ph", std::move(why));
}

// Alkalinity is too low: soda ash where pH wants to rise more than bicarbonate does, else bicarbonate.
bool raise_alkalinity(Draft& d, const Balance& b) {
  const double aim = b.alkalinity_aim;
  const double missing = (aim - b.alkalinity) * kPerMg;
  const auto after = add(d.totals, "sodium_bicarbonate", missing);
  const auto ph = after ? d.ph_with(*after) : std::nullopt;
  if (!ph) return false;
  if (b.ph_range.low && *ph < *b.ph_range.low + 0.05) {
    const double soda = std::min(dose_for_ph(d, "sodium_carbonate", b.ph_aim, 0.003), missing / 2);
    if (soda > 1e-6 &&
        dose(d, {"sodium_carbonate"}, soda, "raise_ph_and_alkalinity", {"ph_low", "total_alkalinity_low"}))
      return true;
  }
  double extra = 0;
  if (b.ph_range.high && *ph > *b.ph_range.high) {
    // Acid comes later and takes alkalinity: put down that much more.
    Draft later = d;
    later.totals = *after;
    extra = dose_for_ph(later, "hydrochloric_acid", b.ph_aim, 0.01);
  }
  const double before = d.clock_h;
  if (!dose(d, {"sodium_bicarbonate", "sodium_sesquicarbonate"}, missing + extra, "raise_alkalinity",
            {"total_alkalinity_low"}))
    return false;
  const double start = d.steps.back().step.start_h;
  if (aim - d.amount("total_alkalinity") > 5) {
    d.clock_h = std::max(d.clock_h, start + 24);
    d.steps.back().step.wait_h = d.clock_h - start;
  }
  return d.clock_h > before;
}

// All readings are inside and the water still lays down or dissolves calcium: pH is the lever that remains.
bool saturation_round(Draft& d, const Balance& b) {
  const auto aim = d.aim("si_calcite");
  const auto w = d.water();
  const auto warm =
      w ? at_temperature(*w, d.s.vessel_temperature) : tl::unexpected(Refusal::does_not_balance);
  if (!aim || !warm || !d.s.fresh("calcium_hardness")) return false;
  const auto si = warm->si_calcite();
  if (si && aim->range.high && *si > *aim->range.high && b.ph > 7.45) return lower_ph(d, 7.4, {"si_high"});
  if (si && aim->range.low && *si < *aim->range.low && b.ph < 7.45) return raise_ph(d, b, 7.6, {"si_low"});
  return false;
}

// One step towards balance; false when there is none to take.
bool balance_round(Draft& d, int& acid_rounds) {
  const auto b = look(d);
  if (!b) return false;
  const double low = *b->ph_range.low, high = *b->ph_range.high;
  if (b->ph < 7.0) return raise_ph(d, *b, std::min(b->ph_aim, 7.5), {"ph_low"});
  if (b->alkalinity_known && b->alkalinity_range.low && b->alkalinity < *b->alkalinity_range.low - 0.5)
    return raise_alkalinity(d, *b);
  if (b->alkalinity_known && b->alkalinity_range.high && b->alkalinity > *b->alkalinity_range.high + 0.5 &&
      acid_rounds < kMostAcidRounds) {
    if (b->ph < 7.45) return raise_ph(d, *b, 7.7, {"total_alkalinity_high"});
    ++acid_rounds;
    const double excess = (b->alkalinity - (*b->alkalinity_range.high - 8)) * kPerMg;
    return dose(d, {"hydrochloric_acid", "sodium_bisulfate"}, excess, "lower_alkalinity",
                {"total_alkalinity_high"});
  }
  if (b->ph > high) {
    const double acid = dose_for_ph(d, "hydrochloric_acid", b->ph_aim, 0.01);
    const double end = b->alkalinity - acid / kPerMg;
    const bool too_low = b->alkalinity_known && b->alkalinity_range.low && end < *b->alkalinity_range.low;
    if (too_low && b->alkalinity + 1 < *b->alkalinity_range.high) {
      const double more =
          std::min(*b->alkalinity_range.low + 5 - end, *b->alkalinity_range.high - b->alkalinity);
      if (dose(d, {"sodium_bicarbonate"}, more * kPerMg, "alkalinity_before_acid", {"ph_high"})) {
        return lower_ph(d, b->ph_aim, {"ph_high"});
      }
    }
    return lower_ph(d, b->ph_aim, {"ph_high"});
  }
  if (b->ph < low) return raise_ph(d, *b, b->ph_aim, {"ph_low"});
  return saturation_round(d, *b);
}

}  // namespace

void plan_balance(Draft& d) {
  int acid_rounds = 0;
  for (int round = 0; round < kMostRounds && d.may_dose(); ++round) {
    if (d.clock_h > kAWeek) break;
    if (!balance_round(d, acid_rounds)) break;
  }
}

void plan_urgent_ph(Draft& d, double low, double high) {
  for (int round = 0; round < 3 && d.may_dose(); ++round) {
    const auto b = look(d);
    if (!b || (b->ph >= low && b->ph <= high)) return;
    if (b->ph < low ? !raise_ph(d, *b, b->ph_aim, {"ph_low"}) : !lower_ph(d, b->ph_aim, {"ph_high"})) return;
  }
}

void plan_raised_ph(Draft& d, double target, const std::string& why) {
  const auto b = look(d);
  if (b && d.may_dose() && b->ph < target - 0.05) raise_ph(d, *b, target, {why});
}

void plan_calcium(Draft& d) {
  const auto aim = d.aim("calcium_hardness");
  if (!d.s.fresh("calcium_hardness") || !aim || !aim->range.low) return;
  for (int round = 0; round < 3 && d.may_dose() && d.clock_h < 2 * kAWeek; ++round) {
    const double missing = aim->aim - d.amount("calcium_hardness");
    if (d.amount("calcium_hardness") >= *aim->range.low - 0.5) return;
    const auto product = d.choose({"calcium_chloride"});
    if (!product) return;
    if (d.add(*product, missing * 1e-3 / weight::kCaCO3, {{"calcium_hardness_low"}, "raise_calcium"}) <= 0)
      return;
    Step& step = d.steps.back().step;
    if (aim->aim - d.amount("calcium_hardness") > 1) {  // the next 80 mg/L not before the next day
      d.clock_h = std::max(d.clock_h, step.start_h + 24);
      step.wait_h = d.clock_h - step.start_h - (step.portions - 1) * step.portion_gap_h;
    }
  }
}

void plan_salt(Draft& d) {
  const Known* salt = d.s.fresh("salt");
  const auto aim = d.aim("salt");
  if (!salt || !aim || !aim->range.low || !d.may_dose()) return;
  const double now = d.others.at("salt");
  if (now >= *aim->range.low) return;
  const auto product = d.choose({"sodium_chloride"});
  if (product && d.add(*product, (aim->aim - now) * 1e-3 / weight::kSalt, {{"salt_low"}, "raise_salt"}) > 0)
    d.others["salt"] = aim->aim;
}

}  // namespace brimline
