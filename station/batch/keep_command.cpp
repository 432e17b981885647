// SPDX-License-Identifier: GPL-3.0-or-later
// keep: visits from standard input into the store, each answered once it is on disk.
#include <iostream>

#include "station/batch/store_input.h"
#include "station/visit_json.h"

namespace brimline::batch {

namespace {

// Why line `number` was refused, or nothing once the visit in it is kept.
std::optional<std::string> keep_line(Store& store, const std::string& line, int number, std::string& id) {
  const auto visit = read_visit(line, "standard input", number);
  if (!visit) {
    const auto& faults = visit.error();
    for (const Fault& fault : faults) std::cerr << fault.text() << "\n";
    std::string why = faults[0].what + "; expected " + faults[0].expected;
    if (faults.size() > 1) why += " (and " + std::to_string(faults.size() - 1) + " faults more)";
    return why;
  }
  id = visit->id;
  const auto kept = store.keep(*visit);
  if (!kept) return kept.error().text;
  return std::nullopt;
}

}  // namespace

int keep_command(const Arguments& arguments) {
  const auto parsed = parse(arguments, {"--database"});
  if (!parsed) return bad_usage("keep", parsed.error());
  if (!parsed->positional.empty()) return bad_usage("keep", "unknown argument " + parsed->positional[0]);
  return with_store("keep", *parsed, Opening::make, [](Store& store) {
    int result = kDone;
    std::string line, id;
    for (int number = 1; std::getline(std::cin, line); ++number) {
      if (line.find_first_not_of(" \t\r") == std::string::npos) continue;
      const auto why = keep_line(store, line, number, id);
      if (why)
        std::cout << "refused " << number << " " << *why << std::endl;
      else
        std::cout << "kept " << number << " " << id << std::endl;
      if (why) result = kBadInput;
      if (!std::cout) return bad_usage("keep", "standard output is closed");
    }
    return result;
  });
}

}  // namespace brimline::batch
