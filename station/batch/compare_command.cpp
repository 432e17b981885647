// SPDX-License-Identifier: GPL-3.0-or-later
// compare EARLIER LATER ...: the last visit against those before.
#include <iostream>

#include <nlohmann/json.hpp>

#include "station/batch/usage.h"
#include "station/batch/visit_input.h"
#include "station/compare/compare.h"
#include "station/compare/plan_answer.h"

namespace brimline::batch {

namespace {

using Json = nlohmann::ordered_json;

Json changes_to_json(const std::vector<ReadingChange>& changes) {
  Json out = Json::array();
  for (const ReadingChange& change : changes)
    out.push_back({{"analyte", change.analyte},
                   {"earlier", change.earlier},
                   {"later", change.later},
                   {"expected", change.expected},
                   {"expected_sd", change.expected_sd},
                   {"verdict", name_of(change.verdict)},
                   {"text", change.text}});
  return out;
}

Json to_json(const Comparison& comparison) {
  Json out;
  out["changes"] = changes_to_json(comparison.changes);
  out["water_replaced"] = nullptr;
  if (const auto& replaced = comparison.water_replaced)
    out["water_replaced"] = {{"fraction", replaced->fraction}, {"sd", replaced->sd}};
  out["volume"] = nullptr;
  if (const auto& volume = comparison.volume)
    out["volume"] = {{"m3", volume->m3}, {"sd", volume->sd}, {"agrees", volume->agrees}};
  out["explanations"] = Json::array();
  for (const Explanation& explanation : comparison.explanations)
    out["explanations"].push_back({{"id", explanation.id}, {"text", explanation.text}});
  return out;
}

Json to_json(const std::vector<PlanAnswer>& answers) {
  Json out = Json::array();
  for (const PlanAnswer& answer : answers)
    out.push_back({{"finding", answer.finding}, {"verdict", name_of(answer.verdict)}, {"text", answer.text}});
  return out;
}

std::string language_of(const Visit& visit) {
  return visit.customer && visit.customer->language ? *visit.customer->language : "en";
}

}  // namespace

int compare_command(const Arguments& arguments) {
  const auto parsed = parse(arguments, {});
  if (!parsed) return bad_usage("compare", parsed.error());
  if (parsed->positional.size() < 2)
    return bad_usage("compare", "expected EARLIER LATER, or more, oldest first");
  const auto visits = read_visit_files(parsed->positional);
  if (!visits) return bad_input(visits.error());
  const Words words(language_of(visits->back()));
  Json out = to_json(compare(*visits, words));
  out["plan_worked"] = to_json(answers_of((*visits)[visits->size() - 2], visits->back(), words));
  std::cout << out.dump() << "\n";
  return kDone;
}

}  // namespace brimline::batch
