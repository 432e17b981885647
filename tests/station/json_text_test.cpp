// SPDX-License-Identifier: GPL-3.0-or-later
// Forms as text against nlohmann's own writing and reading.
#include "station/json_text.h"

#include <gtest/gtest.h>

#include <cmath>
#include <cstring>
#include <limits>
#include <random>

#include <nlohmann/json.hpp>

#include "station/visit_json.h"
#include "tests/station/whole_visit.h"

namespace brimline::tests {
namespace {

using nlohmann::ordered_json;

std::string dumped(const ordered_json& form) {
  return form.dump(-1, ' ', false, ordered_json::error_handler_t::replace);
}

TEST(JsonText, IsWhatTheLibraryWrites) {
  const ordered_json whole = visit_to_json(read_visit(kWholeVisit, "whole.json").value());
  EXPECT_EQ(ordered_json::parse(json_text(whole)), whole);
  for (const char* text :
       {"{}", "[]", "null", "true", "[false,{\"a\":[]},{}]", "\"\"", "\"Ørsted – 水 \\u2028\"",
        "\"a\\\"b\\\\c\\nd\\u0000e\\u007f\"", "{\"a\\\"\":1,\"\":-2}",
        "[0,-1,9007199254740993,18446744073709551615,-9223372036854775808]", "[7.0,-0.0,0.1,7.43,-2.5]"}) {
    const ordered_json form = ordered_json::parse(text);
    EXPECT_EQ(json_text(form), dumped(form));
  }
}

TEST(JsonText, ANumberComesBackToTheLastBit) {
  std::mt19937_64 random(7);
  for (int i = 0; i < 200'000; ++i) {
    const auto bits = random();
    double value = 0;
    std::memcpy(&value, &bits, sizeof value);
    const std::string text = json_text(value);
    if (!std::isfinite(value)) {
      EXPECT_EQ(text, "null");
      continue;
    }
    const ordered_json again = ordered_json::parse(text);
    ASSERT_TRUE(again.is_number()) << text;
    EXPECT_EQ(again.get<double>(), value) << text;
  }
  EXPECT_EQ(json_text(std::numeric_limits<double>::infinity()), "null");
}

TEST(JsonText, BytesThatAreNoUtf8AreReplaced) {
  for (const std::string& text : {std::string("Andr\xe9"), std::string("\xff\xfe"), std::string("a\xe2\x82")})
    EXPECT_EQ(json_text(ordered_json{{text, text}}), dumped(ordered_json{{text, text}}));
}

}  // namespace
}  // namespace brimline::tests
