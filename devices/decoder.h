// SPDX-License-Identifier: GPL-3.0-or-later
// What every wire format has in common: bytes and time in, readings and troubles out. A decoder
// is a pure state machine; the port, the clock and the memory of readings belong to others.
#pragma once

#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include "devices/happening.h"
#include "devices/profile.h"

namespace brimline {

// A reading with what makes it this one and no other: empty where the instrument gives no number or
// time to a reading, so that each counts.
struct DecodedReading {
  InstrumentReading reading;
  std::string once;
};

struct Heard {
  std::vector<std::variant<DecodedReading, Trouble>> told;
  std::string answer;  // bytes to send back
  bool alive = false;  // a sound frame was among the bytes

  void trouble(TroubleKind what, std::string text) { told.push_back(Trouble{what, std::move(text)}); }
  void append(Heard more);
};

// Times are since any fixed moment and never go back.
class Decoder {
 public:
  virtual ~Decoder() = default;
  virtual Heard opened(Millis at) = 0;  // also after the line was lost: what was half heard is dropped
  virtual Heard received(std::string_view bytes, Millis at) = 0;
  virtual Heard waited(Millis at) = 0;             // to be called when `wake()` has come
  virtual std::optional<Millis> wake() const = 0;  // nothing: no timer runs
};

}  // namespace brimline
