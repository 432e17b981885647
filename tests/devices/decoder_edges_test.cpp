// SPDX-License-Identifier: GPL-3.0-or-later
// The rarer turns of the decoders, and every mistake a profile's form can hold.
#include <gtest/gtest.h>

#include <filesystem>
#include <fstream>
#include <iterator>

#include "devices/line_decoder.h"
#include "devices/lis_decoder.h"
#include "devices/modbus_decoder.h"
#include "devices/session.h"

namespace brimline {
namespace {

using namespace std::string_literals;

struct Told {
  std::vector<InstrumentReading> readings;
  std::vector<std::string> troubles;
  std::string answer;
  explicit Told(const Heard& heard) : answer(heard.answer) {
    for (const auto& one : heard.told)
      if (const auto* decoded = std::get_if<DecodedReading>(&one))
        readings.push_back(decoded->reading);
      else
        troubles.push_back(std::get<Trouble>(one).text);
  }
  bool says(const std::string& part) const {
    for (const std::string& trouble : troubles)
      if (trouble.find(part) != std::string::npos) return true;
    return false;
  }
};

// LIS: frames in one session; what the last one tells.
class LisEdges : public testing::Test {
 protected:
  LisEdges() {
    decoder.opened(Millis(0));
    decoder.received("\x05", Millis(1));
    send("H|\\^&\r");
  }
  Told send(const std::string& text, bool last = true) {
    return Told(decoder.received(lis_frame(number++ % 8, text, last), Millis(2)));
  }
  static std::string result(const std::string& value, const std::string& flag = "N") {
    return "R|1|^^^A07|" + value + "|mg/L||" + flag + "||F\r";
  }
  LisDecoder decoder{*load_profile("lis_link")};
  int number = 1;
};

TEST_F(LisEdges, ValuesThatAreNone) {
  for (const char* value : {"2.", "2.1234567", "", "1e3", "+2", "nan"})
    EXPECT_TRUE(send(result(value)).says("is no number")) << value;
  EXPECT_EQ(send(result("2.123456")).readings.size(), 1u);
}

TEST_F(LisEdges, MarksBesideAndBeforeTheValue) {
  EXPECT_EQ(send(result("9.9", ">")).readings.at(0).clipped, Clip::above);
  EXPECT_EQ(send(result("0.1", "<")).readings.at(0).clipped, Clip::below);
  EXPECT_EQ(send(result(">9.9")).readings.at(0).clipped, Clip::above);
  EXPECT_EQ(send(result("<0.1")).readings.at(0).clipped, Clip::below);
}

// LIS2-A's escapes, from memory: field, component, repeat and the escape sign itself.
TEST_F(LisEdges, EscapedSignsOfABottle) {
  send("O|1|A&F&B&S&C&R&D&E&E&X&F||^^^A07|R\r");
  EXPECT_EQ(send(result("2.0")).readings.at(0).sample, "A|B^C\\D&EF");
  send("O|1|A&F\r");  // no whole escape
  EXPECT_EQ(send(result("2.1")).readings.at(0).sample, "A&F");
}

TEST_F(LisEdges, RecordsThatAreNone) {
  EXPECT_TRUE(send("\r").says("is empty"));
  EXPECT_TRUE(send("H|\r").says("delimiters"));
  EXPECT_EQ(send("P|1").answer, "\x15");
  number--;
  EXPECT_EQ(send("P|1\x01\r").answer, "\x15");
}

TEST_F(LisEdges, ARecordWithoutEndIsDropped) {
  Told told(Heard{});
  for (int i = 0; i < 80 && !told.says("no end"); ++i) told = send(std::string(120, 'X'), false);
  EXPECT_TRUE(told.says("no end"));
}

TEST_F(LisEdges, FramesWithoutANumberAndMessagesWithoutAHeader) {
  const auto framed = [](const std::string& covered) {
    unsigned sum = 0;
    for (const char c : covered + "\x03") sum += static_cast<unsigned char>(c);
    char check[3];
    (void)std::snprintf(check, sizeof check, "%02X", sum & 0xff);
    return "\x02" + covered + "\x03" + check + "\r\n";
  };
  for (const char* covered : {"8P|1\r", "/P|1\r", ""})
    EXPECT_EQ(Told(decoder.received(framed(covered), Millis(3))).answer, "\x15") << covered;
  decoder.received("\x05", Millis(4));
  EXPECT_EQ(Told(decoder.received(lis_frame(1, "P|1\r", true), Millis(5))).answer, "\x15");
}

TEST_F(LisEdges, NothingIsToldBeforeTheTimerIsUp) {
  EXPECT_TRUE(decoder.waited(Millis(1000)).told.empty());
  EXPECT_TRUE(Told(decoder.waited(Millis(40000))).says("broke off"));
  EXPECT_FALSE(decoder.wake());
}

// Modbus: one poll that these registers answer; the counter moves by itself.
class ModbusEdges : public testing::Test {
 protected:
  Told poll(ModbusDecoder& decoder, const std::string& answer) {
    at = std::max(at, *decoder.wake());
    decoder.waited(at);
    Told told(decoder.received(answer, at + Millis(10)));
    at += Millis(1000);
    return told;
  }
  std::string registers(int counter, int method, int mark, const std::string& sample) const {
    std::string out = "\x07\x03\x1a"s;
    for (const int word : {counter, method, 0x4000, 0, mark}) {  // 2.0
      out += static_cast<char>(word >> 8);
      out += static_cast<char>(word & 0xff);
    }
    std::string label = sample;
    label.resize(16, '\0');
    return modbus_frame(out + label);
  }
  Millis at{0};
};

TEST_F(ModbusEdges, MarksMethodsAndBottles) {
  ModbusDecoder decoder(*load_profile("register_bench"));
  decoder.opened(at);
  EXPECT_TRUE(decoder.waited(Millis(-1)).answer.empty());
  poll(decoder, registers(1, 7, 0, "B"));
  EXPECT_EQ(poll(decoder, registers(2, 7, 1, "B")).readings.at(0).clipped, Clip::above);
  EXPECT_EQ(poll(decoder, registers(3, 7, 2, "B")).readings.at(0).clipped, Clip::below);
  EXPECT_TRUE(poll(decoder, registers(4, 7, 3, "B")).says("mark"));
  EXPECT_TRUE(poll(decoder, registers(5, 7, 0, "B\x01")).says("sample"));
  EXPECT_TRUE(poll(decoder, registers(6, 999, 0, "B")).says("999"));
  EXPECT_FALSE(poll(decoder, registers(7, 7, 0, "")).readings.at(0).sample);
}

TEST_F(ModbusEdges, AnswersThatAreNone) {
  ModbusDecoder decoder(*load_profile("register_bench"));
  decoder.opened(at);
  EXPECT_TRUE(poll(decoder, modbus_frame("\x07\x83\x06"s)).says("exception 6"));
  EXPECT_TRUE(poll(decoder, modbus_frame("\x07\x83\x02"s)).says("exception 2"));
  EXPECT_TRUE(poll(decoder, modbus_frame("\x08\x83\x02"s)).says("could not be read whole"));
  EXPECT_TRUE(poll(decoder, modbus_frame("\x07\x04\x1a"s + std::string(26, '\0'))).says("something else"));
  EXPECT_TRUE(poll(decoder, modbus_frame("\x07\x03\x18"s + std::string(26, '\0'))).says("something else"));
  poll(decoder, "\x07\x03"s);
  EXPECT_TRUE(Told(decoder.waited(at)).says("broke off"));
}

TEST_F(ModbusEdges, AnInstrumentThatNamesNoBottle) {
  Profile profile = *load_profile("register_bench");
  profile.modbus.sample_at.reset();
  profile.modbus.sample_words = 0;
  ModbusDecoder decoder(profile);
  decoder.opened(at);
  const auto five = [](int counter) {
    return modbus_frame("\x07\x03\x0a\x00"s + static_cast<char>(counter) +
                        "\x00\x07\x40\x00\x00\x00\x00\x00"s);
  };
  poll(decoder, five(1));
  const Told told = poll(decoder, five(2));
  ASSERT_EQ(told.readings.size(), 1u);
  EXPECT_EQ(told.readings[0].value, 2.0);
  EXPECT_FALSE(told.readings[0].sample);
}

Profile plain_and_at_once() {
  Profile out = *load_profile("plain_lines");
  out.line.confirm = false;
  out.line.ask_every = Millis(1000);
  return out;
}

// Lines: one that is asked for, begun and not ended.
TEST(LineEdges, TheNextQuestionAndTheBrokenLineAreBothWaitedFor) {
  LineDecoder decoder(plain_and_at_once());
  decoder.opened(Millis(0));
  EXPECT_EQ(decoder.wake(), Millis(50));
  EXPECT_EQ(decoder.waited(Millis(50)).answer, "READ\r");
  decoder.received("1;2.35;mg", Millis(100));
  EXPECT_EQ(decoder.wake(), Millis(1050));
  EXPECT_EQ(Told(decoder.waited(Millis(1050))).answer, "READ\r");
  EXPECT_EQ(decoder.wake(), Millis(1100));
  EXPECT_TRUE(Told(decoder.waited(Millis(1100))).says("broke off"));
  EXPECT_TRUE(decoder.received("", Millis(1101)).told.empty());
  EXPECT_EQ(Told(decoder.received("1;2.35;mg/L;;1;B\r\n", Millis(1200))).readings.size(), 1u);
}

TEST(LineEdges, ALineThatComesTooSoonAfterOpeningIsNotBelieved) {
  LineDecoder decoder(plain_and_at_once());
  decoder.opened(Millis(0));
  EXPECT_TRUE(Told(decoder.received("1;2.35;mg/L;;1;B\r\n", Millis(20))).says("beginning may be missing"));
  EXPECT_EQ(Told(decoder.received("1;2.35;mg/L;;2;B\r\n", Millis(30))).readings.size(), 1u);
}

TEST(LineEdges, MarksWithAndWithoutAValue) {
  LineDecoder decoder(plain_and_at_once());
  decoder.opened(Millis(0));
  const auto send = [&](const std::string& line) {
    return Told(decoder.received(line + "\r\n", Millis(100)));
  };
  EXPECT_EQ(send("1;;mg/L;OVER;1;B").readings.at(0).value, 6.0);
  EXPECT_EQ(send("1;;mg/L;UNDER;2;B").readings.at(0).value, 0.0);
  EXPECT_TRUE(send("1;2.00;mg/L;WHAT;3;B").says("mark is not known"));
  EXPECT_TRUE(send("1;;mg/L;;4;B").says("no number"));
  EXPECT_TRUE(send("1;2.00;ppm;;5;B").says("unit"));
  EXPECT_TRUE(send("1;2.00").says("fields"));
  EXPECT_TRUE(send(std::string(90, '1')).says("no end"));
}

TEST(LineEdges, FieldsThatSayNothingAreLeftOut) {
  Profile profile = plain_and_at_once();
  profile.line.fields = {LineField::ignored, LineField::method, LineField::value};
  LineDecoder decoder(profile);
  decoder.opened(Millis(0));
  const Told told(decoder.received("x;1;2.50\r\n", Millis(100)));
  ASSERT_EQ(told.readings.size(), 1u);
  EXPECT_FALSE(told.readings[0].sample);
  EXPECT_FALSE(told.readings[0].serial);
}

// Without any check on the line the same must be heard three times running.
TEST(LineEdges, AnAnswerWithoutACheckIsAskedForAgain) {
  LineDecoder decoder(*load_profile("plain_lines"));
  decoder.opened(Millis(0));
  int at = 100;
  const auto send = [&](const std::string& line) {
    return Told(decoder.received(line + "\r\n", Millis(at += 50))).readings.size();
  };
  const std::string first = "1;2.35;mg/L;;1;B", broken = "1;2.95;mg/L;;1;B", next = "1;3.10;mg/L;;2;B";
  EXPECT_EQ(decoder.waited(Millis(50)).answer, "READ\r");
  EXPECT_EQ(send(first), 0u);
  EXPECT_EQ(decoder.wake(), Millis(at)) << "asked again at once";
  EXPECT_EQ(decoder.waited(Millis(at)).answer, "READ\r");
  EXPECT_EQ(send(first), 0u);
  EXPECT_EQ(send(first), 1u);
  EXPECT_EQ(send(first), 0u) << "it stands on the display";
  // A digit that changed on the way is another line, and nothing comes of it, not even twice.
  EXPECT_EQ(send(broken) + send(broken) + send(first) + send(first) + send(first), 0u);
  EXPECT_EQ(send(next) + send(next) + send("1;3.10"), 0u);
  EXPECT_EQ(send(next), 1u) << "what could not be read at all is no other answer";
  // Pulled out and back: what was counted is not counted again.
  decoder.opened(Millis(2000));
  at = 2100;
  EXPECT_EQ(send(next) + send(next) + send(next) + send(next), 0u);
}

struct Slip {
  const char *file, *from, *to, *told;
};
class FormSlips : public testing::TestWithParam<Slip> {};

TEST_P(FormSlips, AreToldWithTheirLine) {
  std::ifstream in(std::filesystem::path(BRIMLINE_SOURCE_DIR) / "devices/profiles" / GetParam().file);
  std::string text((std::istreambuf_iterator<char>(in)), {});
  const size_t at = text.find(GetParam().from);
  ASSERT_NE(at, std::string::npos);
  text.replace(at, std::string(GetParam().from).size(), GetParam().to);
  const auto profile = read_profile(text, "x.toml");
  ASSERT_FALSE(profile);
  bool found = false;
  for (const Fault& fault : profile.error())
    found = found || (fault.line > 0 && fault.text().find(GetParam().told) != std::string::npos);
  EXPECT_TRUE(found) << profile.error().front().text();
}

INSTANTIATE_TEST_SUITE_P(
    EveryForm, FormSlips,
    testing::Values(
        Slip{"lis_link.toml", "frame_timeout_s = 30.0", "frame_timeout_s = 0.5", "frame_timeout_s"},
        Slip{"lis_link.toml", "frame_timeout_s = 30.0", "frame_timeout_s = 400", "frame_timeout_s"},
        Slip{"lis_link.toml", "longest_frame = 247", "longest_frame = 8", "longest_frame"},
        Slip{"lis_link.toml", "longest_frame = 247", "longest_frame = 70000", "longest_frame"},
        Slip{"register_bench.toml", "station = 7", "station = 0", "station"},
        Slip{"register_bench.toml", "station = 7", "station = 248", "station"},
        Slip{"register_bench.toml", "counter_at = 0", "counter_at = -1", "counter_at"},
        Slip{"register_bench.toml", "counter_at = 0", "counter_at = 65001", "counter_at"},
        Slip{"register_bench.toml", "counter_at = 0", "counter_at = 4000", "too far apart"},
        Slip{"register_bench.toml", "sample_words = 8", "sample_words = 0", "sample_words"},
        Slip{"register_bench.toml", "sample_words = 8", "sample_words = 33", "sample_words"},
        Slip{"register_bench.toml", "poll_every_ms = 500", "poll_every_ms = 10", "poll_every_ms"},
        Slip{"register_bench.toml", "poll_every_ms = 500", "poll_every_ms = 60001", "poll_every_ms"},
        Slip{"register_bench.toml", "answer_timeout_ms = 300", "answer_timeout_ms = 1",
             "answer_timeout_ms"}));

}  // namespace
}  // namespace brimline
