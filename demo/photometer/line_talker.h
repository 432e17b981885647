// SPDX-License-Identifier: GPL-3.0-or-later
// An instrument that sends lines, each reading one, by itself or when asked; nobody answers it. Asked, it
// tells its last reading as often as it is asked; the next one is made once that was told a few times.
#pragma once

#include <deque>

#include "demo/photometer/talker.h"

namespace brimline::demo {

class LineTalker : public Talker {
 public:
  explicit LineTalker(Profile profile) : profile_(std::move(profile)) {}
  void put(const MethodRow& row, const LineReading& reading) override;
  std::vector<std::string> turn(std::string_view heard, Millis at) override;
  std::optional<Millis> wake() const override { return std::nullopt; }
  size_t waiting() const override;
  void restart(Millis) override { heard_.clear(); }
  FrameShape shape() const override;

 private:
  Profile profile_;
  struct Shown {
    std::string line;
    int answers = 0;  // given of it
  };
  std::deque<Shown> lines_;  // measured; where it is asked, the front stays on the display
  std::string heard_;        // of a request, so far
};

}  // namespace brimline::demo
