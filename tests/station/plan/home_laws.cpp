// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <cmath>

#include "analysis/findings/edge.h"
#include "analysis/treatment/substance.h"
#include "analysis/water/doses.h"
#include "tests/station/plan/homes.h"

namespace brimline {

namespace {

std::optional<double> reading_of(const Visit& v, std::string_view analyte) {
  for (const Reading& r : v.bottle.readings)
    if (r.analyte == analyte && !r.clipped) return r.value;
  return std::nullopt;
}

std::optional<Water> water_of(const std::vector<Reading>& readings, Temperature at, bool tap = false) {
  WaterReadings r;
  r.temperature = at;
  const auto get = [&](std::string_view analyte) -> std::optional<double> {
    for (const Reading& one : readings)
      if (one.analyte == analyte) return one.value;
    return std::nullopt;
  };
  if (!get("ph") || !get("total_alkalinity")) return std::nullopt;
  r.ph = *get("ph");
  r.total_alkalinity = *get("total_alkalinity");
  r.calcium_hardness = get("calcium_hardness");
  r.cyanuric_acid = get("cyanuric_acid");
  r.free_chlorine = get("free_chlorine");
  r.total_bromine = get("total_bromine");
  r.bromide = get("bromide");
  r.salt = get("salt");
  r.tds = get("tds");
  if (tap && !r.salt && !r.tds) r.background_nacl = 0;
  auto w = water_from_readings(r);
  if (!w && w.error() == Refusal::negative_sodium_chloride) {
    r.salt.reset();
    r.tds.reset();
    w = water_from_readings(r);
  }
  return w ? std::optional(*w) : std::nullopt;
}

std::optional<Water> start_of(const Visit& v) {
  return water_of(v.bottle.readings, v.bottle.sample_temperature.value_or(Temperature::celsius(25)));
}

bool shock_stands(const Plan& plan) {
  return std::any_of(plan.findings.begin(), plan.findings.end(), [](const Finding& f) {
    return f.id == "combined_chlorine_high" || f.id == "green_water" || f.id == "slimy_walls" ||
           f.id == "chlorine_demand";
  });
}

// Stabilizer waits until chlorine holds, and for the spring where the pool is closed.
bool stabilizer_may_rise(const Visit& v, const Plan& plan) {
  return v.bottle.occasion != Occasion::closing && !shock_stands(plan) &&
         reading_of(v, "free_chlorine").value_or(0) >= 0.5;
}

TargetCase case_with(const Visit& v, double cyanuric) {
  return case_of(v.vessel, cyanuric, reading_of(v, "ph"));
}

}  // namespace

End end_of(const Visit& v, const Plan& plan) {
  End out;
  for (const Reading& r : v.bottle.readings)
    if (!r.clipped) out.readings[r.analyte] = r.value;
  if (const auto w = start_of(v)) {
    const auto warm = at_temperature(*w, v.vessel.water_temperature.value_or(w->temperature));
    if (warm && out.readings.contains("calcium_hardness")) out.si = warm->si_calcite();
  }
  for (const Step& s : plan.steps) {
    if (!s.after) continue;
    for (const auto& [analyte, value] : s.after->readings) out.readings[analyte] = value;
    if (s.after->vessel.contains("si_calcite")) out.si = s.after->vessel.at("si_calcite");
  }
  return out;
}

namespace {

// A shock or demand dose is used up before the water is judged: back to what the targets aim at, and with it
// goes the alkalinity that hypochlorite brought.
void use_up(const Visit& v, const TargetSet& targets, const TargetCase& now, End& end) {
  std::vector<Reading> readings;
  for (const auto& [analyte, value] : end.readings)
    readings.push_back(Household::reading(analyte.c_str(), value, 0));
  const auto w = water_of(readings, v.bottle.sample_temperature.value_or(Temperature::celsius(25)));
  const auto aim = targets.find("free_chlorine", now);
  if (!w || !aim || w->free_chlorine() <= aim->aim) return;
  const Totals t = spend_chlorine(w->totals, (w->free_chlorine() - aim->aim) * 1e-3 / weight::kChlorine);
  const auto then = solve(t, w->temperature);
  const auto warm = then ? at_temperature(*then, v.vessel.water_temperature.value_or(w->temperature)) : then;
  if (!warm) return;
  end.readings["ph"] = then->ph;
  end.readings["total_alkalinity"] = then->total_alkalinity();
  if (end.si) end.si = warm->si_calcite();
}

}  // namespace

namespace {

bool doses(const Plan& plan) {
  return std::any_of(plan.steps.begin(), plan.steps.end(),
                     [](const Step& s) { return s.active_mol.has_value(); });
}

// Outside by no more than its error, and nothing dosed on it: the sheet says to read it again. Or by less
// than anybody would notice.
bool left_at_edge(const Plan& plan, const std::string& what) {
  return !doses(plan) && std::any_of(plan.findings.begin(), plan.findings.end(),
                                     [&](const Finding& f) { return f.id == what + "_edge"; });
}

bool unmoved(const Visit& v, std::string_view analyte, double end, const Target& range) {
  for (const Reading& r : v.bottle.readings)
    if (r.analyte == analyte && std::abs(r.value - end) < 1e-6)
      return standing(measured(r), range) == Standing::inside;
  return false;
}

}  // namespace

std::vector<AnalyteId> outside(const Visit& v, const Plan& plan, const TargetSet& targets) {
  End end = end_of(v, plan);
  const double cyanuric = end.readings.contains("cyanuric_acid") ? end.readings["cyanuric_acid"] : 0;
  const TargetCase now = case_with(v, cyanuric);
  const bool poured = std::any_of(plan.steps.begin(), plan.steps.end(), [](const Step& s) {
    return s.chemical && find_substance(*s.chemical)->is("chlorine");
  });
  const bool used_up = shock_stands(plan) && poured;
  if (used_up) use_up(v, targets, now, end);
  std::vector<AnalyteId> out;
  for (const char* analyte : {"ph", "total_alkalinity", "calcium_hardness", "cyanuric_acid", "free_chlorine",
                              "total_bromine", "salt", "tds"}) {
    const auto aim = targets.find(analyte, now);
    if (!aim || !end.readings.contains(analyte)) continue;
    if (std::string_view(analyte) == "free_chlorine" && shock_stands(plan)) continue;
    const double value = end.readings[analyte];
    if (left_at_edge(plan, analyte) || unmoved(v, analyte, value, aim->range)) continue;
    if ((aim->range.low && value < *aim->range.low - 1e-6) ||
        (aim->range.high && value > *aim->range.high + 1e-6))
      out.emplace_back(analyte);
  }
  const auto si = targets.find("si_calcite", now);
  // A water put together again from its readings has other salts than the plan's own: 0.03 of the index.
  const double off = used_up ? 0.03 : 1e-6;
  if (si && end.si && !left_at_edge(plan, "si") &&
      (*end.si < *si->range.low - off || *end.si > *si->range.high + off))
    out.emplace_back("si_calcite");
  return out;
}

bool reachable(const Visit& v, const Plan& plan, const TargetSet& targets) {
  const auto begin = start_of(v);
  if (!begin) return false;
  for (const Finding& f : plan.findings)
    if (f.id == "sanitizer_not_read" || f.id == "sanitizer_doubtful" || f.id == "reading_repeat")
      return false;  // read again before any dose
  Totals t = begin->totals;
  double tds = reading_of(v, "tds").value_or(0);
  for (const Step& s : plan.steps) {
    if (s.action != Action::drain_refill) continue;
    if (!v.bottle.fill_water) return false;
    const auto tap = water_of(*v.bottle.fill_water, begin->temperature, true);
    if (!tap) return false;
    t = mix(t, tap->totals, 1 - s.fraction.value_or(0));
    tds += (tap->dissolved_solids() - tds) * s.fraction.value_or(0);
  }
  const auto now = solve(t, begin->temperature);
  if (!now) return false;
  const TargetCase c = case_with(v, now->cyanuric_acid());
  const auto high = [&](const char* analyte) -> std::optional<double> {
    const auto aim = targets.find(analyte, c);
    return aim && reading_of(v, analyte) ? aim->range.high : std::nullopt;
  };
  const auto cyanuric = targets.find("cyanuric_acid", c);
  const double low_cyanuric =
      cyanuric && reading_of(v, "cyanuric_acid") ? cyanuric->range.low.value_or(0) : 0;
  const auto above = [&](const char* analyte, double value) {
    const auto limit = high(analyte);
    return limit && value > *limit;
  };
  if (above("calcium_hardness", now->calcium_hardness()) || above("cyanuric_acid", now->cyanuric_acid()) ||
      (now->cyanuric_acid() < low_cyanuric && !stabilizer_may_rise(v, plan)) ||
      above("total_bromine", now->total_bromine()) || above("salt", now->salt()) || above("tds", tds))
    return false;
  if (!shock_stands(plan) && above("free_chlorine", now->free_chlorine())) return false;
  // Carbon: acid, bicarbonate and soda ash reach every alkalinity and carbon from here up.
  const auto alkalinity = targets.find("total_alkalinity", c), ph = targets.find("ph", c);
  WaterReadings corner;
  corner.temperature = begin->temperature;
  corner.ph = *ph->range.low;
  corner.total_alkalinity = *alkalinity->range.high;
  corner.calcium_hardness = now->calcium_hardness();
  corner.cyanuric_acid = now->cyanuric_acid();
  corner.free_chlorine = now->free_chlorine();
  corner.total_bromine = now->total_bromine();
  const auto most = water_from_readings(corner);
  if (!most || t.carbon > most->totals.carbon) return false;
  // Saturation: at the corner that lays down least, with what calcium there is.
  const auto si = targets.find("si_calcite", c);
  if (!si || !reading_of(v, "calcium_hardness")) return true;
  const auto hardness = targets.find("calcium_hardness", c);
  const auto index = [&](double p, double a, double h) {
    WaterReadings r = corner;
    r.ph = p;
    r.total_alkalinity = a;
    r.calcium_hardness = h;
    const auto w = water_from_readings(r);
    const auto warm = w ? at_temperature(*w, v.vessel.water_temperature.value_or(begin->temperature)) : w;
    return warm ? warm->si_calcite().value_or(0) : 0;
  };
  const double least =
      index(*ph->range.low, *alkalinity->range.low, std::max(now->calcium_hardness(), *hardness->range.low));
  const double largest = index(*ph->range.high, *alkalinity->range.high, *hardness->range.high);
  return least <= *si->range.high && largest >= *si->range.low;
}

namespace {

class Judge {
 public:
  Judge(const Visit& v, const Plan& plan, const Shelf& shelf, const TargetSet& targets)
      : v_(v), plan_(plan), shelf_(shelf), targets_(targets) {}

  std::vector<std::string> all() {
    after_is_what_dose_says();
    clock();
    conflicts();
    order();
    caps();
    forbidden();
    stock();
    nothing_to_do();
    if (plan_.proof && plan_.proof->harm > 0.01) broken("harm " + std::to_string(plan_.proof->harm));
    return out_;
  }

 private:
  void broken(std::string what) { out_.push_back(std::move(what)); }
  bool spa() const {
    return kind_of(v_.vessel) == VesselKind::spa || kind_of(v_.vessel) == VesselKind::swim_spa;
  }
  static double end(const Step& s) { return s.start_h + (s.portions - 1) * s.portion_gap_h; }

  // What the water model says of the same doses, put together here without the planner.
  void after_is_what_dose_says() {
    const auto begin = start_of(v_);
    if (!begin) return;
    const auto tap =
        v_.bottle.fill_water ? water_of(*v_.bottle.fill_water, begin->temperature, true) : std::nullopt;
    Totals t = begin->totals;
    const double kilograms = v_.vessel.volume ? v_.vessel.volume->cubic_metres() * 1000 : 0;
    for (const Step& s : plan_.steps) {
      if (s.action == Action::aerate) return;  // how much leaves is not in the plan
      if (s.action == Action::drain_refill) {
        if (!tap) return;
        t = mix(t, tap->totals, 1 - *s.fraction);
      }
      if (s.active_mol) t = add(t, *s.chemical, *s.active_mol / kilograms).value();
      if (!s.after || !s.after->readings.contains("ph")) continue;
      const auto now = solve(t, begin->temperature);
      if (!now) return broken("no water after step " + std::to_string(s.order));
      if (std::abs(s.after->readings.at("ph") - now->ph) > 0.002 ||
          std::abs(s.after->readings.at("total_alkalinity") - now->total_alkalinity()) > 0.02)
        broken("after of step " + std::to_string(s.order));
    }
  }

  void clock() {
    const double home = static_cast<double>(v_.home_at->local().time_since_epoch().count()) / 3600.0;
    double before = 0;
    int order = 0;
    for (const Step& s : plan_.steps) {
      const std::string at = " at step " + std::to_string(s.order);
      if (s.order != ++order) broken("order" + at);
      if (s.start_h < before - 1e-6) broken("starts before the step before has waited" + at);
      before = end(s) + s.wait_h;
      for (int i = 0; i < s.portions; ++i) {
        const double hour = std::fmod(home + s.start_h + i * s.portion_gap_h, 24.0);
        if (hour < 7 - 1e-3 || hour > 22 + 1e-3) broken("in the night" + at);
        const bool sun = v_.vessel.place == Place::outdoor && kind_of(v_.vessel) == VesselKind::pool &&
                         s.chemical && find_substance(*s.chemical)->is("chlorine");
        if (sun && hour < 20 - 1e-3) broken("chlorine in the sun" + at);
      }
    }
  }

  void conflicts() {
    for (const Step& a : plan_.steps)
      for (const Step& b : plan_.steps) {
        if (!a.chemical || !b.chemical || a.order >= b.order) continue;
        const Conflict* c = conflict_between(*find_substance(*a.chemical), *find_substance(*b.chemical));
        if (!c) continue;
        if (!c->gap_h)
          broken(*a.chemical + " with " + *b.chemical);
        else if (b.start_h + 1e-6 < end(a) + (spa() ? *c->gap_spa_h : *c->gap_h))
          broken(*a.chemical + " too soon before " + *b.chemical);
      }
  }

  int first(const char* family) const {
    for (const Step& s : plan_.steps)
      if (s.chemical && find_substance(*s.chemical)->is(family)) return s.order;
    return 1000;
  }

  void order() {
    const int binder = first("phosphonate");
    if (binder < 1000 && (first("chlorine") < binder || first("ph_up") < binder))
      broken("metals are not bound first");
    int drain = 0;
    for (const Step& s : plan_.steps) {
      if (s.action == Action::drain_refill) drain = s.order;
      if (s.action == Action::remove_tablets && first("chlorine") < s.order) broken("tablets out too late");
    }
    for (const Step& s : plan_.steps)
      if (s.active_mol && s.order < drain) broken("a dose before the drain");
    const auto free = reading_of(v_, "free_chlorine"), ph = reading_of(v_, "ph");
    const bool unsafe = free && *free < 0.9 && is_chlorine(*v_.vessel.sanitizer);
    const auto iron = reading_of(v_, "iron"), copper = reading_of(v_, "copper");
    const bool metals = iron.value_or(0) >= 0.1 || copper.value_or(0) >= 0.1;
    if (unsafe && !metals && ph && *ph >= 7.2 && *ph <= 7.6 && drain == 0 && first("chlorine") < 1000)
      for (const Step& s : plan_.steps)
        // Acid may make room for the pH of a shock: it is poured whole or not at all.
        if (s.active_mol && s.order < first("chlorine") &&
            !(shock_stands(plan_) && find_substance(*s.chemical)->is("acid")))
          broken("chlorine waits for " + *s.chemical);
    if (unsafe && first("stabilizer") < first("chlorine") && first("chlorine") < 1000)
      broken("stabilizer before chlorine");
    if (plan_.steps.empty()) return;
    for (const Step& s : plan_.steps)
      if (s.action == Action::retest && s.order != plan_.steps.back().order)
        broken("a step after the retest");
  }

  // The step caps of the trade by their computed effect (from memory: acid a quart in 10,000 US gal and
  // pH 7.2; TA +30; CH +80; soda ash pH 7.6).
  void caps() {
    std::map<std::string, double> before;
    for (const Reading& r : v_.bottle.readings) before[r.analyte] = r.value;
    for (const Step& s : plan_.steps) {
      if (!s.after) continue;
      const auto& after = s.after->readings;
      const auto rise = [&](const char* analyte) {
        return after.contains(analyte) && before.contains(analyte) ? after.at(analyte) - before[analyte]
                                                                   : 0.0;
      };
      if (s.action == Action::add) {
        if (find_substance(*s.chemical)->is("alkalinity_up") && rise("total_alkalinity") > 30 + 1e-6)
          broken("alkalinity rises more than 30");
        if (rise("calcium_hardness") > 80 + 1e-6) broken("hardness rises more than 80");
        if (rise("free_chlorine") > 30 + 1e-6) broken("chlorine rises more than 30");
      }
      if (s.chemical && find_substance(*s.chemical)->is("ph_down")) {
        if (after.contains("ph") && after.at("ph") < 7.2 - 1e-6) broken("acid below pH 7.2");
        if (*s.active_mol / v_.vessel.volume->cubic_metres() > 0.25 + 1e-9) broken("more acid than a quart");
      }
      if (s.chemical == "sodium_carbonate" && after.contains("ph") && after.at("ph") > 7.6 + 1e-6)
        broken("soda ash above pH 7.6");
      for (const auto& [analyte, now] : after) before[analyte] = now;
    }
  }

  void forbidden() {
    for (const Step& s : plan_.steps) {
      if (!s.chemical) continue;
      const Substance& sub = *find_substance(*s.chemical);
      if (sub.id == "copper_sulfate") broken("copper");
      const auto never = [&](bool where, std::initializer_list<const char*> families) {
        for (const char* family : families)
          if (where && sub.is(family)) broken(sub.id + std::string(" is forbidden here"));
      };
      never(v_.vessel.sanitizer == Sanitizer::biguanide,
            {"chlorine", "bromine_donor", "bromide", "persulfate", "phosphonate", "copper", "stabilizer"});
      never(v_.vessel.sanitizer == Sanitizer::bromine, {"chlorine", "stabilizer", "biguanide"});
      never(v_.vessel.place == Place::indoor, {"isocyanurate", "stabilizer"});
      never(kind_of(v_.vessel) == VesselKind::spa, {"stabilizer"});
      never(is_chlorine(*v_.vessel.sanitizer), {"bromide", "bromine_donor", "biguanide", "peroxide"});
    }
  }

  // Of what is at home with a known amount no more is asked for than there is.
  void stock() {
    for (const AtHome& have : v_.bottle.at_home) {
      double used = 0;
      for (const Step& s : plan_.steps)
        if (s.chemical == have.chemical && s.from_home && s.amount)
          used += s.amount->unit == "mL" || s.amount->unit == "g" ? s.amount->value / 1000 : s.amount->value;
      if (used > *have.amount * (1 + 1e-6)) broken("more " + have.chemical + " than is at home");
    }
  }

  void nothing_to_do() {
    const bool in_target = outside(v_, Plan{}, targets_).empty();
    const bool calm = v_.bottle.signs.empty() && !shock_stands(plan_) &&
                      v_.bottle.occasion.value_or(Occasion::routine) == Occasion::routine;
    for (const Step& s : plan_.steps)
      if (in_target && calm && s.active_mol && v_.vessel.sanitizer != Sanitizer::biguanide)
        broken("in target and still told " + *s.chemical);
  }

  const Visit& v_;
  const Plan& plan_;
  const Shelf& shelf_;
  const TargetSet& targets_;
  std::vector<std::string> out_;
};

}  // namespace

std::vector<std::string> broken_laws(const Visit& v, const Plan& plan, const Shelf& shelf,
                                     const TargetSet& targets) {
  return Judge(v, plan, shelf, targets).all();
}

}  // namespace brimline
