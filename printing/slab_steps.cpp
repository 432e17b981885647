// SPDX-License-Identifier: GPL-3.0-or-later
// The timetable: the clock at the left, a box to tick, how much and what to do, and the cautions of the
// step beside it; on narrow paper and in large print beneath it.
#include <algorithm>

#include "printing/slab_builder.h"

namespace brimline {
namespace {

constexpr double kBody = 10.4, kAmount = 11.6, kCaution = 9.2;
constexpr double kTallest = 420;  // points: a step that is taller is set line by line, to be parted by pages
constexpr double kNarrow = 300;   // points: a roll
constexpr double kBar = 1.6, kIndent = 8;

// A box to tick standing on the baseline.
BoxItem tick_box(double x, double baseline, const Type& type) {
  const double side = type.size * 0.86;
  return {QRectF(x, baseline - side + type.size * 0.06, side, side), 0.8, false};
}

void add_day(SlabBuilder& out, const std::string& day) {
  const Frame& frame = out.frame();
  const Type type = frame.type(9.2, true, Ink::accent);
  out.wide_paragraph(break_lines(day, frame.width, type), type, true);
}

void add_rule(SlabBuilder& out) {
  out.space(4);
  out.rule(0.35, Ink::quiet);
  out.space(4);
}

// "Wed 24 Jun 07:00" in one line, or the day above the hour.
std::vector<TextLine> clock_lines(const std::string& when, double width, const Type& type) {
  if (width_of(QString::fromStdString(when), type) <= width) return break_lines(when, width, type);
  const size_t space = when.rfind(' ');
  std::vector<TextLine> out;
  for (const std::string& part :
       {when.substr(0, space), when.substr(space == std::string::npos ? 0 : space + 1)})
    for (TextLine& line : break_lines(part, width, type)) out.push_back(std::move(line));
  return out;
}

// The clock, the step's number and, for a step of one portion, its box: in the columns of wide paper. A
// clock that is wider than its column stands in two lines.
std::vector<Item> head_items(const Frame& frame, const SheetStep& step, double baseline) {
  std::vector<Item> items;
  const Type clock = frame.type(kBody, true), number = frame.type(kBody, false, Ink::accent);
  const double gap = 4 * frame.scale, box_x = frame.text_x() - clock.size * 0.86 - 1.5 * gap;
  const QString order = QString::number(step.order);
  double y = baseline;
  for (const TextLine& line : clock_lines(step.when, box_x - 2 * gap - width_of(order, number), clock)) {
    add_moved(items, line.items, 0, y);
    y += leading_of(clock);
  }
  if (step.ticks.size() == 1) items.push_back(tick_box(box_x, baseline, clock));
  items.push_back(text_ending_at(box_x - gap, baseline, order, number));
  return items;
}

// The same in a line of its own.
void add_head_line(SlabBuilder& out, const SheetStep& step) {
  const Frame& frame = out.frame();
  const Type clock = frame.type(kBody, true), number = frame.type(kBody, false, Ink::accent);
  const double gap = 5 * frame.scale;
  Slab slab;
  slab.height = leading_of(clock) + 1;
  double x = 0;
  if (step.ticks.size() == 1) {
    slab.items.push_back(tick_box(0, ascent_of(clock), clock));
    x = clock.size * 0.86 + gap;
  }
  const QString order = QString::number(step.order);
  slab.items.push_back(text_at(x, ascent_of(clock), order, number));
  x += width_of(order, number) + gap;
  slab.items.push_back(text_at(x, ascent_of(clock), QString::fromStdString(step.when), clock));
  slab.with_next = slab.heads = true;
  out.add(std::move(slab));
}

void add_ticks(SlabBuilder& out, const std::vector<Tick>& ticks) {
  if (ticks.size() <= 1) return;
  const Frame& frame = out.frame();
  const Type type = frame.type(9.4, true);
  const double box = type.size * 0.86, gap = 4 * frame.scale;
  Slab slab;
  slab.height = leading_of(type);
  double x = frame.text_x();
  const auto flush = [&] {
    out.space(2);
    out.add(std::move(slab));
    slab = Slab{};
    slab.height = leading_of(type);
    x = frame.text_x();
  };
  for (const Tick& tick : ticks) {
    const QString label = QString::fromStdString(tick.label);
    const double width = box + gap + width_of(label, type);
    if (x > frame.text_x() && x + width > frame.width) flush();
    slab.items.push_back(tick_box(x, ascent_of(type), type));
    slab.items.push_back(text_at(x + box + gap, ascent_of(type), label, type));
    x += width + 12 * frame.scale;
  }
  flush();
}

// How much, what to do, and a box a portion.
void add_text(SlabBuilder& out, const SheetStep& step) {
  const Frame& frame = out.frame();
  const Type body = frame.type(kBody), amount = frame.type(kAmount, true);
  if (!step.amount.empty()) out.paragraph(break_lines(step.amount, frame.text_width(), amount), amount);
  out.paragraph(break_lines(step.text, frame.text_width(), body), body);
  add_ticks(out, step.ticks);
}

// One bar beside all cautions of a step; `label` stands before the first.
void add_cautions(SlabBuilder& out, const std::string& label, const std::vector<std::string>& cautions) {
  const Frame& frame = out.frame();
  const Type type = frame.type(kCaution);
  const double indent = kIndent * frame.scale, bar = kBar * frame.scale;
  for (const std::string& caution : cautions) {
    const bool first = &caution == &cautions.front();
    std::vector<std::variant<Run, Waterline>> pieces;
    if (first) pieces.emplace_back(Run{label + " ", frame.type(kCaution, true)});
    pieces.emplace_back(Run{caution, type});
    const double apart = first ? 0 : 2.2 * frame.scale;
    const auto lines = break_lines(pieces, frame.text_width() - indent, type);
    for (size_t i = 0; i < lines.size(); ++i) {
      Slab slab;
      const double above = i == 0 ? apart : 0;
      slab.height = leading_of(type) + above;
      slab.with_next = true;
      slab.goes_on = i + 1 < lines.size();
      slab.items.push_back(
          LineItem{frame.text_x() + bar / 2, 0, frame.text_x() + bar / 2, slab.height, bar, Ink::black});
      add_moved(slab.items, lines[i].items, frame.text_x() + indent, above + ascent_of(type));
      out.add(std::move(slab));
    }
  }
}

// A builder of a column `width` wide that knows no columns itself.
SlabBuilder column(const Frame& of, double width) {
  Frame frame = of;
  frame.width = width;
  frame.side = frame.gutter = frame.cautions = 0;
  return SlabBuilder(frame);
}

double height_of(const std::vector<Slab>& slabs) {
  double out = 0;
  for (const Slab& slab : slabs) out += slab.height + slab.space_before;
  return out;
}

// Large print on a page: the clock keeps its column, the cautions stand beneath the text.
Frame in_columns(const Frame& frame) {
  Frame out = frame;
  if (frame.large && frame.width > kNarrow) {
    out.side = 84 * frame.scale;
    out.gutter = 28 * frame.scale;
  }
  return out;
}

// The step in columns; false where it does not stand in them.
bool add_in_columns(SlabBuilder& out, const SheetStep& step, const std::string& label) {
  const Frame frame = in_columns(out.frame());
  if (frame.stacked()) return false;
  const bool again = frame.tight && !step.cautions_as.empty();
  const bool beside = frame.cautions > 0 && !step.cautions.empty() && !again;
  const double gap = 18, caution_x = frame.width - frame.cautions;
  const double width = (beside ? caution_x - gap : frame.width) - frame.text_x();
  const Type first = frame.type(step.amount.empty() ? kBody : kAmount);
  Slab head;
  head.items = head_items(frame, step, ascent_of(first));
  for (const Item& item : head.items)
    if (const auto* text = std::get_if<TextItem>(&item))
      head.height = std::max(head.height, text->box().bottom());
  SlabBuilder text = column(frame, width), cautions = column(frame, beside ? frame.cautions : width);
  add_text(text, step);
  add_cautions(cautions, label, again ? std::vector{step.cautions_as} : step.cautions);
  std::vector<SlabBuilder::Column> columns{{0, {head}}, {frame.text_x(), text.take()}};
  if (beside) {
    columns.push_back({caution_x, cautions.take()});
  } else if (!step.cautions.empty()) {
    std::vector<Slab> below = cautions.take();
    below.front().space_before += 3 * frame.scale;
    auto& slabs = columns[1].slabs;
    slabs.insert(slabs.end(), below.begin(), below.end());
  }
  for (const auto& one : columns)
    if (height_of(one.slabs) > kTallest) return false;
  out.add_beside(columns);
  return true;
}

void add_step(SlabBuilder& out, const SheetStep& step, const std::string& label, bool first) {
  const size_t start = out.size();
  if (!first) add_rule(out);
  if (!step.day.empty()) add_day(out, step.day);
  if (!add_in_columns(out, step, label)) {
    add_head_line(out, step);
    add_text(out, step);
    out.space(2);
    add_cautions(out, label, step.cautions);
  }
  out.keep_from(start);
  out.at(out.size() - 1).with_next = false;
}

}  // namespace

void add_steps(SlabBuilder& out, const Sheet& sheet) {
  if (sheet.steps.empty()) return;
  out.space(9);
  out.rule(0.9);
  out.space(4);
  const Type type = out.frame().type(12.5, true);
  out.wide_paragraph(break_lines(sheet.titles.steps, out.frame().width, type), type, true);
  bool first = true;
  for (const SheetStep& step : sheet.steps) {
    add_step(out, step, sheet.titles.caution, first);
    first = false;
  }
}

}  // namespace brimline
