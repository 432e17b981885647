// SPDX-License-Identifier: GPL-3.0-or-later
// Whose water it is to judge, and what must be known before a dose. Notes only: plan and findings act on
// them.
#include <algorithm>

#include "analysis/panel/check_rules.h"
#include "analysis/panel/due.h"

namespace brimline {

namespace {

void public_water(const Look& look, Remarks& remarks) {
  if (look.vessel.use == VesselUse::public_use)
    remarks.say(Verdict::note, {},
                phrase("check",
                       "This is public water (hotels, associations, schools and rentals count): print the "
                       "readings and leave the treatment to the local code and its licensed operator."));
}

void sanitizer_unknown(const Look& look, Remarks& remarks) {
  if (!look.vessel.sanitizer)
    remarks.say(Verdict::note, {},
                phrase("check",
                       "Nobody noted what this vessel is kept with. Ask first: chlorine, salt cell, bromine "
                       "or biguanide decides which tests mean anything."));
}

std::vector<AnalyteId> sanitizer_analytes(const Vessel& vessel) {
  switch (vessel.sanitizer.value_or(Sanitizer::chlorine)) {
    case Sanitizer::bromine:
      return {"total_bromine", "free_chlorine"};
    case Sanitizer::biguanide:
      return {"biguanide"};
    default:
      return {"free_chlorine"};
  }
}

bool water_changes(const Look& look) {
  return look.bottle.occasion == Occasion::opening || look.bottle.occasion == Occasion::new_fill;
}

void sanitizer_not_read(const Look& look, Remarks& remarks) {
  if (look.bottle.readings.empty()) return;
  const auto wanted = sanitizer_analytes(look.vessel);
  if (std::any_of(wanted.begin(), wanted.end(), [&](const AnalyteId& id) { return look.value(id); })) return;
  remarks.say(Verdict::note, {wanted.front()},
              phrase("check", "The sanitizer (%1) was not read: nothing can be said on swimming."),
              {name_of_analyte(wanted.front())});
}

// What is due and has no rule of its own for being missing.
void due_not_read(const Look& look, Remarks& remarks) {
  if (look.bottle.readings.empty()) return;
  std::vector<AnalyteId> missing;
  for (const AnalyteId& analyte : panel_due(look.bottle, look.vessel, look.earlier)) {
    const bool own_rule =
        analyte == "ph" || analyte == "salt" || analyte == sanitizer_analytes(look.vessel).front();
    if (!own_rule && !look.value(analyte)) missing.push_back(analyte);
  }
  if (!missing.empty())
    remarks.say(
        Verdict::note, missing,
        phrase("check", "%1 is due and was not read: the plan is a part of one and says nothing of it."),
        {names_of(missing)});
}

void fill_water_wanted(const Look& look, Remarks& remarks) {
  if (water_changes(look) && fill_water_due(look.bottle, look.earlier))
    remarks.say(Verdict::note, {},
                phrase("check",
                       "The water is new: ask for a bottle of the fill water too, or what a change of water "
                       "does cannot be worked out."));
}

void volume_unknown(const Look& look, Remarks& remarks) {
  if (!look.vessel.volume)
    remarks.say(Verdict::note, {},
                phrase("check",
                       "The volume is not known, so no dose can be given. Length, width and mean depth will "
                       "do; for a spa, the litres its maker states."));
}

void incident_told(const Look& look, Remarks& remarks) {
  if (look.bottle.incident)
    remarks.say(Verdict::note, {},
                phrase("check",
                       "An incident was told. The readings do not clear the water: keep everybody out and "
                       "follow the health authority's procedure for it."));
}

void strips_only(const Look& look, Remarks& remarks) {
  const auto& readings = look.bottle.readings;
  if (readings.size() < 3) return;
  if (std::all_of(readings.begin(), readings.end(),
                  [](const Reading& r) { return r.method == Method::strip; }))
    remarks.say(Verdict::note, {},
                phrase("check",
                       "Every reading is a strip's. A strip says whether to look closer; before a large dose "
                       "read the photometer."));
}

void demand_control(const Look& look, Remarks& remarks) {
  const auto& test = look.bottle.demand_test;
  const auto free = look.inside("free_chlorine");
  if (!test || !free) return;
  for (const DemandBottle& bottle : test->bottles)
    if (bottle.dose_mg_l == 0 && bottle.free_mg_l && *bottle.free_mg_l > free->value + 3 * free->sd + 0.2)
      remarks.say(
          Verdict::repeat, {"free_chlorine"},
          phrase("check",
                 "The demand bottle without a dose shows %1, more than the sample itself (%2): the bottles "
                 "were exchanged, or stock got in. Repeat the chlorine reading and look at the labels."),
          {amount("free_chlorine", *bottle.free_mg_l), amount("free_chlorine", free->value)});
}

void spa_hot(const Look& look, Remarks& remarks) {
  const auto& temperature = look.vessel.water_temperature;
  if (kind_of(look.vessel) != VesselKind::pool && temperature && temperature->celsius() > 40)
    remarks.say(Verdict::note, {},
                phrase("check",
                       "The vessel is at %1 C; 40 C is the most for bathing (10 NYCRR 6-1). Sanitizer tests "
                       "of hot water may read wrong: cool the sample."),
                {number(temperature->celsius(), 0)});
}

}  // namespace

std::span<const CheckRow> vessel_checks() {
  static constexpr CheckRow rows[] = {{"public_water", public_water},
                                      {"sanitizer_unknown", sanitizer_unknown},
                                      {"sanitizer_not_read", sanitizer_not_read},
                                      {"due_not_read", due_not_read},
                                      {"fill_water_wanted", fill_water_wanted},
                                      {"volume_unknown", volume_unknown},
                                      {"incident_told", incident_told},
                                      {"strips_only", strips_only},
                                      {"demand_control", demand_control},
                                      {"vessel_too_hot", spa_hot}};
  return rows;
}

}  // namespace brimline
