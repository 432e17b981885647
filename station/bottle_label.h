// SPDX-License-Identifier: GPL-3.0-or-later
// What stands on a bottle: "B-0042".
#pragma once

#include <cstdint>
#include <string>

namespace brimline {

inline std::string bottle_label(std::int64_t number) {
  std::string digits = std::to_string(number);
  while (digits.size() < 4) digits.insert(0, "0");
  return "B-" + digits;
}

}  // namespace brimline
