// SPDX-License-Identifier: GPL-3.0-or-later
// Words as they are searched for: without case, accents and apostrophes, and letters such as
// ø, å, ß and ł as their plain neighbours.
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace brimline {

// "Søren O'Neil-Łuk" -> soren, oneil, luk; in order, repeats included.
std::vector<std::string> folded_words(std::string_view text);

// What a telephone number is found by: its digits from each group to the end, "555-0101" -> 5550101, 0101.
std::vector<std::string> folded_number(std::string_view text);

// The words of a query; digits and signs alone are one telephone number.
std::vector<std::string> query_words(std::string_view text);

}  // namespace brimline
