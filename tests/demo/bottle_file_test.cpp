// SPDX-License-Identifier: GPL-3.0-or-later
// Every demo bottle is opened and judged.
#include "demo/bottle_file.h"

#include <gtest/gtest.h>

#include <filesystem>

namespace brimline::demo {
namespace {

namespace fs = std::filesystem;
const fs::path kFolder = fs::path(BRIMLINE_SOURCE_DIR) / "demo/bottles";

TEST(Bottles, AreAllReadAndInvented) {
  size_t files = 0;
  for (const auto& entry : fs::directory_iterator(kFolder)) {
    const auto bottle = read_bottle_file(entry.path().string());
    ++files;
    if (!bottle) {
      for (const Fault& fault : bottle.error()) ADD_FAILURE() << fault.text();
      continue;
    }
    EXPECT_TRUE(bottle->code.starts_with("B-")) << entry.path();
    EXPECT_FALSE(bottle->measure.empty()) << entry.path();
    if (bottle->visit) {
      EXPECT_TRUE(fs::exists(kFolder / *bottle->visit)) << entry.path() << " " << *bottle->visit;
    }
  }
  EXPECT_GE(files, 3u);
}

constexpr const char* kSound =
    "code = \"B-1\"\nnote = \"invented\"\ntemperature_c = 22\nmeasure = [\"ph\"]\n[water]\nph = 7.4\n";

std::string with(const std::string& from, const std::string& to) {
  std::string text = kSound;
  text.replace(text.find(from), from.size(), to);
  return text;
}

TEST(Bottle, IsReadStrictly) {
  const auto bottle = read_bottle(kSound, "b.toml");
  ASSERT_TRUE(bottle) << bottle.error().front().text();
  EXPECT_EQ(bottle->water.at("ph"), 7.4);
  EXPECT_FALSE(bottle->visit);
  for (const auto& [from, to] : std::vector<std::pair<std::string, std::string>>{{"invented", "found"},
                                                                                 {"ph = 7.4", "ph = 15"},
                                                                                 {"ph = 7.4", "ph = \"7.4\""},
                                                                                 {"ph = 7.4", "hp = 7.4"},
                                                                                 {"[\"ph\"]", "[\"iron\"]"},
                                                                                 {"22", "99"},
                                                                                 {"B-1", "B,1"},
                                                                                 {"code", "label"}}) {
    const auto wrong = read_bottle(with(from, to), "b.toml");
    EXPECT_FALSE(wrong) << to;
    if (!wrong) {
      EXPECT_TRUE(wrong.error().front().text().starts_with("b.toml:")) << wrong.error().front().text();
    }
  }
}

}  // namespace
}  // namespace brimline::demo
