// SPDX-License-Identifier: GPL-3.0-or-later
// The decoder of lines against its law: only a whole, sound frame becomes a reading.
#include "devices/line_decoder.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "devices/values.h"

namespace brimline {
namespace {

Profile builtin(const std::string& id) {
  return *load_profile(id);
}

std::string frame(const Profile& profile, const std::string& code, LineReading reading) {
  return line_of(profile, *profile.method(code), reading);
}

// What was heard of a decoder fed in one piece.
struct Told {
  std::vector<InstrumentReading> readings;
  std::vector<Trouble> troubles;
};
void add(Told& told, Heard heard) {
  for (auto& one : heard.told)
    if (auto* decoded = std::get_if<DecodedReading>(&one))
      told.readings.push_back(decoded->reading);
    else
      told.troubles.push_back(std::get<Trouble>(one));
}
Told hear(const Profile& profile, const std::string& bytes) {
  LineDecoder decoder(profile);
  Told told;
  add(told, decoder.opened(Millis(0)));
  add(told, decoder.received(bytes, Millis(1000)));
  return told;
}

class Lines : public testing::TestWithParam<std::string> {
 protected:
  const Profile profile = builtin(GetParam());
  const MethodRow row = profile.methods.front();
  const std::string sound = line_of(profile, row, {"000123", "B-0001", 2.35, std::nullopt});
};

TEST_P(Lines, ReadASoundFrame) {
  const Told told = hear(profile, sound);
  ASSERT_EQ(told.readings.size(), 1u) << sound;
  EXPECT_TRUE(told.troubles.empty());
  EXPECT_EQ(told.readings[0].analyte, "free_chlorine");
  EXPECT_DOUBLE_EQ(told.readings[0].value, 2.35);
  EXPECT_EQ(told.readings[0].sample, "B-0001");
  EXPECT_EQ(told.readings[0].serial, "000123");
  EXPECT_DOUBLE_EQ(told.readings[0].sd.value(), row.sd);
  EXPECT_FALSE(told.readings[0].clipped);
}

// Any one byte changed to any other: no reading, and something is said.
TEST_P(Lines, RefuseEveryChangedByte) {
  for (size_t at = 0; at < sound.size(); ++at)
    for (int change = 1; change < 256; ++change) {
      std::string broken = sound;
      broken[at] = static_cast<char>(broken[at] ^ change);
      EXPECT_TRUE(hear(profile, broken).readings.empty()) << "byte " << at << " to " << int(broken[at]);
      // The next sound line is read all the same, whatever the broken one left behind, once the
      // line's end was heard again or the start character tells.
      const Told next = hear(profile, broken + sound + sound);
      EXPECT_GE(next.readings.size(), profile.line.start.empty() ? 1u : 2u);
      EXPECT_FALSE(next.troubles.empty());
    }
}

TEST_P(Lines, RefuseEveryBrokenBeginningAndEnd) {
  for (size_t cut = 1; cut < sound.size(); ++cut) {
    EXPECT_TRUE(hear(profile, sound.substr(cut)).readings.empty()) << cut;
    EXPECT_TRUE(hear(profile, sound.substr(0, cut)).readings.empty()) << cut;
    if (!profile.line.start.empty()) {
      EXPECT_EQ(hear(profile, sound.substr(0, cut) + sound).readings.size(), 1u) << cut;
    }
  }
}

TEST_P(Lines, HearTheSameHoweverTheBytesArrive) {
  for (size_t piece = 1; piece < 2 * sound.size(); ++piece) {
    LineDecoder decoder(profile);
    Told told;
    add(told, decoder.opened(Millis(0)));
    const std::string all = sound + sound + sound;
    for (size_t at = 0; at < all.size(); at += piece)
      add(told, decoder.received(all.substr(at, piece), Millis(1000)));
    EXPECT_EQ(told.readings.size(), 3u) << piece;
    EXPECT_TRUE(told.troubles.empty()) << piece;
  }
}

TEST_P(Lines, DropAHalfFrameAfterAPause) {
  LineDecoder decoder(profile);
  Told told;
  add(told, decoder.opened(Millis(0)));
  add(told, decoder.received(sound.substr(0, 9), Millis(1000)));
  ASSERT_TRUE(decoder.wake());
  add(told, decoder.waited(*decoder.wake()));
  EXPECT_EQ(told.troubles.size(), 1u);
  add(told, decoder.received(sound, *decoder.wake() + Millis(5000)));
  EXPECT_EQ(told.readings.size(), 1u);
}

TEST_P(Lines, KeepTheirBufferBounded) {
  LineDecoder decoder(profile);
  decoder.opened(Millis(0));
  Told told;
  for (int i = 0; i < 1000; ++i) add(told, decoder.received(std::string(1000, 'x'), Millis(1000)));
  EXPECT_TRUE(told.readings.empty());
  EXPECT_GE(told.troubles.size(), 1u);
  add(told, decoder.received(profile.line.start.empty() ? profile.line.end + sound : sound, Millis(1001)));
  EXPECT_EQ(told.readings.size(), 1u);
}

TEST_P(Lines, TellARangeMarkAsClipped) {
  const Told above = hear(profile, line_of(profile, row, {"1", "B-1", row.high, Clip::above}));
  ASSERT_EQ(above.readings.size(), 1u);
  EXPECT_EQ(above.readings[0].clipped, Clip::above);
  EXPECT_DOUBLE_EQ(above.readings[0].value, row.high * row.factor);
  const Told below = hear(profile, line_of(profile, row, {"2", "B-1", row.low, Clip::below}));
  ASSERT_EQ(below.readings.size(), 1u);
  EXPECT_EQ(below.readings[0].clipped, Clip::below);
}

TEST_P(Lines, TellAValueBeyondTheRangeWithoutAMark) {
  for (const double value : {row.high + 1, -0.25}) {
    const Told told = hear(profile, line_of(profile, row, {"1", "B-1", value, std::nullopt}));
    EXPECT_TRUE(told.readings.empty());
    ASSERT_EQ(told.troubles.size(), 1u);
    EXPECT_EQ(told.troubles[0].what, TroubleKind::out_of_range) << told.troubles[0].text;
  }
}

TEST_P(Lines, TellAnUnknownMethod) {
  MethodRow other = row;
  other.code = "XX9";
  const Told told = hear(profile, line_of(profile, other, {"1", "B-1", 2, std::nullopt}));
  EXPECT_TRUE(told.readings.empty());
  ASSERT_EQ(told.troubles.size(), 1u);
  EXPECT_EQ(told.troubles[0].what, TroubleKind::unknown_method);
}

// A right checksum does not make a wrong field right.
TEST_P(Lines, RefuseFieldsThatAreNotOfTheirKind) {
  const auto with = [&](const std::string& from, const std::string& to) {
    std::string body = sound.substr(profile.line.start.size());
    body = body.substr(0, body.rfind(profile.line.delimiter) + 1);
    const size_t at = body.find(from);
    EXPECT_NE(at, std::string::npos) << from << " in " << body;
    if (at != std::string::npos) body.replace(at, from.size(), to);
    return profile.line.start + body + *checksum_text(profile.line.checksum, body) + profile.line.end;
  };
  const std::string decimal(1, profile.line.decimal);
  const std::string value = "2" + decimal + "35";
  EXPECT_EQ(hear(profile, with(value, value)).readings.size(), 1u);
  for (const std::string& wrong :
       std::vector<std::string>{"nan", "inf", "2", "2" + decimal + "3", "2" + decimal + "350", " " + value,
                                value + " ", "*" + value, "0x2" + decimal + "35", "2e0" + decimal + "35", "",
                                decimal + "35", "1234567890" + decimal + "00", "--2" + decimal + "35"})
    EXPECT_TRUE(hear(profile, with(value, wrong)).readings.empty()) << wrong;
  EXPECT_TRUE(hear(profile, with(row.unit, "g/L")).readings.empty());
  EXPECT_TRUE(hear(profile, with("B-0001", "B\t0001")).readings.empty());
  EXPECT_TRUE(
      hear(profile, with("B-0001", "B-0001" + std::string(1, profile.line.delimiter))).readings.empty());
}

INSTANTIATE_TEST_SUITE_P(Profiles, Lines, testing::Values("bench_lines", "comma_lines"),
                         [](const auto& one) { return one.param; });

// Units of the wire: one German degree is 10 mg/L of CaO, a millimole of acid is one of alkalinity
// (molar masses of CaO 56.077 and CaCO3 100.087 g/mol, IUPAC standard atomic weights).
TEST(CommaLines, ConvertToTheOnlyUnit) {
  const Profile profile = builtin("comma_lines");
  const auto hardness = hear(profile, frame(profile, "DHC", {"1", "", 10, std::nullopt})).readings;
  ASSERT_EQ(hardness.size(), 1u);
  EXPECT_NEAR(hardness[0].value, 10 * 10 * 100.087 / 56.077, 0.01);
  EXPECT_FALSE(hardness[0].sample);
  const auto alkalinity = hear(profile, frame(profile, "KS4", {"2", "", 2, std::nullopt})).readings;
  ASSERT_EQ(alkalinity.size(), 1u);
  EXPECT_NEAR(alkalinity[0].value, 2 * 100.087 / 2, 0.01);
  EXPECT_NEAR(alkalinity[0].sd.value(), 0.09 * 100.087 / 2, 0.01);
}

// With neither start character nor checksum a first line that may have begun before is not trusted.
TEST(PlainLines, DoNotTrustALineJoinedInTheMiddle) {
  Profile profile = builtin("comma_lines");
  profile.line.checksum.clear();
  profile.line.fields.pop_back();
  const std::string line = line_of(profile, profile.methods.front(), {"7", "B-1", 12.5, std::nullopt});
  const std::string whole = line_of(profile, profile.methods.front(), {"7", "B-1", 2.5, std::nullopt});
  LineDecoder decoder(profile);
  Told told;
  add(told, decoder.opened(Millis(0)));
  add(told, decoder.received(whole, Millis(3)));
  EXPECT_TRUE(told.readings.empty());
  EXPECT_EQ(told.troubles.size(), 1u);
  add(told, decoder.received(whole, Millis(4)));
  EXPECT_EQ(told.readings.size(), 1u);
  EXPECT_EQ(hear(profile, whole).readings.size(), 1u);
  EXPECT_EQ(hear(profile, line).troubles.front().what, TroubleKind::out_of_range);
}

TEST(AskedLines, AreAskedAtTheirPace) {
  Profile profile = builtin("comma_lines");
  profile.line.ask = "R\n";
  profile.line.ask_every = Millis(700);
  LineDecoder decoder(profile);
  decoder.opened(Millis(100));
  EXPECT_EQ(decoder.wake(), Millis(100));
  EXPECT_EQ(decoder.waited(Millis(100)).answer, "R\n");
  EXPECT_EQ(decoder.wake(), Millis(800));
  EXPECT_EQ(decoder.waited(Millis(300)).answer, "");
}

}  // namespace
}  // namespace brimline
