// SPDX-License-Identifier: GPL-3.0-or-later
// Every built-in profile is opened and judged; every kind of mistake is told with its line.
#include "devices/profile.h"

#include <gtest/gtest.h>

#include <filesystem>
#include <fstream>
#include <iterator>

#include "analysis/panel/analyte.h"

namespace brimline {
namespace {

const std::filesystem::path kFolder = std::filesystem::path(BRIMLINE_SOURCE_DIR) / "devices/profiles";

std::string text_of(const std::filesystem::path& file) {
  std::ifstream in(file);
  return std::string((std::istreambuf_iterator<char>(in)), {});
}

TEST(Profiles, AreAllRead) {
  const ProfileFolder folder = profiles_in(kFolder.string());
  for (const Fault& fault : folder.faults) ADD_FAILURE() << fault.text();
  const auto builtin = builtin_profiles();
  ASSERT_EQ(builtin.size(), folder.profiles.size());
  ASSERT_GE(builtin.size(), 2u);
  for (const Profile& profile : builtin) {
    EXPECT_TRUE(std::filesystem::exists(kFolder / (profile.id + ".toml"))) << profile.id;
    EXPECT_NE(profile.note.find("nvented"), std::string::npos) << profile.id;
    EXPECT_EQ(load_profile(profile.id)->name, profile.name);
    for (const MethodRow& row : profile.methods) {
      const AnalyteKind* kind = find_analyte(row.analyte);
      ASSERT_TRUE(kind) << row.analyte;
      EXPECT_TRUE(kind->possible.holds(row.high * row.factor)) << profile.id << " " << row.analyte;
    }
  }
}

struct Mistake {
  const char* name;
  std::string from, to;  // in bench_lines.toml
  std::string told;      // part of the fault
};
class Mistakes : public testing::TestWithParam<Mistake> {};

TEST_P(Mistakes, AreToldWithTheirLine) {
  std::string text = text_of(kFolder / "bench_lines.toml");
  const size_t at = text.find(GetParam().from);
  ASSERT_NE(at, std::string::npos);
  text.replace(at, GetParam().from.size(), GetParam().to);
  const auto line = 1 + std::count(text.begin(), text.begin() + static_cast<long>(at), '\n');
  const auto profile = read_profile(text, "x.toml");
  ASSERT_FALSE(profile);
  bool found = false, on_line = false;
  for (const Fault& fault : profile.error()) {
    if (fault.text().find(GetParam().told) == std::string::npos) continue;
    found = true;
    on_line = on_line || std::abs(fault.line - static_cast<int>(line)) <= 1;
  }
  EXPECT_TRUE(found) << profile.error().front().text();
  EXPECT_TRUE(on_line) << profile.error().front().text() << " but it stands in line " << line;
}

INSTANTIATE_TEST_SUITE_P(
    All, Mistakes,
    testing::Values(Mistake{"unknown_key", "baud = 9600", "baud = 9600\nspeed = 1", "`speed` is not known"},
                    Mistake{"text_for_number", "baud = 9600", "baud = \"9600\"", "`baud` is text"},
                    Mistake{"odd_baud", "baud = 9600", "baud = 7", "`baud` is 7"},
                    Mistake{"parity", "parity = \"none\"", "parity = \"maybe\"", "`parity` is \"maybe\""},
                    Mistake{"protocol", "\"ascii_lines\"", "\"telepathy\"", "`protocol` is \"telepathy\""},
                    Mistake{"field", "\"unit\", \"mark\"", "\"units\", \"mark\"", "\"units\" is not known"},
                    Mistake{"field_twice", "\"unit\", \"mark\"", "\"unit\", \"unit\"", "stands twice"},
                    Mistake{"delimiter", "delimiter = \",\"", "delimiter = \".\"", "decimal mark too"},
                    Mistake{"checksum", "\"crc16\"", "\"md5\"", "`checksum` is \"md5\""},
                    Mistake{"mark", "over = \"HI\"", "over = \"9\"", "could be a number"},
                    Mistake{"analyte", "\"free_chlorine\"", "\"free_clorine\"", "is not known"},
                    Mistake{"code_twice", "code = \"12\"", "code = \"11\"", "stands twice"},
                    Mistake{"range", "high = 8.0", "high = -1.0", "range"},
                    Mistake{"sd", "sd = 0.05", "sd = 0.0", "`sd`"},
                    Mistake{"factor", "factor = 1.0", "", "not the unit"},
                    Mistake{"impossible", "high = 8.6", "high = 20.0", "beyond what ph can be"},
                    Mistake{"silence", "silence_s = 6.0", "silence_s = 0.0", "`silence_s`"},
                    Mistake{"syntax", "[serial]", "[serial", "expected TOML"}),
    [](const auto& one) { return one.param.name; });

TEST(Profile, MissingFileIsOneFault) {
  const auto profile = load_profile("/nowhere/at/all.toml");
  ASSERT_FALSE(profile);
  EXPECT_EQ(profile.error().size(), 1u);
}

}  // namespace
}  // namespace brimline
