// SPDX-License-Identifier: GPL-3.0-or-later
// One reading of one analyte, as it was taken: never overwritten, only repeated.
#pragma once

#include <optional>
#include <string>

namespace brimline {

// Id of an analyte, the name of its file in analysis/readings: "ph", "free_chlorine". For ever.
using AnalyteId = std::string;

enum class Method { photometer, strip, drop_titration, comparator, probe, turbidity_tube };
enum class Clip { above, below };  // the method was at the end of its range

struct Reading {
  AnalyteId analyte;
  double value = 0;              // in the analyte's only unit; the water's own, dilution already applied
  std::optional<Method> method;  // absent: not told
  double dilution = 1;           // (sample + water) / sample; widens the error only
  std::optional<Clip> clipped;   // absent: inside the range
  std::optional<int> repeat_of;  // zero-based index of the first reading; absent: not a repeat
  std::optional<double> sd;      // standard deviation told with the reading; absent: the method's own
  std::optional<std::string> instrument;
  std::optional<std::string> lot;  // reagent lot
  friend bool operator==(const Reading&, const Reading&) = default;
};

}  // namespace brimline
