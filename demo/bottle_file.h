// SPDX-License-Identifier: GPL-3.0-or-later
// A bottle of the invented shop: its true water, what the emulated photometer measures of it, and
// what the clerk types by hand. One file a bottle, demo/bottles/NAME.toml, read strictly.
//
//   code = "B-1012"
//   note = "invented: ..."                    # must say that it is invented
//   visit = "../visits/plaster_pool.json"     # optional: the visit it belongs to, from this file's folder
//   temperature_c = 22
//   measure = ["free_chlorine", "ph"]         # in this order, each of [water]
//   [water]
//   free_chlorine = 0.6                       # in the analyte's only unit
//   ph = 7.9
//   [typed]                                   # optional
//   calcium_hardness = 318
#pragma once

#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include <tl/expected.hpp>

#include "analysis/fields.h"
#include "analysis/panel/reading.h"

namespace brimline::demo {

struct BottleFile {
  std::string code, note;
  std::optional<std::string> visit;  // as written
  double temperature_c = 25;
  std::vector<AnalyteId> measure;
  std::map<AnalyteId, double> water;  // true values, in each analyte's unit
  std::map<AnalyteId, double> typed;
};

// All faults of the file at once.
tl::expected<BottleFile, std::vector<Fault>> read_bottle(std::string_view text, std::string_view file);
tl::expected<BottleFile, std::vector<Fault>> read_bottle_file(const std::string& path);

}  // namespace brimline::demo
