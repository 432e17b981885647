// SPDX-License-Identifier: GPL-3.0-or-later
// What can be read from a bottle: one file a reading in analysis/readings, compiled in.
// Its unit is the only one inside the program; others are converted at the edge.
#pragma once

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include <tl/expected.hpp>

#include "analysis/embedded.h"
#include "analysis/fields.h"
#include "analysis/panel/reading.h"

namespace brimline {

struct Range {
  double low = 0, high = 0;  // both inclusive
  bool holds(double value) const { return value >= low && value <= high; }
};

// Where a number was got from: R read in the source, R2 in a text quoting it, W common practice
// with no source, M from memory, C computed.
struct Origin {
  std::string source;
  std::string tag;
};

// One way to read the analyte. sd = hypot(sd_constant, sd_proportional * value).
struct MethodKind {
  Method method = Method::photometer;
  Range range;                 // without dilution, in the analyte's unit
  double step = 0;             // smallest difference it shows
  double sd_constant = 0;      // in the analyte's unit
  double sd_proportional = 0;  // share of the value
  Origin origin;
};

struct AnalyteKind {
  AnalyteId id;
  std::string name;                     // as on the panel
  std::string unit;                     // "mg/L CaCO3"; empty for pH
  int decimals = 0;                     // as shown
  Range possible;                       // outside: no reading can be this, the input is refused
  Range believable;                     // outside: ask for a second measurement
  std::optional<Range> default_target;  // where a target set is silent; absent: none
  double sound_h = 24;                  // age of the bottle up to which the value holds
  double indicative_h = 24;             // and up to which it is a hint; older: not this reading
  std::vector<std::string> interferences;
  std::vector<MethodKind> methods;  // the first is the counter's own
  Origin origin;

  // Nothing if the analyte is not read that way.
  const MethodKind* method(Method m) const;
};

// What a drop titration says: each drop stands for one step of the method, as told on the bottle; the last
// drop that changes the colour counts whole. `dilution`: (sample + water) / sample. In the analyte's unit.
double value_of_drops(const MethodKind& method, double drops, double dilution = 1);

// Sorted by id; the span lives as long as the program.
std::span<const AnalyteKind> analyte_kinds();
const AnalyteKind* find_analyte(std::string_view id);  // nullptr: not known

// "7.60", "100": with the analyte's decimals, a point, no unit.
std::string format_value(const AnalyteKind& kind, double value);
// "7.60", "100 mg/L CaCO3".
std::string format_with_unit(const AnalyteKind& kind, double value);

// Reads one file of analysis/readings; all faults of it at once.
tl::expected<AnalyteKind, std::vector<Fault>> read_analyte(std::string_view text, std::string_view file);

namespace embedded {
std::span<const Text> readings();
}

}  // namespace brimline
