// SPDX-License-Identifier: GPL-3.0-or-later
// The recorded traffic of a wire: text, one event a line.
//
//   brimline-wire/1
//   # 2026-06-14T08:10:00-05:00 bench_lines
//   0.000 opened
//   1.234 < 23 30 31        bytes that came, in hexadecimal; the time in seconds since the first line
//   1.300 > 06              bytes that were sent
//   9.000 closed
#pragma once

#include <cstdint>
#include <fstream>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include <tl/expected.hpp>

#include "analysis/fields.h"
#include "devices/profile.h"

namespace brimline {

enum class WireEvent { opened, closed, in, out };

struct WireEntry {
  Millis at{0};
  WireEvent event = WireEvent::in;
  std::string bytes;  // of `in` and `out`
};

// The first fault of the log, with its line.
tl::expected<std::vector<WireEntry>, Fault> read_wire_log(std::string_view text, std::string_view file);
bool is_wire_log(std::string_view text);

// Writes a log, each event at once. At `limit` bytes the file becomes FILE.1 (an older one is
// replaced) and a new one begins, so that both together hold the last `limit` bytes at least.
class WireRecorder {
 public:
  // Nothing when the file cannot be written.
  static std::optional<WireRecorder> create(const std::string& path, std::string_view heading,
                                            std::uintmax_t limit = 16u << 20);
  // False when it could not be written (a full disk): recording ends there, listening does not.
  bool write(Millis at, WireEvent event, std::string_view bytes = {});

 private:
  bool begin();
  std::string path_, heading_;
  std::uintmax_t limit_ = 0, written_ = 0;
  std::ofstream out_;
};

}  // namespace brimline
