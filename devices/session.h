// SPDX-License-Identifier: GPL-3.0-or-later
// What one instrument tells over days of lost and found lines: its decoder's words, each reading once,
// garbled merged to one a second, silence told once. Pure: bytes and time in, happenings out.
#pragma once

#include <deque>
#include <memory>
#include <set>
#include <string>

#include "devices/decoder.h"

namespace brimline {

struct Said {
  std::vector<std::variant<InstrumentReading, Trouble>> told;
  std::string answer;  // bytes to send back
};

class Session {
 public:
  // nullptr-free by construction: a Profile always names a protocol that is known.
  explicit Session(const Profile& profile);

  Said opened(Millis at);
  Said received(std::string_view bytes, Millis at);
  Said waited(Millis at);
  std::optional<Millis> wake() const;

 private:
  Said judge(Heard heard, Millis at);
  bool is_new(const std::string& once);
  bool swallow_garbled(Millis at);

  std::unique_ptr<Decoder> decoder_;
  std::optional<Millis> silence_;
  std::optional<Millis> silent_at_;  // nothing: told already, or silence says nothing
  std::optional<Millis> garbled_told_;
  std::set<std::string> known_;  // readings told, the latest of them only: see session.cpp
  std::deque<std::string> known_in_order_;
};

}  // namespace brimline
