// SPDX-License-Identifier: GPL-3.0-or-later
#include "station/quality/supplies_json.h"

#include <gmock/gmock.h>

namespace brimline::tests {
namespace {

const std::string kWhole = R"({"format": "brimline-supplies/1",
 "lots": [
  {"lot": "L-1", "analyte": "free_chlorine", "expires": "2026-05-31T23:59:59-05:00",
   "opened": "2026-04-02T09:00:00-05:00", "warmest_c": 24.5, "beside_chlorine": true, "gone": true},
  {"lot": "L-2"}],
 "checks": [{"instrument": "bench 1", "analyte": "ph", "at": "2026-05-01T08:00:00Z", "passed": false},
  {"instrument": "bench 1", "at": "2026-05-01T08:00:00Z", "passed": true}],
 "check_every_days": 14, "good_once_opened_days": 200, "warm_c": 25})";

TEST(SuppliesJson, IsReadWhole) {
  const auto found = read_supplies(kWhole, "s.json");
  ASSERT_TRUE(found) << found.error().front().text();
  ReagentLot first{"L-1",
                   Instant::parse("2026-05-31T23:59:59-05:00"),
                   Instant::parse("2026-04-02T09:00:00-05:00"),
                   24.5,
                   true,
                   "free_chlorine",
                   true};
  EXPECT_EQ(found->lots.at(0), first);
  EXPECT_EQ(found->lots.at(1).opened, std::nullopt);
  EXPECT_EQ(found->checks.at(0),
            (InstrumentCheck{"bench 1", "ph", *Instant::parse("2026-05-01T08:00:00Z"), false}));
  EXPECT_EQ(found->checks.at(1).analyte, std::nullopt);
  EXPECT_EQ(found->check_every_days, 14);
  EXPECT_EQ(found->good_once_opened_days, 200);
  EXPECT_EQ(found->warm_c, 25);
}

TEST(SuppliesJson, MistakesAreToldWithTheirLine) {
  const struct {
    std::string from, to, told;
    int line;
  } rows[] = {{"brimline-supplies/1", "brimline-visit/1", "format", 1},
              {"\"free_chlorine\"", "\"fre_chlorine\"", "unknown analyte", 3},
              {"2026-04-02T", "2026-44-02T", "opened", 4},
              {"24.5", "\"warm\"", "warmest_c", 4},
              {"\"lot\": \"L-2\"", "\"lot\": \"\"", "lot", 5},
              {"\"passed\": false", "\"passed\": 0", "passed", 6},
              {"\"passed\": true", "\"pased\": true", "pased", 7},
              {"\"at\": \"2026-05-01T08:00:00Z\", \"passed\": true", "\"passed\": true", "at", 7},
              {"14", "-1", "check_every_days", 8}};
  for (const auto& row : rows) {
    std::string text = kWhole;
    text.replace(text.find(row.from), row.from.size(), row.to);
    const auto found = read_supplies(text, "s.json");
    ASSERT_FALSE(found) << row.told;
    bool seen = false;
    for (const Fault& fault : found.error())
      seen = seen || (fault.line == row.line && fault.text().find(row.told) != std::string::npos);
    EXPECT_TRUE(seen) << row.told << ": " << found.error().front().text();
  }
  EXPECT_FALSE(read_supplies("[]", "s.json"));
}

}  // namespace
}  // namespace brimline::tests
