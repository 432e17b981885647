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

// Black squares, painted as one shape so that no seam shows between them.
struct CellsItem {
  std::vector<QRectF> cells;
};

using Item = std::variant<TextItem, LineItem, BoxItem, CellsItem>;

// The items moved by (dx, dy), added to `to`.
void add_moved(std::vector<Item>& to, const std::vector<Item>& items, double dx, double dy);

// A text whose left end is at x; whose right end is at x.
TextItem text_at(double x, double baseline, const QString& text, const Type& type);
TextItem text_ending_at(double x, double baseline, const QString& text, const Type& type);

// A QR code (ISO/IEC 18004, level M) of `text`, `size` wide, its left top corner at 0, 0. Empty
// where the text cannot be encoded.
CellsItem qr_cells(const QString& text, double size);

}  // namespace brimline
