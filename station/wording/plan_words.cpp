// SPDX-License-Identifier: GPL-3.0-or-later
#include "station/wording/plan_words.h"

#include <algorithm>
#include <cmath>
#include <iterator>

#include "station/wording/amount_words.h"
#include "station/wording/clock_words.h"

namespace brimline {

namespace {

struct Sentence {
  const char* id;
  const char* text;
};

constexpr double kTabletGrams = 15;  // bromine tablets weigh about 20 g; common practice, no source

template <size_t N>
const char* find(const Sentence (&table)[N], std::string_view id) {
  for (const Sentence& s : table)
    if (id == s.id) return s.text;
  return nullptr;
}

template <size_t N>
std::vector<std::string> ids(const Sentence (&table)[N]) {
  std::vector<std::string> out;
  for (const Sentence& s : table) out.emplace_back(s.id);
  return out;
}

// %1 portion, %2 product, %3 number of portions, %4 hours between them, %5 percent of the water, %6 how long.
constexpr Sentence kSteps[] = {
    {"raise_ph",
     phrase("plan",
            "Raise pH: stir %1 of %2 into a bucket of pool water and pour it round the edge, pump running.")},
    {"raise_ph_and_alkalinity", phrase("plan",
                                       "Raise pH and alkalinity together: stir %1 of %2 into a bucket of "
                                       "pool water and pour it round the edge, pump running.")},
    {"lower_ph", phrase("plan", "Lower pH: pour %1 of %2 slowly in front of a return, pump running.")},
    {"lower_ph_ahead", phrase("plan",
                              "Make room for pH, which a later step raises: pour %1 of %2 slowly in front of "
                              "a return, pump running.")},
    {"raise_alkalinity", phrase("plan", "Raise alkalinity: spread %1 of %2 over the water.")},
    {"alkalinity_before_acid",
     phrase("plan", "Add %1 of %2 first, so that the acid after it does not take alkalinity too low.")},
    {"lower_alkalinity", phrase("plan",
                                "Lower alkalinity: pour %1 of %2 slowly in front of a return, pump running. "
                                "pH drops too and comes back with air.")},
    {"raise_calcium", phrase("plan", "Raise calcium: add %1 of %2, dissolved as its label allows.")},
    {"raise_salt",
     phrase(
         "plan",
         "Raise salt: generator off first. Spread %1 of %2 over the water, pump running, and brush until it "
         "is gone. Generator on again a day later.")},
    {"raise_chlorine",
     phrase("plan",
            "Raise chlorine: add %1 of %2 where the water moves, never through the skimmer, pump running.")},
    {"breakpoint",
     phrase(
         "plan",
         "Burn off the spent chlorine: have all of it at hand, then pour %1 of %2 low in front of a return, "
         "pump running, all in one go. Less would make matters worse.")},
    {"shock_algae",
     phrase("plan",
            "Kill the algae: add %1 of %2 where the water moves, pump running, all in one go; leave it "
            "overnight.")},
    {"meet_demand",
     phrase("plan",
            "Meet what the water uses up: add %1 of %2 where the water moves, pump running, all in one go; "
            "leave it overnight.")},
    {"raise_stabilizer", phrase("plan",
                                "Raise stabilizer: hang %1 of %2 in a sock in front of a return, pump on and "
                                "no backwash until it is gone. Its reading rises within a week.")},
    {"bromide_bank", phrase("plan", "Lay down bromide: add %1 of %2.")},
    {"raise_bromine", phrase("plan",
                             "Raise bromine: give %1 of %2 by its feeder, no tablet broken. It dissolves "
                             "over a day or more: test bromine before anybody gets in.")},
    {"raise_bromine_little",
     phrase("plan",
            "Raise bromine: %1 is missing of %2, so drop none in: open the feeder one mark further and test "
            "bromine tomorrow, before anybody gets in.")},
    {"raise_bromine_grains",
     phrase("plan", "Raise bromine: sprinkle %1 of %2 over the moving water, jets or pump on for an hour.")},
    {"raise_biguanide",
     phrase("plan", "Raise the sanitizer: pour %1 of %2 in front of a return, pump running.")},
    {"raise_peroxide",
     phrase("plan", "Raise peroxide: pour %1 of %2 slowly in front of a return, pump running.")},
    {"sequester", phrase("plan",
                         "Bind the metals before any other chemical goes in: pour %1 of %2 in front of a "
                         "return, or as its label says.")},
    {"clarify", phrase("plan", "Help the filter: add %1 of %2, or as its label says.")},
    {"raise_borate", phrase("plan", "Raise borate: spread %1 of %2 over the water.")},
    {"lower_chlorine",
     phrase("plan", "Take down chlorine: add %1 of %2, half of what it would take; then read again.")},
    {"let_chlorine_fall",
     phrase("plan", "Add no chlorine; cover off and pump on: the sun brings it down by itself.")},
    {"let_chlorine_fall_covered",
     phrase("plan", "Add no chlorine; cover off and pump on until it has come down by itself.")},
    {"let_bromine_fall",
     phrase("plan",
            "Take out the bromine tablets; cover off and pump on until bromine has come down by itself.")},
    {"read_again",
     phrase("plan", "Bring another bottle: a reading has to be taken again before anything is dosed.")},
    {"brush_plaster",
     phrase("plan",
            "Brush the new plaster all over, twice a day until it is 28 days old; no salt until then.")},
    {"cover_water_off",
     phrase("plan",
            "Pump the water and leaves off the cover before it comes off; none of it into the pool.")},
    {"winter_algaecide", phrase("plan", "For the winter: add %1 of %2, or as its label says.")},
    {"remove_phosphate",
     phrase("plan", "Remove phosphate: add %1 of %2. The water looks worse first; clean the filter after.")},
    {"drain_refill", phrase("plan",
                            "Let out %5 of the water by its drain or a sump pump and fill up again. Pump, "
                            "heater and generator off before, on again once it is full.")},
    {"aerate", phrase("plan",
                      "Let pH rise by air for about %6: turn the returns up until they break the surface; "
                      "fountain, jets and air on. Stop as soon as a test shows pH %8.")},
    {"brush", phrase("plan", "Brush walls, steps and corners.")},
    {"vacuum", phrase("plan", "Take out leaves and vacuum the floor.")},
    {"filter_on", phrase("plan", "Run the filter day and night until the water is clear.")},
    {"clean_filter", phrase("plan", "Clean or backwash the filter.")},
    {"circulate", phrase("plan", "Run the pump for %6, so that all the water goes through the filter once.")},
    {"remove_tablets",
     phrase("plan",
            "Take tablets out of skimmer and feeder, pump off while it is open. Other chlorine goes in only "
            "where a step of this sheet says so.")},
    {"generator_down",
     phrase("plan", "Turn the chlorine generator off until free chlorine is back in range.")},
    {"generator_up", phrase("plan", "Turn the chlorine generator up one step.")},
    {"cool", phrase("plan", "Heater off; let the water cool to %7 or less before anybody gets in.")},
    {"fill_unknown", phrase("plan",
                            "Once it is full again and well mixed, bring a bottle of it and one of the tap "
                            "water: the rest of the doses hang on them.")},
    {"retest_after_drain",
     phrase("plan", "Once it is full again and well mixed, bring a bottle: the doses hang on it.")},
    {"retest_then_rest", phrase("plan", "Bring another bottle; the rest of the dose is worked out from it.")},
    {"repeat_diluted", phrase("plan",
                              "Bring another bottle: we must read free chlorine again, diluted 1 + 4. Strong "
                              "chlorine can bleach the test and look like none.")},
    {"demand_test_first", phrase("plan",
                                 "Bring a litre of the water for an overnight chlorine-demand test: what it "
                                 "needs is more than is safe to add by guess.")},
    {"demand_test_again",
     phrase("plan", "Bring a litre of the water for another demand test, with stronger bottles.")},
    {"demand_too_high", phrase("plan",
                               "This water uses up too much chlorine to treat: bring another bottle once "
                               "part of it has been changed, or ask a licensed operator.")},
    {"chemicals_mixed_or_fuming",
     phrase("plan",
            "Leave at once, away from the fumes and upwind, keep others out and call the emergency number "
            "from outside.")},
    {"incident", phrase("plan", "Keep everybody out and ask the health department which procedure applies.")},
    {"contaminated", phrase("plan", "Keep everybody out and ask the health department.")},
    {"drain_not_visible", phrase("plan", "Keep everybody out; have a licensed operator clear the water.")},
    {"public_vessel", phrase("plan", "Hand these readings to the qualified operator.")},
    {"sanitizer_unknown", phrase("plan", "Find out what keeps this water clean.")},
    {"sanitizer_changed", phrase("plan", "Have the changeover done by somebody licensed.")},
    {"reading_out_of_range",
     phrase("plan",
            "Dilute the sample where the method allows it, or use one of wider range, and read again.")},
    {"readings_contradict",
     phrase("plan", "Take a fresh bottle and read pH, alkalinity and stabilizer again.")},
};

// A feeder that spits, a jug for each product, and where an oxidiser may not lie: from memory, common
// practice of the trade. A day for salt to dissolve before the generator runs: common practice, no source.
constexpr Sentence kCautions[] = {
    {"acid", phrase("plan",
                    "Acid burns: goggles and gloves on, the wind at your back, nobody downwind of you. Never "
                    "with or near chlorine.")},
    {"into_water", phrase("plan", "Always chemical into water, never water into chemical.")},
    {"eyes", phrase("plan", "Irritates the eyes: goggles on.")},
    {"calcium_heat",
     phrase("plan", "It gets hot when it dissolves: clean bucket, cool water first, small amounts.")},
    {"sock", phrase("plan", "Never in the same sock, skimmer, bucket or hour as strong chlorine.")},
    {"oxidiser", phrase("plan",
                        "Burns skin and eyes, feeds fire: goggles, gloves, a dry scoop of its own, away from "
                        "fuel and anything that burns.")},
    {"burns", phrase("plan", "Burns skin and eyes: goggles and gloves on.")},
    {"bleach", phrase("plan", "Burns skin and eyes, bleaches clothes, feeds fire: goggles and gloves on.")},
    {"grains",
     phrase("plan", "Grains left lying bleach liner, paint and fibreglass: brush until they are gone.")},
    {"never_with_acid",
     phrase("plan", "With acid it gives off chlorine gas: never the same jug, bucket, spot or hour.")},
    {"never_wet_hypochlorite",
     phrase("plan", "Never wet the container or add a little water to the granules.")},
    {"never_two_chlorines", phrase("plan",
                                   "Never let two kinds of chlorine, or chlorine and acid, meet, not even in "
                                   "a scoop: they can explode or give off gas.")},
    {"generator_off_until_dissolved", phrase("plan", "Generator off before, and on again only a day after.")},
    {"label",
     phrase("plan", "Where its label names another amount for this much water, the label's counts.")},
    {"peroxide", phrase("plan",
                        "Feeds fire: nothing else in the jug, never back into its container, spills rinsed "
                        "with much water, away from rags, wood and fuel.")},
    {"small_amount", phrase("plan",
                            "So little wants a syringe, a measuring spoon or a scale that shows tenths of a "
                            "gram; ask us for one.")},
    {"drain_lift", phrase("plan",
                          "An empty shell can float up in wet ground, and a liner can shrink: no draining "
                          "after heavy rain; ask a professional where the ground water is high.")},
    {"drain_discharge", phrase("plan",
                               "Ask the town where the water may go: many want no chlorine in it, and none "
                               "wants salt water in a storm drain.")},
    {"power_off", phrase("plan", "Power off before draining.")},
    {"sun_takes_it", phrase("plan", "Without stabilizer the sun takes it within a day.")},
    {"vapour", phrase("plan", "Cover off, and stay out of the vapour over the water.")},
    {"wet_tablets",
     phrase("plan",
            "A feeder can spit gas: pump off, valves shut, face away, goggles and gloves on. "
            "Damp tablets go into a clean, dry plastic bucket by themselves, open, outdoors in "
            "the shade, away from rain and children: never into a closed box, never on another "
            "product.")},
    {"sheet_biguanide", phrase("plan",
                               "This water runs on biguanide: no chlorine, bromine, copper or monopersulfate "
                               "may go in, not even as a shock.")},
    {"sheet_bromine",
     phrase("plan", "This water runs on bromine: no stabilizer, and no product that holds any.")},
    {"sheet_filter_now",
     phrase("plan", "Pump and filter run from now on, day and night, until the water is clear.")},
    {"sheet_small",
     phrase("plan", "So many small doses: ask us whether emptying and filling up, power off, is quicker.")},
    {"sheet_hours",
     phrase("plan", "The hours are the earliest. Later is fine: keep the order and the hours in between.")},
    {"sheet_public", phrase("plan", "Keep everybody out until the operator of this water says otherwise.")},
    {"cover_off",
     phrase("plan",
            "Indoors: cover off, doors and windows open, nobody else in the room; once it is in, "
            "leave until the smell is gone.")},
    {"sheet_label", phrase("plan", "The product's label and your local code come first.")},
    {"sheet_never_mix",
     phrase("plan", "Never mix chemicals. Each goes into the water by itself, pump running.")},
    {"sheet_nobody_in",
     phrase("plan",
            "Nobody in the water while dosing, for %1 after a dose, nor before the time on "
            "this sheet.")},
    {"sheet_opening",
     phrase("plan",
            "Before the pump runs: cover off and away, plugs out and fittings in, water up to the "
            "middle of the skimmer, pump primed; fence and gate closed from then on.")},
    {"sheet_closing", phrase("plan",
                             "This sheet is for the water alone. Water level, emptying the pipes, frost "
                             "protection and the cover come after it, as the makers' manuals say.")},
    {"sheet_storm", phrase("plan",
                           "Where water stood on the pump, a light or a socket: touch nothing, have an "
                           "electrician look first. Leaves and mud out before the first dose.")},
    {"sheet_retest", phrase("plan", "Test again before any treatment that is not on this sheet.")},
    {"sheet_emergency",
     phrase("plan",
            "Trouble breathing: fresh air, and call %1. Chemical in the eyes: rinse at once for 15 minutes, "
            "then call as said under \"If something goes wrong\".")},
    {"sheet_licensed", phrase("plan", "This is advice for a home; where in doubt ask a licensed operator.")},
};

constexpr Sentence kWhyNot[] = {
    {"chemicals_mixed_or_fuming",
     phrase("plan",
            "Chemicals have been mixed or are fuming. Leave at once, upwind; keep others out; call the "
            "emergency number from outside. Do not go back to air the room, add no water, move nothing.")},
    {"incident", phrase("plan",
                        "After faeces, vomit, blood or a dead animal the health department's procedure "
                        "applies, not a home plan. Keep everybody out until it is done.")},
    {"contaminated", phrase("plan",
                            "Flood, sewage or illness can bring what no home treatment removes. Keep "
                            "everybody out and ask the health department.")},
    {"drain_not_visible", phrase("plan",
                                 "The main drain cannot be seen, so nobody may swim and nobody could be "
                                 "found in the water. Close it off and have a licensed operator clear it.")},
    {"public_vessel", phrase("plan",
                             "This water is open to others than the household. Local code and its qualified "
                             "operator decide; here are the readings.")},
    {"sanitizer_unknown", phrase("plan",
                                 "What keeps this water clean is not known, and the wrong chemical can be "
                                 "dangerous. Ask which sanitizer is used, then come back.")},
    {"sanitizer_changed", phrase("plan",
                                 "Biguanide and other sanitizers must not meet. Have the changeover done by "
                                 "somebody licensed before anything is added.")},
    {"reading_out_of_range",
     phrase("plan",
            "pH, alkalinity or the sanitizer was beyond what the method can read or cannot be believed. Read "
            "it again, diluted or by a wider method; nothing is added until then.")},
    {"readings_contradict", phrase("plan",
                                   "The readings contradict each other. Take a fresh bottle and read them "
                                   "again; nothing is added until then.")},
};

// Acid before what raises pH is told as such: no reading of this bottle asks for it.
bool for_ph(const Step& step) {
  const auto& ids = step.for_findings;
  return std::any_of(ids.begin(), ids.end(),
                     [](const std::string& id) { return id.starts_with("ph_") || id.starts_with("si_"); });
}

}  // namespace

bool less_than_a_tablet(const DraftStep& d) {
  const auto& amount = d.step.amount;
  return d.note == "raise_bromine" && d.tablets && amount && amount->unit == "g" &&
         amount->value < kTabletGrams;
}

std::string step_text(const Words& words, const DraftStep& d, std::string_view product,
                      const std::optional<std::string>& portion, const WaterCase& where) {
  const Step& s = d.step;
  std::string_view note = d.note;
  if (note == "lower_ph" && !for_ph(s)) note = "lower_ph_ahead";
  if (less_than_a_tablet(d))
    note = "raise_bromine_little";
  else if (note == "raise_bromine" && !d.tablets)
    note = "raise_bromine_grains";
  const char* text = find(kSteps, note);
  if (!text) return d.note;
  std::string share = s.fraction ? words.number(std::round(*s.fraction * 100), 0) + " %" : "";
  if (s.fraction && where.volume)
    share += " (" + water_words(words, *where.volume, *s.fraction, where.units) + ")";
  std::string out = words.say("plan", text,
                              {portion.value_or(""), std::string(product), std::to_string(s.portions),
                               words.number(s.portion_gap_h, 0), share, span_words(words, s.wait_h),
                               temperature_words(words, 40, where.units), words.number(d.change.to_ph, 1)});
  if (s.portions > 1)
    out += " " + words.say("plan", phrase("plan", "Do this %1 times, %2 apart."),
                           {std::to_string(s.portions), span_words(words, s.portion_gap_h)});
  return out;
}

std::string holding_text(const Words& words, const DraftStep& d, std::string_view product, Units units) {
  if (!d.hold) return {};
  return words.say(
      "plan",
      phrase("plan",
             "Sun and bathers use chlorine up: from the evening after this dose until the next bottle, test "
             "it every evening with a kit or strips; where it is below %1 mg/L, add %2 of %3 at dusk, once "
             "an evening."),
      {words.number(d.hold_below, 1), household_amount(words, *d.hold, units), std::string(product)});
}

std::string caution_text(const Words& words, std::string_view id, const std::string& value) {
  const char* text = find(kCautions, id);
  return text ? words.say("plan", text, {value}) : std::string(id);
}

double hours_after_dose(const Vessel& vessel) {
  return kind_of(vessel) == VesselKind::pool ? 4 : 1;
}

std::string nobody_in_text(const Words& words, const Vessel& vessel) {
  return caution_text(words, "sheet_nobody_in", span_words(words, hours_after_dose(vessel)));
}

std::string why_not_text(const Words& words, std::string_view id) {
  const char* text = find(kWhyNot, id);
  return text ? words.say("plan", text) : std::string(id);
}

std::vector<std::string> known_step_notes() {
  return ids(kSteps);
}
std::vector<std::string> known_caution_ids() {
  return ids(kCautions);
}
std::vector<std::string> known_why_not_ids() {
  return ids(kWhyNot);
}

}  // namespace brimline
