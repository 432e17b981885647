// SPDX-License-Identifier: GPL-3.0-or-later
#include "analysis/instant.h"

#include <gtest/gtest.h>

namespace brimline {
namespace {

// RFC 3339, section 5.8, examples.
TEST(Instant, ExamplesOfRfc3339) {
  const auto a = Instant::parse("1996-12-19T16:39:57-08:00");
  const auto b = Instant::parse("1996-12-20T00:39:57Z");
  ASSERT_TRUE(a && b);
  EXPECT_EQ(a->utc, b->utc);
  EXPECT_EQ(a->text(), "1996-12-19T16:39:57-08:00");
  ASSERT_TRUE(Instant::parse("1937-01-01T12:00:27.87+00:20"));
  EXPECT_EQ(Instant::parse("1937-01-01T12:00:27.87+00:20")->text(), "1937-01-01T12:00:27+00:20");
}

TEST(Instant, RefusesWhatIsNoWholeMoment) {
  for (const char* bad :
       {"", "2026-06-14", "2026-06-14T08:10:00", "2026-13-14T08:10:00Z", "2026-02-30T08:10:00Z",
        "2026-06-14T25:10:00Z", "2026-06-14T08:10:00.Z", "2026-06-14T08:10:00-5:00", "soon"})
    EXPECT_FALSE(Instant::parse(bad)) << bad;
}

}  // namespace
}  // namespace brimline
