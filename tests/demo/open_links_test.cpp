// SPDX-License-Identifier: GPL-3.0-or-later
// The two open links over a true pseudo-terminal: what the bench answers reaches the instrument.
#include <gtest/gtest.h>

#include <bit>

#include "demo/photometer/pty_line.h"
#include "devices/bench.h"
#include "devices/lis_decoder.h"
#include "devices/modbus_decoder.h"
#include "tests/demo/emulator.h"

namespace brimline::demo {
namespace {

using std::string_literals::operator""s;

Instant some_time() {
  return *Instant::parse("2026-06-14T08:10:00-05:00");
}

class OpenLinks : public testing::Test {
 protected:
  OpenLinks() {
    application();
    QObject::connect(&bench, &Bench::happened, [this](const Happening& h) {
      if (const auto* reading = std::get_if<InstrumentReading>(&h.what)) readings.push_back(*reading);
      if (const auto* trouble = std::get_if<Trouble>(&h.what)) troubles.push_back(*trouble);
    });
  }
  void start(const std::string& id) {
    const Profile profile = *load_profile(id);
    line = std::make_unique<PtyLine>(folder.filePath("line").toStdString(), profile.serial, 100);
    ASSERT_TRUE(line->plug());
    bench.listen(profile, folder.filePath("line"));
    ASSERT_TRUE(wait_until([&] { return line->has_listener(); }));
  }
  // Sends and gives back the answer once it has `size` bytes.
  std::string exchange(const std::string& bytes, size_t size) {
    line->queue(bytes, Steady::now());
    std::string answer;
    EXPECT_TRUE(wait_until([&] {
      answer += line->turn(Steady::now());
      return answer.size() >= size && line->is_idle();
    }));
    return answer;
  }
  QTemporaryDir folder;
  std::unique_ptr<PtyLine> line;
  Bench bench{some_time};
  std::vector<InstrumentReading> readings;
  std::vector<Trouble> troubles;
};

TEST_F(OpenLinks, LisIsAcknowledgedFrameByFrame) {
  start("lis_link");
  EXPECT_EQ(exchange("\x05", 1), "\x06");
  EXPECT_EQ(exchange(lis_frame(1, "H|\\^&\r", true), 1), "\x06");
  EXPECT_EQ(exchange(lis_frame(2, "O|1|B-1012||^^^A01\r", true), 1), "\x06");
  std::string broken = lis_frame(3, "R|1|^^^A01|7.40|||N||F||||20260614090200\r", true);
  broken[12] ^= 1;
  EXPECT_EQ(exchange(broken, 1), "\x15");
  EXPECT_EQ(exchange(lis_frame(3, "R|1|^^^A01|7.40|||N||F||||20260614090200\r", true), 1), "\x06");
  ASSERT_TRUE(wait_until([&] { return readings.size() == 1; }));
  EXPECT_EQ(readings[0].analyte, "ph");
  EXPECT_EQ(readings[0].value, 7.4);
  EXPECT_EQ(readings[0].sample, "B-1012");
  EXPECT_EQ(readings[0].serial, "20260614090200");
  EXPECT_EQ(troubles.size(), 1u);
}

TEST_F(OpenLinks, ModbusIsPolled) {
  start("register_bench");
  const std::string request = modbus_frame("\x07\x03\x00\x00\x00\x0d"s);
  const auto answer = [](char counter) {
    return modbus_frame("\x07\x03\x1a\x00"s + counter + "\x00\x01\x40\xf0\x00\x00\x00\x00"s + "B-1012" +
                        std::string(10, '\0'));
  };
  for (const char counter : {'\x05', '\x05', '\x06'}) {
    EXPECT_EQ(exchange("", request.size()), request);
    exchange(answer(counter), 0);
  }
  ASSERT_TRUE(wait_until([&] { return readings.size() == 1; }));
  EXPECT_EQ(readings[0].analyte, "ph");
  EXPECT_EQ(readings[0].value, 7.5);  // 0x40f00000
  EXPECT_EQ(readings[0].serial, "6");
  EXPECT_TRUE(troubles.empty());
}

}  // namespace
}  // namespace brimline::demo
