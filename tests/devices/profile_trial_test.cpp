// SPDX-License-Identifier: GPL-3.0-or-later
// The listener's trial of profiles on a line whose instrument is set to a rate of its own. What a receiver
// hears at another rate is made of the bits themselves: one start bit, eight data bits, one stop bit
// (TIA-232-F and the usual asynchronous receiver, from memory).
#include "devices/profile_trial.h"

#include <gtest/gtest.h>

#include <QCoreApplication>
#include <QElapsedTimer>

#include <cstdlib>
#include <filesystem>
#include <fstream>

#include "demo/photometer/line_faults.h"
#include "devices/line_form.h"

namespace brimline {
namespace {

using namespace std::chrono_literals;

// An instrument that speaks by itself, or answers whoever asks at its own rate.
class RatedWire : public Wire {
 public:
  RatedWire(int set, int heard_at, std::vector<std::string> frames, bool waits_to_be_asked = false)
      : ratio_(static_cast<double>(heard_at) / set), frames_(std::move(frames)), waits_(waits_to_be_asked) {
    connect(&timer_, &QTimer::timeout, this, [this] { speak(); });
  }
  std::optional<OpenFault> open() override {
    if (!waits_) timer_.start(2);
    return std::nullopt;
  }
  void close() override { timer_.stop(); }
  void send(const QByteArray&) override {
    if (waits_ && ratio_ == 1) QTimer::singleShot(0, this, [this] { speak(); });
  }

 private:
  void speak() {
    const std::string& frame = frames_[next_++ / (waits_ ? 4 : 1) % frames_.size()];
    const std::string heard = ratio_ == 1 ? frame : demo::heard_at_rate(frame, ratio_);
    emit received(QByteArray::fromStdString(heard));
  }
  double ratio_;
  std::vector<std::string> frames_;
  bool waits_;
  size_t next_ = 0;
  QTimer timer_;
};

class ProfileTrialTest : public testing::Test {
 protected:
  // Frames of the profile with rising serial numbers.
  static std::vector<std::string> frames_of(const Profile& profile) {
    std::vector<std::string> out;
    for (int i = 1; i <= 50; ++i)
      out.push_back(line_of(profile, profile.methods.front(),
                            {std::to_string(100 + i), "B-1", 1.0 + 0.01 * i, std::nullopt}));
    return out;
  }
  static void run(ProfileTrial& trial) {
    bool ended = false;
    QObject::connect(&trial, &ProfileTrial::finished, [&] { ended = true; });
    trial.start();
    QElapsedTimer wall;
    wall.start();
    while (!ended && wall.elapsed() < 60'000)
      QCoreApplication::processEvents(QEventLoop::WaitForMoreEvents, 20);
    ASSERT_TRUE(ended);
    EXPECT_FALSE(trial.running());
  }

  int argc_ = 0;
  QCoreApplication app_{argc_, nullptr};
};

TEST_F(ProfileTrialTest, FindsTheRateThatNoProfileListensAt) {
  const Profile speaks = *load_profile("bench_lines");
  for (const int set : {1200, 4800, 38400}) {
    ASSERT_NE(speaks.serial.baud, set);
    ProfileTrial trial(
        builtin_profiles(),
        [&](const SerialSettings& serial) {
          return std::make_unique<RatedWire>(set, serial.baud, frames_of(speaks));
        },
        60ms);
    run(trial);
    ASSERT_TRUE(trial.best()) << set;
    EXPECT_EQ(trial.best()->profile, "bench_lines");
    EXPECT_EQ(trial.best()->serial.baud, set);
    // No reading came of the noise of the wrong rates.
    for (const TrialResult& result : trial.results()) {
      const bool own = result.serial.baud == set;
      EXPECT_TRUE(own || result.readings.empty()) << result.profile << result.serial.baud;
    }
    for (const InstrumentReading& reading : trial.best()->readings) EXPECT_EQ(reading.sample, "B-1");
  }
}

TEST_F(ProfileTrialTest, AsksASilentInstrumentAtOtherRates) {
  const Profile asked = *load_profile("plain_lines");
  ASSERT_FALSE(asked.line.ask.empty());
  ProfileTrial trial(
      builtin_profiles(),
      [&](const SerialSettings& serial) {
        return std::make_unique<RatedWire>(2400, serial.baud, frames_of(asked), true);
      },
      60ms);
  run(trial);
  ASSERT_TRUE(trial.best());
  EXPECT_EQ(trial.best()->profile, "plain_lines");
  EXPECT_EQ(trial.best()->serial.baud, 2400);
}

TEST_F(ProfileTrialTest, KeepsToTheOwnRatesWhereOneFits) {
  const Profile speaks = *load_profile("bench_lines");
  ProfileTrial trial(
      builtin_profiles(),
      [&](const SerialSettings& serial) {
        return std::make_unique<RatedWire>(speaks.serial.baud, serial.baud, frames_of(speaks));
      },
      60ms);
  run(trial);
  EXPECT_EQ(trial.results().size(), builtin_profiles().size());
  ASSERT_TRUE(trial.best());
  EXPECT_EQ(trial.best()->serial.baud, speaks.serial.baud);
}

TEST_F(ProfileTrialTest, EndsWhenCancelledAndWhenNothingUnderstands) {
  const auto noise = [](const SerialSettings&) {
    return std::make_unique<RatedWire>(9600, 9600, std::vector<std::string>{"\x81\x02\xfe", "?!\r\n"});
  };
  ProfileTrial trial(builtin_profiles(), noise, 5ms);
  run(trial);
  EXPECT_FALSE(trial.best());
  EXPECT_GT(trial.results().size(), builtin_profiles().size());
  ProfileTrial cut(builtin_profiles(), noise, 10'000ms);
  bool ended = false;
  QObject::connect(&cut, &ProfileTrial::finished, [&] { ended = true; });
  cut.start();
  cut.cancel();
  EXPECT_TRUE(ended);
  EXPECT_FALSE(cut.running());
}

TEST_F(ProfileTrialTest, AProfileOfAnotherRateIsOneOfItsOwn) {
  for (const Profile& profile : builtin_profiles()) {
    const auto text = profile_at_rate(profile, 57600);
    ASSERT_TRUE(text) << profile.id;
    const auto made = read_profile(*text, "made.toml");
    ASSERT_TRUE(made) << profile.id;
    EXPECT_EQ(made->serial.baud, 57600);
    EXPECT_EQ(made->id, profile.id + "_57600");
    EXPECT_NE(made->name, profile.name);
    EXPECT_EQ(made->methods.size(), profile.methods.size());
    EXPECT_EQ(made->protocol, profile.protocol);
  }
  char folder[] = "/tmp/brimline-rate-XXXXXX";
  ASSERT_TRUE(mkdtemp(folder));
  const std::string file = std::string(folder) + "/own.toml";
  std::ofstream(file) << *profile_at_rate(*load_profile("bench_lines"), 2400);
  Profile own = *load_profile(file);
  EXPECT_EQ(read_profile(*profile_at_rate(own, 4800), "x")->serial.baud, 4800);
  std::filesystem::remove_all(folder);
  EXPECT_FALSE(profile_at_rate(own, 4800));  // its file is gone
}

}  // namespace
}  // namespace brimline
