// SPDX-License-Identifier: GPL-3.0-or-later
// A sheet placed on pages: every word and line has its place before a printer or file is touched.
//
//   const Pages pages = lay_out(sheet, {Paper::letter});
//   paint(pages.pages[0], painter);
#pragma once

#include <vector>

#include "printing/item.h"
#include "printing/paper.h"
#include "printing/sheet.h"

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

// At most two pages for an ordinary plan in ordinary print: letters shrink a little, never below
// seven eighths, before a third page is begun. Needs a QGuiApplication (fonts).
Pages lay_out(const Sheet& sheet, const Edition& edition);

// Paints one page on a painter whose units are points.
void paint(const Page& page, QPainter& painter);

}  // namespace brimline
