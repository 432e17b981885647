// SPDX-License-Identifier: GPL-3.0-or-later
// Which ids a visit may name: those of the analysis' data files.
#pragma once

#include <string>
#include <string_view>

namespace brimline {

bool is_analyte(std::string_view id);
bool is_chemical(std::string_view id);
bool is_product_unit(std::string_view unit);  // L, mL, kg or g
std::string list_of_analytes();               // "a, b, c": for faults
std::string list_of_chemicals();

}  // namespace brimline
