// SPDX-License-Identifier: GPL-3.0-or-later
// The next bottle as an entry for the customer's own calendar.
#pragma once

#include <string>

#include "station/reminder/due.h"
#include "station/wording/shop_details.h"

namespace brimline {

// An iCalendar object (RFC 5545) of one event on the day the bottle is due, with a reminder the evening
// before. Its id is the visit's opaque code, the same each time, so that a second file replaces the first; no
// name and no address of the customer. UTF-8, lines ended by CRLF and folded at 75 octets.
std::string calendar_entry(const DueVisit& due, const ShopDetails& shop, const Words& words,
                           const Instant& now);

}  // namespace brimline
