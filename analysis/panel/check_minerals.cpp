// SPDX-License-Identifier: GPL-3.0-or-later
// Hardness, salt, dissolved solids, metals and nutrients: sums that must add up, and what hides a metal.
#include <algorithm>
#include <cmath>

#include "analysis/panel/check_rules.h"

namespace brimline {

namespace {

constexpr double kContradiction = 2.8;  // in sds of the difference, one side: 0.3 % by chance

void calcium_above_total(const Look& look, Remarks& remarks) {
  const auto calcium = look.inside("calcium_hardness"), total = look.inside("total_hardness");
  if (!calcium || !total) return;
  const Measured excess = difference(*calcium, *total);
  if (excess.value <= kContradiction * excess.sd) return;
  remarks.say(
      Verdict::repeat, {"calcium_hardness", "total_hardness"},
      phrase("check",
             "Calcium hardness (%1) is a part of total hardness (%2) and cannot be above it. Repeat both."),
      {amount("calcium_hardness", calcium->value), amount("total_hardness", total->value)});
}

void hardness_does_not_add(const Look& look, Remarks& remarks) {
  const auto calcium = look.inside("calcium_hardness"), magnesium = look.inside("magnesium_hardness"),
             total = look.inside("total_hardness");
  if (!calcium || !magnesium || !total) return;
  const Measured sum{calcium->value + magnesium->value, std::hypot(calcium->sd, magnesium->sd)};
  if (standard_distance(sum, *total) <= 3) return;
  remarks.say(Verdict::repeat, {"calcium_hardness", "magnesium_hardness", "total_hardness"},
              phrase("check",
                     "Calcium and magnesium hardness together (%1) should make the total hardness (%2). "
                     "Repeat the three."),
              {amount("total_hardness", sum.value), amount("total_hardness", total->value)});
}

void metals_in_hardness(const Look& look, Remarks& remarks) {
  const CheckedValue* calcium = look.value("calcium_hardness");
  const auto copper = look.inside("copper"), iron = look.inside("iron");
  if (!calcium || calcium->method != Method::drop_titration) return;
  if ((copper ? copper->value : 0) + (iron ? iron->value : 0) < 0.5) return;
  remarks.say(Verdict::note, {"calcium_hardness"},
              phrase("check",
                     "Copper and iron hold back the colour change of the hardness titration and make it "
                     "fade. Put the titrant in first, or take the first lasting change."));
}

void salt_above_solids(const Look& look, Remarks& remarks) {
  const auto salt = look.inside("salt"), tds = look.inside("tds");
  if (!salt || !tds) return;
  const Measured excess = difference(*salt, *tds);
  if (excess.value <= kContradiction * excess.sd) return;
  remarks.say(Verdict::repeat, {"salt", "tds"},
              phrase("check",
                     "Salt (%1) is a part of the dissolved solids (%2) and cannot be above them. Rinse the "
                     "probe, check it in its standard and repeat both."),
              {amount("salt", salt->value), amount("tds", tds->value)});
}

struct Ions {
  double solids = 0, variance = 0;
  void count(const std::optional<Measured>& reading, double share) {
    if (!reading) return;
    solids += share * reading->value;
    variance += share * share * reading->sd * reading->sd;
  }
};

// The least that what was read must leave as dissolved solids. Salt as chloride with its counter-ion counted
// as calcium or sodium, whichever weighs less; alkalinity as the carbonate left on drying, CO3 60.0 of CaCO3
// 100.1.
Ions least_solids(const Look& look) {
  Ions ions;
  ions.count(look.inside("salt"), 35.453 / 58.443 + 0.5 * 40.078 / 58.443);
  ions.count(look.inside("total_alkalinity"), 60.009 / 100.0869 + 0.3 * 40.078 / 100.0869);
  ions.count(look.inside("sulfate"), 1);
  ions.count(look.inside("cyanuric_acid"), 0.7);
  return ions;
}

void solids_below_ions(const Look& look, Remarks& remarks) {
  const auto tds = look.inside("tds");
  if (!tds) return;
  const Ions ions = least_solids(look);
  const Measured missing = difference({ions.solids, std::sqrt(ions.variance)}, *tds);
  if (missing.value <= std::max(kContradiction * missing.sd, 0.1 * ions.solids)) return;
  std::vector<AnalyteId> analytes = {"tds"};
  if (look.inside("salt")) analytes.emplace_back("salt");
  remarks.say(Verdict::repeat, analytes,
              phrase("check",
                     "The salts read make at least %1 of dissolved solids, and the probe shows %2. Check the "
                     "probe in its standard and repeat."),
              {amount("tds", ions.solids), amount("tds", tds->value)});
}

// Solids over conductivity: 0.55 to 0.70 in natural waters, 0.49 in salt solution (Standard Methods 2510 A;
// from memory).
void solids_and_conductivity(const Look& look, Remarks& remarks) {
  const auto tds = look.inside("tds"), conductivity = look.inside("conductivity");
  if (!tds || !conductivity || conductivity->value <= 0 || tds->value <= 0) return;
  const double ratio = tds->value / conductivity->value;
  const double sd = ratio * std::hypot(tds->sd / tds->value, conductivity->sd / conductivity->value);
  if (ratio >= 0.45 - 3 * sd && ratio <= 0.9 + 3 * sd) return;
  remarks.say(Verdict::repeat, {"tds", "conductivity"},
              phrase("check",
                     "Dissolved solids (%1) are %2 times the conductivity (%3); 0.5 to 0.8 is usual. One of "
                     "them is wrong, or its unit: repeat both."),
              {amount("tds", tds->value), number(ratio, 2), amount("conductivity", conductivity->value)});
}

void salt_low_for_cell(const Look& look, Remarks& remarks) {
  const auto salt = look.inside("salt");
  if (!look.uses(Sanitizer::salt_chlorine)) return;
  if (!look.value("salt") && !look.bottle.readings.empty())
    remarks.say(Verdict::note, {"salt"},
                phrase("check", "A salt cell makes the chlorine here and salt was not read: read it."));
  if (salt && salt->value < 2500)
    remarks.say(
        Verdict::note, {"salt"},
        phrase("check",
               "%1 of salt is little for most cells. Before salt is added, compare with the cell's own "
               "display and manual: a strip and a conductivity probe may differ by several hundred."),
        {amount("salt", salt->value)});
}

void metals_hidden(const Look& look, Remarks& remarks) {
  if (!look.added("sequestrant", 30)) return;
  std::vector<AnalyteId> metals;
  for (const char* analyte : {"iron", "copper", "manganese"})
    if (look.value(analyte)) metals.emplace_back(analyte);
  if (!metals.empty())
    remarks.say(Verdict::note, metals,
                phrase("check",
                       "A sequestrant is in the water: it hides part of the metal from the test. The true "
                       "number may be higher."));
}

void stains_without_metal(const Look& look, Remarks& remarks) {
  const auto iron = look.inside("iron"), copper = look.inside("copper");
  if (!look.shows(Sign::stains) || !iron || !copper) return;
  if (iron->value > 2 * iron->sd || copper->value > 2 * copper->sd) return;
  remarks.say(Verdict::note, {"iron", "copper"},
              phrase("check",
                     "No metal in the water does not clear the surface: a stain is metal that has left the "
                     "water. A vitamin C tablet held on it lightens an iron stain."));
}

void phosphate_from_sequestrant(const Look& look, Remarks& remarks) {
  if (!look.value("phosphate") || !look.added("sequestrant", 60)) return;
  remarks.say(Verdict::note, {"phosphate"},
              phrase("check",
                     "Many sequestrants break down to phosphate. A phosphate remover would take the "
                     "sequestrant out again."));
}

void phosphate_unit(const Look& look, Remarks& remarks) {
  const auto phosphate = look.inside("phosphate");
  if (!phosphate || phosphate->value < 20) return;
  remarks.say(Verdict::repeat, {"phosphate"},
              phrase("check",
                     "%1 is far more than pool water holds. Some tests say micrograms per litre (ppb): then "
                     "it is %2 mg/L."),
              {amount("phosphate", phosphate->value), number(phosphate->value / 1000, 3)});
}

// 61.83 g of boric acid hold 10.81 g of boron.
void borate_unit(const Look& look, Remarks& remarks) {
  const auto borate = look.inside("borate");
  if (!borate || borate->value < 90) return;
  remarks.say(Verdict::repeat, {"borate"},
              phrase("check",
                     "%1 is more than any pool is given. If the test says boric acid, the boron is %2 mg/L "
                     "(divide by 5.72)."),
              {amount("borate", borate->value), number(borate->value * 10.81 / 61.83, 0)});
}

void nitrate_with_chlorine(const Look& look, Remarks& remarks) {
  const auto free = look.inside("free_chlorine");
  if (!look.value("nitrate") || !free || free->value <= 3) return;
  remarks.say(Verdict::note, {"nitrate"},
              phrase("check",
                     "Free chlorine of %1 spoils the nitrate test unless it is destroyed first with one drop "
                     "of thiosulfate."),
              {amount("free_chlorine", free->value)});
}

}  // namespace

std::span<const CheckRow> mineral_checks() {
  static constexpr CheckRow rows[] = {{"calcium_above_total", calcium_above_total},
                                      {"hardness_does_not_add", hardness_does_not_add},
                                      {"metals_in_hardness", metals_in_hardness},
                                      {"salt_above_solids", salt_above_solids},
                                      {"solids_below_ions", solids_below_ions},
                                      {"solids_and_conductivity", solids_and_conductivity},
                                      {"salt_low_for_cell", salt_low_for_cell},
                                      {"metals_hidden", metals_hidden},
                                      {"stains_without_metal", stains_without_metal},
                                      {"phosphate_from_sequestrant", phosphate_from_sequestrant},
                                      {"phosphate_unit", phosphate_unit},
                                      {"borate_unit", borate_unit},
                                      {"nitrate_with_chlorine", nitrate_with_chlorine}};
  return rows;
}

}  // namespace brimline
