// SPDX-License-Identifier: GPL-3.0-or-later
// What can go wrong between an instrument and the counter, and what it does to one frame on the line.
#pragma once

#include <optional>
#include <random>
#include <string>
#include <string_view>

namespace brimline::demo {

enum class FaultKind {
  none,
  silent,
  garbled,       // one byte changed
  noise,         // one to eight bytes put in
  lost,          // nothing arrives
  lost_byte,     // one is missing
  doubled,       // the frame twice
  doubled_byte,  // one byte twice
  bad_checksum,
  half_frame,
  wrong_rate,  // read at twice, half or three quarters of the line's rate
  unplug,
  stuck,  // the value before, over and over
  out_of_range,
  over_range,
  reset,       // half a frame, then the instrument starts anew
  clock_jump,  // the instrument's clock goes back an hour
  flood,
  unknown_method
};
std::optional<FaultKind> fault_named(std::string_view name);
std::string_view name_of(FaultKind kind);
std::string fault_names();  // "none, silent, ..."

// How frames of a protocol are built, as far as faults care.
struct FrameShape {
  size_t check_from_end = 1;  // place of the last byte of the check, 1 being the frame's last byte
  std::string start;          // bytes that open a frame: a flood holds none of them
  std::string end;            // ends a flood where nothing opens a frame
};

// The frame as it arrives; empty where nothing does.
std::string damaged(std::string frame, FaultKind fault, const FrameShape& shape, std::mt19937_64& random);

// Bytes as a receiver hears them that samples `ratio` times as fast as they are sent (one start bit, eight
// data bits, one stop bit, low bit first).
std::string heard_at_rate(std::string_view bytes, double ratio);

}  // namespace brimline::demo
