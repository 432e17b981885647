// SPDX-License-Identifier: GPL-3.0-or-later
#include "analysis/calibration/absorbance.h"

#include <cmath>
#include <numbers>

namespace brimline {

namespace {

constexpr double kMeasuringOut = 0.01;  // relative sd of one volume of a dilution; counter practice
constexpr double kZeroCelsius = 273.15;

bool sound(const AbsorbanceTaken& t) {
  return std::isfinite(t.sample) && std::isfinite(t.blank.value_or(0));
}

}  // namespace

std::string_view text_of(AbsorbanceFault fault) {
  switch (fault) {
    case AbsorbanceFault::not_finite:
      return "an absorbance is not a number";
    case AbsorbanceFault::no_path:
      return "the path and the dilution are to be above zero";
    case AbsorbanceFault::unreadable:
      return "the calibration curve never reaches this absorbance";
  }
  return {};
}

double per_centimetre(const AbsorbanceTaken& taken) {
  return (taken.sample - taken.blank.value_or(0)) / taken.path_cm;
}

tl::expected<AmountRead, AbsorbanceFault> amount_of(const LotCalibration& calibration,
                                                    const AbsorbanceTaken& taken) {
  if (!sound(taken)) return tl::unexpected(AbsorbanceFault::not_finite);
  if (!(taken.path_cm > 0) || !(taken.dilution >= 1)) return tl::unexpected(AbsorbanceFault::no_path);
  const CalibrationCurve& curve = calibration.curve;
  const double net = per_centimetre(taken);
  AmountRead out;
  const bool rises = curve.slope_at(curve.amount_mean) > 0;
  const double weakest = curve.at(curve.low), strongest = curve.at(curve.high);
  // Two sds of one signal of grace, so that the strongest standard reads as inside its own range.
  const double grace = 2 * curve.residual_sd;
  if (rises ? net > strongest + grace : net < strongest - grace) out.clipped = Clip::above;
  if (rises ? net < weakest - grace : net > weakest + grace) out.clipped = Clip::below;
  const double signal = out.clipped == Clip::above ? strongest : out.clipped == Clip::below ? weakest : net;
  const auto back = read_back(curve, signal, taken.replicates);
  if (!back) return tl::unexpected(AbsorbanceFault::unreadable);
  const double blank_sd = taken.blank ? curve.residual_sd / std::abs(curve.slope_at(back->amount)) : 0.0;
  const double undiluted = std::max(0.0, back->amount);
  out.amount.value = undiluted * taken.dilution;
  out.amount.sd = std::hypot(back->sd, blank_sd) * taken.dilution;
  if (taken.dilution > 1)
    out.amount.sd = std::hypot(out.amount.sd, std::sqrt(2.0) * kMeasuringOut * out.amount.value);
  return out;
}

double Indicator::pk(double temperature_c) const {
  return pk_0 + pk_t / (temperature_c + kZeroCelsius);
}

const Indicator& phenol_red() {
  // Yao & Byrne 2001, Environ. Sci. Technol. 35:1197: e1, e2, e3 and pK = 5.798 + 666.7/T (from memory);
  // useful range 6.8 to 8.2 (common practice, no source).
  static constexpr Indicator indicator{433, 558, 0.00244, 2.734, 0.1075, 5.798, 666.7, 6.8, 8.2};
  return indicator;
}

tl::expected<AmountRead, AbsorbanceFault> ph_of(const Indicator& indicator, double acid_absorbance,
                                                double base_absorbance, double temperature_c, double sd) {
  if (!std::isfinite(acid_absorbance) || !std::isfinite(base_absorbance) || !std::isfinite(temperature_c) ||
      !std::isfinite(sd))
    return tl::unexpected(AbsorbanceFault::not_finite);
  if (!(acid_absorbance > 0) || !(base_absorbance > 0)) return tl::unexpected(AbsorbanceFault::unreadable);
  const double ratio = base_absorbance / acid_absorbance;
  const double base = ratio - indicator.e1, acid = indicator.e2 - ratio * indicator.e3;
  const double pk = indicator.pk(temperature_c);
  AmountRead out;
  if (base <= 0) {
    out.clipped = Clip::below;
    out.amount.value = indicator.low_ph;
  } else if (acid <= 0) {
    out.clipped = Clip::above;
    out.amount.value = indicator.high_ph;
  } else {
    out.amount.value = pk + std::log10(base / acid);
    const double ratio_sd = ratio * sd * std::hypot(1 / acid_absorbance, 1 / base_absorbance);
    out.amount.sd = ratio_sd * (1 / base + indicator.e3 / acid) / std::numbers::ln10;
    if (out.amount.value < indicator.low_ph) out.clipped = Clip::below;
    if (out.amount.value > indicator.high_ph) out.clipped = Clip::above;
    if (out.clipped) out.amount.value = *out.clipped == Clip::below ? indicator.low_ph : indicator.high_ph;
  }
  return out;
}

}  // namespace brimline
