// SPDX-License-Identifier: GPL-3.0-or-later
// The targets a shop goes by: a set that is built in, by its id, or a file of its own.
#pragma once

#include <string>
#include <vector>

#include <tl/expected.hpp>

#include "analysis/findings/targets.h"

namespace brimline {

// `name`: an id of target_sets(), or the path of a TOML file (a name with a dot or a slash).
tl::expected<TargetSet, std::vector<Fault>> targets_named(const std::string& name);

}  // namespace brimline
