// SPDX-License-Identifier: GPL-3.0-or-later
// Numbers and units as tables write them; conversion happens at this edge only.
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "analysis/panel/analyte.h"
#include "analysis/quantities.h"

namespace brimline {

// A number with a point; with a comma too where `comma` says so ("7,4"). Nothing where it is no finite
// number.
std::optional<double> number_from(std::string_view text, bool comma);

// What a value in `unit` is multiplied by to stand in the analyte's own; an empty unit is the analyte's own.
// mg/L is also written ppm or g/m3; hardness and alkalinity also come in degrees, grains, mmol/L and meq/L.
std::optional<double> factor_of(const AnalyteKind& kind, std::string_view unit);
// "mg/L, ppm, ...": for faults.
std::string units_of(const AnalyteKind& kind);

// `unit`: m3, L, gal (US) or gal_imp; nothing for another.
std::optional<Volume> volume_in(double value, std::string_view unit);

}  // namespace brimline
