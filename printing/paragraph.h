// SPDX-License-Identifier: GPL-3.0-or-later
// Words broken into lines; a sentence's waterline stands like a word after its last one.
#pragma once

#include <vector>

#include "printing/item.h"
#include "printing/sheet.h"

namespace brimline {

struct Run {
  std::string text;
  Type type;
};

// One line: items with their baseline at y = 0 and the line's left end at x = 0.
struct TextLine {
  std::vector<Item> items;
  double width = 0;
};

// Breaks at spaces, never between a number and its unit; a word wider than the line is broken where
// it must be. `width` in points; always at least one line.
std::vector<TextLine> break_lines(const std::vector<std::variant<Run, Waterline>>& pieces, double width,
                                  const Type& type);
std::vector<TextLine> break_lines(const std::string& text, double width, const Type& type);
std::vector<TextLine> break_lines(const Sentence& sentence, double width, const Type& type);
// As many lines as break_lines, of widths as even as can be: for what is set large.
std::vector<TextLine> balanced_lines(const std::string& text, double width, const Type& type);

// The picture, its left end at x = 0, as high as the letters of `type` on the baseline y = 0.
std::vector<Item> waterline_items(const Waterline& line, const Type& type);
double waterline_width(const Type& type);

}  // namespace brimline
