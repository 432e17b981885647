// SPDX-License-Identifier: GPL-3.0-or-later
#include "devices/session.h"

#include <gtest/gtest.h>

#include "devices/line_form.h"

namespace brimline {
namespace {

class SessionTest : public testing::Test {
 protected:
  std::string frame(const std::string& serial, double value, const std::string& code = "11") {
    return line_of(profile, *profile.method(code), {serial, "B-1", value, std::nullopt});
  }
  size_t readings(const Said& said) {
    size_t count = 0;
    for (const auto& one : said.told) count += std::holds_alternative<InstrumentReading>(one);
    return count;
  }
  size_t troubles(const Said& said, TroubleKind what) {
    size_t count = 0;
    for (const auto& one : said.told)
      if (const auto* trouble = std::get_if<Trouble>(&one)) count += trouble->what == what;
    return count;
  }
  const Profile profile = *load_profile("bench_lines");
  Session session{profile};
};

TEST_F(SessionTest, TellsTheSameSerialOnceAndANewOneAgain) {
  session.opened(Millis(0));
  EXPECT_EQ(readings(session.received(frame("1", 2), Millis(10))), 1u);
  EXPECT_EQ(readings(session.received(frame("1", 2), Millis(20))), 0u);
  EXPECT_EQ(readings(session.received(frame("2", 2), Millis(30))), 1u);
  EXPECT_EQ(readings(session.received(frame("1", 7, "21"), Millis(40))), 1u);  // another method's reading
  session.opened(Millis(50));                                                  // pulled out and back
  EXPECT_EQ(readings(session.received(frame("2", 2), Millis(60))), 0u);
  EXPECT_EQ(readings(session.received(frame("3", 2), Millis(70))), 1u);
  EXPECT_EQ(readings(session.received(frame("", 2), Millis(80))), 1u);  // no serial: each counts
  EXPECT_EQ(readings(session.received(frame("", 2), Millis(90))), 1u);
}

TEST_F(SessionTest, TellsSilenceOnceUntilSomethingIsHeard) {
  session.opened(Millis(0));
  ASSERT_EQ(session.wake(), *profile.silence);
  EXPECT_EQ(troubles(session.waited(*profile.silence - Millis(1)), TroubleKind::silent), 0u);
  EXPECT_EQ(troubles(session.waited(*profile.silence), TroubleKind::silent), 1u);
  EXPECT_FALSE(session.wake());
  EXPECT_EQ(troubles(session.waited(*profile.silence * 2), TroubleKind::silent), 0u);
  session.received("#idle\r\n", Millis(20000));
  EXPECT_EQ(session.wake(), Millis(20000) + *profile.silence);
  EXPECT_EQ(troubles(session.waited(Millis(20000) + *profile.silence), TroubleKind::silent), 1u);
}

// Noise is no sign of life.
TEST_F(SessionTest, TellsSilenceUnderNoise) {
  session.opened(Millis(0));
  for (int at = 100; at < 6000; at += 100) session.received("\x80\x81", Millis(at));
  EXPECT_EQ(troubles(session.waited(*profile.silence), TroubleKind::silent), 1u);
}

TEST_F(SessionTest, MergesGarbledToOneASecond) {
  session.opened(Millis(0));
  size_t told = 0;
  for (int i = 0; i < 50; ++i) {
    std::string broken = frame("1", 2);
    broken[5] = '?';
    told += troubles(session.received(broken, Millis(100 * i)), TroubleKind::garbled);
  }
  EXPECT_EQ(told, 5u);
}

TEST_F(SessionTest, TellsEachUnknownMethodAndEachValueOutOfRange) {
  session.opened(Millis(0));
  MethodRow other = *profile.method("11");
  other.code = "ZZ";
  const std::string unknown = line_of(profile, other, {"1", "", 2, std::nullopt});
  EXPECT_EQ(troubles(session.received(unknown + unknown, Millis(1)), TroubleKind::unknown_method), 2u);
  EXPECT_EQ(troubles(session.received(frame("2", 9) + frame("3", 9), Millis(2)), TroubleKind::out_of_range),
            2u);
}

}  // namespace
}  // namespace brimline
