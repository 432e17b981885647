// SPDX-License-Identifier: GPL-3.0-or-later
// find: customers by what is typed of their name, telephone number, street or mail address.
#include <chrono>
#include <iostream>

#include <nlohmann/json.hpp>

#include "station/batch/store_input.h"

namespace brimline::batch {

namespace {

using nlohmann::ordered_json;

ordered_json found_to_json(const Found& found) {
  ordered_json out = {{"customer_id", found.customer.id}, {"name", nullptr}};
  if (found.customer.name) out["name"] = *found.customer.name;
  out["vessels"] = ordered_json::array();
  for (const Vessel& vessel : found.vessels) out["vessels"].push_back(vessel.id);
  out["last_visit"] = nullptr;
  if (found.last_visit) out["last_visit"] = found.last_visit->text();
  return out;
}

int answer(Store& store, const std::string& text) {
  const auto found = store.customers_matching(text);
  if (!found) return store_failed("find", found.error());
  for (const Found& one : *found) std::cout << found_to_json(one).dump() << "\n";
  return kDone;
}

int answer_lines(Store& store) {
  using Clock = std::chrono::steady_clock;
  std::string line;
  for (int number = 1; std::getline(std::cin, line); ++number) {
    const auto begun = Clock::now();
    if (const int failed = answer(store, line); failed != kDone) return failed;
    const std::chrono::duration<double, std::milli> taken = Clock::now() - begun;
    std::cout << ordered_json{{"end", number}, {"ms", taken.count()}}.dump() << std::endl;
  }
  return kDone;
}

}  // namespace

int find_command(const Arguments& arguments) {
  const auto parsed = parse(arguments, {"--database"}, {"--batch"});
  if (!parsed) return bad_usage("find", parsed.error());
  const bool batch = parsed->has("--batch");
  if (parsed->positional.size() != (batch ? 0u : 1u))
    return bad_usage("find", batch ? "expected queries on standard input only" : "expected one TEXT to find");
  return with_store("find", *parsed, Opening::existing, [&](Store& store) {
    return batch ? answer_lines(store) : answer(store, parsed->positional[0]);
  });
}

}  // namespace brimline::batch
