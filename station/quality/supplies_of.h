// SPDX-License-Identifier: GPL-3.0-or-later
// The control charts as the checks of a bottle take them, and the curve an absorbance is read with.
#pragma once

#include <optional>

#include "analysis/calibration/absorbance.h"
#include "analysis/panel/supplies.h"
#include "station/quality/charts.h"

namespace brimline {

// `written`: reagents and checks as the store has them. Added: each chart as it stands at `now`. A stopped
// analyte is a failed check until a named member of staff clears it: no check written by hand redeems it. An
// analyte with no standard of its own is as well checked as the instrument's channel checked longest ago.
Supplies with_charts(Supplies written, const QualityBook& book, const Instant& now);

// The latest curve of the lot in use; nothing where there is none, or it cannot be fitted.
std::optional<LotCalibration> calibration_in_use(const Supplies& supplies, const QualityBook& book,
                                                 const AnalyteId& analyte, double wavelength_nm,
                                                 const Instant& now);

}  // namespace brimline
