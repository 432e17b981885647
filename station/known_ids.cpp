// SPDX-License-Identifier: GPL-3.0-or-later
#include "station/known_ids.h"

#include "analysis/panel/analyte.h"
#include "analysis/treatment/substance.h"

namespace brimline {

bool is_chemical(std::string_view id) {
  return find_substance(id) != nullptr;
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
  for (const Substance& substance : substances()) out += (out.empty() ? "" : ", ") + substance.id;
  return out;
}

}  // namespace brimline
