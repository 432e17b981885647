// SPDX-License-Identifier: GPL-3.0-or-later
// Bayes' rule over the volume, the share replaced and the causes, visit after visit.
#include <algorithm>
#include <cmath>
#include <map>

#include "station/compare/expectation.h"

namespace brimline {

namespace {

constexpr double kSure = 1.96;
constexpr double kNotPutIn = 0.05;  // chance that told doses were not put in; common practice, no source
constexpr size_t kMostLegs = 16;    // older ones say little that the volume on file does not hold
constexpr double kNamed = 0.5;      // what is likelier than not is named

bool answers(std::string_view analyte) {
  for (const char* one : {"total_alkalinity", "calcium_hardness", "cyanuric_acid", "salt", "borate",
                          "magnesium_hardness", "sulfate"})
    if (analyte == one) return true;
  return false;
}

// What a month moves each reading that no cause explains: share of the value, units.
double left_over(std::string_view analyte, double value, double days) {
  const double months = std::sqrt(std::clamp(days, 1.0, 180.0) / 30);
  if (analyte == "total_alkalinity") return std::hypot(0.02 * value, 2.5) * months;
  if (analyte == "salt") return std::hypot(0.005 * value, 5) * months;
  return std::hypot(0.008 * value, 0.5) * months;
}

constexpr double kNotRead = 1e6;  // sd of a reading that was not taken

using Known = std::map<std::string, Measured>;

// The stretch between the last two visits; `known` holds what is carried from before, the analytes that the
// earlier one did not read among them.
Leg leg_of(std::span<const Visit> visits, const Known& known, const Known& read) {
  const Visit& later = visits.back();
  Leg leg;
  double days = 30;
  for (const auto& [analyte, before] : known) {
    const auto now = read.find(analyte);
    const Pair pair = pair_between(visits, analyte, before,
                                   now != read.end() ? now->second : Measured{before.value, kNotRead});
    days = pair.days;
    leg.told_drain = pair.drained;
    if (pair.told_any && pair.amount_missing) continue;
    leg.readings.push_back({pair.analyte, pair.before, pair.now, pair.fill, pair.told_per_inverse,
                            left_over(analyte, before.value, days)});
  }
  const Vessel& vessel = later.vessel;
  leg.months = days / 30;
  leg.chlorine = vessel.sanitizer && is_chlorine(*vessel.sanitizer);
  leg.salt_cell = vessel.sanitizer == Sanitizer::salt_chlorine;
  leg.indoor = !in_the_open(vessel);
  leg.small_and_warm = kind_of(vessel) != VesselKind::pool;
  leg.after_storm = later.bottle.occasion == Occasion::after_storm;
  const auto& signs = later.bottle.signs;
  leg.tablets_in_use = std::find(signs.begin(), signs.end(), Sign::tablets_in_use) != signs.end();
  return leg;
}

// A volume that is tried, with what is believed of it.
struct Tried {
  double volume = 0;
  double log_width = 0;       // of its cell, in the volume's logarithm
  double log_prior = 0;       // by the volume on file
  double log_likelihood = 0;  // by the water's answers
  Known truth;                // of the latest bottle, were this the volume
};

// Close around the volume on file, where most are; wide beyond, where a wrong entry lies.
std::vector<Tried> tried_volumes(const Vessel& vessel) {
  const double on_file = vessel.volume ? vessel.volume->cubic_metres() : 10;
  const double share = std::max(1e-3, relative_volume_sd(vessel));
  const double reach = std::log(vessel.volume ? 5 : 60), near = vessel.volume ? 0.4 : reach;
  std::vector<double> logs = {-reach};
  while (logs.back() < reach)
    logs.push_back(logs.back() + (std::abs(logs.back() + 0.02) < near ? 0.04 : 0.15));
  std::vector<Tried> out;
  for (size_t i = 0; i < logs.size(); ++i) {
    const double width = logs[std::min(i + 1, logs.size() - 1)] - logs[i > 0 ? i - 1 : 0];
    Tried one{on_file * std::exp(logs[i]), std::log(width / 2), 0, 0, {}};
    if (vessel.volume)
      one.log_prior = -0.5 * std::pow((one.volume / on_file - 1) / share, 2) + std::log(one.volume);
    out.push_back(std::move(one));
  }
  return out;
}

// Sums of exponentials that neither under- nor overflow.
class LogSum {
 public:
  // The factor that what was summed before has to be scaled by, and the weight of what is added now.
  std::pair<double, double> add(double log_weight) {
    const double top = std::max(top_, log_weight);
    const double scale = std::isinf(top_) ? 0 : std::exp(top_ - top), weight = std::exp(log_weight - top);
    sum_ = sum_ * scale + weight;
    top_ = top;
    return {scale, weight};
  }
  double log() const { return top_ + std::log(sum_); }
  double sum() const { return sum_; }

 private:
  double top_ = -HUGE_VAL, sum_ = 0;
};

// What one leg says at one volume: its likelihood, and the true values at its end.
struct Moments {
  LogSum total;
  std::vector<double> first, second;
  explicit Moments(size_t n) : first(n), second(n) {}
  void add(const Weighed& weighed, double log_prior) {
    const auto [scale, weight] = total.add(weighed.log_weight + log_prior);
    for (size_t i = 0; i < first.size(); ++i) {
      const Measured& m = (*weighed.truth)[i];
      first[i] = first[i] * scale + weight * m.value;
      second[i] = second[i] * scale + weight * (m.value * m.value + m.sd * m.sd);
    }
  }
  Measured truth(size_t i) const {
    const double mean = first[i] / total.sum();
    return {mean, std::sqrt(std::max(1e-12, second[i] / total.sum() - mean * mean))};
  }
};

bool doses_told(const Leg& leg) {
  return std::any_of(leg.readings.begin(), leg.readings.end(),
                     [](const LegReading& r) { return r.told_per_inverse != 0; });
}

Leg with_truth(Leg leg, const Known& truth) {
  for (LegReading& reading : leg.readings)
    if (const auto known = truth.find(reading.analyte); known != truth.end()) reading.before = known->second;
  return leg;
}

// The volume most believed in so far. What no dose was put into does not depend on the volume but through the
// true values carried on: this one's stand for all.
const Tried& likeliest(const std::vector<Tried>& volumes) {
  return *std::max_element(volumes.begin(), volumes.end(), [](const Tried& a, const Tried& b) {
    return a.log_likelihood + a.log_prior < b.log_likelihood + b.log_prior;
  });
}

// What no stretch can carry on, as a dose of unknown amount moved it, starts anew with its reading.
void carry_on(Tried& tried, const Leg& leg, const Moments& moments, const Known& read) {
  tried.truth = read;
  for (size_t i = 0; i < leg.readings.size(); ++i) tried.truth[leg.readings[i].analyte] = moments.truth(i);
}

// `counts`: whether what it says of the volume is not in the volume on file yet.
void pass(const Leg& told, const Known& read, bool counts, std::vector<Tried>& volumes) {
  Moments without(told.readings.size());
  const bool doses = doses_told(told);
  if (doses)
    weigh(with_truth(told, likeliest(volumes).truth), 0, Detail::coarse, true,
          [&](const Weighed& w) { without.add(w, std::log(kNotPutIn)); });
  for (Tried& tried : volumes) {
    const Leg leg = with_truth(told, tried.truth);
    Moments moments = without;
    weigh(leg, 1 / tried.volume, Detail::coarse, true,
          [&](const Weighed& v) { moments.add(v, std::log(doses ? 1 - kNotPutIn : 1.0)); });
    if (counts) tried.log_likelihood += moments.total.log();
    carry_on(tried, leg, moments, read);
  }
}

// The last leg, over all volumes: causes and the share replaced.
struct Last {
  LogSum total;
  std::array<double, kCauses> chance{};
  double either = 0;             // acid or tablets
  double nothing = 0;            // no cause, and what was told was put in
  double not_put_in = 0;         // what was told
  double first = 0, second = 0;  // of the share replaced, nought where none was
  void add(const Weighed& w, double log_prior, bool put_in) {
    const auto [scale, weight] = total.add(w.log_weight + log_prior);
    scale_by(scale);
    for (size_t c = 0; c < kCauses; ++c)
      if ((w.causes >> c & 1u) != 0) chance[c] += weight;
    if ((w.causes & (bit(Cause::acid) | bit(Cause::tablets))) != 0) either += weight;
    if (w.causes == 0 && put_in) nothing += weight;
    if (!put_in) not_put_in += weight;
    first += weight * w.fraction;
    second += weight * w.fraction * w.fraction;
  }
  void add(const Last& more, double log_prior) {
    const auto [scale, weight] = total.add(more.total.log() + log_prior);
    const double share = weight / more.total.sum();
    scale_by(scale);
    for (size_t c = 0; c < kCauses; ++c) chance[c] += share * more.chance[c];
    either += share * more.either;
    nothing += share * more.nothing;
    not_put_in += share * more.not_put_in;
    first += share * more.first;
    second += share * more.second;
  }

 private:
  void scale_by(double scale) {
    for (double& one : chance) one *= scale;
    for (double* one : {&either, &nothing, &not_put_in, &first, &second}) *one *= scale;
  }
};

void pass_last(const Leg& told, bool counts, std::vector<Tried>& volumes, Last& last) {
  const bool doses = doses_told(told);
  Last without;
  if (doses)
    weigh(with_truth(told, likeliest(volumes).truth), 0, Detail::fine, false,
          [&](const Weighed& w) { without.add(w, std::log(kNotPutIn), false); });
  for (Tried& tried : volumes) {
    const Leg leg = with_truth(told, tried.truth);
    Last here = without;
    weigh(leg, 1 / tried.volume, Detail::fine, false,
          [&](const Weighed& w) { here.add(w, std::log(doses ? 1 - kNotPutIn : 1.0), true); });
    last.add(here, tried.log_width + tried.log_prior + tried.log_likelihood);
    if (counts) tried.log_likelihood += here.total.log();
  }
}

// Mean and sd over the volumes tried of `value(tried)`, weighted by exp(log_weight(tried)).
template <class Value, class Weight>
Measured over(const std::vector<Tried>& volumes, Value value, Weight log_weight) {
  double top = -HUGE_VAL, sum = 0, first = 0, second = 0;
  for (const Tried& tried : volumes) top = std::max(top, log_weight(tried));
  for (const Tried& tried : volumes) {
    const double weight = std::exp(log_weight(tried) - top), v = value(tried);
    sum += weight;
    first += weight * v;
    second += weight * v * v;
  }
  const double mean = first / sum;
  return {mean, std::sqrt(std::max(0.0, second / sum - mean * mean))};
}

// Median and half of what holds the middle 68 % of 1/volume by the doses alone, every 1/volume alike at first
// (what a change by told / V is linear in): a wide tail of unlikely causes does not count.
Measured inverse_by_doses(const std::vector<Tried>& volumes) {
  double top = -HUGE_VAL, sum = 0;
  const auto log_weight = [](const Tried& t) { return t.log_likelihood + t.log_width - std::log(t.volume); };
  for (const Tried& tried : volumes) top = std::max(top, log_weight(tried));
  for (const Tried& tried : volumes) sum += std::exp(log_weight(tried) - top);
  const auto quantile = [&](double share) {
    double before = 0, least = 1 / volumes.back().volume;
    for (auto tried = volumes.rbegin(); tried != volumes.rend(); ++tried) {  // 1/volume rising
      const double weight = std::exp(log_weight(*tried) - top) / sum, inverse = 1 / tried->volume;
      if (before + weight / 2 >= share) {
        const double step = weight / 2 > 0 ? std::clamp((share - before) / (weight / 2), 0.0, 1.0) : 1;
        return least + (inverse - least) * step;
      }
      before += weight;
      least = inverse;
    }
    return least;
  };
  return {quantile(0.5), (quantile(0.84) - quantile(0.16)) / 2};
}

std::optional<VolumeFound> volume_of(const std::vector<Tried>& volumes, const Vessel& vessel) {
  const auto volume = [](const Tried& t) { return t.volume; };
  const Measured inverse = inverse_by_doses(volumes);
  if (inverse.value < kSure * inverse.sd) return std::nullopt;  // the water did not answer
  const Measured doses{1 / inverse.value, inverse.sd / (inverse.value * inverse.value)};
  if (!vessel.volume) return VolumeFound{doses.value, doses.sd, true};
  const Measured both =
      over(volumes, volume, [](const Tried& t) { return t.log_likelihood + t.log_prior + t.log_width; });
  const double on_file = vessel.volume->cubic_metres();
  if (relative_volume_sd(vessel) < 0.005)  // a metered volume: no dose tells more
    return VolumeFound{on_file, on_file * relative_volume_sd(vessel),
                       std::abs(doses.value - on_file) <= kSure * doses.sd};
  const double combined = std::hypot(on_file * relative_volume_sd(vessel), doses.sd);
  return VolumeFound{both.value, both.sd, std::abs(doses.value - on_file) <= kSure * combined};
}

// The visit whose bottle, and all before, the volume on file holds already, as the clerk took it from them. A
// volume that was typed in holds none: it was found in another way.
size_t held_on_file(std::span<const Visit> visits) {
  const LearntVolume* learnt = standing_lesson(visits.back().vessel);
  if (!learnt) return 0;
  for (size_t i = visits.size(); i-- > 1;)
    if (const auto when = time_of(visits[i]); when && when->utc <= learnt->until.utc) return i;
  return 0;
}

Known read_in(const Visit& visit) {
  Known out;
  for (const CheckedValue& value : unchecked_panel(visit.bottle.readings, visit.vessel).values)
    if (!value.clipped && answers(value.analyte)) out[value.analyte] = value.measured();
  return out;
}

}  // namespace

Inference infer(std::span<const Visit> visits) {
  Inference out;
  const size_t last = visits.size() - 1, held = held_on_file(visits);
  const size_t begin = last > kMostLegs ? last - kMostLegs : 0;
  std::vector<Tried> volumes = tried_volumes(visits[last].vessel);
  for (Tried& tried : volumes) tried.truth = read_in(visits[begin]);
  bool doses = false;
  const auto leg_to = [&](size_t k, const Known& read) {
    Leg leg = leg_of(visits.first(k + 1), likeliest(volumes).truth, read);
    doses = doses || (k > held && doses_told(leg));
    return leg;
  };
  for (size_t k = begin + 1; k < last; ++k) {
    const Known read = read_in(visits[k]);
    pass(leg_to(k, read), read, k > held, volumes);
  }
  const Leg leg = leg_to(last, read_in(visits[last]));
  if (leg.readings.empty()) return out;
  Last all;
  pass_last(leg, last > held, volumes, all);
  const double sum = all.total.sum();
  for (size_t c = 0; c < kCauses; ++c) out.chance[c] = all.chance[c] / sum;
  out.acid_or_tablets = all.either / sum;
  out.nothing = all.nothing / sum;
  out.not_put_in = all.not_put_in / sum;
  const double likeliest = *std::max_element(out.chance.begin(), out.chance.end());
  if (const double chance = out.of(Cause::replaced);
      chance > kNamed || (chance == likeliest && chance > out.nothing)) {
    // The share where some was replaced, as the table of dilutions has it; its sd counts the chance that none
    // was.
    const double mean = all.first / sum / chance;
    out.replaced = WaterReplaced{
        mean, std::sqrt(std::max(1e-8, (all.second - 2 * mean * all.first) / sum + mean * mean))};
  }
  if (doses) out.volume = volume_of(volumes, visits[last].vessel);
  return out;
}

}  // namespace brimline
