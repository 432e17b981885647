// SPDX-License-Identifier: GPL-3.0-or-later
// Ten thousand frames over a pseudo-terminal, one in a hundred at fault: no broken frame becomes a
// reading, no sound one is lost, none is told twice. The emulator's own account is what is compared with.
#include <gtest/gtest.h>

#include <cstdio>
#include <map>
#include <set>

#include "devices/bench.h"
#include "tests/demo/emulator.h"

namespace brimline::demo {
namespace {

Instant some_time() {
  return *Instant::parse("2026-06-14T08:10:00-05:00");
}

struct Account {
  std::map<std::string, int> sent_by_fault;
  int sound = 0, heard = 0, wrong = 0, lost = 0, doubled = 0;
};

const std::set<std::string> kSound = {"none", "doubled", "over_range", "flood", "stuck"};

// "sent 000001 ph 7.40 none" -> "000001 ph 7.40", where it is a sound frame.
std::map<std::string, int> sound_readings(const Emulator& emulator, Account& account) {
  std::map<std::string, int> out;
  for (const QString& line : emulator.lines()) {
    const QStringList words = line.split(' ');
    if (words.size() != 5 || words[0] != "sent") continue;
    ++account.sent_by_fault[words[4].toStdString()];
    if (!kSound.contains(words[4].toStdString())) continue;
    out[(words[1] + " " + words[2] + " " + words[3]).toStdString()] = 0;
    ++account.sound;
  }
  return out;
}

std::string told(const Profile& profile, const InstrumentReading& reading) {
  for (const MethodRow& row : profile.methods)
    if (row.analyte == reading.analyte) {
      char value[48];
      std::snprintf(value, sizeof value, "%.*f", row.decimals, reading.value / row.factor);
      return reading.serial.value_or("") + " " + reading.analyte + " " + value;
    }
  return "";
}

void print_table(const std::string& name, const Account& account,
                 const std::map<std::string, int>& troubles) {
  std::printf("%s\n  frames sent", name.c_str());
  for (const auto& [fault, count] : account.sent_by_fault) std::printf(", %s %d", fault.c_str(), count);
  std::printf("\n  told");
  for (const auto& [what, count] : troubles) std::printf(", %s %d", what.c_str(), count);
  std::printf("\n  sound %d, readings %d, wrong accepted %d, sound lost %d, doubled %d\n", account.sound,
              account.heard, account.wrong, account.lost, account.doubled);
}

Account listen_to(const QString& profile_name, const QStringList& more) {
  Profile profile = *load_profile(profile_name.toStdString());
  profile.line.gap = Millis(60000);  // a machine that stalls is not what is tested
  Emulator emulator(more, profile_name);
  Bench bench(some_time);
  std::vector<InstrumentReading> readings;
  std::map<std::string, int> troubles;
  QObject::connect(&bench, &Bench::happened, [&](const Happening& happening) {
    if (const auto* reading = std::get_if<InstrumentReading>(&happening.what)) readings.push_back(*reading);
    if (const auto* trouble = std::get_if<Trouble>(&happening.what))
      ++troubles[std::string(name_of(trouble->what))];
  });
  bench.listen(profile, emulator.link());
  EXPECT_TRUE(wait_until([&] { return emulator.said("done"); }));
  size_t before = 0;
  do {  // what is still on its way
    before = readings.size();
    QElapsedTimer pause;
    pause.start();
    wait_until([&] { return pause.elapsed() > 500; });
  } while (readings.size() != before);

  Account account;
  auto sound = sound_readings(emulator, account);
  account.heard = static_cast<int>(readings.size());
  for (const InstrumentReading& reading : readings) {
    const auto found = sound.find(told(profile, reading));
    if (found == sound.end())
      ++account.wrong;
    else if (++found->second > 1)
      ++account.doubled;
  }
  for (const auto& [reading, times] : sound) account.lost += times == 0;
  print_table(profile_name.toStdString(), account, troubles);
  return account;
}

TEST(TenThousandFrames, LoseNothingSoundAndAcceptNothingBroken) {
  const Account account = listen_to("bench_lines", {"--seed",   "20260614",
                                                    "--speed",  "100",
                                                    "--pause",  "0",
                                                    "--rounds", "1429",
                                                    "--fault",  "garbled:0.003",
                                                    "--fault",  "lost:0.001",
                                                    "--fault",  "doubled:0.001",
                                                    "--fault",  "bad_checksum:0.001",
                                                    "--fault",  "half_frame:0.001",
                                                    "--fault",  "out_of_range:0.001",
                                                    "--fault",  "over_range:0.001",
                                                    "--fault",  "unknown_method:0.0007",
                                                    "--fault",  "flood:0.0003"});
  EXPECT_GE(account.sound, 9800);
  EXPECT_GE(account.sent_by_fault.size(), 9u);  // the faults did happen
  EXPECT_EQ(account.wrong, 0);
  EXPECT_EQ(account.lost, 0);
  EXPECT_EQ(account.doubled, 0);
}

// Without a start character a frame whose end is broken takes the next one with it: lost, never wrong.
TEST(TenThousandFrames, AcceptNothingBrokenWithoutAStartCharacter) {
  const Account account =
      listen_to("comma_lines", {"--seed", "7", "--speed", "800", "--pause", "0", "--rounds", "1667",
                                "--fault", "garbled:0.005", "--fault", "half_frame:0.002", "--fault",
                                "doubled:0.002", "--fault", "bad_checksum:0.001"});
  EXPECT_GE(account.sound, 9800);
  EXPECT_EQ(account.wrong, 0);
  EXPECT_EQ(account.doubled, 0);
  auto sent = account.sent_by_fault;
  EXPECT_LE(account.lost, sent["garbled"] + sent["half_frame"]);
}

}  // namespace
}  // namespace brimline::demo
