// SPDX-License-Identifier: GPL-3.0-or-later
// The plain table of readings; where its columns do not fit the paper, each reading becomes a line
// with what belongs to it beneath.
#include <algorithm>
#include <array>

#include "printing/charts.h"
#include "printing/slab_builder.h"

namespace brimline {
namespace {

constexpr double kCell = 9.2, kHead = 8.4;
constexpr size_t kColumns = 6;
constexpr double kGap = 46;  // between columns, at most
using Cells = std::array<std::string, kColumns>;

// The value's spread and the name's unit are set apart from them, in lighter type; in heavier type where the
// value stands against its target.
Cells cells_of(const SheetRow& row) {
  return {row.name, row.value, row.target, row.expected, row.last, row.fill};
}
Cells asides_of(const SheetRow& row) {
  return {row.unit, row.spread, row.standing, "", "", ""};
}

// The same rows with less in them, for a page that is too narrow for their letters.
std::vector<SheetRow> without_asides(std::vector<SheetRow> rows) {
  for (SheetRow& row : rows) row.unit = row.spread = "";
  return rows;
}
std::vector<SheetRow> without_fill(std::vector<SheetRow> rows) {
  for (SheetRow& row : rows) row.fill = "";
  std::erase_if(rows, [](const SheetRow& row) {
    return row.target.empty() && row.expected.empty() &&
           row.value.find_first_of("0123456789") == std::string::npos;
  });
  return rows;
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
  // Its longest word stays whole.
  for (const QString& word : QString::fromStdString(text).split(' '))
    out = std::max(out, width_of(word, type));
  const double whole = width_of(QString::fromStdString(text), type);
  for (const TextLine& line : balanced_lines(text, std::max(whole * 0.68, 1.0), type))
    out = std::max(out, line.width);
  return out;
}

constexpr size_t kTarget = 2;  // column
Type aside_type(const Frame& frame, size_t column) {
  return column == kTarget ? frame.type(kHead, true) : frame.type(kHead, false, Ink::quiet);
}
double aside_width(const std::string& aside, const Frame& frame, size_t column) {
  return aside.empty() ? 0 : 4 + width_of(QString::fromStdString(aside), aside_type(frame, column));
}

std::vector<double> widths_of(const Sheet& sheet, const std::vector<size_t>& columns, const Frame& frame) {
  std::vector<double> out;
  for (const size_t c : columns) {
    double width = heading_width(sheet.titles.columns[c], frame.type(kHead, true));
    for (const SheetRow& row : sheet.rows)
      width = std::max(width, width_of(QString::fromStdString(cells_of(row)[c]), frame.type(kCell, c == 1)) +
                                  aside_width(asides_of(row)[c], frame, c));
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

void add_row(SlabBuilder& out, const SheetRow& row, const std::vector<size_t>& columns,
             const std::vector<double>& x, double width) {
  const Frame& frame = out.frame();
  const Cells cells = cells_of(row), asides = asides_of(row);
  Slab slab;
  const Type cell_type = frame.type(kCell);
  slab.height = cell_type.size * (frame.large ? 1.5 : 1.62);
  const double baseline = cell_type.size * (frame.large ? 1.14 : 1.22);
  slab.items.push_back(LineItem{x.front(), 0.2, width, 0.2, 0.3, Ink::quiet});
  for (size_t i = 0; i < columns.size(); ++i) {
    const std::string& cell = cells[columns[i]];
    if (cell.empty()) continue;
    const TextItem words =
        text_at(x[i], baseline, QString::fromStdString(cell), frame.type(kCell, columns[i] == 1));
    const std::string& aside = asides[columns[i]];
    slab.items.push_back(words);
    if (!aside.empty())
      slab.items.push_back(text_at(x[i] + words.width + 4, baseline, QString::fromStdString(aside),
                                   aside_type(frame, columns[i])));
  }
  out.add(std::move(slab));
}

// Name and value on one line, the rest as words beneath.
void add_two_line_row(SlabBuilder& out, const Sheet& sheet, const SheetRow& row) {
  const Frame& frame = out.frame();
  const Type strong = frame.type(kCell, true), light = frame.type(kHead, false, Ink::quiet);
  const Cells cells = cells_of(row);
  const size_t start = out.size();
  const std::string behind =
      (row.spread.empty() ? "" : " " + row.spread) + (row.unit.empty() ? "" : " " + row.unit);
  out.space(3);
  out.wide_paragraph(
      break_lines({Run{row.name + " ", frame.type(kCell)}, Run{row.value, strong}, Run{behind, light}},
                  frame.width, strong),
      strong);
  std::string rest;
  for (size_t c = 2; c < kColumns; ++c)
    if (!cells[c].empty())
      rest += (rest.empty() ? "" : "; ") + sheet.titles.columns[c] + " " + cells[c] +
              (c == kTarget && !row.standing.empty() ? " (" + row.standing + ")" : "");
  if (!rest.empty()) out.wide_paragraph(break_lines(rest, frame.width, light), light);
  out.keep_from(start);
}

// The table in columns; false where they do not fit.
bool add_in_columns(SlabBuilder& out, const Sheet& sheet) {
  const Frame& frame = out.frame();
  const size_t start = out.size();
  const auto columns = used_columns(sheet);
  const auto widths = widths_of(sheet, columns, frame);
  double natural = 0;
  for (const double width : widths) natural += width;
  const double free = frame.width - natural;
  const auto gaps = static_cast<double>(columns.size() - 1);
  if (free < 7 * frame.scale * gaps) return false;
  const double gap = std::min(free / gaps, kGap * frame.scale);
  std::vector<double> x{0};
  for (size_t i = 0; i + 1 < columns.size(); ++i) x.push_back(x.back() + widths[i] + gap);
  out.space(2);
  add_header(out, sheet, columns, x, widths);
  for (const SheetRow& row : sheet.rows) add_row(out, row, columns, x, natural + gap * gaps);
  out.keep_from(start);
  out.at(out.size() - 1).with_next = false;
  return true;
}

}  // namespace

void add_table(SlabBuilder& out, const Sheet& sheet) {
  if (sheet.rows.empty()) return;
  const Frame& frame = out.frame();
  const Type head = frame.type(9.6, true, Ink::accent), note = frame.type(8.2, false, Ink::quiet);
  out.space(11);
  out.wide_paragraph(break_lines(sheet.titles.readings, frame.width, head), head, true);
  bool done = add_in_columns(out, sheet);
  if (!done && frame.large) {
    Sheet less = sheet;
    less.rows = without_asides(sheet.rows);
    done = add_in_columns(out, less);
    if (!done) less.rows = without_fill(less.rows);
    done = done || add_in_columns(out, less);
  }
  if (!done)
    for (const SheetRow& row : sheet.rows) add_two_line_row(out, sheet, row);
  if (frame.large) return;
  out.space(3);
  out.wide_paragraph(break_lines(sheet.rows_note, frame.width, note), note);
}

void add_last_plan(SlabBuilder& out, const Sheet& sheet) {
  if (sheet.last_plan.empty()) return;
  const Frame& frame = out.frame();
  const Type head = frame.type(9.6, true, Ink::accent), type = frame.type(8.8);
  out.space(8);
  out.wide_paragraph(break_lines(sheet.titles.last_plan, frame.width, head), head, true);
  for (const std::string& line : sheet.last_plan)
    out.wide_paragraph(break_lines(line, frame.width, type), type, &line != &sheet.last_plan.back());
}

void add_charts(SlabBuilder& out, const Sheet& sheet) {
  const Frame& frame = out.frame();
  if (sheet.charts.empty() || frame.large) return;
  const Type head = frame.type(9.6, true, Ink::accent), type = frame.type(8.2);
  out.space(10);
  out.wide_paragraph(break_lines(sheet.titles.charts, frame.width, head), head, true);
  out.space(2);
  const double gap = 26, least = 130;
  const auto beside = static_cast<size_t>(std::clamp((frame.width + gap) / (least + gap), 1.0, 3.0));
  const double width = (frame.width - gap * static_cast<double>(beside - 1)) / static_cast<double>(beside);
  for (size_t from = 0; from < sheet.charts.size(); from += beside) {
    Slab slab;
    slab.height = chart_height(type);
    for (size_t i = from; i < std::min(from + beside, sheet.charts.size()); ++i)
      add_moved(slab.items, chart_items(sheet.charts[i], width, type),
                static_cast<double>(i - from) * (width + gap), 0);
    out.space(4);
    out.add(std::move(slab));
  }
}

}  // namespace brimline
