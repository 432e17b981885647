// SPDX-License-Identifier: GPL-3.0-or-later
// How much water was replaced, and what volume the doses show. Dilution: C1 = C0 (1 - f) + Cfill f.
#include <algorithm>
#include <cmath>

#include "station/compare/expectation.h"

namespace brimline {

namespace {

constexpr double kSure = 1.96;

bool conservative(std::string_view analyte) {
  return analyte == "salt" || analyte == "cyanuric_acid" || analyte == "calcium_hardness" ||
         analyte == "borate";
}

// One reading's word on the share replaced: f = (kept - now) / (kept - fill).
struct Share {
  double fraction, sd;
};

std::optional<Share> share_of(const Pair& pair, double volume_sd) {
  if (!conservative(pair.analyte) || pair.amount_missing) return std::nullopt;
  const double kept = pair.before.value + pair.told;  // had no water been replaced, told drains included
  const double span = kept - pair.fill.value;
  if (span <= 3 * std::hypot(pair.before.sd, pair.fill.sd)) return std::nullopt;
  const double f = (kept - pair.now.value) / span;
  // df = -dnow/span + (1 - f) dkept/span + f dfill/span; the drift of the weeks is the very thing sought
  const double dose = pair.told * volume_sd;
  const double sd =
      std::sqrt(std::pow(pair.now.sd, 2) + std::pow((1 - f) * std::hypot(pair.before.sd, dose), 2) +
                std::pow(f * pair.fill.sd, 2)) /
      span;
  return Share{f, sd};
}

Measured pooled(const std::vector<Share>& shares) {
  double sum = 0, weights = 0;
  for (const Share& share : shares) {
    sum += share.fraction / (share.sd * share.sd);
    weights += 1 / (share.sd * share.sd);
  }
  return {sum / weights, 1 / std::sqrt(weights)};
}

// Gaussian prior on the volume, likelihood of the doses' answer in 1/volume, integrated over a grid of
// volumes.
Measured posterior(const Vessel& vessel, const Measured& inverse) {
  const double on_file = vessel.volume->cubic_metres(), sd = on_file * relative_volume_sd(vessel);
  constexpr int kSteps = 4000;
  if (sd < 1e-3 * on_file) return {on_file, sd};  // a metered volume: no dose tells more
  const double low = on_file / 5, high = on_file * 5;
  const auto volume = [&](int i) { return low + (high - low) * i / kSteps; };
  const auto chi = [&](double v) {
    return std::pow((v - on_file) / sd, 2) + std::pow((1 / v - inverse.value) / inverse.sd, 2);
  };
  double least = HUGE_VAL;  // taken off, so that a volume far from both does not underflow
  for (int i = 0; i <= kSteps; ++i) least = std::min(least, chi(volume(i)));
  double weight = 0, first = 0, second = 0;
  for (int i = 0; i <= kSteps; ++i) {
    const double v = volume(i), w = std::exp((least - chi(v)) / 2);
    weight += w;
    first += w * v;
    second += w * v * v;
  }
  const double mean = first / weight;
  return {mean, std::sqrt(std::max(0.0, second / weight - mean * mean))};
}

// 1/volume in 1/m3 by least squares: the change seen is told_per_inverse times it.
std::optional<Measured> inverse_volume(std::span<const Pair> pairs,
                                       const std::optional<WaterReplaced>& replaced) {
  double top = 0, bottom = 0;
  for (const Pair& pair : pairs) {
    if (!pair.told_any || pair.told_per_inverse == 0 || pair.analyte == "ph") continue;
    if (pair.analyte == "free_chlorine" || pair.analyte == "total_bromine") continue;
    const double f = replaced ? replaced->fraction : pair.drained;
    const double f_sd = replaced ? replaced->sd : 0.1 * pair.drained;
    const double span = pair.before.value - pair.fill.value;
    const double seen = pair.now.value - (pair.before.value - f * span);
    // the last term: a dose that was put in before the water was replaced went with it
    const double variance = pair.now.sd * pair.now.sd + pair.before.sd * pair.before.sd +
                            pair.drift_sd * pair.drift_sd + std::pow(f_sd * span, 2) +
                            std::pow(0.5 * f * pair.told, 2);
    top += pair.told_per_inverse * seen / variance;
    bottom += pair.told_per_inverse * pair.told_per_inverse / variance;
  }
  if (bottom <= 0) return std::nullopt;
  return Measured{top / bottom, 1 / std::sqrt(bottom)};
}

}  // namespace

std::optional<WaterReplaced> replaced_water(std::span<const Pair> pairs, const Vessel& vessel) {
  std::vector<Share> shares;
  for (const Pair& pair : pairs)
    if (const auto share = share_of(pair, relative_volume_sd(vessel))) shares.push_back(*share);
  // Two readings must each be seen to fall: one alone has other causes.
  const auto fell = std::count_if(shares.begin(), shares.end(),
                                  [](const Share& share) { return share.fraction > share.sd; });
  if (fell < 2) return std::nullopt;
  const Measured f = pooled(shares);
  if (f.value < kSure * f.sd || f.value < 0.03) return std::nullopt;
  double chi_square = 0;
  for (const Share& share : shares) chi_square += std::pow((share.fraction - f.value) / share.sd, 2);
  const double freedom = static_cast<double>(shares.size() - 1);
  if (chi_square > 6.63 + 3 * (freedom - 1))
    return std::nullopt;  // chi-square, 99 %: they did not fall together
  return WaterReplaced{std::min(1.0, f.value), f.sd * std::sqrt(std::max(1.0, chi_square / freedom))};
}

std::optional<VolumeFound> found_volume(std::span<const Pair> pairs, const Vessel& vessel,
                                        const std::optional<WaterReplaced>& replaced) {
  const auto inverse = inverse_volume(pairs, replaced);
  if (!inverse || inverse->value < kSure * inverse->sd) return std::nullopt;  // the water did not answer
  const Measured doses{1 / inverse->value, inverse->sd / (inverse->value * inverse->value)};
  if (!vessel.volume) return VolumeFound{doses.value, doses.sd, true};
  const double on_file = vessel.volume->cubic_metres();
  const double combined = std::hypot(on_file * relative_volume_sd(vessel), doses.sd);
  const Measured both = posterior(vessel, *inverse);
  return VolumeFound{both.value, both.sd, std::abs(doses.value - on_file) <= kSure * combined};
}

}  // namespace brimline
