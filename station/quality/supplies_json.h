// SPDX-License-Identifier: GPL-3.0-or-later
// Reagents and instrument checks as a file (brimline-supplies/1), for asking without a store.
#pragma once

#include <string_view>
#include <vector>

#include <tl/expected.hpp>

#include "analysis/fields.h"
#include "analysis/panel/supplies.h"

namespace brimline {

// All faults of the file, each with its line; never half of it.
tl::expected<Supplies, std::vector<Fault>> read_supplies(std::string_view json, std::string_view file);

}  // namespace brimline
