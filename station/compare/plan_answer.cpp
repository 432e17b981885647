// SPDX-License-Identifier: GPL-3.0-or-later
#include "station/compare/plan_answer.h"

#include <algorithm>
#include <cmath>

#include "analysis/findings/edge.h"
#include "analysis/findings/find.h"
#include "analysis/panel/analyte.h"
#include "station/visit_names.h"
#include "station/wording/plan_words.h"

namespace brimline {

namespace {

constexpr const char* kCombined = "combined_chlorine_high";

struct NamedSign {
  std::string_view id;
  const char* text;
};
constexpr NamedSign kSigns[] = {{"cloudy", phrase("compare", "Cloudy water")},
                                {"green_water", phrase("compare", "Green water")},
                                {"stains", phrase("compare", "Stains")},
                                {"scale", phrase("compare", "Scale")},
                                {"eye_irritation", phrase("compare", "Sore eyes")},
                                {"strong_smell", phrase("compare", "Strong smell")},
                                {"green_hair", phrase("compare", "Green hair")},
                                {"foam", phrase("compare", "Foam")},
                                {"slimy_walls", phrase("compare", "Slimy walls")}};

// What findings that are no reading of their own are called, and what has to be read for them to be found.
struct Computed {
  std::string_view id;
  const char* text;
  std::vector<const char*> read;
};
const std::vector<Computed>& computed() {
  static const std::vector<Computed> rows = {
      {"si_low", phrase("compare", "Water that dissolves calcium"), {"ph", "total_alkalinity"}},
      {"si_high", phrase("compare", "Water that drops calcium"), {"ph", "total_alkalinity"}},
      {"stabilizer_ratio",
       phrase("compare", "Stabilizer against free chlorine"),
       {"cyanuric_acid", "free_chlorine"}}};
  return rows;
}

std::string shown(const Words& words, const AnalyteId& analyte, const Target& target) {
  if (target.low && target.high) {
    const AnalyteKind* kind = find_analyte(analyte);
    return words.number(*target.low, kind ? kind->decimals : 2) + "–" +
           reading_in_words(words, analyte, *target.high);
  }
  return target.low ? words.say("compare", phrase("compare", "at least %1"),
                                {reading_in_words(words, analyte, *target.low)})
                    : words.say("compare", phrase("compare", "at most %1"),
                                {reading_in_words(words, analyte, target.high.value_or(0))});
}

// A finding's reading then and now against what it should be.
struct Held {
  Measured then, now;
  Target target;
};

double outside_by(double value, const Target& target) {
  if (target.low && value < *target.low) return *target.low - value;
  if (target.high && value > *target.high) return value - *target.high;
  return 0;
}

Worked verdict_of(const Held& held) {
  const double error = kSureSds * std::hypot(held.then.sd, held.now.sd);
  const double was = outside_by(held.then.value, held.target), is = outside_by(held.now.value, held.target);
  // as far as it was outside, seen from the side that it was outside on
  const bool below = held.target.low && held.then.value < *held.target.low;
  const double moved = (held.now.value - held.then.value) * (below ? 1 : -1);
  const Standing standing = brimline::standing(held.now, held.target);
  const bool inside = standing != Standing::below && standing != Standing::above;
  if (inside) return moved > error ? Worked::worked : Worked::cannot_tell;
  const bool other_side = is > 0 && moved > was;  // beyond the target on its other side
  if (other_side) return Worked::not_at_all;
  if (moved > error) return Worked::partly;
  return was > error ? Worked::not_at_all : Worked::cannot_tell;
}

const char* sentence(Worked verdict) {
  switch (verdict) {
    case Worked::worked:
      return phrase("compare", "%1: worked. It was %2 and is %3; the target is %4.");
    case Worked::partly:
      return phrase("compare", "%1: partly. It was %2 and is %3, on its way to the target, %4.");
    case Worked::not_at_all:
      return phrase("compare", "%1: did not work. It was %2 and is %3; the target is %4.");
    case Worked::cannot_tell:
      break;
  }
  return phrase("compare",
                "%1: cannot be told. It was %2 and is %3, target %4: less than the readings’ error apart.");
}

class Judge {
 public:
  Judge(const Visit& then, const Visit& now, const Words& words)
      : then_(then),
        now_(now),
        words_(words),
        before_(unchecked_panel(then.bottle.readings, then.vessel)),
        panel_(unchecked_panel(now.bottle.readings, now.vessel)) {}

  std::optional<PlanAnswer> answer(const Finding& finding) {
    if (finding.concern == Concern::reading || finding.id.ends_with("_edge")) return std::nullopt;
    for (const NamedSign& sign : kSigns)
      if (finding.id == sign.id) return sign_answer(sign);
    for (const Computed& row : computed())
      if (finding.id == row.id) return computed_answer(row);
    if (finding.analyte && finding.value && finding.target) return reading_answer(finding);
    return std::nullopt;
  }

 private:
  std::string name(const AnalyteId& analyte) const {
    const AnalyteKind* kind = find_analyte(analyte);
    return kind ? words_.say("analyte", kind->name.c_str()) : analyte;
  }

  PlanAnswer untold(const Finding& finding, const std::string& name, const char* why) const {
    return {finding.id, Worked::cannot_tell, words_.say("compare", why, {name})};
  }

  // Total chlorine is judged by what is combined of it: its target moves with free chlorine.
  std::optional<Held> combined(const Finding& finding) const {
    const auto then = before_.combined_chlorine(), now = panel_.combined_chlorine();
    const CheckedValue* free = before_.find("free_chlorine");
    if (!then || !now || !free || !finding.target->high) return std::nullopt;
    return Held{*then, *now, {std::nullopt, *finding.target->high - free->value}};
  }

  PlanAnswer reading_answer(const Finding& finding) const {
    const AnalyteId& analyte = *finding.analyte;
    const bool combines = finding.id == kCombined;
    const std::string what =
        combines ? words_.say("compare", phrase("compare", "Combined chlorine")) : name(analyte);
    const CheckedValue *now = panel_.find(analyte), *then = before_.find(analyte);
    if (!now)
      return untold(finding, what, phrase("compare", "%1: cannot be told. It was not read this time."));
    if (now->clipped || (then && then->clipped))
      return untold(finding, what,
                    phrase("compare", "%1: cannot be told. A reading stands at the end of its range."));
    const Measured before{*finding.value, then ? then->sd : finding.sd.value_or(now->sd)};
    std::optional<Held> held = Held{before, now->measured(), *finding.target};
    if (combines) held = combined(finding);
    if (!held)
      return untold(finding, what, phrase("compare", "%1: cannot be told. It was not read this time."));
    const Worked verdict = verdict_of(*held);
    return {finding.id, verdict,
            words_.say(
                "compare", sentence(verdict),
                {what, reading_in_words(words_, analyte, held->then.value),
                 reading_in_words(words_, analyte, held->now.value), shown(words_, analyte, held->target)})};
  }

  PlanAnswer sign_answer(const NamedSign& sign) const {
    const auto& signs = now_.bottle.signs;
    const bool still = std::any_of(signs.begin(), signs.end(), [&](Sign s) { return name_of(s) == sign.id; });
    const std::string what = words_.say("compare", sign.text);
    if (still)
      return {std::string(sign.id), Worked::not_at_all,
              words_.say("compare", phrase("compare", "%1: did not work. It is told of again."), {what})};
    return {std::string(sign.id), Worked::worked,
            words_.say("compare", phrase("compare", "%1: worked. It is not told of any more."), {what})};
  }

  PlanAnswer computed_answer(const Computed& row) {
    const std::string what = words_.say("compare", row.text), id(row.id);
    const bool read = std::all_of(row.read.begin(), row.read.end(), [&](const char* analyte) {
      const CheckedValue* value = panel_.find(analyte);
      return value && !value->clipped;
    });
    if (!read)
      return {
          id, Worked::cannot_tell,
          words_.say("compare", phrase("compare", "%1: cannot be told. It was not read this time."), {what})};
    const std::vector<Finding>& found = found_now();
    if (has_finding(found, id))
      return {id, Worked::not_at_all,
              words_.say("compare", phrase("compare", "%1: did not work. It is found again."), {what})};
    if (has_finding(found, id.substr(0, id.find('_')) + "_edge"))
      return {
          id, Worked::cannot_tell,
          words_.say("compare",
                     phrase("compare", "%1: cannot be told. It is so near its limit that the error decides."),
                     {what})};
    return {id, Worked::worked,
            words_.say("compare", phrase("compare", "%1: worked. It is not found any more."), {what})};
  }

  const std::vector<Finding>& found_now() {
    if (found_) return *found_;
    const TargetSet* own = find_targets(then_.plan_as_told->basis.targets);
    const TargetSet* targets = own ? own : find_targets("household");
    const std::vector<Bottle> earlier = {then_.bottle};
    found_ = targets ? find_all(make_situation(now_.vessel, now_.bottle, earlier), *targets)
                     : std::vector<Finding>{};
    return *found_;
  }

  const Visit& then_;
  const Visit& now_;
  const Words& words_;
  CheckedPanel before_, panel_;
  std::optional<std::vector<Finding>> found_;
};

}  // namespace

std::string_view name_of(Worked verdict) {
  switch (verdict) {
    case Worked::worked:
      return "worked";
    case Worked::partly:
      return "partly";
    case Worked::not_at_all:
      return "not_at_all";
    case Worked::cannot_tell:
      break;
  }
  return "cannot_tell";
}

std::vector<PlanAnswer> answers_of(const Visit& then, const Visit& now, const Words& words) {
  std::vector<PlanAnswer> out;
  if (!then.plan_as_told) return out;
  Judge judge(then, now, words);
  for (const Finding& finding : then.plan_as_told->findings)
    if (auto answer = judge.answer(finding)) out.push_back(std::move(*answer));
  return out;
}

}  // namespace brimline
