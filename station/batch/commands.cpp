// SPDX-License-Identifier: GPL-3.0-or-later
#include "station/batch/commands.h"

namespace brimline::batch {

// One declaration and one row a command; the function stands in NAME_command.cpp.

std::span<const Command> commands() {
  static const std::vector<Command> rows = {};
  return rows;
}

}  // namespace brimline::batch
