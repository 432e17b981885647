// SPDX-License-Identifier: GPL-3.0-or-later
#include "devices/wire_log.h"

#include <gtest/gtest.h>

#include <filesystem>
#include <fstream>
#include <iterator>

namespace brimline {
namespace {

std::string text_of(const std::string& file) {
  std::ifstream in(file, std::ios::binary);
  return std::string((std::istreambuf_iterator<char>(in)), {});
}

class WireLog : public testing::Test {
 protected:
  void SetUp() override { std::filesystem::create_directories(folder); }
  void TearDown() override { std::filesystem::remove_all(folder); }
  const std::string folder = testing::TempDir() + "/brimline-wire-log-" +
                             std::to_string(::testing::UnitTest::GetInstance()->random_seed()) +
                             testing::UnitTest::GetInstance()->current_test_info()->name();
  const std::string file = folder + "/log";
};

TEST_F(WireLog, KeepsEveryByteAndItsTime) {
  std::string all;
  for (int byte = 0; byte < 256; ++byte) all += static_cast<char>(byte);
  auto recorder = WireRecorder::create(file, "bench_lines");
  ASSERT_TRUE(recorder);
  EXPECT_TRUE(recorder->write(Millis(0), WireEvent::opened));
  EXPECT_TRUE(recorder->write(Millis(1234), WireEvent::in, all));
  EXPECT_TRUE(recorder->write(Millis(61005), WireEvent::out, "\x06"));
  EXPECT_TRUE(recorder->write(Millis(61005), WireEvent::closed));
  const auto entries = read_wire_log(text_of(file), file);
  ASSERT_TRUE(entries) << entries.error().text();
  ASSERT_EQ(entries->size(), 4u);
  EXPECT_EQ((*entries)[0].event, WireEvent::opened);
  EXPECT_EQ((*entries)[1].at, Millis(1234));
  EXPECT_EQ((*entries)[1].bytes, all);
  EXPECT_EQ((*entries)[2].event, WireEvent::out);
  EXPECT_EQ((*entries)[3].at, Millis(61005));
}

TEST_F(WireLog, StaysBounded) {
  auto recorder = WireRecorder::create(file, "bench_lines", 10000);
  ASSERT_TRUE(recorder);
  for (int i = 0; i < 1000; ++i)
    EXPECT_TRUE(recorder->write(Millis(i), WireEvent::in, std::string(100, 'a')));
  EXPECT_LE(std::filesystem::file_size(file), 10000u);
  EXPECT_LE(std::filesystem::file_size(file + ".1"), 10000u);
  const auto last = read_wire_log(text_of(file), file);
  ASSERT_TRUE(last) << last.error().text();
  EXPECT_EQ(last->back().at, Millis(999));
}

TEST_F(WireLog, RefusesWhatIsNoLog) {
  for (const std::string& wrong : std::vector<std::string>{
           "", "x", "brimline-wire/2\n", "brimline-wire/1\n0.0 opened\n", "brimline-wire/1\n1.000 < 2g\n",
           "brimline-wire/1\n1.000 <\n", "brimline-wire/1\n1.000 opened 20\n",
           "brimline-wire/1\n2.000 opened\n1.000 closed\n", "brimline-wire/1\n1.000 < 123\n",
           "brimline-wire/1\n1.000 shut\n", "brimline-wire/1\n-1.000 opened\n"}) {
    const auto entries = read_wire_log(wrong, "log");
    EXPECT_TRUE(!entries || entries->empty()) << wrong;
    EXPECT_FALSE(entries && !wrong.empty()) << wrong;
  }
}

}  // namespace
}  // namespace brimline
