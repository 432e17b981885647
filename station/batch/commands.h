// SPDX-License-Identifier: GPL-3.0-or-later
// The commands of brimline-batch: one function a command, a row each in commands.cpp.
#pragma once

#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace brimline::batch {

// Exit codes of the contract.
inline constexpr int kDone = 0;
inline constexpr int kFaulty = 1;    // `verify` only
inline constexpr int kBadInput = 2;  // bad usage or input, one line a fault on standard error

using Arguments = std::vector<std::string>;  // those after the command's name

struct Command {
  std::string_view name;
  std::string_view usage;  // what follows the name
  int (*run)(const Arguments&);
};

std::span<const Command> commands();

}  // namespace brimline::batch
