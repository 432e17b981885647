// SPDX-License-Identifier: GPL-3.0-or-later
// What the Emergency page says: short, in the order to act. The numbers are the shop's own.
#pragma once

#include <QVariantList>

#include "station/wording/shop_details.h"

namespace brimline {

// {title, lines}
QVariantList emergency_cards();
// {name, number}; one entry that says so where the shop has set none.
QVariantList emergency_numbers(const ShopDetails& shop);

}  // namespace brimline
