// SPDX-License-Identifier: GPL-3.0-or-later
#include "demo/photometer/line_talker.h"

namespace brimline::demo {

void LineTalker::put(const MethodRow& row, const LineReading& reading) {
  lines_.push_back(line_of(profile_, row, reading));
}

std::vector<std::string> LineTalker::turn(std::string_view heard, Millis) {
  const std::string& ask = profile_.line.ask;
  std::vector<std::string> out;
  if (ask.empty()) {
    out.assign(lines_.begin(), lines_.end());
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
  out.push_back(lines_.front());
  lines_.pop_front();
  return out;
}

FrameShape LineTalker::shape() const {
  return {profile_.line.end.size() + 1, profile_.line.start, profile_.line.end};
}

}  // namespace brimline::demo
