// SPDX-License-Identifier: GPL-3.0-or-later
// The card for the wall and the screen: what to do at once, and the shop's own numbers.
#pragma once

#include <string>
#include <vector>

#include "printing/pages.h"
#include "station/wording/shop_details.h"
#include "station/wording/words.h"

namespace brimline {

struct EmergencyCard {
  struct Part {
    std::string title;
    std::vector<std::string> lines;
  };
  std::string title, shop, note, page;
  std::vector<EmergencyNumber> numbers;  // one entry that says so where the shop has set none
  std::vector<Part> parts;
};

EmergencyCard make_emergency_card(const ShopDetails& shop, const Words& words);

// One page on every paper, in letters to be read from a step away.
Pages lay_out(const EmergencyCard& card, Paper paper);

}  // namespace brimline
