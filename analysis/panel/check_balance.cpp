// SPDX-License-Identifier: GPL-3.0-or-later
// pH and alkalinity: dyes spoilt by much halogen, and an alkalinity the other readings contradict.
#include <cmath>

#include "analysis/panel/check_rules.h"

namespace brimline {

namespace {

constexpr double kSpoilsChlorine = 10;  // mg/L Cl2 that bleaches or shifts a dye; common practice, no source
constexpr double kSpoilsBromine = 20;   // mg/L Br2, the same on the bromine scale, rounded down

bool reaches(const Look& look, std::string_view analyte, double limit) {
  const CheckedValue* value = look.value(analyte);
  return value && (value->clipped == Clip::above || value->value >= limit);
}

bool much_halogen(const Look& look) {
  return reaches(look, "free_chlorine", kSpoilsChlorine) ||
         reaches(look, "total_chlorine", kSpoilsChlorine) || reaches(look, "total_bromine", kSpoilsBromine);
}

void halogen_spoils_ph(const Look& look, Remarks& remarks) {
  const CheckedValue* ph = look.value("ph");
  if (!ph || ph->method == Method::probe || !much_halogen(look)) return;
  remarks.say(
      Verdict::repeat, {"ph"},
      phrase("check",
             "With this much chlorine or bromine the pH dye is bleached or turns purple and reads high. Read "
             "pH with a probe, or add one drop of thiosulfate to the vial first, no more."));
}

void halogen_spoils_alkalinity(const Look& look, Remarks& remarks) {
  const CheckedValue* alkalinity = look.value("total_alkalinity");
  if (!alkalinity || alkalinity->method == Method::probe || !much_halogen(look)) return;
  remarks.say(
      Verdict::repeat, {"total_alkalinity"},
      phrase("check",
             "With this much chlorine or bromine the alkalinity indicator is bleached or changes at the "
             "wrong point. Add one drop of thiosulfate to the vial first, no more, and read again."));
}

// Share of a weak acid that has given its proton, at this pH.
double given(double ph, double pk) {
  return 1 / (1 + std::pow(10, pk - ph));
}

// What stabilizer and borate take in an alkalinity titration, mg/L CaCO3, with its sd. pK 6.88 of cyanuric
// acid: O'Brien, Morris and Butler 1974 (from memory); pK 9.24 of boric acid.
Measured titrated_besides_carbonate(const Look& look, double ph) {
  const auto stabilizer = look.inside("cyanuric_acid"), borate = look.inside("borate");
  const double per_stabilizer = 50.04345 / 129.0745 * given(ph, 6.88);
  const double per_boron = 50.04345 / 10.81 * given(ph, 9.24);
  Measured out;
  if (stabilizer) out = {per_stabilizer * stabilizer->value, per_stabilizer * stabilizer->sd};
  if (borate) out = {out.value + per_boron * borate->value, std::hypot(out.sd, per_boron * borate->sd)};
  return out;
}

void alkalinity_below_stabilizer(const Look& look, Remarks& remarks) {
  const auto alkalinity = look.inside("total_alkalinity"), ph = look.inside("ph");
  if (!alkalinity || !ph) return;
  const Measured missing = difference(titrated_besides_carbonate(look, ph->value), *alkalinity);
  if (missing.value <= 0 || missing.value <= 2 * missing.sd) return;
  std::vector<AnalyteId> analytes = {"total_alkalinity"};
  for (const char* analyte : {"cyanuric_acid", "borate"})
    if (look.inside(analyte)) analytes.emplace_back(analyte);
  remarks.say(Verdict::repeat, analytes,
              phrase("check",
                     "At pH %1 the stabilizer and borate read would alone take %2 of alkalinity, and only %3 "
                     "was found. One of the readings is wrong: repeat them."),
              {amount("ph", ph->value), amount("total_alkalinity", missing.value + alkalinity->value),
               amount("total_alkalinity", alkalinity->value)});
}

// Below pH 4.5 the titration's end point is passed already: alkalinity is nought (Standard Methods 2320 B;
// from memory).
void ph_and_alkalinity_contradict(const Look& look, Remarks& remarks) {
  const auto alkalinity = look.inside("total_alkalinity"), ph = look.inside("ph");
  if (!alkalinity || !ph || ph->value >= 4.5 || alkalinity->value <= 3 * alkalinity->sd) return;
  remarks.say(Verdict::repeat, {"ph", "total_alkalinity"},
              phrase("check", "At pH %1 there can be no alkalinity, yet %2 was found. Repeat both."),
              {amount("ph", ph->value), amount("total_alkalinity", alkalinity->value)});
}

void unbuffered_ph(const Look& look, Remarks& remarks) {
  const auto alkalinity = look.inside("total_alkalinity");
  const CheckedValue* ph = look.value("ph");
  if (!alkalinity || !ph || ph->method == Method::probe || alkalinity->value >= 30) return;
  remarks.say(Verdict::note, {"ph"},
              phrase("check",
                     "At an alkalinity of %1 the dye itself moves the pH of the vial. Take the pH as a hint, "
                     "and read it again once the alkalinity is up."),
              {amount("total_alkalinity", alkalinity->value)});
}

void ph_not_read(const Look& look, Remarks& remarks) {
  if (look.value("ph") || look.bottle.readings.empty()) return;
  remarks.say(Verdict::note, {"ph"},
              phrase("check", "pH was not read: no acid, soda or chlorine dose can be judged without it."));
}

}  // namespace

std::span<const CheckRow> balance_checks() {
  static constexpr CheckRow rows[] = {{"halogen_spoils_ph", halogen_spoils_ph},
                                      {"halogen_spoils_alkalinity", halogen_spoils_alkalinity},
                                      {"alkalinity_below_stabilizer", alkalinity_below_stabilizer},
                                      {"ph_and_alkalinity_contradict", ph_and_alkalinity_contradict},
                                      {"unbuffered_ph", unbuffered_ph},
                                      {"ph_not_read", ph_not_read}};
  return rows;
}

}  // namespace brimline
