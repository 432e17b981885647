// SPDX-License-Identifier: GPL-3.0-or-later
// check VISIT [--earlier VISIT]... [--supplies FILE]: which readings can be believed, what the bottle is due,
// and the errors.
#include <algorithm>
#include <chrono>
#include <iostream>

#include "station/batch/usage.h"
#include "station/batch/visit_answers.h"
#include "station/batch/visit_input.h"
#include "station/quality/supplies_json.h"

namespace brimline::batch {

namespace {

Instant machine_clock() {
  return {std::chrono::floor<std::chrono::seconds>(std::chrono::system_clock::now()),
          std::chrono::minutes{0}};
}

// Oldest first, whatever the order on the command line; a bottle with no time keeps the order as given.
void sort_by_time(std::vector<Bottle>& bottles) {
  const auto time_of = [](const Bottle& b) { return b.taken_at ? b.taken_at : b.tested_at; };
  if (!std::all_of(bottles.begin(), bottles.end(), [&](const Bottle& b) { return time_of(b).has_value(); }))
    return;
  std::stable_sort(bottles.begin(), bottles.end(),
                   [&](const Bottle& a, const Bottle& b) { return time_of(a)->utc < time_of(b)->utc; });
}

}  // namespace

int check_command(const Arguments& arguments) {
  const auto parsed = parse(arguments, {"--earlier", "--language", "--supplies"});
  if (!parsed) return bad_usage("check", parsed.error());
  if (parsed->positional.size() != 1) return bad_usage("check", "expected one VISIT");
  const auto language = language_in(*parsed, "en");
  if (!language) return bad_usage("check", language.error());
  std::vector<std::string> paths = parsed->positional;
  if (const auto found = parsed->values.find("--earlier"); found != parsed->values.end())
    paths.insert(paths.end(), found->second.begin(), found->second.end());
  const auto visits = read_visit_files(paths);
  if (!visits) return bad_input(visits.error());

  Supplies supplies;
  if (const auto path = parsed->value("--supplies")) {
    const auto text = read_text(*path);
    if (!text) return bad_input({text.error()});
    const auto found = read_supplies(*text, *path);
    if (!found) return bad_input(found.error());
    supplies = *found;
  }

  const Visit& visit = visits->front();
  std::vector<Bottle> earlier;
  for (size_t i = 1; i < visits->size(); ++i) earlier.push_back((*visits)[i].bottle);
  sort_by_time(earlier);
  std::cout << check_answer(visit, earlier, machine_clock(), Words(*language), supplies) << "\n";
  return kDone;
}

}  // namespace brimline::batch
