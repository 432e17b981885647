// SPDX-License-Identifier: GPL-3.0-or-later
#include "printing/slab.h"

#include <algorithm>

#include "printing/slab_builder.h"

namespace brimline {
namespace {

constexpr double kBody = 10.4, kSmall = 9.4, kKey = 8.2;

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
  const bool beside = !frame.stacked() && right_width < frame.width * 0.5;
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

// Whose water it is, with the code that reopens the visit at the right.
void add_who(SlabBuilder& out, const Sheet& sheet) {
  const Frame& frame = out.frame();
  const Type label = frame.type(9.6, true, Ink::accent), value = frame.type(kBody);
  const double qr = 58, gap = 22;
  const double width = frame.stacked() ? frame.width : frame.text_width() - qr - gap;
  Slab slab;
  double y = 0;
  for (const Labelled& row : sheet.who) {
    const double baseline = y + ascent_of(value);
    const QString name = QString::fromStdString(row.label);
    slab.items.push_back(text_at(0, baseline, name, label));
    if (frame.stacked()) y += leading_of(value);
    for (const TextLine& line : break_lines(row.value, width, value)) {
      add_moved(slab.items, line.items, frame.text_x(), y + ascent_of(value));
      y += leading_of(value);
    }
  }
  const CellsItem code = qr_cells(QString::fromStdString(sheet.code), qr);
  const double qr_y = frame.stacked() ? y + 10 : 2;
  add_moved(slab.items, {code}, frame.stacked() ? 10 : frame.width - qr, qr_y);
  slab.height = std::max(y, qr_y + qr + 2);
  out.space(8);
  out.add(std::move(slab));
}

void add_answer(SlabBuilder& out, const Sheet& sheet) {
  const Frame& frame = out.frame();
  const Type answer = frame.type(19, true);
  out.space(8);
  out.title(sheet.question);
  const size_t start = out.size();
  out.paragraph(balanced_lines(sheet.answer, frame.text_width(), answer), answer);
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

void add_findings(SlabBuilder& out, const Sheet& sheet) {
  if (sheet.findings.empty()) return;
  const Frame& frame = out.frame();
  const Type body = frame.type(kBody), key = frame.type(kKey, false, Ink::quiet);
  const Type head = frame.type(9.6, true, Ink::accent);
  // Above and not beside: a title beside lines that stand apart would be read into the sentence.
  out.space(8);
  out.wide_paragraph(break_lines(sheet.titles.findings, frame.width, head), head, true);
  size_t last = out.size();
  for (const Sentence& finding : sheet.findings) {
    last = out.size();
    out.space(5);
    out.paragraph(break_lines(finding, frame.text_width(), body), body);
  }
  if (sheet.waterline_key.empty()) return;
  out.space(3);
  out.paragraph(break_lines(sheet.waterline_key, frame.text_width(), key), key);
  out.keep_from(last);
}

}  // namespace

std::vector<Slab> slabs_of(const Sheet& sheet, const Frame& frame) {
  SlabBuilder out(frame);
  add_head(out, sheet);
  add_who(out, sheet);
  add_answer(out, sheet);
  add_findings(out, sheet);
  add_lines(out, sheet.titles.before, sheet.before, frame.type(kSmall));
  add_steps(out, sheet);
  if (!sheet.steps.empty()) {
    out.space(10);
    out.rule(0.9);
  }
  add_lines(out, sheet.titles.come_back, {sheet.come_back}, frame.type(kBody, true));
  add_lines(out, sheet.titles.watch, sheet.watch, frame.type(kSmall));
  add_table(out, sheet);
  add_lines(out, sheet.titles.trouble, sheet.trouble, frame.type(kSmall));
  return out.take();
}

}  // namespace brimline
