// SPDX-License-Identifier: GPL-3.0-or-later
// What goes on at a counter while somebody taps: records of thousands, two instruments that send readings all
// the time, and a plan that computes all the time.
#pragma once

#include <QProcess>
#include <QTemporaryDir>

#include <atomic>
#include <cstdint>
#include <memory>
#include <string>
#include <thread>

#include "qml/kiosk.h"

namespace brimline::test {

inline constexpr const char* kTapClock = "2026-06-14T09:00:00-05:00";

// The demo's customers, as many invented visits as asked for, five a customer, and a busy week of them: one
// bottle in fifty came in the week of `kTapClock`.
void make_tap_store(const std::string& file, std::int64_t visits);

class TapShop {
 public:
  // On a copy of that store; `pause_s` between two readings of an instrument. The kiosk's error, where it
  // cannot be opened.
  static tl::expected<std::unique_ptr<TapShop>, std::string> open(const std::string& store,
                                                                  double pause_s = 0.7);
  ~TapShop();

  Kiosk& kiosk() { return *kiosk_; }
  // The instrument of that number (0 or 1) measures this bottle from now on, one reading after the other.
  void measure(int instrument, const QString& code);
  int plans() const { return plans_; }  // that were computed beside all else

 private:
  TapShop() = default;
  QString bottle(const QString& code) const;
  void start_instruments(Settings& settings, double pause_s);
  void plan_on();

  QTemporaryDir folder_;
  std::unique_ptr<QProcess> instruments_[2];
  std::unique_ptr<Kiosk> kiosk_;
  std::atomic<bool> over_ = false;
  std::atomic<int> plans_ = 0;
  std::thread planner_;
};

}  // namespace brimline::test
