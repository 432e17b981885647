// SPDX-License-Identifier: GPL-3.0-or-later
#include "analysis/fields.h"

#include <gtest/gtest.h>

namespace brimline {
namespace {

TEST(Fields, ReadsWhatIsThereAndHasNoFaults) {
  auto f = Fields::parse("id = \"ph\"\ndecimals = 2\nrange = [0, 14.0]\n[default]\nlow = 7.2\n", "ph.toml");
  ASSERT_TRUE(f);
  EXPECT_EQ(f->text("id"), "ph");
  EXPECT_EQ(f->whole("decimals"), 2);
  EXPECT_EQ(f->numbers("range"), (std::vector<double>{0, 14}));
  EXPECT_DOUBLE_EQ(f->table("default").number("low"), 7.2);
  EXPECT_EQ(f->number_if("high"), std::nullopt);
  EXPECT_TRUE(f->finish().empty());
}

TEST(Fields, TextWhereANumberIsExpectedIsAFaultWithItsLine) {
  auto f = Fields::parse("id = \"ph\"\nlow = \"5\"\n", "ph.toml");
  ASSERT_TRUE(f);
  f->text("id");
  f->number("low");
  const auto faults = f->finish();
  ASSERT_EQ(faults.size(), 1u);
  EXPECT_EQ(faults[0].text(), "ph.toml:2: `low` is text; expected a number");
}

// Found by the fuzzer: an assertion of the parser stood before its own error.
TEST(Fields, ATableWithANameThatIsNoneIsAFaultWithItsLine) {
  const auto f = Fields::parse("id = \"ph\"\n[&serial]\nbaud = 9600\n", "ph.toml");
  ASSERT_FALSE(f);
  EXPECT_EQ(f.error().line, 2);
}

// Found by the fuzzer: the parser's test for blanks reaches a point it promises never to reach.
TEST(Fields, ALetterBeyondAsciiBelongsInQuotesOrComments) {
  for (const char* letter : {"\xEF\xBB\xA3", "\xEF\xB3\xBF", "\xC3\xA9", "\xE3\x80\x81"}) {
    const auto f = Fields::parse("id = \"ph\"\n" + std::string(letter) + " = 1\n", "ph.toml");
    ASSERT_FALSE(f);
    EXPECT_EQ(f.error().line, 2);
  }
  EXPECT_TRUE(Fields::parse("\xEF\xBB\xBFid = \"ph\"\n", "ph.toml"));  // a byte order mark
  for (const char* sound :
       {"a = \"\u00e9 \\\" \u00e9\" # \u00e9\n", "a = '\u00e9\\'\nb = 1\n",
        "a = \"\"\"\n\u00e9 \" \u00e9\"\"\"\n", "a = '''\n\u00e9''' # \u00e9\n", "\"\u00e9\" = 1\n"})
    EXPECT_TRUE(Fields::parse(sound, "ph.toml")) << sound;
}

TEST(Fields, MissingAndUnknownKeysAreFaults) {
  auto f = Fields::parse("id = \"ph\"\nlwo = 7\n", "ph.toml");
  ASSERT_TRUE(f);
  f->text("id");
  f->number("low");
  const auto faults = f->finish();
  ASSERT_EQ(faults.size(), 2u);
  EXPECT_NE(faults[0].what.find("`low` is missing"), std::string::npos);
  EXPECT_NE(faults[1].what.find("`lwo` is not known"), std::string::npos);
}

TEST(Fields, SyntaxErrorSaysItsLine) {
  const auto f = Fields::parse("id = \"ph\"\nlow = = 1\n", "ph.toml");
  ASSERT_FALSE(f);
  EXPECT_EQ(f.error().line, 2);
}

}  // namespace
}  // namespace brimline
