// SPDX-License-Identifier: GPL-3.0-or-later
// The instrument's end of a serial line: a pseudo-terminal whose other end stands under a link, and
// whose bytes leave at the pace of the line's baud rate. Bytes nobody listens to are lost.
#pragma once

#include <chrono>
#include <deque>
#include <string>

#include "devices/profile.h"

namespace brimline::demo {

using Steady = std::chrono::steady_clock;

class PtyLine {
 public:
  // `speed`: how many times faster than the line's true pace.
  PtyLine(std::string link, const SerialSettings& serial, double speed);
  ~PtyLine();
  PtyLine(const PtyLine&) = delete;
  PtyLine& operator=(const PtyLine&) = delete;

  // False when no pseudo-terminal or no link could be made.
  [[nodiscard]] bool plug();
  void unplug();  // what waits to be sent is lost
  bool is_plugged() const { return master_ >= 0; }
  bool has_listener() const;

  void queue(const std::string& bytes, Steady::time_point now);
  bool is_idle() const { return waiting_.empty(); }
  // Sends what is due; gives back what came in.
  std::string turn(Steady::time_point now);
  // Time until the next byte is due; a long time when none waits.
  std::chrono::nanoseconds until_due(Steady::time_point now) const;

 private:
  std::string receive();
  size_t write(size_t count);
  std::string link_;
  std::chrono::nanoseconds byte_time_;
  int master_ = -1;
  std::string waiting_;
  Steady::time_point next_due_{};
};

}  // namespace brimline::demo
