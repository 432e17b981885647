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
  Item operator()(MarkItem i) const {
    i.x += dx;
    i.y += dy;
    return i;
  }
  Item operator()(CellsItem i) const {
    for (QRectF& cell : i.cells) cell.translate(dx, dy);
    return i;
  }
};

using Symbol = std::unique_ptr<zint_symbol, void (*)(zint_symbol*)>;

// Null where the text cannot be encoded.
Symbol encoded(int symbology, const QString& text, int option = -1) {
  Symbol symbol(ZBarcode_Create(), ZBarcode_Delete);
  if (!symbol) return symbol;
  symbol->symbology = symbology;
  symbol->input_mode = UNICODE_MODE;
  symbol->option_1 = option;
  const QByteArray bytes = text.toUtf8();
  if (ZBarcode_Encode(symbol.get(), reinterpret_cast<const unsigned char*>(bytes.constData()),
                      static_cast<int>(bytes.size())) >= ZINT_ERROR)
    symbol.reset();
  return symbol;
}

// Neighbouring black cells of a row as one rectangle.
CellsItem cells_of(const zint_symbol& symbol, double cell_width, double cell_height) {
  const auto black = [&](int row, int column) {
    return (symbol.encoded_data[row][column / 8] >> (column % 8)) & 1;
  };
  CellsItem out;
  for (int row = 0; row < symbol.rows; ++row)
    for (int column = 0; column < symbol.width; ++column) {
      if (!black(row, column)) continue;
      const int first = column;
      while (column + 1 < symbol.width && black(row, column + 1)) ++column;
      out.cells.emplace_back(first * cell_width, row * cell_height, (column - first + 1) * cell_width,
                             cell_height);
    }
  return out;
}

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
  const Symbol symbol = encoded(BARCODE_QRCODE, text, 2);  // level M
  if (!symbol) return {};
  return cells_of(*symbol, size / symbol->width, size / symbol->width);
}

CellsItem bar_cells(const QString& text, double width, double height) {
  // Of eight digits Zint would make an EAN-13: the short form is asked for without its check digit.
  const QString ean = text.size() == 12 ? "0" + text : text.size() == 8 ? text.left(7) : text;
  Symbol symbol = is_ean(text) ? encoded(BARCODE_EANX, ean) : Symbol(nullptr, ZBarcode_Delete);
  if (!symbol) symbol = encoded(BARCODE_CODE128, text);
  if (!symbol) return {};
  return cells_of(*symbol, width / symbol->width, height / symbol->rows);
}

bool is_ean(const QString& text) {
  if (text.size() != 8 && text.size() != 12 && text.size() != 13) return false;
  int sum = 0, weight = 1;
  for (qsizetype i = text.size(); i-- > 0; weight = 4 - weight) {
    if (text[i] < u'0' || text[i] > u'9') return false;
    sum += weight * text[i].digitValue();
  }
  return sum % 10 == 0;
}

}  // namespace brimline
