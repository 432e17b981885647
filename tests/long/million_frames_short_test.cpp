// SPDX-License-Identifier: GPL-3.0-or-later
// Ten thousand frames through every built-in profile, one in a hundred damaged: the short form of
// million_frames.
#include "tests/long/million_frames.h"

#include <gtest/gtest.h>

#include "devices/profile.h"

namespace brimline::tests {
namespace {

class Frames : public testing::TestWithParam<std::string> {};

TEST_P(Frames, NoneIsWrongLostOrDoubled) {
  const FrameTally tally = send_frames(GetParam(), 10000, 3);
  EXPECT_GE(tally.frames, 10000);
  EXPECT_GT(tally.readings, 500);
  EXPECT_EQ(tally.told, tally.readings) << frames_table({tally});
  EXPECT_EQ(tally.lost, 0) << frames_table({tally});
  EXPECT_EQ(tally.doubled, 0) << frames_table({tally});
  EXPECT_GT(tally.faults.size(), 10u);
  EXPECT_GT(tally.troubles, 10);
  EXPECT_EQ(tally.wrong, 0) << frames_table({tally});
}

std::vector<std::string> profile_ids() {
  std::vector<std::string> out;
  for (const Profile& profile : builtin_profiles()) out.push_back(profile.id);
  return out;
}

INSTANTIATE_TEST_SUITE_P(EveryProfile, Frames, testing::ValuesIn(profile_ids()),
                         [](const auto& one) { return one.param; });

}  // namespace
}  // namespace brimline::tests
