// SPDX-License-Identifier: GPL-3.0-or-later
#include "station/known_ids.h"

#include <algorithm>
#include <array>

#include "analysis/panel/analyte.h"

namespace brimline {

namespace {
constexpr std::array<std::string_view, 28> kChemicals = {"alum",
                                                         "ascorbic_acid",
                                                         "bcdmh",
                                                         "borax",
                                                         "boric_acid",
                                                         "calcium_chloride",
                                                         "calcium_hypochlorite",
                                                         "clarifier",
                                                         "copper_sulfate",
                                                         "cyanuric_acid",
                                                         "dichlor",
                                                         "hydrochloric_acid",
                                                         "hydrogen_peroxide",
                                                         "lanthanum_chloride",
                                                         "phmb",
                                                         "polyquat",
                                                         "potassium_monopersulfate",
                                                         "sequestrant",
                                                         "sodium_bicarbonate",
                                                         "sodium_bisulfate",
                                                         "sodium_bromide",
                                                         "sodium_carbonate",
                                                         "sodium_chloride",
                                                         "sodium_hypochlorite",
                                                         "sodium_sesquicarbonate",
                                                         "sodium_sulfite",
                                                         "sodium_thiosulfate",
                                                         "trichlor"};
}  // namespace

bool is_chemical(std::string_view id) {
  return std::find(kChemicals.begin(), kChemicals.end(), id) != kChemicals.end();
}

bool is_analyte(std::string_view id) {
  return find_analyte(id) != nullptr;
}

bool is_product_unit(std::string_view unit) {
  return unit == "L" || unit == "mL" || unit == "kg" || unit == "g";
}

std::string list_of_analytes() {
  std::string out;
  for (const AnalyteKind& kind : analyte_kinds()) out += (out.empty() ? "" : ", ") + kind.id;
  return out;
}

std::string list_of_chemicals() {
  std::string out;
  for (const auto id : kChemicals) (out += out.empty() ? "" : ", ") += id;
  return out;
}

}  // namespace brimline
