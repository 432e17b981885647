// SPDX-License-Identifier: GPL-3.0-or-later
// How far a reading can be trusted: its standard deviation, and that of the mean of repeats.
#pragma once

#include <span>
#include <string>
#include <vector>

#include "analysis/panel/analyte.h"
#include "analysis/panel/reading.h"

namespace brimline {

// A value with its standard deviation, both in the analyte's unit.
struct Measured {
  double value = 0;
  double sd = 0;
};

// The sd told with the reading; else the method's at the undiluted value, times the dilution, with 1 % of the
// value for each of sample and water measured out. Method not told: the analyte's first; told but not one of
// the analyte's: the widest.
double reading_sd(const Reading& reading, const AnalyteKind& kind);
double reading_sd(const Reading& reading);  // 0 where the analyte is not known
Measured measured(const Reading& reading);

// Differences of independent readings: value a - b, errors in quadrature (JCGM 100:2008, equation 10; from
// memory).
Measured difference(const Measured& a, const Measured& b);
// |a - b| in units of its sd.
double standard_distance(const Measured& a, const Measured& b);

// Mean of repeats weighted by 1/sd^2. The spread seen is pooled with the method's own, which counts for ten
// degrees of freedom; where it is beyond the method's at 99.8 % (chi-square) the spread seen counts alone.
Measured combine(std::span<const Measured> repeats);

// Whether repeats scatter beyond their sds at 99.8 % (chi-square); false for fewer than two.
bool scatter(std::span<const Measured> repeats);

// Grubbs' critical value, two-sided: ISO 5725-2:1994 clause 7.3.4 and table 5 (from memory); n of 3 or more.
double grubbs_critical(int n, double alpha);

// Indices of single outliers, most extreme first: beyond Grubbs' 5 % value and further from the mean of the
// rest than three sds of the method. At least two readings are kept.
std::vector<size_t> outliers(std::span<const Measured> repeats);

// Decimals that the first digit of the sd asks for, 0 to 4: 2 for 0.05, 0 for 12.
int decimals_for(double sd);
// "7.90 +/- 0.05".
std::string format_measured(const Measured& value);

}  // namespace brimline
