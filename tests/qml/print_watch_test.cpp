// SPDX-License-Identifier: GPL-3.0-or-later
// A sheet on its way, as the counter is told of it: a print service that answers what it is told to, in the
// states and reasons of RFC 8011 (tests/printing has a real one).
#include "qml/models/print_watch.h"

#include <atomic>
#include <mutex>

#include "tests/qml/counter_fixture.h"

namespace brimline::test {
namespace {

constexpr int kPending = 3, kAtWork = 5, kCancelled = 7, kCompleted = 9;  // RFC 8011, 5.3.7

class PrintWatchTest : public CounterTest {
 protected:
  Services service() {
    Services services;
    services.report = [this](const PrintJob&, const std::string& language) {
      const std::lock_guard hold(lock_);
      ++asked_;
      return read_report(state_, false, reasons_, Words(language));
    };
    services.take_back = [this](const PrintJob&) {
      const std::lock_guard hold(lock_);
      if (state_ == kCompleted) return false;
      state_ = kCancelled;
      return true;
    };
    return services;
  }
  void answer(int state, std::vector<std::string> reasons = {}) {
    const std::lock_guard hold(lock_);
    state_ = state;
    reasons_ = std::move(reasons);
  }
  static bool says(const PrintWatch& watch, const char* words) {
    return Hand::wait_for([&] { return watch.text().contains(words); }, 8000);
  }

  std::mutex lock_;
  int state_ = kPending;
  std::vector<std::string> reasons_;
  std::atomic<int> asked_ = 0;
};

TEST_F(PrintWatchTest, EachOutcomeIsSaidUntilItIsOver) {
  PrintWatch watch(service());
  EXPECT_FALSE(watch.waits());
  watch.follow({"counter", 1}, "B-7", "en");
  EXPECT_TRUE(watch.waits());
  EXPECT_TRUE(says(watch, "B-7: The sheet waits"));
  answer(kAtWork, {"media-empty-error"});
  EXPECT_TRUE(says(watch, "out of paper")) << watch.text().toStdString();
  EXPECT_TRUE(watch.text().contains("do not print it again"));
  EXPECT_TRUE(watch.waits());
  answer(kAtWork, {"timed-out"});
  EXPECT_TRUE(says(watch, "is it switched on?"));
  answer(kAtWork);
  EXPECT_TRUE(says(watch, "is printing"));
  answer(kCompleted);
  EXPECT_TRUE(says(watch, "is printed"));
  EXPECT_FALSE(watch.waits());
  // It is asked after no more.
  const int asked = asked_;
  Hand::wait_for([] { return false; }, 1000);
  EXPECT_EQ(asked_, asked);
}

TEST_F(PrintWatchTest, WhatIsTakenBackIsOfferedAgain) {
  PrintWatch watch(service());
  answer(kAtWork, {"media-empty"});
  watch.follow({"counter", 2}, "B-7", "en");
  ASSERT_TRUE(says(watch, "out of paper"));
  watch.take_back();
  EXPECT_TRUE(says(watch, "Print it again?"));
  EXPECT_FALSE(watch.waits());
}

// Printed in the moment it was taken back: nobody is told that it will not come.
TEST_F(PrintWatchTest, WhatCannotBeTakenBackIsSaidSo) {
  PrintWatch watch(service());
  watch.follow({"counter", 3}, "B-7", "en");
  ASSERT_TRUE(says(watch, "waits"));
  answer(kCompleted);
  watch.take_back();
  EXPECT_TRUE(Hand::wait_for([&] { return !watch.waits(); }, 8000));
  EXPECT_TRUE(watch.text().contains("is printed") || watch.text().contains("look at the printer"))
      << watch.text().toStdString();
}

}  // namespace
}  // namespace brimline::test
