// SPDX-License-Identifier: GPL-3.0-or-later
// The Modbus RTU poller against a simulated instrument. Frames with printed CRCs are as several public
// test suites of the protocol have them.
#include "devices/modbus_decoder.h"

#include <gtest/gtest.h>

#include <bit>

#include "devices/session.h"

namespace brimline {
namespace {

using std::string_literals::operator""s;

TEST(ModbusFrame, HasItsCheckLowByteFirst) {
  EXPECT_EQ(modbus_frame("\x01\x03\x00\x00\x00\x0a"s), "\x01\x03\x00\x00\x00\x0a\xc5\xcd"s);
  EXPECT_EQ(modbus_frame("\x11\x03\x00\x6b\x00\x03"s), "\x11\x03\x00\x6b\x00\x03\x76\x87"s);
  EXPECT_EQ(modbus_frame("\x11\x06\x00\x01\x00\x03"s), "\x11\x06\x00\x01\x00\x03\x9a\x9b"s);
}

// The instrument of register_bench.toml.
struct Registers {
  std::uint16_t counter = 40, method = 7, mark = 0;
  float value = 2.25f;  // exact in single precision
  std::string sample = "B-0001";
  std::string answer() const {
    std::string out = "\x07\x03\x1a";
    const auto put = [&](unsigned word) {
      out += {static_cast<char>(word >> 8), static_cast<char>(word & 0xff)};
    };
    put(counter);
    put(method);
    const auto bits = std::bit_cast<std::uint32_t>(value);
    put(bits >> 16);
    put(bits & 0xffff);
    put(mark);
    std::string label = sample;
    label.resize(16, '\0');
    return modbus_frame(out + label);
  }
};

const Profile& register_bench() {
  static const Profile out = *load_profile("register_bench");
  return out;
}

struct Line {
  const Profile& profile = register_bench();
  Session session{profile};
  Registers registers;
  std::vector<InstrumentReading> readings;
  std::vector<Trouble> troubles;
  Millis at{0};
  Line() { session.opened(at); }
  void take(const Said& said) {
    for (const auto& one : said.told)
      if (const auto* reading = std::get_if<InstrumentReading>(&one))
        readings.push_back(*reading);
      else
        troubles.push_back(std::get<Trouble>(one));
  }
  // One poll that `bytes` answers; nothing answers where they are empty.
  std::string poll(const std::string& bytes) {
    at = std::max(at, *session.wake());
    const Said asked = session.waited(at);
    take(asked);
    if (!bytes.empty()) take(session.received(bytes, at + Millis(40)));
    at += profile.modbus.answer_timeout;
    take(session.waited(at));
    at += Millis(1000);
    return asked.answer;
  }
  std::string poll() { return poll(registers.answer()); }
};

TEST(Modbus, AsksForTheWholeBlock) {
  Line line;
  EXPECT_EQ(line.poll(), modbus_frame("\x07\x03\x00\x00\x00\x0d"s));
}

TEST(Modbus, TakesTheFirstCounterAsTheBaselineAndTellsEachLaterOneOnce) {
  Line line;
  line.poll();
  line.poll();
  EXPECT_TRUE(line.readings.empty());
  ++line.registers.counter;
  line.poll();
  line.poll();
  ASSERT_EQ(line.readings.size(), 1u);
  EXPECT_EQ(line.readings[0].analyte, "free_chlorine");
  EXPECT_EQ(line.readings[0].value, 2.25);
  EXPECT_EQ(line.readings[0].sample, "B-0001");
  EXPECT_EQ(line.readings[0].serial, "41");
  ++line.registers.counter;  // the same value again is a new reading
  line.poll();
  EXPECT_EQ(line.readings.size(), 2u);
  EXPECT_TRUE(line.troubles.empty());
}

TEST(Modbus, KeepsTheCounterWhileTheLineIsLost) {
  Line line;
  line.poll();
  line.session.opened(line.at);
  line.poll();
  EXPECT_TRUE(line.readings.empty());
  ++line.registers.counter;
  line.session.opened(line.at);
  line.poll();
  EXPECT_EQ(line.readings.size(), 1u);
}

TEST(Modbus, CounterGoesRound) {
  Line line;
  line.registers.counter = 0xffff;
  line.poll();
  line.registers.counter = 0;
  line.poll();
  EXPECT_EQ(line.readings.size(), 1u);
  EXPECT_TRUE(line.troubles.empty());
  line.registers.counter = 3;
  line.poll();
  EXPECT_EQ(line.readings.size(), 2u);
  EXPECT_EQ(line.troubles.size(), 1u);  // two were not seen
}

TEST(Modbus, RefusesEveryChangedByte) {
  const std::string sound = [] {
    Registers r;
    r.counter = 41;
    return r.answer();
  }();
  for (size_t at = 0; at < sound.size(); ++at)
    for (int change = 1; change < 256; ++change) {
      Line line;
      line.poll();
      std::string broken = sound;
      broken[at] = static_cast<char>(broken[at] ^ change);
      line.poll(broken);
      EXPECT_TRUE(line.readings.empty()) << at << " " << change;
      EXPECT_FALSE(line.troubles.empty()) << at << " " << change;
      line.poll(sound);
      EXPECT_EQ(line.readings.size(), 1u) << at << " " << change;
    }
}

TEST(Modbus, RefusesHalfAnAnswerAndOneThatIsTooLong) {
  Line line;
  line.poll();
  ++line.registers.counter;
  const std::string sound = line.registers.answer();
  for (size_t cut = 1; cut < sound.size(); ++cut) line.poll(sound.substr(0, cut));
  line.poll(sound + "x");
  EXPECT_TRUE(line.readings.empty());
  EXPECT_FALSE(line.troubles.empty());
  line.poll();
  EXPECT_EQ(line.readings.size(), 1u);
}

TEST(Modbus, TellsMarksRangesMethodsAndABusyInstrument) {
  Line line;
  line.poll();
  const auto next = [&](auto change) {
    line.registers = Registers{.counter = static_cast<std::uint16_t>(line.registers.counter + 1)};
    change(line.registers);
    line.poll();
  };
  next([](Registers& r) { r.mark = 1, r.value = 10; });
  next([](Registers& r) { r.mark = 2, r.value = 0; });
  ASSERT_EQ(line.readings.size(), 2u);
  EXPECT_EQ(line.readings[0].clipped, Clip::above);
  EXPECT_EQ(line.readings[1].clipped, Clip::below);
  next([](Registers& r) { r.value = 11; });
  next([](Registers& r) { r.value = std::bit_cast<float>(0x7fc00000u); });  // not a number
  next([](Registers& r) { r.method = 99; });
  next([](Registers& r) { r.mark = 3; });
  line.poll(modbus_frame("\x07\x83\x06"));
  EXPECT_EQ(line.readings.size(), 2u);
  std::vector<TroubleKind> kinds;
  for (const Trouble& trouble : line.troubles) kinds.push_back(trouble.what);
  EXPECT_EQ(kinds,
            (std::vector<TroubleKind>{TroubleKind::out_of_range, TroubleKind::out_of_range,
                                      TroubleKind::unknown_method, TroubleKind::garbled, TroubleKind::busy}));
}

TEST(Modbus, TellsSilence) {
  Line line;
  line.poll();
  for (int i = 0; i < 20; ++i) line.poll("");
  ASSERT_EQ(line.troubles.size(), 1u);
  EXPECT_EQ(line.troubles[0].what, TroubleKind::silent);
}

}  // namespace
}  // namespace brimline
