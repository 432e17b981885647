// SPDX-License-Identifier: GPL-3.0-or-later
// Invented visits for the tests of the sheet: nobody's pool, nobody's name.
#pragma once

#include "station/visit.h"
#include "station/wording/shop_details.h"

namespace brimline {

// A whole household visit with a plan of five steps, going home on Sunday 14 June 2026 at 17:30.
Visit sample_visit();
// The visit of four weeks before.
Visit sample_earlier_visit();
// A hotel's water: no home plan.
Visit sample_refused_visit();
// The same visit with every text three times as long.
Visit sample_long_visit();
ShopDetails sample_shop();

}  // namespace brimline
