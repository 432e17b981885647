// SPDX-License-Identifier: GPL-3.0-or-later
// What an absorbance says: through the blank, the path and the dilution to the amount, by the calibration of
// the reagent lot; and pH by the colours of an indicator at two wavelengths.
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "analysis/calibration/curve.h"
#include "analysis/panel/reading.h"
#include "analysis/panel/uncertainty.h"

namespace brimline {

// One sample in the instrument. Beer's law: absorbance = absorptivity * amount * path.
struct AbsorbanceTaken {
  double sample = 0;              // mean of the replicates
  std::optional<double> blank{};  // the water without the reagent; absent: the instrument was zeroed on it
  double path_cm = 1;
  double dilution = 1;  // (sample + water) / sample
  int replicates = 1;
};
double per_centimetre(const AbsorbanceTaken& taken);

// Of one analyte with one lot of reagent at one wavelength; signals are absorbance per cm, net of the blank.
struct LotCalibration {
  std::string lot;
  AnalyteId analyte;
  double wavelength_nm = 0;
  CalibrationCurve curve;
};

enum class AbsorbanceFault {
  not_finite,  // an absorbance is not a number
  no_path,     // the path or the dilution is none
  unreadable   // the curve never reaches it
};
std::string_view text_of(AbsorbanceFault fault);

struct AmountRead {
  Measured amount;              // of the water, dilution applied
  std::optional<Clip> clipped;  // outside the standards: the amount is the nearest one
};
// Error: the curve's (`read_back`), the blank's as one more measurement, and 1 % for each volume of a
// dilution (counter practice, as for other readings).
[[nodiscard]] tl::expected<AmountRead, AbsorbanceFault> amount_of(const LotCalibration& calibration,
                                                                  const AbsorbanceTaken& taken);

// An indicator with an acid and a base form: pH = pK + log10((R - e1) / (e2 - R e3)), R the absorbance of the
// base's band over the acid's; pK = pk_0 + pk_t / T.
struct Indicator {
  double acid_nm = 0, base_nm = 0;
  double e1 = 0, e2 = 0, e3 = 0;   // ratios of absorptivities
  double pk_0 = 0, pk_t = 0;       // pk_t in kelvin
  double low_ph = 0, high_ph = 0;  // useful range
  double pk(double temperature_c) const;
};
// Phenol red in fresh water: Yao & Byrne 2001, Environ. Sci. Technol. 35:1197 (from memory).
const Indicator& phenol_red();

// `sd`: standard deviation of one absorbance. Outside the useful range the end of it is given, clipped.
[[nodiscard]] tl::expected<AmountRead, AbsorbanceFault> ph_of(const Indicator& indicator,
                                                              double acid_absorbance, double base_absorbance,
                                                              double temperature_c, double sd);

}  // namespace brimline
