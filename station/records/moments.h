// SPDX-License-Identifier: GPL-3.0-or-later
// Days and moments as tables write them.
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "analysis/instant.h"

namespace brimline {

// ISO 8601: 2026-06-14 or 20260614 (noon is meant), 2026-06-14T08:10, 2026-06-14 08:10:30, either with Z or
// an offset; with none it is the clock of this machine's place. Nothing where it is no such moment.
struct WrittenMoment {
  Instant at;
  std::string
      wall;  // as written, "2026-06-14T12:00:00", with its offset if it had one: the same at any place
};
std::optional<WrittenMoment> moment_from(std::string_view text);

}  // namespace brimline
