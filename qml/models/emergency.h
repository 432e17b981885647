// SPDX-License-Identifier: GPL-3.0-or-later
// The emergency card as the screen shows it.
#pragma once

#include <QVariantList>

#include "printing/emergency_card.h"

namespace brimline {

// {title, lines}
QVariantList emergency_cards(const EmergencyCard& card);
// {name, number}
QVariantList emergency_numbers(const EmergencyCard& card);

}  // namespace brimline
