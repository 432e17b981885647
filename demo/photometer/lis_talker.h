// SPDX-License-Identifier: GPL-3.0-or-later
// The sender of a CLSI LIS1-A link (ASTM E1381) with LIS2-A records (ASTM E1394), from memory: establishment,
// transfer, termination; a frame refused is sent six times at most, an answer awaited for 15 s; then the link
// is given up and the message begun anew, its results with their old times.
#pragma once

#include <deque>

#include "demo/photometer/talker.h"

namespace brimline::demo {

class LisTalker : public Talker {
 public:
  explicit LisTalker(Profile profile) : profile_(std::move(profile)) {}
  void put(const MethodRow& row, const LineReading& reading) override;
  std::vector<std::string> turn(std::string_view heard, Millis at) override;
  std::optional<Millis> wake() const override;
  size_t waiting() const override { return waiting_.size(); }
  void restart(Millis at) override;
  FrameShape shape() const override { return {3, "\x02\x03\x04\x05\x17", ""}; }

 private:
  enum class State { neutral, calling, sending };
  struct Result {
    std::string order, result;  // records, CR included
  };

  std::vector<std::string> answer(char byte, Millis at);
  std::string begin(Millis at);
  std::vector<std::string> next_frame(Millis at);
  std::vector<std::string> give_up(Millis at, Millis pause);

  Profile profile_;
  std::deque<Result> waiting_;
  State state_ = State::neutral;
  std::vector<std::string> frames_;  // of the message that is being sent
  size_t frame_ = 0, results_ = 0;   // results_: of waiting_, in this message
  int tries_ = 0;
  Millis due_{0};  // end of the wait: for an answer, or to call again
};

}  // namespace brimline::demo
