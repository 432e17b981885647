// SPDX-License-Identifier: GPL-3.0-or-later
// brimline-batch: everything the counter computes, without a screen.
#include <iostream>

#include "station/batch/commands.h"

using namespace brimline::batch;

namespace {

void print_usage(std::ostream& out) {
  out << "usage: brimline-batch COMMAND ...\n";
  for (const Command& command : commands()) out << "  " << command.name << " " << command.usage << "\n";
}

}  // namespace

int main(int argc, char** argv) {
  std::ios::sync_with_stdio(false);
  const std::string_view name = argc > 1 ? argv[1] : "";
  if (name == "--help" || name == "help") {
    print_usage(std::cout);
    return kDone;
  }
  for (const Command& command : commands())
    if (command.name == name) return command.run(Arguments(argv + 2, argv + argc));
  if (!name.empty()) std::cerr << "brimline-batch: unknown command " << name << "\n";
  print_usage(std::cerr);
  return kBadInput;
}
