// SPDX-License-Identifier: GPL-3.0-or-later
#include "analysis/panel/told.h"

#include "analysis/water/doses.h"

namespace brimline {

namespace {

struct TotalRow {
  std::string_view analyte;
  double Totals::*member;
  double grams_per_mole;  // of what the reading is stated as
};

constexpr TotalRow kRows[] = {{"total_alkalinity", &Totals::alkalinity, weight::kAlkalinity},
                              {"calcium_hardness", &Totals::calcium, weight::kCaCO3},
                              {"magnesium_hardness", &Totals::magnesium, weight::kCaCO3},
                              {"cyanuric_acid", &Totals::cyanurate, weight::kCyanuricAcid},
                              {"borate", &Totals::borate, weight::kBoron},
                              {"salt", &Totals::chloride, weight::kSalt},
                              {"sulfate", &Totals::sulfate, weight::kSulfate},
                              {"bromide", &Totals::bromide, weight::kBromide},
                              {"free_chlorine", &Totals::chlorine, weight::kChlorine},
                              {"total_bromine", &Totals::bromine, weight::kBromine}};

const TotalRow* row_of(std::string_view analyte) {
  for (const TotalRow& row : kRows)
    if (row.analyte == analyte) return &row;
  return nullptr;
}

}  // namespace

std::optional<Totals> spent_dose(std::string_view chemical) {
  const DoseRow* row = find_dose(chemical);
  if (!row || row->molar_mass <= 0) return std::nullopt;
  Totals spent = row->per_mole;
  spent.alkalinity -= spent.chlorine + spent.bromine;
  spent.chloride += spent.chlorine;
  spent.bromide += spent.bromine;
  spent.chlorine = spent.bromine = 0;
  return spent;
}

bool is_total(std::string_view analyte) {
  return analyte == "total_hardness" || row_of(analyte) != nullptr;
}

std::optional<double> reading_of(const Totals& totals, std::string_view analyte) {
  if (analyte == "total_hardness") return 1e3 * weight::kCaCO3 * (totals.calcium + totals.magnesium);
  const TotalRow* row = row_of(analyte);
  if (!row) return std::nullopt;
  return 1e3 * row->grams_per_mole * (totals.*row->member);
}

std::optional<double> told_change(const Addition& addition, std::string_view analyte, Volume volume) {
  const auto dose = spent_dose(addition.chemical);
  if (!dose || !addition.active_mol || volume.litres() <= 0) return std::nullopt;
  return reading_of(*dose * (*addition.active_mol / volume.litres()), analyte);
}

int told_direction(std::string_view chemical, std::string_view analyte) {
  const auto dose = spent_dose(chemical);
  const auto change = dose ? reading_of(*dose, analyte) : std::nullopt;
  if (!change || *change == 0) return 0;
  return *change > 0 ? 1 : -1;
}

}  // namespace brimline
