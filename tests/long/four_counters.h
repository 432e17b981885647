// SPDX-License-Identifier: GPL-3.0-or-later
// Counters of one shop on one server, each with its journal, while the wire is cut again and again.
#pragma once

#include <cstdint>
#include <filesystem>
#include <string>

namespace brimline::tests {

struct CountersTally {
  int counters = 0, visits_each = 0, cuts = 0;
  std::int64_t written = 0;                              // pieces of work the counters were answered for
  std::int64_t visits = 0;                               // in the shared store
  std::int64_t missing = 0;                              // visits not there, or not as they were written
  std::int64_t readings_lost = 0, readings_doubled = 0;  // of the bottle that all counters read
  std::int64_t edits_lost = 0;          // of cards that two counters edited, each its own field
  std::int64_t left = 0;                // work still in a journal at the end
  int faults = 0;                       // of the shared store's own checks
  double slowest_ms = 0, usual_ms = 0;  // one piece of work at the counter: longest, median
  double seconds = 0;
};

CountersTally work_at_counters(const std::filesystem::path& folder, int counters, int visits_each,
                               unsigned seed);
std::string table_of(const CountersTally& tally);

}  // namespace brimline::tests
