// SPDX-License-Identifier: GPL-3.0-or-later
// The long run of the wire: a million frames through each decoder. Prints the table that is kept in
// million_frames.txt. Arguments: frames (1,000,000 by default), a seed.
#include <cstdlib>
#include <iostream>

#include "devices/profile.h"
#include "tests/long/million_frames.h"

int main(int count, char** words) {
  using namespace brimline;
  const std::int64_t frames = count > 1 ? std::strtoll(words[1], nullptr, 10) : 1000000;
  const auto seed = static_cast<unsigned>(count > 2 ? std::strtoul(words[2], nullptr, 10) : 1);
  std::vector<tests::FrameTally> tallies;
  for (const Profile& profile : builtin_profiles())
    tallies.push_back(tests::send_frames(profile.id, frames, seed));
  std::cout << tests::frames_table(tallies);
}
