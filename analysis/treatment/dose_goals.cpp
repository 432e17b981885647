// SPDX-License-Identifier: GPL-3.0-or-later
#include "analysis/treatment/dose_goals.h"

#include <algorithm>
#include <cmath>

#include "analysis/findings/edge.h"
#include "analysis/treatment/errors.h"
#include "analysis/treatment/outcome.h"
#include "analysis/water/doses.h"

namespace brimline {

namespace {

constexpr double kOutside = 30;           // a target's width outside it
constexpr double kOutsideSaturation = 8;  // readings come before the index they make
constexpr double kUnwanted = 0.25;        // the same inside it but off its middle
constexpr double kRisky = 3;              // where errors would take it outside
constexpr double kPhMargin = 0.03;        // a plan ends inside, not on the edge
constexpr double kPhWithMetals = 7.4;     // common practice, no source: 7.2 to 7.4 while metals are dissolved
constexpr const char* kMetals[] = {"iron", "copper", "manganese"};
constexpr double kDeviates = 2.4;  // 1 % of a normal error lies beyond

double to_mg_l(std::string_view analyte) {
  if (analyte == "total_alkalinity") return 1e3 * weight::kAlkalinity;
  if (analyte == "calcium_hardness") return 1e3 * weight::kCaCO3;
  if (analyte == "cyanuric_acid") return 1e3 * weight::kCyanuricAcid;
  if (analyte == "free_chlorine") return 1e3 * weight::kChlorine;
  if (analyte == "total_bromine") return 1e3 * weight::kBromine;
  if (analyte == "borate") return 1e3 * weight::kBoron;
  return 1e3 * weight::kSalt;
}

double Totals::*total_of(std::string_view analyte) {
  if (analyte == "total_alkalinity") return &Totals::alkalinity;
  if (analyte == "calcium_hardness") return &Totals::calcium;
  if (analyte == "cyanuric_acid") return &Totals::cyanurate;
  if (analyte == "free_chlorine") return &Totals::chlorine;
  if (analyte == "total_bromine") return &Totals::bromine;
  if (analyte == "borate") return &Totals::borate;
  return &Totals::chloride;
}

Target shrunk(const Target& t, double by) {
  Target out = t;
  if (out.low) *out.low += by;
  if (out.high) *out.high -= by;
  if (out.low && out.high && *out.low > *out.high) return t;
  return out;
}

// Half of the range around its aim.
Target middle(const Target& t, double aim) {
  Target out;
  if (t.low) out.low = (*t.low + aim) / 2;
  if (t.high) out.high = (*t.high + aim) / 2;
  return out;
}

}  // namespace

DoseGoals::DoseGoals(const Draft& d, const ChlorineGoal& chlorine, bool stabilizer, bool salt)
    : d_(d), chlorine_(chlorine), stabilizer_(stabilizer), salt_(salt) {
  collect();
}

void DoseGoals::collect() {
  balance_ = d_.modelled && may_balance(d_);
  const double sd_volume = d_.s.vessel.volume_relative_sd.value_or(0.1);
  if (balance_) {
    ph_goal();
    linear("total_alkalinity", 2);
  }
  if (!d_.new_water_likely) linear("calcium_hardness", 2);
  if (!d_.new_water_likely) linear("borate", 0.5);
  linear("cyanuric_acid", 0.5);
  if (salt_) linear("salt", 10);
  if (!d_.s.chlorine()) linear("total_bromine", 0.02, sd_volume);
  chlorine_goal(sd_volume);
  if (balance_ && d_.s.fresh("calcium_hardness")) saturation_goal();
}

void DoseGoals::add_goal(DoseGoal g, const Target& range, const Target& wanted, double weight) {
  g.row.start = g.start;
  g.row.range = range;
  g.row.wanted = wanted;
  g.row.weight = weight;
  g.row.soft_weight = kUnwanted;
  g.row.width = range.low && range.high ? std::max(1e-6, *range.high - *range.low)
                                        : std::max(1.0, std::abs(range.high.value_or(range.low.value_or(1))));
  all.push_back(std::move(g));
}

void DoseGoals::ph_goal() {
  const auto aim = d_.aim("ph");
  const auto now = d_.ph_with(judged(d_.totals));
  if (!aim || !now) return;
  Target wanted = middle(aim->range, aim->aim);
  if (wanted.high) *wanted.high -= 0.06;  // soda ash may not lead beyond 7.6
  Target range = shrunk(aim->range, kPhMargin);
  if (metals()) {
    if (range.high) range.high = std::min(*range.high, kPhWithMetals);
    wanted.high = range.high;
    wanted.low = range.low;
  }
  add_goal({"ph", GoalKind::ph, {}, *now, {}}, range, wanted, kOutside);
}

// Dissolved metals come out as stains where pH rises: it is held low until they are gone.
bool DoseGoals::metals() const {
  return std::any_of(std::begin(kMetals), std::end(kMetals), [&](const char* metal) {
    const Known* k = d_.s.usable(metal);
    const auto aim = d_.aim(metal);
    return k && aim && standing(k->measured(), aim->range) == Standing::above;
  });
}

void DoseGoals::saturation_goal() {
  const auto aim = d_.aim("si_calcite");
  const auto now = ph_and_saturation(d_.totals);
  if (!aim || !now) return;
  add_goal({"si_calcite", GoalKind::saturation, {}, now->second, {}}, shrunk(aim->range, 0.04),
           shrunk(aim->range, 0.1), kOutsideSaturation);
}

// A reading that is a total. What no dose takes away keeps its upper limit only while below it.
void DoseGoals::linear(const char* analyte, double margin, double relative_error) {
  const auto aim = d_.aim(analyte);
  if (!aim || !d_.s.fresh(analyte)) return;
  double now = d_.amount(analyte);
  std::vector<std::pair<double Totals::*, double>> terms = {{total_of(analyte), to_mg_l(analyte)}};
  if (chlorine_.exactly && std::string_view(analyte) == "total_alkalinity") {
    terms.emplace_back(&Totals::chlorine, -to_mg_l(analyte));
    now -= (d_.totals.chlorine - residual()) * to_mg_l(analyte);
  }
  Target range = shrunk(aim->range, margin), wanted = middle(aim->range, aim->aim);
  const bool falls = std::string_view(analyte) == "total_alkalinity";
  // Acid on young plaster does more harm than alkalinity a little high.
  const Known* read = d_.s.fresh(analyte);
  if (falls && plaster_cures(d_.s) && range.high && now < *range.high + kSureSds * read->sd)
    range.high = wanted.high = *range.high + 2 * kSureSds * read->sd;
  if (!stabilizer_ && std::string_view(analyte) == "cyanuric_acid") range.low = wanted.low = std::nullopt;
  if (!falls && range.high && now > *range.high) range.high = wanted.high = now;
  if (wanted.high) wanted.high = std::max(*wanted.high, range.low.value_or(*wanted.high));
  if (relative_error > 0 && range.high && range.low)
    wanted.high =
        std::max(*range.low, *range.high - kDeviates * relative_error * std::max(0.0, aim->aim - now));
  add_goal({analyte, GoalKind::linear, std::move(terms), now, {}}, range, wanted, kOutside);
}

void DoseGoals::chlorine_goal(double sd_volume) {
  const Known* read = d_.s.fresh("free_chlorine");
  const auto aim = chlorine_aim();
  if (!d_.s.chlorine() || !read || !aim || !chlorine_.dosed) return;
  const double now = d_.amount("free_chlorine");
  const DoseGoal g{
      "free_chlorine", GoalKind::linear, {{&Totals::chlorine, to_mg_l("free_chlorine")}}, now, {}};
  if (chlorine_.exactly) {
    const Target exact{*chlorine_.exactly, *chlorine_.exactly};
    return add_goal(g, exact, exact, 10 * kOutside);
  }
  if (aim->range.high && now > *aim->range.high) return;
  const double high = std::min(aim->range.high.value_or(4), re_entry_mg_l(d_.s));
  clamped_ = aim->row->low_per_cyanuric &&
             *aim->row->low_per_cyanuric * d_.amount("cyanuric_acid") > aim->range.low.value_or(0) + 1e-9;
  const double low = (clamped_ ? aim->range.low : aim->row->low).value_or(0);
  const double dose = std::max(0.0, std::max(aim->aim, aim->range.low.value_or(0)) - now);
  const double sure = high - kDeviates * std::hypot(read->sd, sd_volume * dose);
  add_goal(g, {low + 0.03, high - 0.02}, {std::min((low + aim->aim) / 2, sure), std::max(low, sure)},
           kOutside);
  all.back().row.soft_weight = kRisky;
  if (!aim->row->low_per_cyanuric || clamped_) return;
  // Free chlorine at least a share of cyanuric acid, as both will be.
  const double share = *aim->row->low_per_cyanuric;
  DoseGoal ratio{"free_chlorine",
                 GoalKind::linear,
                 {{&Totals::chlorine, to_mg_l("free_chlorine")},
                  {&Totals::cyanurate, -share * to_mg_l("cyanuric_acid")}},
                 now - share * d_.amount("cyanuric_acid"),
                 {}};
  add_goal(std::move(ratio), {0.02, std::nullopt}, {}, kOutside);
}

// What a shock leaves once it is used up, mol/kgw.
double DoseGoals::residual() const {
  const auto aim = d_.aim("free_chlorine");
  return (aim ? aim->aim : 3) / to_mg_l("free_chlorine");
}
Totals DoseGoals::judged(const Totals& t) const {
  return chlorine_.exactly ? spend_chlorine(t, std::max(0.0, t.chlorine - residual())) : t;
}

// For the water as it will be, where stabilizer is to be raised.
std::optional<Aim> DoseGoals::chlorine_aim() const {
  TargetCase later = d_.s.where;
  later.cyanuric_acid = d_.amount("cyanuric_acid");
  if (const auto cyanuric = d_.aim("cyanuric_acid"); stabilizer_ && cyanuric && d_.s.fresh("cyanuric_acid"))
    later.cyanuric_acid = std::max(*later.cyanuric_acid, cyanuric->range.low.value_or(0));
  return d_.targets.find("free_chlorine", later);
}

bool DoseGoals::met() const {
  const bool untouched = std::none_of(d_.steps.begin(), d_.steps.end(), [](const DraftStep& s) {
    return !s.change.chemical.empty() || s.change.drained > 0;
  });
  return std::all_of(all.begin(), all.end(), [&](const DoseGoal& g) {
    // Against the target itself, not what is shrunk for the solver's sake.
    Target t = g.row.range;
    const bool ratio = g.analyte == "free_chlorine" && g.terms.size() == 2;
    if (!ratio) {
      const auto aim = g.analyte == "free_chlorine" ? chlorine_aim() : d_.aim(g.analyte);
      if (aim && !(chlorine_.exactly && g.analyte == "free_chlorine")) {
        if (t.low) t.low = g.analyte == "free_chlorine" && !clamped_ ? aim->row->low : aim->range.low;
        t.high = aim->range.high;
      }
    }
    if (ratio) t = {0.0, std::nullopt};
    const Standing stands = standing({g.start, sd_of(g)}, t);
    if (untouched && !ratio && g.analyte != "free_chlorine" && g.analyte != "total_bromine" &&
        stands != Standing::below && stands != Standing::above)
      return true;
    return (!t.low || g.start >= *t.low - 1e-9) && (!g.falls() || !t.high || g.start <= *t.high + 1e-9);
  });
}

double DoseGoals::sd_of(const DoseGoal& g) const {
  if (g.kind == GoalKind::saturation) return saturation_of(d_.s).value_or(Measured{}).sd;
  const Known* read = d_.s.fresh(g.analyte);
  return read ? read->sd : 0;
}

bool DoseGoals::wants(std::string_view analyte) const {
  return std::any_of(all.begin(), all.end(), [&](const DoseGoal& g) { return g.analyte == analyte; });
}

std::optional<std::pair<double, double>> DoseGoals::ph_and_saturation(const Totals& totals) const {
  const auto w = solve(judged(totals), d_.s.bottle_temperature);
  if (!w) return std::nullopt;
  const auto warm = at_temperature(*w, d_.s.vessel_temperature);
  return std::pair(w->ph, warm ? warm->si_calcite().value_or(0) : 0);
}

}  // namespace brimline
