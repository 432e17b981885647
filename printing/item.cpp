// SPDX-License-Identifier: GPL-3.0-or-later
#include "printing/item.h"

#include <zint.h>

#include <memory>

namespace brimline {
namespace {

struct Mover {
  double dx, dy;
  Item operator()(TextItem i) const {
    i.x += dx;
    i.baseline += dy;
    return i;
  }
  Item operator()(LineItem i) const {
    i.x1 += dx;
    i.x2 += dx;
    i.y1 += dy;
    i.y2 += dy;
    return i;
  }
  Item operator()(BoxItem i) const {
    i.box.translate(dx, dy);
    return i;
  }
  Item operator()(CellsItem i) const {
    for (QRectF& cell : i.cells) cell.translate(dx, dy);
    return i;
  }
};

}  // namespace

void add_moved(std::vector<Item>& to, const std::vector<Item>& items, double dx, double dy) {
  for (const Item& item : items) to.push_back(std::visit(Mover{dx, dy}, item));
}

TextItem text_at(double x, double baseline, const QString& text, const Type& type) {
  return {x, baseline, width_of(text, type), text, type};
}

TextItem text_ending_at(double x, double baseline, const QString& text, const Type& type) {
  const double width = width_of(text, type);
  return {x - width, baseline, width, text, type};
}

CellsItem qr_cells(const QString& text, double size) {
  const std::unique_ptr<zint_symbol, void (*)(zint_symbol*)> symbol(ZBarcode_Create(), ZBarcode_Delete);
  if (!symbol) return {};
  symbol->symbology = BARCODE_QRCODE;
  symbol->input_mode = UNICODE_MODE;
  symbol->option_1 = 2;  // level M
  const QByteArray bytes = text.toUtf8();
  if (ZBarcode_Encode(symbol.get(), reinterpret_cast<const unsigned char*>(bytes.constData()),
                      static_cast<int>(bytes.size())) >= ZINT_ERROR)
    return {};
  const auto black = [&](int row, int column) {
    return (symbol->encoded_data[row][column / 8] >> (column % 8)) & 1;
  };
  CellsItem out;
  const double cell = size / symbol->width;
  for (int row = 0; row < symbol->rows; ++row)
    for (int column = 0; column < symbol->width; ++column) {
      if (!black(row, column)) continue;
      const int first = column;
      while (column + 1 < symbol->width && black(row, column + 1)) ++column;
      out.cells.emplace_back(first * cell, row * cell, (column - first + 1) * cell, cell);
    }
  return out;
}

}  // namespace brimline
