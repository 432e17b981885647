// SPDX-License-Identifier: GPL-3.0-or-later
// Two changes of one JSON value, joined: what only one side changed is taken from that side.
#pragma once

#include <string>

#include <nlohmann/json.hpp>
#include <tl/expected.hpp>

namespace brimline {

// Both sides changed the same field, each to another value. Absent is null.
struct Clash {
  std::string field;  // "customer/phone"
  nlohmann::ordered_json ours, theirs;
};

// Objects are joined field by field; arrays of one length element by element; where both added at the end,
// `theirs` comes first and then what `ours` added; any other array is one value. `ours_win`: no clash.
tl::expected<nlohmann::ordered_json, Clash> joined(const nlohmann::ordered_json& base,
                                                   const nlohmann::ordered_json& ours,
                                                   const nlohmann::ordered_json& theirs, bool ours_win);

}  // namespace brimline
