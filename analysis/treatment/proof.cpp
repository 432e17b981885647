// SPDX-License-Identifier: GPL-3.0-or-later
// The plan replayed in waters that could have given the same readings: errors of readings and of
// volume drawn at random (JCGM 101:2008, propagation of distributions by Monte Carlo; from memory).
#include <algorithm>
#include <cmath>
#include <random>

#include "analysis/treatment/planner.h"
#include "analysis/water/doses.h"

namespace brimline {

namespace {

constexpr double kVolumeSd = 0.1;              // where the vessel says none
constexpr double kPhLow = 7.0, kPhHigh = 8.2;  // beyond these is harm, of the contract
constexpr double kChlorineHarm = 10;

// Normal deviates that are the same on every machine (Box and Muller 1958).
class Normal {
 public:
  explicit Normal(std::uint64_t seed) : engine_(seed) {}
  double uniform() { return (static_cast<double>(engine_() >> 11) + 0.5) * 0x1.0p-53; }
  double operator()() {
    if (spare_) {
      const double out = *spare_;
      spare_.reset();
      return out;
    }
    const double r = std::sqrt(-2 * std::log(uniform())), angle = 2 * 3.14159265358979323846 * uniform();
    spare_ = r * std::sin(angle);
    return r * std::cos(angle);
  }

 private:
  std::mt19937_64 engine_;
  std::optional<double> spare_;
};

// A water that could have given these readings.
std::optional<Water> another_water(const Situation& s, Normal& normal) {
  KnownReadings drawn = s.known;
  for (auto& [analyte, k] : drawn) {
    const double error = std::clamp(normal(), -4.0, 4.0) * k.sd;
    k.value = analyte == "ph" ? k.value + error : std::max(0.0, k.value + error);
  }
  if (!drawn.contains("cyanuric_acid") && s.chlorine() && s.vessel.place != Place::indoor && !s.is_spa()) {
    Known unknown;
    unknown.value = 60 * normal.uniform();  // never read: anything an outdoor pool may hold
    drawn.emplace("cyanuric_acid", unknown);
  }
  const auto readings = model_readings(drawn, s.bottle_temperature);
  if (!readings) return std::nullopt;
  const auto w = water_from_readings(*readings);
  return w ? std::optional(*w) : std::nullopt;
}

double reading_of(std::string_view analyte, const Totals& t, double ph) {
  if (analyte == "ph") return ph;
  if (analyte == "total_alkalinity") return t.alkalinity * 1e3 * weight::kAlkalinity;
  if (analyte == "calcium_hardness") return t.calcium * 1e3 * weight::kCaCO3;
  if (analyte == "cyanuric_acid") return t.cyanurate * 1e3 * weight::kCyanuricAcid;
  if (analyte == "free_chlorine") return t.chlorine * 1e3 * weight::kChlorine;
  return t.bromine * 1e3 * weight::kBromine;
}

struct Watched {
  AnalyteId analyte;
  Target range;
  double sum = 0, squares = 0;
};

std::vector<Watched> watched(const Draft& d, bool shocked) {
  std::vector<Watched> out;
  for (const char* analyte :
       {"ph", "total_alkalinity", "calcium_hardness", "cyanuric_acid", "free_chlorine", "total_bromine"}) {
    const auto aim = d.aim(analyte);
    if (!d.s.fresh(analyte) || (shocked && std::string_view(analyte) == "free_chlorine")) continue;
    out.push_back({analyte, aim ? aim->range : Target{}});
  }
  return out;
}

bool inside(const Target& t, double v) {
  return (!t.low || v >= *t.low) && (!t.high || v <= *t.high);
}

// Air runs until the customer's own test shows the pH wanted, or the time is over: regula falsi in the CO2
// lost.
Totals aired(const Totals& t, const Change& change, const Water& near) {
  const auto after = [&](double lost) {
    Totals out = t;
    out.carbon = std::max(0.0, out.carbon - lost);
    return out;
  };
  double low = 0, high = change.carbon_lost, ph_low = near.ph;
  const auto most = solve(after(high), near);
  if (!most || most->ph <= change.to_ph) return after(high);
  double ph_high = most->ph;
  for (int i = 0; i < 2 && ph_high - ph_low > 1e-3 && low < high; ++i) {
    const double middle =
        low + (high - low) * std::clamp((change.to_ph - ph_low) / (ph_high - ph_low), 0.05, 0.95);
    const auto w = solve(after(middle), near);
    if (!w) break;
    (w->ph < change.to_ph ? low : high) = middle;
    (w->ph < change.to_ph ? ph_low : ph_high) = w->ph;
  }
  return after(low);
}

}  // namespace

ProofResult prove(const Draft& d, const PlanOptions& options, bool swim_after_dose) {
  ProofResult out;
  if (!d.modelled || options.draws <= 0 || !d.s.vessel.volume) return out;
  const bool shocked = d.shocked();
  const auto residual = d.aim("free_chlorine");
  std::vector<Watched> readings = watched(d, shocked);
  Normal normal(options.seed);
  const double leftover = re_entry_mg_l(d.s);
  const double volume_sd = d.s.vessel.volume_relative_sd.value_or(kVolumeSd);
  out.harm_by_step.assign(d.steps.size(), 0);
  int made = 0, good = 0, harmed = 0;
  for (int i = 0; i < options.draws; ++i) {
    const double kilograms = d.kilograms() * std::max(0.3, 1 + volume_sd * normal());
    const auto start = another_water(d.s, normal);
    if (!start) continue;
    ++made;
    const bool began_inside = start->ph >= kPhLow && start->ph <= kPhHigh;
    Totals t = start->totals;
    double ph = start->ph;
    Water near = *start;
    bool harm = false;
    for (size_t k = 0; k < d.steps.size(); ++k) {
      const DraftStep& step = d.steps[k];
      if (step.change.chemical.empty() && step.change.drained <= 0 && step.change.carbon_lost <= 0) continue;
      t = step.change.to_ph > 0 ? aired(t, step.change, near)
                                : changed(t, step.change, kilograms, d.s.fill ? &d.s.fill->totals : nullptr);
      const auto w = solve(t, near);
      if (!w) continue;
      near = *w;
      ph = w->ph;
      // At the hour that swimming is allowed, and at the plan's end: chlorine that a step brought and that
      // nothing measured is there to use up. A shock stands overnight and is read before anybody swims; of a
      // demand dose what is left after the measured demand counts.
      bool chlorine = false;
      if (step.note == "raise_chlorine") chlorine = w->free_chlorine() > std::min(kChlorineHarm, leftover);
      if (step.note == "meet_demand") {
        const double used = d.s.demand_mg_l + d.s.demand_sd_mg_l * normal();
        chlorine = w->free_chlorine() - used > (swim_after_dose ? leftover : kChlorineHarm);
      }
      if ((began_inside && (ph < kPhLow || ph > kPhHigh)) || chlorine) {
        if (!harm) ++out.harm_by_step[k];
        harm = true;
      }
    }
    if (shocked && residual) {  // judged once it is used up
      t = spend_chlorine(t, std::max(0.0, t.chlorine - residual->aim * 1e-3 / weight::kChlorine));
      if (const auto w = solve(t, near)) ph = w->ph;
    }
    bool all = true;
    for (Watched& r : readings) {
      const double v = reading_of(r.analyte, t, ph);
      r.sum += v;
      r.squares += v * v;
      all = all && inside(r.range, v);
    }
    good += all;
    harmed += harm;
  }
  if (made == 0) return out;
  out.proof = {made, static_cast<double>(good) / made, static_cast<double>(harmed) / made};
  for (const Watched& r : readings)
    out.sd[r.analyte] = std::sqrt(std::max(0.0, r.squares / made - (r.sum / made) * (r.sum / made)));
  return out;
}

}  // namespace brimline
