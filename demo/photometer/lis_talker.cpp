// SPDX-License-Identifier: GPL-3.0-or-later
#include "demo/photometer/lis_talker.h"

#include <algorithm>
#include <cstdio>

#include "devices/lis_decoder.h"

namespace brimline::demo {
namespace {

constexpr char kEot = 0x04, kEnq = 0x05, kAck = 0x06, kNak = 0x15;
constexpr Millis kAnswer{15000}, kAfterNak{10000}, kBreath{1000};
constexpr int kMostTries = 6;
constexpr size_t kMostResults = 10;  // of one message

std::string number_of(double value, int decimals) {
  char out[48];
  (void)std::snprintf(out, sizeof out, "%.*f", decimals, value);
  return out;
}

}  // namespace

void LisTalker::put(const MethodRow& row, const LineReading& reading) {
  const std::string flag = !reading.clipped ? "N" : *reading.clipped == Clip::above ? ">" : "<";
  waiting_.push_back({"O|1|" + reading.sample + "||^^^" + row.code + "|R\r",
                      "R|1|^^^" + row.code + "|" + number_of(reading.value, row.decimals) + "|" + row.unit +
                          "||" + flag + "||F||||" + reading.serial + "\r"});
}

std::string LisTalker::begin(Millis at) {
  results_ = std::min(waiting_.size(), kMostResults);
  frames_.clear();
  frame_ = 0;
  tries_ = 0;
  std::vector<std::string> texts{"H|\\^&|||bench|||||||P|LIS2-A|20260614080000\r", "P|1\r"};
  for (size_t i = 0; i < results_; ++i) {
    texts.push_back(waiting_[i].order);
    texts.push_back(waiting_[i].result);
  }
  texts.emplace_back("L|1|N\r");
  for (size_t i = 0; i < texts.size(); ++i)
    frames_.push_back(lis_frame(static_cast<int>((i + 1) % 8), texts[i], true));
  state_ = State::calling;
  due_ = at + kAnswer;
  return std::string(1, kEnq);
}

std::vector<std::string> LisTalker::next_frame(Millis at) {
  tries_ = 0;
  due_ = at + kAnswer;
  state_ = State::sending;
  if (frame_ < frames_.size()) return {frames_[frame_]};
  waiting_.erase(waiting_.begin(), waiting_.begin() + static_cast<std::ptrdiff_t>(results_));
  state_ = State::neutral;
  due_ = at;
  return {std::string(1, kEot)};
}

std::vector<std::string> LisTalker::give_up(Millis at, Millis pause) {
  state_ = State::neutral;
  due_ = at + pause;
  return {std::string(1, kEot)};
}

std::vector<std::string> LisTalker::answer(char byte, Millis at) {
  if (state_ == State::calling && byte == kAck) return next_frame(at);
  if (state_ == State::calling && byte == kNak) return give_up(at, kAfterNak);
  if (state_ != State::sending) return {};
  if (byte == kAck || byte == kEot) {  // EOT: taken, and the receiver asks for a pause
    ++frame_;
    return next_frame(at);
  }
  if (byte != kNak) return {};
  if (++tries_ >= kMostTries) return give_up(at, kBreath);
  due_ = at + kAnswer;
  return {frames_[frame_]};
}

std::vector<std::string> LisTalker::turn(std::string_view heard, Millis at) {
  std::vector<std::string> out;
  const auto say = [&](std::vector<std::string> more) {
    out.insert(out.end(), std::make_move_iterator(more.begin()), std::make_move_iterator(more.end()));
  };
  for (const char byte : heard) say(answer(byte, at));
  if (state_ != State::neutral && at >= due_) say(give_up(at, kBreath));
  if (state_ == State::neutral && at >= due_ && !waiting_.empty()) say({begin(at)});
  return out;
}

std::optional<Millis> LisTalker::wake() const {
  if (state_ == State::neutral && waiting_.empty()) return std::nullopt;
  return due_;
}

void LisTalker::restart(Millis at) {
  state_ = State::neutral;
  due_ = at + kBreath;
}

}  // namespace brimline::demo
