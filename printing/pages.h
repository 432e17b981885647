// SPDX-License-Identifier: GPL-3.0-or-later
// A sheet placed on pages: every word and line has its place before a printer or file is touched.
//
//   const Pages pages = lay_out(sheet, {Paper::letter});
//   paint(pages.pages[0], painter);
#pragma once

#include <functional>
#include <string>
#include <vector>

#include "printing/item.h"
#include "printing/paper.h"
#include "printing/sheet.h"
#include "printing/slab.h"

class QPainter;

namespace brimline {

struct Edition {
  Paper paper = Paper::letter;
  bool large = false;  // large print
};

struct Page {
  std::vector<Item> items;  // points from the paper's left top corner
};

struct Pages {
  double width = 0, height = 0;  // of the paper, in points; a roll's height is what the sheet needs
  std::vector<Page> pages;
};

// Any paper of ours: its strips for a frame, and what stands at every page's foot.
struct Body {
  std::function<std::vector<Slab>(const Frame&)> slabs;
  std::string footer, short_footer;  // the short one where the other does not fit
  std::string page;                  // "page %1 of %2"
};
Pages lay_out(const Body& body, const Edition& edition);

// At most two pages for an ordinary plan in ordinary print: letters shrink a little, never below
// seven eighths, before a third page is begun. Needs a QGuiApplication (fonts).
Pages lay_out(const Sheet& sheet, const Edition& edition);

// Paints one page on a painter whose units are points.
void paint(const Page& page, QPainter& painter);

}  // namespace brimline
