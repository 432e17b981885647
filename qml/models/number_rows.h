// SPDX-License-Identifier: GPL-3.0-or-later
// Where each number of the bottle comes from.
#pragma once

#include <QVariantList>

#include "qml/models/counter.h"

namespace brimline {

// A reading each: {name, number: "7.90 ± 0.05 ...", detail: how and with what it was read, how far one
// reading of that method spreads, and who says so}. Empty with no bottle on the counter.
QVariantList number_rows(const Counter& counter);

}  // namespace brimline
