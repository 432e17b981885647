// SPDX-License-Identifier: GPL-3.0-or-later
#include "station/reminder/due.h"

#include <cctype>

#include "analysis/panel/analyte.h"
#include "station/wording/clock_words.h"
#include "station/wording/sheet_words.h"

namespace brimline {
namespace {

constexpr double kMonth = 30 * 24, kDay = 24;  // hours

}  // namespace

std::optional<Instant> due_of(const Visit& visit) {
  const Bottle& bottle = visit.bottle;
  const auto& at = visit.home_at ? visit.home_at : bottle.tested_at ? bottle.tested_at : bottle.taken_at;
  if (!at) return std::nullopt;
  const auto& plan = visit.plan_as_told;
  if (plan && !plan->home_plan) return by_day(later(*at, kDay));
  if (plan && plan->retest && !plan->steps.empty())
    return by_day(later(*at, plan_end_h(*plan) + plan->retest->after_h));
  return by_day(later(bottle.taken_at.value_or(*at), kMonth));
}

std::vector<AnalyteId> due_analytes(const Visit& visit) {
  const auto& plan = visit.plan_as_told;
  if (plan && plan->retest && !plan->retest->analytes.empty()) return plan->retest->analytes;
  std::vector<AnalyteId> out = {"ph", "total_alkalinity", "calcium_hardness", "iron", "copper"};
  // Stabilizer belongs to chlorine alone.
  const auto& sanitizer = visit.vessel.sanitizer;
  if (sanitizer == Sanitizer::chlorine || sanitizer == Sanitizer::salt_chlorine)
    out.insert(out.begin() + 3, "cyanuric_acid");
  return out;
}

std::string analyte_name(const Words& words, const AnalyteId& analyte) {
  const AnalyteKind* kind = find_analyte(analyte);
  return kind ? words.say("analyte", kind->name.c_str()) : analyte;
}

std::string analyte_list(const Words& words, const std::vector<AnalyteId>& analytes) {
  std::string out;
  for (const AnalyteId& analyte : analytes) {
    std::string name = analyte_name(words, analyte);
    if (name.size() > 1 && std::islower(static_cast<unsigned char>(name[1])) &&
        name != "pH")  // not a formula
      name[0] = static_cast<char>(std::tolower(static_cast<unsigned char>(name[0])));
    out.append(out.empty() ? "" : ", ").append(name);
  }
  return out;
}

}  // namespace brimline
