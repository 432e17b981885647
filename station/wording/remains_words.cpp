// SPDX-License-Identifier: GPL-3.0-or-later
// What stands outside its target when the plan is done, why, and what comes next.
#include "analysis/panel/analyte.h"
#include "station/wording/plan_words.h"

namespace brimline {

namespace {

struct Sentence {
  const char* id;
  const char* text;
};

// %1 what is outside, %2 its value at the end.
constexpr Sentence kRemains[] = {
    {"cut_for_harm",
     phrase(
         "plan",
         "%1 will stand at %2: with the error of the readings more of a dose could do harm, so it was made "
         "smaller or left out. Bring another bottle: the rest is worked out from it.")},
    {"volume_unknown", phrase("plan", "%1 stays at %2: no dose without the volume. Measure it first.")},
    {"fill_unknown",
     phrase("plan", "%1 waits at %2 until the refilled water has been read: the fill water is not known.")},
    {"after_drain", phrase("plan", "%1 waits at %2 until the refilled water has been read.")},
    {"air_over_days",
     phrase("plan",
            "%1 will stand at %2: high alkalinity at low pH comes down only by turns of acid and air, over "
            "days. Bring another bottle for the next turn.")},
    {"next_bottle", phrase("plan", "%1 will stand at %2: the next bottle decides the next dose.")},
    {"bound_not_removed",
     phrase("plan",
            "%1 still reads %2: a binder keeps it from staining but does not take it out. Find where it "
            "comes from.")},
    {"tap_brings_it",
     phrase("plan", "%1 still reads %2, and the fill water brings it: fill through a filter for metals.")},
    {"once_clear",
     phrase("plan", "%1 stays at %2: it is taken out once chlorine holds and the water is clear.")},
    {"reading_first",
     phrase("plan",
            "%1 waits at %2: another reading may call for new water, and this would go out with "
            "it.")},
    {"falls_by_itself", phrase("plan", "%1 stands at %2 and falls by itself: add none, then read again.")},
    {"needs_drain",
     phrase("plan", "%1 stays at %2: nothing on a shelf takes it out, only other water does.")},
    {"fill_too_high",
     phrase("plan",
            "%1 stays at %2: the fill water holds too much of it itself. Other fill water would help.")},
    {"drain_again",
     phrase("plan",
            "%1 will stand at %2: one part of the water more has to be changed, after the next "
            "bottle.")},
    {"plaster_cures", phrase("plan", "%1 waits at %2 until the plaster is 28 days old.")},
    {"plaster_first", phrase("plan", "%1 stays at %2: acid would do young plaster more harm.")},
    {"at_opening", phrase("plan", "%1 waits at %2 until the pool is opened again.")},
    {"once_chlorine_holds", phrase("plan", "%1 waits at %2 until chlorine holds overnight.")},
    {"read_again",
     phrase("plan", "%1 stays at %2: pH, alkalinity and stabilizer must be read again before a dose.")},
    {"no_product",
     phrase("plan", "%1 will stand at %2: what would move it is neither on the shelf nor at home.")},
    {"lives_with_it",
     phrase(
         "plan",
         "%1 will stand at %2: no dose brings it nearer without taking another reading out of its range.")},
    {"demand_test_first", phrase("plan", "%1 waits at %2 for an overnight chlorine-demand test.")},
    {"demand_test_again", phrase("plan", "%1 waits at %2 for another demand test.")},
    {"demand_too_high", phrase("plan", "%1 waits at %2 until part of the water has been changed.")},
    {"reading_repeat", phrase("plan", "%1 was read as %2 and must be read again before a dose.")},
    {"at_edge", phrase("plan",
                       "%1 stands at %2, at the edge of its range: by less than the error of the reading. "
                       "Read it again with "
                       "the next bottle.")},
    {"after_repeat",
     phrase("plan", "%1 stays at %2 until free chlorine has been read again; no dose before.")},
    {"repeat_diluted", phrase("plan", "%1 waits at %2 until it has been read again, diluted.")},
};

// %1 the step, %2 percent of the draws.
constexpr Sentence kRefusals[] = {
    {"no_reason", phrase("plan", "Step %1: a change needs a name and a reason.")},
    {"no_such_step", phrase("plan", "Step %1 is not in this plan.")},
    {"not_a_dose", phrase("plan", "Step %1 cannot be changed to that: it would do something else.")},
    {"not_on_shelf", phrase("plan", "Step %1: that product is neither on the shelf nor at home.")},
    {"never_here",
     phrase("plan", "Step %1: that product may never go into this water, or never beside another step.")},
    {"label_decides", phrase("plan", "Step %1: the product's label decides this dose.")},
    {"over_cap", phrase("plan", "Step %1: that is more than one step may hold.")},
    {"harm",
     phrase("plan",
            "Refused: in %2 of 100 draws step %1 could do harm (pH below 7.0 or above 8.2, or too much "
            "chlorine).")},
};

// The names once more, as what a sentence begins with: other languages put an article before them.
[[maybe_unused]] constexpr const char* kSubjects[] = {
    phrase("subject", "Biguanide"),
    phrase("subject", "Borate"),
    phrase("subject", "Bromide"),
    phrase("subject", "Calcium hardness"),
    phrase("subject", "Conductivity"),
    phrase("subject", "Copper"),
    phrase("subject", "Stabilizer"),
    phrase("subject", "Free chlorine"),
    phrase("subject", "Iron"),
    phrase("subject", "Magnesium hardness"),
    phrase("subject", "Manganese"),
    phrase("subject", "Nitrate"),
    phrase("subject", "Hydrogen peroxide"),
    phrase("subject", "pH"),
    phrase("subject", "Phosphate"),
    phrase("subject", "Salt"),
    phrase("subject", "Sulfate"),
    phrase("subject", "Dissolved solids"),
    phrase("subject", "Total alkalinity"),
    phrase("subject", "Total bromine"),
    phrase("subject", "Total chlorine"),
    phrase("subject", "Total hardness"),
    phrase("subject", "Turbidity"),
};

}  // namespace

std::string refusal_text(const Words& words, std::string_view id, int step, double harm) {
  for (const Sentence& s : kRefusals)
    if (id == s.id) return words.say("plan", s.text, {std::to_string(step), words.number(100 * harm, 1)});
  return std::string(id);
}

std::string remains_text(const Words& words, const Remains& r) {
  const AnalyteKind* kind = find_analyte(r.analyte);
  const std::string name = kind ? words.say("subject", kind->name.c_str())
                                : words.say("plan", phrase("plan", "Calcium saturation in the vessel"));
  for (const Sentence& s : kRemains)
    if (r.reason == s.id)
      return words.say("plan", s.text, {name, reading_in_words(words, r.analyte, r.value)});
  return r.reason;
}

std::vector<std::string> known_remains_ids() {
  std::vector<std::string> out;
  for (const Sentence& s : kRemains) out.emplace_back(s.id);
  return out;
}

}  // namespace brimline
