// SPDX-License-Identifier: GPL-3.0-or-later
// The shop as it signs its sheets: a setting of each shop, never built in. An emergency number
// differs from country to country, so with none set the sheet says "your local emergency number".
#pragma once

#include <optional>
#include <string>
#include <vector>

namespace brimline {

// One number to call and what it is for: {"Emergency", "911"}.
struct EmergencyNumber {
  std::string label, number;
  friend bool operator==(const EmergencyNumber&, const EmergencyNumber&) = default;
};

struct ShopDetails {
  std::string name;  // empty: the sheet stands without a shop's name
  std::optional<std::string> street, phone;
  std::vector<EmergencyNumber> emergency;  // the first is the one called where somebody cannot breathe
  friend bool operator==(const ShopDetails&, const ShopDetails&) = default;
};

// The [shop] part of the counter's settings file (INI: name, street, phone, emergency, poison_line). A
// missing key stays empty; a missing file is a shop without a name.
ShopDetails read_shop_details(const std::string& settings_file);

}  // namespace brimline
