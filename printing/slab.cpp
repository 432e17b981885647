// SPDX-License-Identifier: GPL-3.0-or-later
#include "printing/slab.h"

#include <algorithm>

#include "printing/slab_builder.h"

namespace brimline {
namespace {

constexpr double kBody = 10.4, kSmall = 9.4, kKey = 8.2;
constexpr double kNarrow = 300;  // points: a roll

void add_head(SlabBuilder& out, const Sheet& sheet) {
  const Frame& frame = out.frame();
  const Type name = frame.type(16, true), line = frame.type(9.2), number = frame.type(9.6, true);
  std::string contact = sheet.shop.street.value_or("");
  if (sheet.shop.phone) contact += (contact.empty() ? "" : " · ") + *sheet.shop.phone;
  double right_width = 0;
  std::vector<QString> numbers;
  for (const EmergencyNumber& e : sheet.shop.emergency) {
    numbers.push_back(QString::fromStdString(e.label + " " + e.number));
    right_width = std::max(right_width, width_of(numbers.back(), number));
  }
  const bool beside = frame.width > kNarrow && right_width < frame.width * 0.5;
  const double left_width = beside ? frame.width - right_width - (numbers.empty() ? 0 : 18) : frame.width;
  Slab slab;
  double y = 0;
  const auto add = [&](const std::string& text, const Type& type, double width) {
    if (text.empty()) return;
    for (const TextLine& l : break_lines(text, width, type)) {
      add_moved(slab.items, l.items, 0, y + ascent_of(type));
      y += leading_of(type);
    }
  };
  add(sheet.shop.name.empty() ? sheet.titles.sheet : sheet.shop.name, name, left_width);
  add(contact, line, left_width);
  double right = 0;
  for (const QString& text : numbers) {
    if (beside) {
      slab.items.push_back(text_ending_at(frame.width, right + ascent_of(name), text, number));
      right += leading_of(number);
    } else {
      add(text.toStdString(), number, frame.width);
    }
  }
  slab.height = std::max(y, right + ascent_of(name) - ascent_of(number) + 2) + 2 * frame.scale;
  slab.with_next = true;
  out.add(std::move(slab));
  out.rule(1.4, Ink::accent);
}

// The code that reopens the visit, with what it is for beneath, from x on; the words end where it does or, on
// a roll, begin where it does.
double add_code(std::vector<Item>& items, const Sheet& sheet, const Frame& frame, double x, double y) {
  const double size = 58;
  const Type caption = frame.type(7.4, false, Ink::quiet);
  add_moved(items, {qr_cells(QString::fromStdString(sheet.code), size)}, x, y);
  const QString words = QString::fromStdString(sheet.titles.scan);
  const double baseline = y + size + 3 + ascent_of(caption);
  items.push_back(frame.width < kNarrow ? text_at(x, baseline, words, caption)
                                        : text_ending_at(x + size, baseline, words, caption));
  return y + size + 3 + leading_of(caption);
}

// Whose water it is, with the code at the right; on a roll beneath.
void add_who(SlabBuilder& out, const Sheet& sheet) {
  const Frame& frame = out.frame();
  const Type label = frame.type(9.6, true, Ink::accent), value = frame.type(kBody);
  const bool narrow = frame.width < kNarrow;
  double label_width = frame.text_x();
  if (frame.stacked())
    for (const Labelled& row : sheet.who)
      label_width = std::max(label_width, width_of(QString::fromStdString(row.label), label) + 8);
  const double caption =
      width_of(QString::fromStdString(sheet.titles.scan), frame.type(7.4, false, Ink::quiet));
  const double width = frame.width - label_width - (narrow ? 0 : std::max(84.0, caption + 14));
  Slab slab;
  double y = 0;
  for (const Labelled& row : sheet.who) {
    slab.items.push_back(text_at(0, y + ascent_of(value), QString::fromStdString(row.label), label));
    for (const TextLine& line : break_lines(row.value, width, value)) {
      add_moved(slab.items, line.items, label_width, y + ascent_of(value));
      y += leading_of(value);
    }
  }
  const double bottom = narrow ? add_code(slab.items, sheet, frame, 10, y + 8)
                               : add_code(slab.items, sheet, frame, frame.width - 58, 2);
  slab.height = std::max(y, bottom);
  out.space(8);
  out.add(std::move(slab));
}

void add_answer(SlabBuilder& out, const Sheet& sheet) {
  const Frame& frame = out.frame();
  const Type answer = frame.type(19, true);
  out.space(4);
  out.title(sheet.question);
  const size_t start = out.size();
  out.paragraph(balanced_lines(sheet.answer, frame.text_width(), answer), answer);
  for (const std::string& reason : sheet.because) {
    const Type type = frame.type(kBody);
    out.space(2.5);
    out.paragraph(break_lines(reason, frame.text_width(), type), type);
  }
  if (sheet.why_not) {
    const Type why = frame.type(14);
    out.space(5);
    out.paragraph(break_lines(*sheet.why_not, frame.text_width(), why), why);
  }
  out.keep_from(start);
}

void add_lines(SlabBuilder& out, const std::string& title, const std::vector<std::string>& lines,
               const Type& type) {
  if (lines.empty()) return;
  out.space(10);
  out.title(title);
  for (const std::string& line : lines) {
    out.space(2);
    out.paragraph(break_lines(line, out.frame().text_width(), type), type);
  }
}

// How many of `heights` stand in the first of two columns that are as even as can be.
size_t first_column(const std::vector<double>& heights) {
  double whole = 0, first = 0;
  for (const double height : heights) whole += height;
  size_t count = 0;
  while (count < heights.size() && first + heights[count] / 2 < whole / 2) first += heights[count++];
  return std::max<size_t>(count, 1);
}

// Short lines in two columns over the whole width, under a title; in large print and on a roll in one.
void add_two_columns(SlabBuilder& out, const std::string& title, const std::vector<std::string>& lines,
                     const Type& type) {
  const Frame& frame = out.frame();
  if (frame.stacked()) return add_lines(out, title, lines, type);
  if (lines.empty()) return;
  out.space(9);
  const Type head = frame.type(9.6, true, Ink::accent);
  out.wide_paragraph(break_lines(title, frame.width, head), head, true);
  out.space(2);
  Frame narrow = frame;
  const double gap = 22;
  narrow.width = (frame.width - gap) / 2;
  narrow.side = narrow.gutter = 0;
  std::vector<double> heights;
  heights.reserve(lines.size());
  for (const std::string& line : lines)
    heights.push_back(static_cast<double>(break_lines(line, narrow.width, type).size()) * leading_of(type) +
                      2);
  const size_t first = first_column(heights);
  SlabBuilder left(narrow), right(narrow);
  for (size_t i = 0; i < lines.size(); ++i) {
    SlabBuilder& column = i < first ? left : right;
    column.space(2);
    column.paragraph(break_lines(lines[i], narrow.width, type), type);
  }
  out.add_beside({{0, left.take()}, {narrow.width + gap, right.take()}});
}

void add_findings(SlabBuilder& out, const Sheet& sheet) {
  if (sheet.findings.empty()) return;
  const Frame& frame = out.frame();
  const Type body = frame.type(kBody), key = frame.type(kKey, false, Ink::quiet);
  const Type head = frame.type(9.6, true, Ink::accent);
  // Above and not beside: a title beside lines that stand apart would be read into the sentence.
  out.space(10);
  const size_t start = out.size();
  out.wide_paragraph(break_lines(sheet.titles.findings, frame.width, head), head, true);
  Frame wide = frame;
  if (frame.tight) wide.side = wide.gutter = 0;
  SlabBuilder text(wide);
  for (const Sentence& finding : sheet.findings) {
    text.space(3.5);
    text.paragraph(break_lines(finding, wide.text_width(), body), body);
  }
  for (Slab& slab : text.take()) out.add(std::move(slab));
  if (!sheet.waterline_key.empty() && !frame.large && !frame.tight) {
    out.space(3);
    out.paragraph(break_lines(sheet.waterline_key, frame.text_width(), key), key);
  }
  out.keep_from(start);
  out.at(out.size() - 1).with_next = false;
}

}  // namespace

// What to do and what helps stand first, on the front; why, and the readings, on the back.
std::vector<Slab> slabs_of(const Sheet& sheet, const Frame& frame) {
  SlabBuilder out(frame);
  add_head(out, sheet);
  add_who(out, sheet);
  add_answer(out, sheet);
  if (sheet.steps.empty()) add_findings(out, sheet);
  add_two_columns(out, sheet.titles.before, sheet.before, frame.type(kSmall));
  add_steps(out, sheet);
  if (!sheet.steps.empty()) {
    out.space(9);
    out.rule(0.9);
  }
  add_lines(out, sheet.titles.still_open, sheet.still_open, frame.type(kSmall));
  add_lines(out, sheet.titles.come_back, {sheet.come_back}, frame.type(kBody, true));
  if (frame.tight)
    add_two_columns(out, sheet.titles.watch, sheet.watch, frame.type(kSmall));
  else
    add_lines(out, sheet.titles.watch, sheet.watch, frame.type(kSmall));
  add_two_columns(out, sheet.titles.trouble, sheet.trouble, frame.type(kSmall));
  if (!sheet.steps.empty()) add_findings(out, sheet);
  add_table(out, sheet);
  add_last_plan(out, sheet);
  add_charts(out, sheet);
  return out.take();
}

}  // namespace brimline
