// SPDX-License-Identifier: GPL-3.0-or-later
// The form of protocol "ascii_lines": reading it from a profile, and writing a line in it (which
// is what the emulated instrument and the tests do).
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "devices/profile.h"

namespace brimline {

void read_line_form(Fields& file, Profile& into);

// The checksum of `covered` in hex digits, by its name in the profile; nothing for an unknown name.
std::optional<std::string> checksum_text(std::string_view name, std::string_view covered);

// One reading as it is sent; `value` in the wire's unit. Empty texts are sent as empty fields.
struct LineReading {
  std::string serial, sample;
  double value = 0;
  std::optional<Clip> clipped;
};
std::string line_of(const Profile& profile, const MethodRow& row, const LineReading& reading);

}  // namespace brimline
