// SPDX-License-Identifier: GPL-3.0-or-later
// Programs killed, servers killed, disks full and logs torn under random work on a store.
#pragma once

#include <cstdint>
#include <filesystem>
#include <string>

namespace brimline::tests {

struct FaultTally {
  std::string kind = {};
  int runs = 0, faults = 0;    // `faults`: runs in which the fault met work that had begun
  std::int64_t confirmed = 0;  // readings that the store had answered for
  std::int64_t lost = 0;       // of these
  int unsound = 0;             // runs after which the integrity checks found something
  int said = 0, unsaid = 0;    // faults told in one sentence; told otherwise or not at all
  std::string sentence = {};   // the last one
};

// Each in a folder of its own under `folder`; the same seed gives the same work.
FaultTally kill_programs(const std::filesystem::path& folder, int runs, unsigned seed);
FaultTally kill_servers(const std::filesystem::path& folder, int runs, unsigned seed);
FaultTally fill_disks(const std::filesystem::path& folder, int runs, unsigned seed);
FaultTally tear_logs(const std::filesystem::path& folder, int runs, unsigned seed);

std::string table_head();
std::string table_line(const FaultTally& tally);

}  // namespace brimline::tests
