// SPDX-License-Identifier: GPL-3.0-or-later
// What stands on a page: text, lines, boxes and the squares of a QR. Points, y downwards.
#pragma once

#include <QRectF>
#include <QString>
#include <variant>
#include <vector>

#include "printing/type.h"

namespace brimline {

struct TextItem {
  double x = 0, baseline = 0, width = 0;
  QString text;
  Type type;
  QRectF box() const { return {x, baseline - ascent_of(type), width, ascent_of(type) + descent_of(type)}; }
};

struct LineItem {
  double x1 = 0, y1 = 0, x2 = 0, y2 = 0, thickness = 0.5;
  Ink ink = Ink::black;
};

struct BoxItem {
  QRectF box;
  double thickness = 0.7;  // of the outline; ignored where filled
  bool filled = false;
};

// A point of a chart: a disc, white within where it is not filled.
struct MarkItem {
  double x = 0, y = 0, radius = 2;
  bool filled = true;
};

// Black squares, painted as one shape so that no seam shows between them.
struct CellsItem {
  std::vector<QRectF> cells;
};

using Item = std::variant<TextItem, LineItem, BoxItem, MarkItem, CellsItem>;

// The items moved by (dx, dy), added to `to`.
void add_moved(std::vector<Item>& to, const std::vector<Item>& items, double dx, double dy);

// A text whose left end is at x; whose right end is at x.
TextItem text_at(double x, double baseline, const QString& text, const Type& type);
TextItem text_ending_at(double x, double baseline, const QString& text, const Type& type);

// A QR code (ISO/IEC 18004, level M) of `text`, `size` wide, its left top corner at 0, 0. Empty
// where the text cannot be encoded.
CellsItem qr_cells(const QString& text, double size);

// Bars of `text`, `width` by `height`: EAN-13 or EAN-8 (ISO/IEC 15420) where it is such a number with its
// check digit (a UPC-A of 12 digits is an EAN-13 that begins with 0), else Code 128 (ISO/IEC 15417). No
// quiet zone and no figures beneath. Empty where the text cannot be encoded.
CellsItem bar_cells(const QString& text, double width, double height);
// 8, 12 or 13 digits whose last is right (GS1 General Specifications, 7.9: weights 3 and 1 from the right).
bool is_ean(const QString& text);

}  // namespace brimline
