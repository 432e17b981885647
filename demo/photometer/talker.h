// SPDX-License-Identifier: GPL-3.0-or-later
// The instrument's side of a protocol: what was measured goes out as the protocol has it, with the sender's
// own answers, timers and repeats. Pure: bytes and time in, frames out.
#pragma once

#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "demo/photometer/line_faults.h"
#include "devices/line_form.h"
#include "devices/profile.h"

namespace brimline::demo {

class Talker {
 public:
  virtual ~Talker() = default;
  virtual void put(const MethodRow& row, const LineReading& reading) = 0;
  // What goes on the line now, frame by frame, after these bytes were heard.
  virtual std::vector<std::string> turn(std::string_view heard, Millis at) = 0;
  virtual std::optional<Millis> wake() const = 0;  // nothing: only what is heard moves it
  virtual size_t waiting() const = 0;              // readings not yet handed over, as far as it can know
  virtual void restart(Millis at) = 0;             // power was lost
  virtual FrameShape shape() const = 0;
};

// Of the profile's protocol.
std::unique_ptr<Talker> talker_for(const Profile& profile);

}  // namespace brimline::demo
