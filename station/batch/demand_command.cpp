// SPDX-License-Identifier: GPL-3.0-or-later
// demand VISIT: what the chlorine-demand test of a bottle says.
#include <iostream>

#include "station/batch/usage.h"
#include "station/batch/visit_answers.h"
#include "station/batch/visit_input.h"

namespace brimline::batch {

int demand_command(const Arguments& arguments) {
  const auto parsed = parse(arguments, {"--language"});
  if (!parsed) return bad_usage("demand", parsed.error());
  if (parsed->positional.size() != 1) return bad_usage("demand", "expected one VISIT");
  const auto language = language_in(*parsed, "en");
  if (!language) return bad_usage("demand", language.error());
  const std::string& path = parsed->positional.front();
  const auto visit = read_visit_file(path);
  if (!visit) return bad_input(visit.error());
  if (!visit->bottle.demand_test)
    return bad_input({{path, 1, "the visit has no `demand_test`", "the bottles of a chlorine-demand test"}});
  std::cout << demand_answer(*visit, Words(*language)) << "\n";
  return kDone;
}

}  // namespace brimline::batch
