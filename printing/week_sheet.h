// SPDX-License-Identifier: GPL-3.0-or-later
// The owner's week on paper.
#pragma once

#include "printing/pages.h"
#include "station/week/week_words.h"
#include "station/wording/shop_details.h"

namespace brimline {

struct WeekSheet {
  std::string title, shop, span, footer, page;
  std::vector<WeekPart> parts;
};

WeekSheet make_week_sheet(const OwnersWeek& week, const ShopDetails& shop, const Words& words);

Pages lay_out(const WeekSheet& sheet, Paper paper);

}  // namespace brimline
