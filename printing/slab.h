// SPDX-License-Identifier: GPL-3.0-or-later
// A sheet cut into slabs: strips of one page's width that are placed one below the other.
#pragma once

#include <algorithm>
#include <vector>

#include "printing/item.h"
#include "printing/paper.h"
#include "printing/sheet.h"

namespace brimline {

struct Slab {
  double space_before = 0;  // dropped at the top of a page
  double height = 0;
  bool with_next = false;   // not parted from the next slab by a page's end, where a page can hold both
  bool goes_on = false;     // a line whose paragraph has another
  bool heads = false;       // the last line of what stands above a paragraph as its heading
  std::vector<Item> items;  // y from the slab's top
};

// The measures of one edition, in points.
struct Frame {
  double width = 0;     // between the margins
  double side = 0;      // column of times and titles at the left; 0: titles stand above
  double gutter = 0;    // between the side column and the text, where the tick boxes stand
  double cautions = 0;  // column of cautions at the right of the steps; 0: they stand beneath
  double scale = 1;     // of every letter
  bool large = false;   // large print: what is small elsewhere is left out or set as the rest
  bool tight = false;   // nothing is said at length twice: for what two pages would not hold else
  double text_x() const { return side + gutter; }
  double text_width() const { return width - text_x(); }
  bool stacked() const { return side <= 0; }
  Type type(double size, bool bold = false, Ink ink = Ink::black) const {
    return {(large ? std::max(size, 10.4) : size) * scale, bold, ink};
  }
};

// The whole sheet in reading order.
std::vector<Slab> slabs_of(const Sheet& sheet, const Frame& frame);

}  // namespace brimline
