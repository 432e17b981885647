// SPDX-License-Identifier: GPL-3.0-or-later
// A short letter: when the next bottle of a vessel is due, and what for.
#pragma once

#include <string>
#include <vector>

#include "printing/pages.h"
#include "station/reminder/due.h"
#include "station/wording/shop_details.h"

namespace brimline {

struct Reminder {
  std::string title, shop, code, scan, footer, page;
  std::vector<std::string> to;  // name and street
  std::vector<std::string> lines;
};

Reminder make_reminder(const DueVisit& due, const ShopDetails& shop, const Words& words, const Instant& now);

Pages lay_out(const Reminder& reminder, Paper paper);

}  // namespace brimline
