// SPDX-License-Identifier: GPL-3.0-or-later
#include "analysis/treatment/draft.h"

#include <algorithm>
#include <cmath>

#include "analysis/water/doses.h"

namespace brimline {

namespace {

// One domestic turnover, 6-8 h (Australian government Fact Sheet 605, 2013); a spa's half hour after
// a US state chemistry sheet.
// A dose the caps leave less of than this is not worth a trip to the pool.
constexpr double kLeastShare = 0.03;
constexpr double kPoolTurnover = 8, kSpaTurnover = 0.5;
constexpr double kPhHarmLow = 7.0, kPhHarmHigh = 8.2;  // beyond these is harm, of the contract
constexpr double kDeviates = 2.4;                      // 1 % of a normal error lies beyond
// Bromine tablets weigh 15 to 20 g (common practice, no source): less is poured as grains.
constexpr double kTabletGrams = 15;

// Largest x in [0, most] for which `fits`, where `fits` holds up to some x only.
template <class Fits>
double largest(double most, Fits fits) {
  if (fits(most)) return most;
  double low = 0, high = most;
  for (int i = 0; i < 50; ++i) {
    const double middle = (low + high) / 2;
    (fits(middle) ? low : high) = middle;
  }
  return low;
}

Totals linear_totals(const Situation& s) {
  const auto value = [&](const char* analyte) {
    const Known* k = s.usable(analyte);
    return k ? k->value * 1e-3 : 0.0;
  };
  Totals t;
  t.alkalinity = value("total_alkalinity") / weight::kAlkalinity;
  t.calcium = value("calcium_hardness") / weight::kCaCO3;
  t.cyanurate = value("cyanuric_acid") / weight::kCyanuricAcid;
  t.chlorine = value("free_chlorine") / weight::kChlorine;
  t.bromine = value("total_bromine") / weight::kBromine;
  t.borate = value("borate") / weight::kBoron;
  return t;
}

}  // namespace

Totals changed(const Totals& before, const Change& c, double kilograms, const Totals* fill) {
  Totals t = before;
  if (c.drained > 0 && fill) t = mix(t, *fill, 1 - c.drained);
  if (!c.chemical.empty() && c.mol > 0)
    if (const auto dosed = brimline::add(t, c.chemical, c.mol / kilograms)) t = *dosed;
  t.carbon = std::max(0.0, t.carbon - c.carbon_lost);
  return t;
}

std::optional<double> in_fill(const Situation& s, std::string_view analyte) {
  if (const auto f = s.fill_known.find(analyte); f != s.fill_known.end() && f->second.usable)
    return f->second.value;
  if (analyte == "cyanuric_acid" || analyte == "biguanide" || analyte == "peroxide") return 0.0;
  if (!s.fill) return std::nullopt;
  if (analyte == "tds") return s.fill->dissolved_solids();
  if (analyte == "salt") return s.fill->salt();
  return std::nullopt;
}

Draft::Draft(const Situation& situation, const TargetSet& set, std::span<const Product> shelf)
    : s(situation), targets(set), modelled(situation.water.has_value()) {
  totals = s.water ? s.water->totals : linear_totals(s);
  for (const auto& [analyte, k] : s.known)
    if (k.usable) others.emplace(analyte, k.value);
  supplies_ = supplies_at_home(s, shelf);
  for (const Product& p : shelf) supplies_.push_back({p, false, {}, {}});
  const Known* ph = s.usable("ph");
  const double unsure = kDeviates * (ph ? ph->sd : 0.1);
  safe_low_ = kPhHarmLow + unsure;
  safe_high_ = kPhHarmHigh - unsure;
}

double Draft::kilograms() const {
  return s.vessel.volume ? s.vessel.volume->cubic_metres() * 1000 : 0;
}

bool Draft::may_dose() const {
  return s.vessel.volume && !ends && steps.size() < most_steps;
}

std::optional<Aim> Draft::aim(std::string_view analyte) const {
  TargetCase now = s.where;
  if (others.contains("cyanuric_acid")) now.cyanuric_acid = amount("cyanuric_acid");
  return targets.find(analyte, now);
}

bool Draft::shocked() const {
  return std::any_of(steps.begin(), steps.end(), [](const DraftStep& x) {
    return x.note == "breakpoint" || x.note == "shock_algae" || x.note == "meet_demand";
  });
}

Totals Draft::used_up() const {
  const auto used_to = aim("free_chlorine");
  if (!shocked() || !used_to) return totals;
  return spend_chlorine(totals, std::max(0.0, totals.chlorine - used_to->aim * 1e-3 / weight::kChlorine));
}

std::optional<Water> Draft::water() const {
  if (!modelled) return std::nullopt;
  const auto w = solve(totals, s.bottle_temperature);
  return w ? std::optional(*w) : std::nullopt;
}

std::optional<double> Draft::ph_with(const Totals& t) const {
  if (!modelled) return std::nullopt;
  const auto w = solve(t, s.bottle_temperature);
  return w ? std::optional(w->ph) : std::nullopt;
}

double Draft::amount(std::string_view analyte) const {
  const Totals& t = totals;
  if (analyte == "total_alkalinity") return t.alkalinity * 1e3 * weight::kAlkalinity;
  if (analyte == "calcium_hardness") return t.calcium * 1e3 * weight::kCaCO3;
  if (analyte == "cyanuric_acid") return t.cyanurate * 1e3 * weight::kCyanuricAcid;
  if (analyte == "free_chlorine") return t.chlorine * 1e3 * weight::kChlorine;
  if (analyte == "total_bromine") return t.bromine * 1e3 * weight::kBromine;
  if (analyte == "borate") return t.borate * 1e3 * weight::kBoron;
  if (analyte == "ph") return ph_with(totals).value_or(0);
  const auto found = others.find(analyte);
  return found == others.end() ? 0 : found->second;
}

double Draft::turnover_h() const {
  return s.vessel.turnover_h.value_or(s.is_spa() ? kSpaTurnover : kPoolTurnover);
}

double Draft::wait_of(const Substance& sub) const {
  const double wait = s.is_spa() ? sub.wait_spa_h : sub.wait_h;
  return sub.waits_turnover ? std::max(wait, turnover_h()) : wait;
}

// Of this vessel, and meeting no chemical of the plan it must never meet.
bool Draft::may_pour(const Product& p) const {
  const Substance* sub = find_substance(p.substance);
  if (!sub || sub->barred_in(s.vessel)) return false;
  const Substance* tablets = find_substance("trichlor");
  const Conflict* old =
      s.has(Sign::tablets_in_use) && s.chlorine() ? conflict_between(*sub, *tablets) : nullptr;
  if (old && !old->gap_h && sub->id != "sodium_hypochlorite") return false;
  return std::all_of(steps.begin(), steps.end(), [&](const DraftStep& d) {
    const Substance* other = d.step.chemical ? find_substance(*d.step.chemical) : nullptr;
    const Conflict* c = other ? conflict_between(*sub, *other) : nullptr;
    return !c || c->gap_h;
  });
}

std::vector<int> Draft::best_supplies(std::string_view substance) const {
  std::vector<int> out;
  int best = -1;
  const auto cost = [](const Supply& x) {
    return moles_per_unit(x.product) ? x.price_a_mol() : x.product.price;
  };
  for (int i = 0; i < static_cast<int>(supplies_.size()); ++i) {
    const Supply& x = supplies_[i];
    if (x.product.substance != substance || !may_pour(x.product)) continue;
    if (x.at_home) {
      if (x.stock_mol.value_or(1) > 0 && x.stock_label.value_or(1) > 0) out.push_back(i);
    } else if (best < 0 || cost(x) < cost(supplies_[best])) {
      best = i;
    }
  }
  if (best >= 0) out.push_back(best);
  return out;
}

std::optional<int> Draft::choose(std::initializer_list<const char*> ids, double mol) const {
  std::optional<int> short_of;
  for (const char* id : ids)
    for (const int i : best_supplies(id)) {
      if (!supplies_[i].at_home || supplies_[i].stock_mol.value_or(mol) >= mol) return i;
      if (!short_of) short_of = i;
    }
  return short_of;
}

double Draft::capped(const Substance& sub, double wanted) const {
  const auto row = dose_vector(sub.id);
  if (!row || wanted <= 0) return 0;
  const StepCap& cap = sub.cap;
  double most = wanted;
  const auto limit = [&](const std::optional<double>& reading, double grams, double per_mole) {
    if (reading && per_mole > 0) most = std::min(most, *reading * 1e-3 / grams / per_mole);
  };
  if (cap.mmol_per_litre) most = std::min(most, *cap.mmol_per_litre * 1e-3);
  limit(cap.total_alkalinity, weight::kAlkalinity, row->alkalinity);
  limit(cap.calcium_hardness, weight::kCaCO3, row->calcium);
  limit(cap.free_chlorine, weight::kChlorine, row->chlorine);
  if (cap.share) most = std::min(most, *cap.share * wanted);
  const auto ph = ph_with(totals);
  if (!ph) return cap.ph_min || cap.ph_max ? 0 : most;
  const auto within = [&](double x) {
    const auto t = brimline::add(totals, sub.id, x);
    const auto p = t ? ph_with(*t) : std::nullopt;
    if (!p || (cap.ph_min && *p < *cap.ph_min) || (cap.ph_max && *p > *cap.ph_max)) return false;
    // Away from what could do harm, but for doses that move away from there.
    return (*p >= safe_low_ || *p >= *ph - 1e-9) && (*p <= safe_high_ || *p <= *ph + 1e-9);
  };
  return largest(most, within);
}

double Draft::earliest(const Substance& sub) const {
  double at = clock_h;
  for (const DraftStep& d : steps) {
    const Substance* other = d.step.chemical ? find_substance(*d.step.chemical) : nullptr;
    // What is capped by its effect is capped a day, not only a step.
    if (other == &sub && (sub.cap.total_alkalinity || sub.cap.calcium_hardness))
      at = std::max(at, d.step.start_h + 24);
    const Conflict* c = other ? conflict_between(sub, *other) : nullptr;
    if (!c || !c->gap_h) continue;
    const double gap =
        std::max(s.is_spa() ? *c->gap_spa_h : *c->gap_h, std::max(turnover_h(), s.is_spa() ? 1.0 : 4.0));
    at = std::max(at, d.step.start_h + (d.step.portions - 1) * d.step.portion_gap_h + gap);
  }
  return at;
}

bool Draft::waits_for_dusk(const Substance& sub) const {
  return sub.is("chlorine") && s.vessel.place != Place::indoor && kind_of(s.vessel) == VesselKind::pool;
}

int Draft::grains_instead(int supply, double mol) const {
  const Product& product = supplies_[supply].product;
  const auto amount = product.tablets ? amount_of(product, mol) : std::nullopt;
  if (!amount || amount->unit != "g" || amount->value >= kTabletGrams) return supply;
  for (int i = 0; i < static_cast<int>(supplies_.size()); ++i) {
    const Supply& x = supplies_[i];
    if (x.product.substance == product.substance && !x.product.tablets && may_pour(x.product) &&
        x.stock_mol.value_or(mol) >= mol)
      return i;
  }
  return supply;
}

double Draft::add(int supply, double mol_per_kgw, const AddOptions& o) {
  supply = grains_instead(supply, mol_per_kgw * kilograms());
  Supply& from = supplies_[supply];
  const Substance* sub = find_substance(from.product.substance);
  if (!sub || !may_dose() || mol_per_kgw <= 0) return 0;
  double dose = o.whole ? mol_per_kgw : capped(*sub, mol_per_kgw);
  if (dose < kLeastShare * mol_per_kgw) return 0;
  if (const auto scale = scales.find(o.note); scale != scales.end()) dose *= scale->second;
  const double mol = dose * kilograms();
  const auto amount = amount_of(from.product, mol);
  if (!amount || mol <= 0) return 0;
  if (from.stock_mol) *from.stock_mol = std::max(0.0, *from.stock_mol - mol);
  if (!from.at_home) to_buy += mol * from.price_a_mol();
  Step step;
  step.active_mol = mol;
  step.amount = amount;
  finish_dose(supply, *sub, std::move(step), Change{sub->id, mol, 0, 0}, o);
  return dose;
}

bool Draft::add_by_label(int supply, const AddOptions& o, std::optional<double> label_dose) {
  Product product = supplies_[supply].product;
  const Substance* sub = find_substance(product.substance);
  if (!sub || !may_dose()) return false;
  if (label_dose) product.label_dose = label_dose;
  Step step;
  step.amount = label_amount(product, *s.vessel.volume);
  if (!step.amount) return false;
  const bool small = step.amount->unit == "mL" || step.amount->unit == "g";
  const double base = small ? step.amount->value / 1000 : step.amount->value;
  if (supplies_[supply].stock_label) *supplies_[supply].stock_label -= base;
  if (!supplies_[supply].at_home) to_buy += base * product.price;
  finish_dose(supply, *sub, std::move(step), {}, o);
  steps.back().label_dose = label_dose;
  return true;
}

void Draft::finish_dose(int supply, const Substance& sub, Step step, Change change, const AddOptions& o) {
  const Supply& from = supplies_[supply];
  step.action = Action::add;
  step.chemical = sub.id;
  step.from_home = from.at_home;
  if (!from.product.id.empty()) step.product = from.product.id;
  step.portions = o.whole ? 1 : sub.portions;
  step.portion_gap_h = step.portions > 1 ? (s.is_spa() ? 1 : sub.portion_gap_h) : 0;
  const Timetable table(s.home_at);
  const double at = earliest(sub);
  step.start_h = waits_for_dusk(sub) ? table.dusk(at) : table.start(at, step.portions, step.portion_gap_h);
  step.wait_h = wait_of(sub);
  step.for_findings = o.for_findings;
  step.cautions = sub.cautions;
  step.cautions.insert(step.cautions.end(), from.product.cautions.begin(), from.product.cautions.end());
  if (o.whole && s.vessel.place == Place::indoor) step.cautions.push_back("cover_off");
  if (o.whole && s.vessel.place != Place::indoor && kind_of(s.vessel) != VesselKind::pool)
    step.cautions.push_back("vapour");
  // Grains spoil what is soft or painted; plaster, tile and acrylic not.
  const bool hard = s.vessel.surface == Surface::plaster || s.vessel.surface == Surface::tile ||
                    s.vessel.surface == Surface::acrylic;
  if (hard) std::erase(step.cautions, "grains");
  const double chloride = totals.chloride;
  const auto before = water();
  totals = changed(totals, change, kilograms(), nullptr);
  if (const auto tds = others.find("tds"); tds != others.end())
    if (const auto now = water(); before && now)
      tds->second += now->dissolved_solids() - before->dissolved_solids();
  if (const auto salt = others.find("salt"); salt != others.end())  // all chloride, read as NaCl
    salt->second += (totals.chloride - chloride) * 1e3 * weight::kSalt;
  step.order = static_cast<int>(steps.size()) + 1;
  step.after = after();
  clock_h = step.start_h + (step.portions - 1) * step.portion_gap_h + step.wait_h;
  steps.push_back({std::move(step),
                   std::move(change),
                   o.note,
                   from.product.name,
                   sub.swim_wait_h,
                   supply,
                   o.whole,
                   {},
                   from.product.tablets,
                   from.product.liquid ? std::nullopt : from.product.density,
                   {},
                   0});
}

void Draft::act(Action action, std::string note, std::vector<std::string> for_findings, double hours,
                Change change, std::vector<std::string> cautions) {
  if (steps.size() >= most_steps && action != Action::retest) return;
  Step step;
  step.action = action;
  step.order = static_cast<int>(steps.size()) + 1;
  const Timetable table(s.home_at);
  step.start_h = action == Action::retest ? table.shop_hours(clock_h) : table.start(clock_h, 1, 0);
  step.wait_h = hours;
  step.for_findings = std::move(for_findings);
  step.cautions = std::move(cautions);
  if (change.drained > 0) {
    step.fraction = change.drained;
    step.cautions = {"power_off", "drain_discharge"};
    // An acrylic tub that stands on the ground neither floats nor has a liner.
    if (!s.is_spa() || s.vessel.in_ground.value_or(false))
      step.cautions.insert(step.cautions.begin() + 1, "drain_lift");
    if (s.fill) {
      for (auto& [analyte, value] : others)
        if (const auto brought = in_fill(s, analyte)) value += (*brought - value) * change.drained;
      totals = changed(totals, change, kilograms(), &s.fill->totals);
    }
  } else {
    totals = changed(totals, change, kilograms(), nullptr);
  }
  if ((change.drained > 0 && s.fill) || change.carbon_lost > 0) step.after = after();
  clock_h = step.start_h + hours;
  steps.push_back(
      {std::move(step), std::move(change), std::move(note), "", 0, -1, false, {}, false, {}, {}, 0});
}

After Draft::after() const {
  After out;
  static constexpr std::string_view linear[] = {"total_alkalinity", "calcium_hardness", "cyanuric_acid",
                                                "free_chlorine",    "total_bromine",    "borate"};
  for (const std::string_view analyte : linear)
    if (others.contains(analyte)) out.readings.emplace(analyte, amount(analyte));
  for (const char* analyte : {"salt", "tds"})
    if (const auto found = others.find(analyte); found != others.end())
      out.readings.emplace(analyte, found->second);
  const auto w = water();
  if (!w) return out;
  out.readings.emplace("ph", w->ph);
  const auto warm = at_temperature(*w, s.vessel_temperature);
  if (!warm) return out;
  out.vessel.emplace("ph", warm->ph);
  if (others.contains("calcium_hardness"))
    if (const auto si = warm->si_calcite()) out.vessel.emplace("si_calcite", *si);
  if (others.contains("free_chlorine")) out.vessel.emplace("hocl", warm->hocl());
  return out;
}

}  // namespace brimline
