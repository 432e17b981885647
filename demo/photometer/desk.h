// SPDX-License-Identifier: GPL-3.0-or-later
// The emulated instrument at work: what it does when, between its line and the commands it gets.
#pragma once

#include <chrono>
#include <deque>
#include <optional>
#include <string>

#include "demo/photometer/options.h"
#include "demo/photometer/pty_line.h"
#include "demo/photometer/talker.h"

namespace brimline::demo {

class PhotometerDesk {
 public:
  PhotometerDesk(Options options, Profile profile, BottleFile bottle);

  [[nodiscard]] bool plug() { return line_.plug(); }
  void turn(Steady::time_point now);  // what is due by now
  std::chrono::nanoseconds until_due(Steady::time_point now) const;
  void command(const std::string& line, Steady::time_point now);
  bool is_over() const { return over_; }

 private:
  void start_round(Steady::time_point now);
  void send_next(Steady::time_point now);
  void act(const Sending& sending, Steady::time_point now);
  void turn_talk(const std::string& heard, Steady::time_point now);
  void turn_plug(Steady::time_point now);
  void turn_idle(Steady::time_point now);
  void turn_readings(Steady::time_point now);
  void turn_end(Steady::time_point now);
  void unplug(Steady::time_point back_at);
  FaultKind next_fault();
  Steady::duration scaled(double seconds) const;

  Options options_;
  Profile profile_;
  Photometer photometer_;
  PtyLine line_;
  std::unique_ptr<Talker> talker_;
  FaultKind on_next_frame_ = FaultKind::none;
  std::deque<const MethodRow*> to_measure_;
  std::deque<FaultKind> next_faults_;
  int rounds_left_ = 0;
  bool working_ = false;  // readings are still to come
  bool silent_ = false;
  bool over_ = false;
  Steady::time_point began_ = Steady::now();
  Steady::time_point next_reading_{}, next_idle_{};
  std::optional<Steady::time_point> replug_at_;
  Steady::time_point end_at_{};  // with --once, after the last reading
};

}  // namespace brimline::demo
