// SPDX-License-Identifier: GPL-3.0-or-later
// An overnight test as JSON (brimline-overnight/1), as the store keeps it. Read strictly.
#pragma once

#include <string_view>
#include <vector>

#include <nlohmann/json_fwd.hpp>
#include <tl/expected.hpp>

#include "analysis/fields.h"
#include "station/overnight/overnight_test.h"

namespace brimline {

nlohmann::ordered_json overnight_to_json(const OvernightTest& test);
tl::expected<OvernightTest, std::vector<Fault>> read_overnight(std::string_view json, std::string_view file);

}  // namespace brimline
