// SPDX-License-Identifier: GPL-3.0-or-later
// verify: is the store sound; how many rows of each table.
#include <iostream>

#include <nlohmann/json.hpp>

#include "station/batch/store_input.h"

namespace brimline::batch {

namespace {

int faulty(const std::string& fault) {
  std::cerr << "brimline-batch verify: " << fault << "\n";
  return kFaulty;
}

}  // namespace

int verify_command(const Arguments& arguments) {
  const auto parsed = parse(arguments, {"--database"});
  if (!parsed) return bad_usage("verify", parsed.error());
  const auto url = parsed->value("--database");
  if (!url || !parsed->positional.empty())
    return bad_usage("verify", "expected --database URL and nothing else");
  const DatabaseProgram program;
  auto store = Store::open(*url, Opening::existing);
  if (!store) return faulty(store.error().text);
  const auto faults = store->faults();
  if (!faults) return faulty(faults.error().text);
  for (const std::string& fault : *faults) faulty(fault);
  const auto counts = store->counts();
  if (!counts) return faulty(counts.error().text);
  if (!faults->empty()) return kFaulty;
  nlohmann::ordered_json answer = {{"sound", true}};
  for (const auto& [table, count] : *counts) answer[table] = count;
  std::cout << answer.dump() << "\n";
  return kDone;
}

}  // namespace brimline::batch
