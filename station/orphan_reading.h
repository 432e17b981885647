// SPDX-License-Identifier: GPL-3.0-or-later
// A reading that came from an instrument and belongs to no bottle that waits: kept until somebody says whose
// it is, or sets it aside. Never guessed.
#pragma once

#include <optional>
#include <string>

#include "analysis/instant.h"
#include "analysis/panel/reading.h"

namespace brimline {

struct OrphanReading {
  std::string id;
  Instant heard_at;
  std::optional<std::string> sample;  // the bottle as the instrument named it
  Reading reading;
  friend bool operator==(const OrphanReading&, const OrphanReading&) = default;
};

}  // namespace brimline
