// SPDX-License-Identifier: GPL-3.0-or-later
// The plain table of readings; where its columns do not fit the paper, each reading becomes a line
// with what belongs to it beneath.
#include <algorithm>
#include <array>

#include "printing/slab_builder.h"

namespace brimline {
namespace {

constexpr double kCell = 9.2, kHead = 8.4;
constexpr size_t kColumns = 6;
using Cells = std::array<std::string, kColumns>;

Cells cells_of(const SheetRow& row) {
  return {row.name, row.value, row.spread, row.target, row.expected, row.last};
}

// Columns with nothing in any row are left out.
std::vector<size_t> used_columns(const Sheet& sheet) {
  std::vector<size_t> out;
  for (size_t c = 0; c < kColumns; ++c)
    if (c < 2 || std::any_of(sheet.rows.begin(), sheet.rows.end(),
                             [c](const SheetRow& row) { return !cells_of(row)[c].empty(); }))
      out.push_back(c);
  return out;
}

// What a heading needs: it may wrap to two lines.
double heading_width(const std::string& text, const Type& type) {
  double out = 0;
  const double whole = width_of(QString::fromStdString(text), type);
  for (const TextLine& line : balanced_lines(text, std::max(whole * 0.68, 1.0), type))
    out = std::max(out, line.width);
  return out;
}

std::vector<double> widths_of(const Sheet& sheet, const std::vector<size_t>& columns, const Frame& frame) {
  std::vector<double> out;
  for (const size_t c : columns) {
    double width = heading_width(sheet.titles.columns[c], frame.type(kHead, true));
    for (const SheetRow& row : sheet.rows)
      width = std::max(width, width_of(QString::fromStdString(cells_of(row)[c]), frame.type(kCell)));
    out.push_back(width + 0.5);
  }
  return out;
}

void add_header(SlabBuilder& out, const Sheet& sheet, const std::vector<size_t>& columns,
                const std::vector<double>& x, const std::vector<double>& widths) {
  const Type type = out.frame().type(kHead, true, Ink::accent);
  Slab slab;
  size_t most = 1;
  std::vector<std::vector<TextLine>> heads;
  for (size_t i = 0; i < columns.size(); ++i) {
    heads.push_back(break_lines(sheet.titles.columns[columns[i]], widths[i] + 0.01, type));
    most = std::max(most, heads.back().size());
  }
  for (size_t i = 0; i < heads.size(); ++i)
    for (size_t line = 0; line < heads[i].size(); ++line)
      add_moved(slab.items, heads[i][line].items, x[i],
                ascent_of(type) + static_cast<double>(most - heads[i].size() + line) * leading_of(type));
  slab.height = static_cast<double>(most) * leading_of(type) + 2 * out.frame().scale;
  slab.with_next = true;
  out.add(std::move(slab));
}

void add_row(SlabBuilder& out, const Cells& cells, const std::vector<size_t>& columns,
             const std::vector<double>& x) {
  const Frame& frame = out.frame();
  Slab slab;
  slab.height = kCell * 1.62 * frame.scale;
  slab.items.push_back(LineItem{x.front(), 0.2, frame.width, 0.2, 0.3, Ink::quiet});
  for (size_t i = 0; i < columns.size(); ++i) {
    const std::string& cell = cells[columns[i]];
    if (cell.empty()) continue;
    slab.items.push_back(
        text_at(x[i], 11.2 * frame.scale, QString::fromStdString(cell), frame.type(kCell, columns[i] == 1)));
  }
  out.add(std::move(slab));
}

// Name and value on one line, the rest as words beneath.
void add_two_line_row(SlabBuilder& out, const Sheet& sheet, const Cells& cells) {
  const Frame& frame = out.frame();
  const Type strong = frame.type(kCell, true), light = frame.type(kHead, false, Ink::quiet);
  const size_t start = out.size();
  out.space(3);
  out.wide_paragraph(
      break_lines({Run{cells[0] + "  ", frame.type(kCell)}, Run{cells[1], strong}}, frame.width, strong),
      strong);
  std::string rest;
  for (size_t c = 2; c < kColumns; ++c)
    if (!cells[c].empty()) rest += (rest.empty() ? "" : "; ") + sheet.titles.columns[c] + " " + cells[c];
  if (!rest.empty()) out.wide_paragraph(break_lines(rest, frame.width, light), light);
  out.keep_from(start);
}

}  // namespace

void add_table(SlabBuilder& out, const Sheet& sheet) {
  if (sheet.rows.empty()) return;
  const Frame& frame = out.frame();
  const Type head = frame.type(9.6, true, Ink::accent), note = frame.type(8.2, false, Ink::quiet);
  const size_t start = out.size();
  out.space(12);
  out.wide_paragraph(break_lines(sheet.titles.readings, frame.width, head), head, true);
  const auto columns = used_columns(sheet);
  const auto widths = widths_of(sheet, columns, frame);
  double natural = 0;
  for (const double width : widths) natural += width;
  const double free = frame.width - natural;
  if (free < 7 * frame.scale * static_cast<double>(columns.size() - 1)) {
    for (const SheetRow& row : sheet.rows) add_two_line_row(out, sheet, cells_of(row));
  } else {
    std::vector<double> x{0};
    const double gap = free / static_cast<double>(columns.size() - 1);
    for (size_t i = 0; i + 1 < columns.size(); ++i) x.push_back(x.back() + widths[i] + gap);
    out.space(2);
    add_header(out, sheet, columns, x, widths);
    for (const SheetRow& row : sheet.rows) add_row(out, cells_of(row), columns, x);
    out.keep_from(start);
  }
  out.space(3);
  out.wide_paragraph(break_lines(sheet.rows_note, frame.width, note), note);
}

}  // namespace brimline
