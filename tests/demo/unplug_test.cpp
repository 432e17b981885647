// SPDX-License-Identifier: GPL-3.0-or-later
// The order of what is told when a line is pulled out and put back. Times and processor time are
// printed, not judged.
#include <gtest/gtest.h>

#include <sys/resource.h>

#include <cstdio>

#include "devices/bench.h"
#include "tests/demo/emulator.h"

namespace brimline::demo {
namespace {

Instant some_time() {
  return *Instant::parse("2026-06-14T08:10:00-05:00");
}

double processor_seconds() {
  rusage usage{};
  getrusage(RUSAGE_SELF, &usage);
  return static_cast<double>(usage.ru_utime.tv_sec + usage.ru_stime.tv_sec) +
         1e-6 * static_cast<double>(usage.ru_utime.tv_usec + usage.ru_stime.tv_usec);
}

std::string word(const Happening& happening) {
  if (const auto* reading = std::get_if<InstrumentReading>(&happening.what))
    return reading->serial.value_or("-");
  if (const auto* trouble = std::get_if<Trouble>(&happening.what)) return std::string(name_of(trouble->what));
  return "back";
}

class Unplug : public testing::Test {
 protected:
  void listen(Bench& bench) {
    QObject::connect(&bench, &Bench::happened, [this](const Happening& h) { words.push_back(word(h)); });
  }
  bool has(const std::string& wanted) const {
    return std::find(words.begin(), words.end(), wanted) != words.end();
  }
  std::vector<std::string> words;
};

TEST_F(Unplug, IsToldOnceAndSoIsTheReturn) {
  Emulator emulator({"--pause", "0", "--speed", "100"});
  Bench bench(some_time);
  listen(bench);
  bench.listen(*load_profile("bench_lines"), emulator.link());
  ASSERT_TRUE(wait_until([&] { return words.size() == 7; }));
  QElapsedTimer timer;
  timer.start();
  emulator.command("unplug");
  ASSERT_TRUE(wait_until([&] { return has("unplugged"); }));
  std::printf("unplugged told after %lld ms", static_cast<long long>(timer.elapsed()));
  const double before = processor_seconds();
  timer.restart();
  wait_until([&] { return timer.elapsed() > 3000; });
  std::printf(", %.2f %% of a processor while waiting", 100 * (processor_seconds() - before) / 3);
  timer.restart();
  emulator.command("replug");
  ASSERT_TRUE(wait_until([&] { return has("back"); }));
  std::printf(", back after %lld ms\n", static_cast<long long>(timer.elapsed()));
  emulator.command("measure");
  ASSERT_TRUE(wait_until([&] { return words.size() == 16; }));
  EXPECT_EQ(words[6], "000007");
  EXPECT_EQ(words[7], "unplugged");
  EXPECT_EQ(words[8], "back");
  EXPECT_EQ(words[9], "000008");
  EXPECT_EQ(words[15], "000014");
}

TEST_F(Unplug, APortThatIsNotThereIsWaitedFor) {
  Emulator emulator({"--rounds", "0"});
  emulator.command("unplug");
  ASSERT_TRUE(wait_until([&] { return emulator.said("unplugged"); }));
  Bench bench(some_time);
  listen(bench);
  bench.listen(*load_profile("bench_lines"), emulator.link());
  ASSERT_EQ(words, std::vector<std::string>{"unplugged"});
  emulator.command("replug");
  ASSERT_TRUE(wait_until([&] { return words.size() == 2; }));
  EXPECT_EQ(words[1], "back");
}

TEST_F(Unplug, SilenceIsToldAndTheLineStaysOpen) {
  Profile profile = *load_profile("bench_lines");
  profile.silence = Millis(300);
  Emulator emulator({"--rounds", "0", "--fault", "silent"});
  emulator.command("fault silent");
  Bench bench(some_time);
  listen(bench);
  Instrument& instrument = bench.listen(profile, emulator.link());
  ASSERT_TRUE(wait_until([&] { return has("silent"); }));
  EXPECT_TRUE(instrument.is_open());
  EXPECT_EQ(words.size(), 1u);
}

TEST_F(Unplug, TwoInstrumentsDoNotDisturbEachOther) {
  Emulator first({"--pause", "0", "--speed", "100"});
  Emulator second({"--rounds", "0"}, "comma_lines");
  Bench bench(some_time);
  std::vector<std::string> told;
  QObject::connect(&bench, &Bench::happened,
                   [&](const Happening& h) { told.push_back(h.instrument + " " + word(h)); });
  bench.listen(*load_profile("comma_lines"), second.link());
  second.command("unplug");
  ASSERT_TRUE(wait_until([&] { return told.size() == 1; }));
  EXPECT_EQ(told[0], "comma_lines unplugged");
  bench.listen(*load_profile("bench_lines"), first.link());
  ASSERT_TRUE(wait_until([&] { return told.size() == 8; }));
  EXPECT_EQ(told[7], "bench_lines 000007");
}

}  // namespace
}  // namespace brimline::demo
