// SPDX-License-Identifier: GPL-3.0-or-later
// plan VISIT [--earlier VISIT]... [--shelf DIR] [--targets NAME]
#include <iostream>

#include <nlohmann/json.hpp>

#include "station/batch/commands.h"
#include "station/batch/usage.h"
#include "station/batch/visit_input.h"
#include "station/plan/plan_service.h"
#include "station/plan/shop_targets.h"
#include "station/plan_json.h"

namespace brimline::batch {

namespace {}  // namespace

int plan_command(const Arguments& arguments);
int plan_command(const Arguments& arguments) {
  const auto parsed = parse(arguments, {"--earlier", "--shelf", "--targets", "--language"});
  if (!parsed) return bad_usage("plan", parsed.error());
  if (parsed->positional.size() != 1) return bad_usage("plan", "expected one VISIT");
  const std::string name = parsed->value("--targets").value_or("household");
  const auto targets = targets_named(name);
  if (!targets) return bad_input(targets.error());

  std::vector<std::string> paths = {parsed->positional.front()};
  if (const auto earlier = parsed->values.find("--earlier"); earlier != parsed->values.end())
    paths.insert(paths.end(), earlier->second.begin(), earlier->second.end());
  const auto visits = read_visit_files(paths);
  if (!visits) return bad_input(visits.error());

  Shelf own;
  const Shelf* shelf = &built_in_shelf();
  if (const auto folder = parsed->value("--shelf")) {
    auto read = read_shelf(*folder);
    if (!read) return bad_input(read.error());
    own = std::move(*read);
    shelf = &own;
  }
  const Visit& visit = visits->front();
  const auto told = visit.customer ? visit.customer->language : std::nullopt;
  const auto language = language_in(*parsed, told.value_or("en"));
  if (!language) return bad_usage("plan", language.error());
  const Words words(*language);
  const std::span<const Visit> earlier(visits->begin() + 1, visits->end());
  const Plan plan = make_plan(visit, earlier, *shelf, *targets, words);
  std::cout << plan_to_json(plan).dump() << "\n";
  return kDone;
}

}  // namespace brimline::batch
