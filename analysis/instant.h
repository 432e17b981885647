// SPDX-License-Identifier: GPL-3.0-or-later
// A moment with the offset of the place it was written at (ISO 8601, RFC 3339 form:
// 2026-06-14T08:10:00-05:00), so that a sheet shows the customer's own clock.
#pragma once

#include <chrono>
#include <optional>
#include <string>
#include <string_view>

namespace brimline {

struct Instant {
  std::chrono::sys_seconds utc{};
  std::chrono::minutes offset{0};  // of the place, east positive

  // Nothing unless `text` is a whole date, time and offset ("Z" or +hh:mm).
  static std::optional<Instant> parse(std::string_view text);
  // 2026-06-14T08:10:00-05:00
  std::string text() const;
  // Wall-clock time of the place, as if it were UTC: for calendars and clock faces.
  std::chrono::local_seconds local() const {
    return std::chrono::local_seconds{utc.time_since_epoch() + offset};
  }
  friend bool operator==(const Instant&, const Instant&) = default;
};

// Hours from `from` to `to`; negative if `to` is earlier.
double hours_between(const Instant& from, const Instant& to);

}  // namespace brimline
