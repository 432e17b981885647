// SPDX-License-Identifier: GPL-3.0-or-later
// What a counter knows of the shared store, brought up to date in its own.
#pragma once

#include "station/store/waiting_work.h"

namespace brimline {

// Bottles that wait, overnight tests and readings of no bottle, as the shared store has them; what has work
// waiting here is left. Whether anything changed.
Stored<bool> pull_bottles(Store& shared, Store& own);

// Staff, reagents, instrument checks and control charts; customers that were erased there are erased here.
Stored<bool> pull_books(Store& shared, Store& own);

}  // namespace brimline
