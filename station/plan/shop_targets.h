// SPDX-License-Identifier: GPL-3.0-or-later
// The targets a shop goes by: a set that is built in, by its id, or a file of its own; the counter's own is a
// copy of the household set that the shop edits row by row.
#pragma once

#include <string>
#include <vector>

#include <tl/expected.hpp>

#include "analysis/findings/targets.h"

namespace brimline {

// `name`: an id of target_sets(), or the path of a TOML file (a name with a dot or a slash).
tl::expected<TargetSet, std::vector<Fault>> targets_named(const std::string& name);

// The shop's copy in `file`; the household set where the name is empty or no such file is there.
tl::expected<TargetSet, std::vector<Fault>> shop_targets(const std::string& file);
// The set as a file that read_targets reads back to the same rows.
std::string targets_to_toml(const TargetSet& set);

// What a shop may change of a row, in the analyte's unit.
struct OwnTarget {
  std::optional<double> low, high, aim;
  std::string source;  // who says so
};
// Row `row` of shop_targets(file) becomes `own`, or again what is built in; the file is written whole. A row
// that cannot be is refused as the file would be, and the file stays as it was.
tl::expected<void, std::vector<Fault>> keep_target(const std::string& file, size_t row,
                                                   const std::optional<OwnTarget>& own);

}  // namespace brimline
