// SPDX-License-Identifier: GPL-3.0-or-later
// Random work of a counter on a store, what it was told is kept, and the proof that it is.
#pragma once

#include <cstdint>
#include <map>
#include <string>

#include "station/store/store.h"

namespace brimline::tests {

// Of one visit: what the store has answered for.
struct Answered {
  int readings = 0;
  bool finished = false;
  int revision = 0;  // content kept whole under this number
};
using Ledger = std::map<std::string, Answered>;

// The reading that a visit has at a place: any other there is a loss.
Reading worked_reading(const std::string& visit, int position, int revision);

// Works until it is stopped from outside or three changes were refused. After each change that the
// store has answered for, one line on `answers` ("VISIT READINGS FINISHED REVISION"); for each refusal
// a line "! WHY". `round` keeps the ids of this worker apart from all others'.
void work_at_random(const std::string& url, unsigned seed, const std::string& round, int answers);

// Takes a whole line of `work_at_random` into the ledger; gives what was refused back.
std::string take_answer(const std::string& line, Ledger& ledger);

struct Losses {
  std::int64_t confirmed = 0;  // readings that were answered for
  std::int64_t lost = 0;       // of these, missing or changed; visits not finished any more count too
};
Losses losses_of(Store& store, const Ledger& ledger);

}  // namespace brimline::tests
