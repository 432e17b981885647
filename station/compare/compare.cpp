// SPDX-License-Identifier: GPL-3.0-or-later
#include "station/compare/compare.h"

#include <cmath>

#include "analysis/panel/analyte.h"
#include "station/compare/expectation.h"
#include "station/wording/plan_words.h"

namespace brimline {

namespace {

constexpr double kSure = 1.96;

// People feed chlorine and bromine all week without telling: there more and less mean just that.
bool fed_daily(std::string_view analyte) {
  return analyte == "free_chlorine" || analyte == "total_chlorine" || analyte == "total_bromine";
}

ChangeVerdict judge(const Pair& pair, double volume_sd) {
  if (pair.amount_missing && !fed_daily(pair.analyte)) return ChangeVerdict::not_told;
  const double z = pair.distance(volume_sd);
  if (std::abs(z) <= kSure) return ChangeVerdict::as_expected;
  const bool told = pair.told_any || pair.drained > 0 || fed_daily(pair.analyte);
  if (!told) return ChangeVerdict::not_told;
  return z > 0 ? ChangeVerdict::more : ChangeVerdict::less;
}

const char* sentence(ChangeVerdict verdict, bool told) {
  switch (verdict) {
    case ChangeVerdict::more:
      return phrase("compare", "%1 went from %2 to %3; about %4 was expected. That is more than expected.");
    case ChangeVerdict::less:
      return phrase("compare", "%1 went from %2 to %3; about %4 was expected. That is less than expected.");
    case ChangeVerdict::not_told:
      return phrase("compare", "%1 went from %2 to %3, and what was told does not say why.");
    case ChangeVerdict::as_expected:
      break;
  }
  return told ? phrase("compare", "%1 went from %2 to %3, as the doses told lead to expect (%4).")
              : phrase("compare", "%1 went from %2 to %3: no more than time and error account for.");
}

ReadingChange change_of(const Pair& pair, double volume_sd, const Words& words) {
  ReadingChange change;
  change.analyte = pair.analyte;
  change.earlier = pair.before.value;
  change.later = pair.now.value;
  change.expected = std::max(0.0, pair.expected());
  change.expected_sd = pair.expected_sd(volume_sd);
  change.verdict = judge(pair, volume_sd);
  change.dose_unknown = pair.amount_missing;
  if (const AnalyteKind* kind = find_analyte(pair.analyte))
    change.text = words.say(
        "compare", sentence(change.verdict, pair.told_any),
        {words.say("analyte", kind->name.c_str()), reading_in_words(words, kind->id, change.earlier),
         reading_in_words(words, kind->id, change.later),
         reading_in_words(words, kind->id, change.expected)});
  return change;
}

// Where a told dose moves a reading, the water found replaced is part of what is expected; where nothing told
// does, the fall itself is the news and stays in the verdict.
void allow_for(const WaterReplaced& replaced, std::vector<Pair>& pairs) {
  for (Pair& pair : pairs) {
    if (!pair.told_any || pair.analyte == "ph") continue;
    const double span = pair.before.value - pair.fill.value;
    pair.lost = (replaced.fraction - pair.drained) * span;
    pair.lost_sd = std::hypot(replaced.sd * span, replaced.fraction * pair.fill.sd);
  }
}

}  // namespace

Vessel with_volume(const Vessel& vessel, const VolumeFound& found, const Instant& until) {
  Vessel out = vessel;
  const LearntVolume* lesson = standing_lesson(vessel);
  LearntVolume learnt{Volume::cubic_metres(found.m3), until, vessel.volume, vessel.volume_relative_sd};
  if (lesson) learnt.before = lesson->before, learnt.before_relative_sd = lesson->before_relative_sd;
  out.volume = learnt.volume;
  out.volume_relative_sd = found.sd / found.m3;
  out.learnt_volume = learnt;
  return out;
}

Vessel without_lesson(const Vessel& vessel) {
  const LearntVolume* lesson = standing_lesson(vessel);
  if (!lesson) return vessel;
  Vessel out = vessel;
  out.volume = lesson->before;
  out.volume_relative_sd = lesson->before_relative_sd;
  out.learnt_volume.reset();
  return out;
}

std::string_view name_of(ChangeVerdict verdict) {
  switch (verdict) {
    case ChangeVerdict::more:
      return "more";
    case ChangeVerdict::less:
      return "less";
    case ChangeVerdict::not_told:
      return "not_told";
    case ChangeVerdict::as_expected:
      break;
  }
  return "as_expected";
}

const ReadingChange* Comparison::find(std::string_view analyte) const {
  for (const ReadingChange& change : changes)
    if (change.analyte == analyte) return &change;
  return nullptr;
}

Comparison compare(std::span<const Visit> visits, const Words& words) {
  Comparison out;
  if (visits.size() < 2) return out;
  const Visit& later = visits.back();
  std::vector<Pair> pairs = pairs_of(visits);
  const Inference inference = infer(visits);
  out.water_replaced = inference.replaced;
  out.volume = inference.volume;
  if (out.water_replaced) allow_for(*out.water_replaced, pairs);
  for (const Pair& pair : pairs)
    out.changes.push_back(change_of(pair, relative_volume_sd(later.vessel), words));
  out.explanations = explain(pairs, out, inference, later, words);
  return out;
}

}  // namespace brimline
