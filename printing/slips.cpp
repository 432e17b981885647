// SPDX-License-Identifier: GPL-3.0-or-later
#include "printing/slips.h"

#include <algorithm>

#include "printing/slab_builder.h"

namespace brimline {
namespace {

constexpr double kBody = 10.4, kSmall = 8.6;
constexpr double kBarHeight = 30, kModule = 1.0;  // points a bar's narrowest part is wide: 0.35 mm
constexpr double kNarrow = 300;                   // a roll
constexpr double kQuiet = 11 * kModule;

QString q(const std::string& text) {
  return QString::fromStdString(text);
}

// Bars at their natural width, at most `most` wide, with their figures beneath; the width they take.
double add_bars(std::vector<Item>& items, const std::string& code, double x, double y, double most,
                const Type& type) {
  const CellsItem unit = bar_cells(q(code), 1, 1);
  if (unit.cells.empty()) return 0;
  double narrowest = 1;
  for (const QRectF& bar : unit.cells) narrowest = std::min(narrowest, bar.width());
  const double width = std::min(most, kModule / narrowest);
  add_moved(items, {bar_cells(q(code), width, kBarHeight)}, x, y);
  items.push_back(text_at(x, y + kBarHeight + 1.5 + ascent_of(type), q(code), type));
  return width;
}

void add_title(SlabBuilder& out, const std::string& title, const std::string& shop) {
  const Type big = out.frame().type(15, true), small = out.frame().type(9.2);
  out.wide_paragraph(break_lines(title, out.frame().width, big), big, true);
  if (!shop.empty()) out.wide_paragraph(break_lines(shop, out.frame().width, small), small, true);
  out.space(3);
  out.rule(1.4, Ink::accent);
}

BoxItem tick_box(double baseline, const Type& type) {
  const double side = type.size * 0.86;
  return {QRectF(0, baseline - side + type.size * 0.06, side, side), 0.8, false};
}

// Tick, name and amount at the left; the bars at the right, on a roll beneath.
Slab shelf_line(const Frame& frame, const ShelfSlip::Line& line) {
  const Type name = frame.type(kBody), amount = frame.type(kBody + 1.6, true), figures = frame.type(kSmall);
  const bool beneath = frame.width < kNarrow;
  const double indent = 18, room = beneath ? frame.width - indent : frame.width * 0.52;
  Slab slab;
  slab.items.push_back(tick_box(ascent_of(name), name));
  double y = 0;
  for (const TextLine& words : break_lines(line.product, room, name)) {
    add_moved(slab.items, words.items, indent, y + ascent_of(name));
    y += leading_of(name);
  }
  for (const TextLine& words : break_lines(line.amount, room, amount)) {
    add_moved(slab.items, words.items, indent, y + ascent_of(amount));
    y += leading_of(amount);
  }
  for (const TextLine& words : break_lines(line.packs, room, name)) {
    add_moved(slab.items, words.items, indent, y + ascent_of(name));
    y += leading_of(name);
  }
  slab.height = y + 4;
  if (line.code.empty()) return slab;
  const double bars_x = beneath ? indent : frame.width * 0.58;
  const double bars_y = beneath ? y + 6 : 2;
  add_bars(slab.items, line.code, bars_x, bars_y, frame.width - bars_x - kQuiet, figures);
  slab.height = std::max(y, bars_y + kBarHeight + leading_of(figures)) + 4;
  return slab;
}

void add_pairs(SlabBuilder& out, const std::vector<Labelled>& rows, const std::string& code) {
  const Frame& frame = out.frame();
  const Type label = frame.type(9.2, true, Ink::accent), value = frame.type(9.6);
  const bool narrow = frame.width < kNarrow;
  double x = narrow ? 0 : 60;
  for (const Labelled& row : rows) x = std::max(x, width_of(q(row.label), label) + 10);
  Slab slab;
  double y = 0;
  const double qr = code.empty() ? 0 : 52, room = frame.width - x - (code.empty() || narrow ? 0 : qr + 16);
  for (const Labelled& row : rows) {
    slab.items.push_back(text_at(0, y + ascent_of(value), q(row.label), label));
    for (const TextLine& line : break_lines(row.value, room, value)) {
      add_moved(slab.items, line.items, x, y + ascent_of(value));
      y += leading_of(value);
    }
  }
  const double qr_y = narrow ? y + 8 : 2;
  if (!code.empty()) add_moved(slab.items, {qr_cells(q(code), qr)}, narrow ? 10 : frame.width - qr, qr_y);
  slab.height = std::max(y, code.empty() ? 0 : qr_y + qr);
  out.space(8);
  out.add(std::move(slab));
}

// A row of cells at fixed shares of the width; a cell that is too long takes more lines.
Slab cells_row(const Frame& frame, const std::vector<std::string>& cells, const std::vector<double>& shares,
               const Type& type) {
  Slab slab;
  double x = 0;
  for (size_t i = 0; i < cells.size(); ++i) {
    const double width = frame.width * shares[i];
    double y = 3;
    if (!cells[i].empty())
      for (const TextLine& line : break_lines(cells[i], width - 8, type)) {
        add_moved(slab.items, line.items, x, y + ascent_of(type));
        y += leading_of(type);
      }
    slab.height = std::max(slab.height, y + 1.5);
    x += width;
  }
  slab.items.push_back(LineItem{0, 0.2, frame.width, 0.2, 0.3, Ink::quiet});
  return slab;
}

void add_heading(SlabBuilder& out, const std::string& text) {
  const Type type = out.frame().type(9.6, true, Ink::accent);
  out.space(11);
  out.wide_paragraph(break_lines(text, out.frame().width, type), type, true);
  out.space(2);
}

// "Free chlorine 0.60 mg/L Cl2; photometer; lot": where no table fits.
void add_joined(SlabBuilder& out, const std::vector<std::string>& cells, const Type& type) {
  std::string rest;
  for (size_t i = 2; i < cells.size(); ++i)
    if (!cells[i].empty()) rest += "; " + cells[i];
  const Type strong{type.size, true, type.ink};
  out.space(2);
  out.paragraph(break_lines({Run{cells[0] + " ", type}, Run{cells[1], strong}, Run{rest, type}},
                            out.frame().width, type),
                type);
}

void add_staff_tables(SlabBuilder& out, const StaffCopy& copy) {
  const Frame& frame = out.frame();
  const Type cell = frame.type(9), head = frame.type(8.4, true);
  const bool narrow = frame.width < kNarrow;
  const std::vector<double> shares{0.28, 0.26, 0.2, 0.14, 0.12};
  add_heading(out, copy.readings_title);
  if (!narrow) out.add(cells_row(frame, copy.columns, shares, head));
  for (const StaffCopy::Reading& r : copy.readings) {
    const std::vector<std::string> cells{r.name, r.value, r.method, r.instrument, r.lot};
    if (narrow)
      add_joined(out, cells, cell);
    else
      out.add(cells_row(frame, cells, shares, cell));
  }
  if (!copy.steps.empty()) add_heading(out, copy.steps_title);
  for (const StaffCopy::Step& s : copy.steps) {
    if (narrow)
      add_joined(out, {s.order, s.when, s.text, s.amount}, cell);
    else
      out.add(cells_row(frame, {s.order, s.when, s.text, s.amount}, {0.05, 0.2, 0.5, 0.25}, cell));
  }
}

std::vector<Slab> staff_slabs(const StaffCopy& copy, Frame frame) {
  frame.side = frame.gutter = 0;
  SlabBuilder out(frame);
  const Type cell = frame.type(9), strong = frame.type(11.5, true);
  add_title(out, copy.title, copy.shop);
  add_pairs(out, copy.who, copy.code);
  if (!copy.answer.empty()) {
    out.space(8);
    out.paragraph(break_lines(copy.answer, frame.width, strong), strong);
  }
  add_staff_tables(out, copy);
  if (!copy.basis.empty()) add_pairs(out, copy.basis, {});
  Slab line;
  line.height = 34;
  const TextItem words = text_at(0, 30, q(copy.signed_by), cell);
  line.items = {words, LineItem{words.width + 8, 31, std::min(frame.width, words.width + 220), 31, 0.6}};
  out.add(std::move(line));
  return out.take();
}

Slab label_of(const BottleLabel& label, const Frame& frame, double width) {
  const Type code = frame.type(20, true), small = frame.type(kSmall), figures = frame.type(kSmall);
  const double pad = 12;
  Slab slab;
  slab.height = 118;
  double y = pad;
  slab.items.push_back(text_at(pad, y + ascent_of(code), q(label.code), code));
  y += leading_of(code);
  for (const std::string& line : {label.line, label.shop}) {
    if (line.empty()) continue;
    const auto words = break_lines(line, width - 2 * pad, small);
    add_moved(slab.items, words.front().items, pad, y + ascent_of(small));
    y += leading_of(small);
  }
  add_bars(slab.items, label.code, pad + kQuiet, slab.height - pad - kBarHeight - leading_of(figures),
           width - 2 * pad - 2 * kQuiet, figures);
  for (const double edge : {0.0, slab.height})
    slab.items.push_back(LineItem{0, edge, width, edge, 0.25, Ink::quiet});
  for (const double edge : {0.0, width})
    slab.items.push_back(LineItem{edge, 0, edge, slab.height, 0.25, Ink::quiet});
  return slab;
}

}  // namespace

Pages lay_out(const ShelfSlip& slip, Paper paper) {
  const auto slabs = [&](Frame frame) {
    frame.side = frame.gutter = 0;
    SlabBuilder out(frame);
    const Type note = frame.type(9.2), who = frame.type(kBody, true);
    add_title(out, slip.title, slip.shop);
    out.space(6);
    if (!slip.who.empty()) out.paragraph(break_lines(slip.who, frame.width, who), who);
    const std::string& words = slip.lines.empty() ? slip.nothing : slip.note;
    out.paragraph(break_lines(words, frame.width, note), note);
    for (const ShelfSlip::Line& line : slip.lines) {
      out.space(9);
      out.rule(0.35, Ink::quiet);
      out.space(7);
      out.add(shelf_line(frame, line));
    }
    return out.take();
  };
  return lay_out(Body{slabs, slip.footer, slip.footer, slip.page}, Edition{paper});
}

Pages lay_out(const StaffCopy& copy, Paper paper) {
  return lay_out(
      Body{[&](const Frame& frame) { return staff_slabs(copy, frame); }, copy.footer, copy.code, copy.page},
      Edition{paper});
}

Pages lay_out(const std::vector<BottleLabel>& labels, Paper paper) {
  const auto slabs = [&](Frame frame) {
    frame.side = frame.gutter = 0;
    SlabBuilder out(frame);
    const size_t across = frame.width < kNarrow ? 1 : 2;
    const double width = frame.width / static_cast<double>(across);
    for (size_t i = 0; i < labels.size(); i += across) {
      std::vector<SlabBuilder::Column> row;
      for (size_t c = 0; c < across && i + c < labels.size(); ++c)
        row.push_back({static_cast<double>(c) * width, {label_of(labels[i + c], frame, width)}});
      out.add_beside(row);
    }
    return out.take();
  };
  return lay_out(Body{slabs, {}, {}, "%1 / %2"}, Edition{paper});
}

}  // namespace brimline
