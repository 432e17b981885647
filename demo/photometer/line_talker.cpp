// SPDX-License-Identifier: GPL-3.0-or-later
#include "demo/photometer/line_talker.h"

#include <algorithm>

namespace brimline::demo {
namespace {

constexpr int kAnswers = 12;  // of one reading before the next is made

}  // namespace

void LineTalker::put(const MethodRow& row, const LineReading& reading) {
  lines_.push_back({line_of(profile_, row, reading)});
}

size_t LineTalker::waiting() const {
  return static_cast<size_t>(std::count_if(lines_.begin(), lines_.end(),
                                           [](const Shown& shown) { return shown.answers < kAnswers; }));
}

std::vector<std::string> LineTalker::turn(std::string_view heard, Millis) {
  const std::string& ask = profile_.line.ask;
  std::vector<std::string> out;
  if (ask.empty()) {
    for (const Shown& shown : lines_) out.push_back(shown.line);
    lines_.clear();
    return out;
  }
  heard_ += heard;
  const size_t asked = heard_.find(ask);
  if (asked == std::string::npos) {
    if (heard_.size() > 256) heard_.clear();
    return out;
  }
  heard_.clear();
  if (lines_.empty()) return out;
  while (lines_.size() > 1 && lines_.front().answers >= kAnswers) lines_.pop_front();
  ++lines_.front().answers;
  out.push_back(lines_.front().line);
  return out;
}

FrameShape LineTalker::shape() const {
  return {profile_.line.end.size() + 1, profile_.line.start, profile_.line.end};
}

}  // namespace brimline::demo
