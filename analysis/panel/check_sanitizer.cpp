// SPDX-License-Identifier: GPL-3.0-or-later
// Bromine and biguanide vessels: what a chlorine test means there.
#include <cmath>

#include "analysis/panel/check_rules.h"

namespace brimline {

namespace {

constexpr double kBromineOverChlorine = 159.808 / 70.906;  // IUPAC atomic weights

void chlorine_counts_as_bromine(const Look& look, Remarks& remarks) {
  const auto free = look.inside("free_chlorine");
  if (!look.uses(Sanitizer::bromine) || !free || look.value("total_bromine")) return;
  remarks.say(
      Verdict::note, {"free_chlorine"},
      phrase("check",
             "In a bromine vessel the chlorine test reads bromine: %1 counts as %2 of total bromine (times "
             "2.254)."),
      {amount("free_chlorine", free->value), amount("total_bromine", free->value * kBromineOverChlorine)});
}

void bromine_and_chlorine_disagree(const Look& look, Remarks& remarks) {
  const auto free = look.inside("free_chlorine"), bromine = look.inside("total_bromine");
  if (!look.uses(Sanitizer::bromine) || !free || !bromine) return;
  const Measured as_bromine{free->value * kBromineOverChlorine, free->sd * kBromineOverChlorine};
  if (standard_distance(as_bromine, *bromine) <= 3) return;
  remarks.say(Verdict::repeat, {"total_bromine", "free_chlorine"},
              phrase("check",
                     "Total bromine (%1) and the chlorine reading times 2.254 (%2) are the same thing here "
                     "and should agree. Read both again."),
              {amount("total_bromine", bromine->value), amount("total_bromine", as_bromine.value)});
}

void stabilizer_in_bromine(const Look& look, Remarks& remarks) {
  const auto stabilizer = look.inside("cyanuric_acid");
  if (!look.uses(Sanitizer::bromine) || !stabilizer) return;
  remarks.say(Verdict::note, {"cyanuric_acid"},
              phrase("check",
                     "Stabilizer (%1) does nothing for bromine. It is a left-over of chlorine days or of a "
                     "wrong product; it counts in the alkalinity only."),
              {amount("cyanuric_acid", stabilizer->value)});
}

void stabilizer_in_biguanide(const Look& look, Remarks& remarks) {
  if (!look.uses(Sanitizer::biguanide) || !look.value("cyanuric_acid")) return;
  remarks.say(
      Verdict::note, {"cyanuric_acid"},
      phrase("check",
             "Biguanide clouds the stabilizer test by itself: the reading means nothing in this vessel."));
}

bool read_above(const Look& look, std::string_view analyte, double least) {
  const CheckedValue* value = look.value(analyte);
  if (!value) return false;
  return value->clipped == Clip::above || value->value > std::max(least, 3 * value->sd);
}

void chlorine_with_biguanide(const Look& look, Remarks& remarks) {
  const bool biguanide = look.uses(Sanitizer::biguanide) || read_above(look, "biguanide", 5);
  std::vector<AnalyteId> halogens;
  for (const char* analyte : {"free_chlorine", "total_chlorine", "total_bromine"})
    if (read_above(look, analyte, 0.3)) halogens.emplace_back(analyte);
  if (!biguanide || halogens.empty()) return;
  remarks.say(Verdict::reject, halogens,
              phrase("check",
                     "Chlorine or bromine and biguanide spoil each other's tests and each other. Ask what "
                     "the vessel is kept with before anything is dosed; add no chlorine."));
}

void biguanide_left_over(const Look& look, Remarks& remarks) {
  const bool was = look.vessel.previous_sanitizer == Sanitizer::biguanide;
  if (look.uses(Sanitizer::biguanide) || !was || !look.value("free_chlorine") || look.value("biguanide"))
    return;
  remarks.say(Verdict::note, {"free_chlorine"},
              phrase("check",
                     "This vessel was kept with biguanide. What is left of it spoils the chlorine test and "
                     "turns to slime with chlorine: read biguanide before any chlorine is dosed."));
}

void peroxide_in_chlorine_vessel(const Look& look, Remarks& remarks) {
  const bool chlorine = look.vessel.sanitizer && is_chlorine(*look.vessel.sanitizer);
  if (!chlorine || !look.added("hydrogen_peroxide", 7)) return;
  remarks.say(Verdict::note, {"free_chlorine"},
              phrase("check",
                     "Peroxide went into a chlorine vessel: each destroys the other. Read chlorine again "
                     "when no peroxide is left."));
}

}  // namespace

std::span<const CheckRow> sanitizer_checks() {
  static constexpr CheckRow rows[] = {{"chlorine_counts_as_bromine", chlorine_counts_as_bromine},
                                      {"bromine_and_chlorine_disagree", bromine_and_chlorine_disagree},
                                      {"stabilizer_in_bromine", stabilizer_in_bromine},
                                      {"stabilizer_in_biguanide", stabilizer_in_biguanide},
                                      {"chlorine_with_biguanide", chlorine_with_biguanide},
                                      {"biguanide_left_over", biguanide_left_over},
                                      {"peroxide_in_chlorine_vessel", peroxide_in_chlorine_vessel}};
  return rows;
}

}  // namespace brimline
