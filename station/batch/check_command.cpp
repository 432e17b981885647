// SPDX-License-Identifier: GPL-3.0-or-later
// check VISIT [--earlier VISIT]...: which readings can be believed, what the bottle is due, and the errors.
#include <chrono>
#include <iostream>

#include <nlohmann/json.hpp>

#include "analysis/panel/due.h"
#include "analysis/panel/panel.h"
#include "station/batch/usage.h"
#include "station/batch/visit_input.h"
#include "station/batch/water_json.h"

namespace brimline::batch {

namespace {

using Json = nlohmann::ordered_json;

Json checks_to_json(const std::vector<Check>& checks) {
  Json out = Json::array();
  for (const Check& check : checks)
    out.push_back({{"id", check.id},
                   {"analytes", check.analytes},
                   {"verdict", name_of(check.verdict)},
                   {"text", check.text()}});
  return out;
}

// Of the readings as read, and of what was derived from them.
Json uncertainty_to_json(const Visit& visit) {
  Json out = Json::object();
  for (const Vessel& vessel : {Vessel{}, visit.vessel})
    for (const CheckedValue& value : unchecked_panel(visit.bottle.readings, vessel).values)
      if (!out.contains(value.analyte)) out[value.analyte] = value.sd;
  return out;
}

Instant machine_clock() {
  return {std::chrono::floor<std::chrono::seconds>(std::chrono::system_clock::now()),
          std::chrono::minutes{0}};
}

}  // namespace

int check_command(const Arguments& arguments) {
  const auto parsed = parse(arguments, {"--earlier"});
  if (!parsed) return bad_usage("check", parsed.error());
  if (parsed->positional.size() != 1) return bad_usage("check", "expected one VISIT");
  std::vector<std::string> paths = parsed->positional;
  if (const auto found = parsed->values.find("--earlier"); found != parsed->values.end())
    paths.insert(paths.end(), found->second.begin(), found->second.end());
  const auto visits = read_visit_files(paths);
  if (!visits) return bad_input(visits.error());

  const Visit& visit = visits->front();
  std::vector<Bottle> earlier;
  for (size_t i = 1; i < visits->size(); ++i) earlier.push_back((*visits)[i].bottle);
  const Json answer = {
      {"checks", checks_to_json(check_bottle(visit.bottle, visit.vessel, earlier, machine_clock()))},
      {"panel_due", panel_due(visit.bottle, visit.vessel, earlier)},
      {"uncertainty", uncertainty_to_json(visit)},
      {"water", water_to_json(make_situation(visit.vessel, visit.bottle, earlier))}};
  std::cout << answer.dump() << "\n";
  return kDone;
}

}  // namespace brimline::batch
