// SPDX-License-Identifier: GPL-3.0-or-later
// The timetable: the clock at the left, a box to tick, what to do, how much, and the cautions of
// the step under it, beside a bar.
#include <algorithm>

#include "printing/slab_builder.h"

namespace brimline {
namespace {

constexpr double kBody = 10.4, kCaution = 9.2;

// A box to tick standing on the baseline.
BoxItem tick_box(double x, double baseline, const Type& type) {
  const double side = type.size * 0.82;
  return {QRectF(x, baseline - side + type.size * 0.06, side, side), 0.8, false};
}

void add_day(SlabBuilder& out, const std::string& day) {
  const Frame& frame = out.frame();
  const Type type = frame.type(9.2, true, Ink::accent);
  Slab slab;
  slab.height = leading_of(type) + 2 * frame.scale;
  slab.with_next = true;
  const auto lines = break_lines(day, frame.width, type);
  add_moved(slab.items, lines.front().items, 0, ascent_of(type));
  out.add(std::move(slab));
}

void add_rule(SlabBuilder& out) {
  out.space(3.5);
  out.rule(0.35, Ink::quiet);
  out.space(3.5);
}

// The clock, the step's number and, for a step of one portion, its box.
std::vector<Item> head_items(const Frame& frame, const SheetStep& step, double baseline) {
  std::vector<Item> items;
  const Type clock = frame.type(kBody, true), number = frame.type(kBody, false, Ink::accent);
  const double box = kBody * 0.82 * frame.scale, gap = 4 * frame.scale;
  items.push_back(text_at(0, baseline, QString::fromStdString(step.when), clock));
  const bool boxed = step.ticks.size() == 1;
  const double box_x = frame.stacked() ? frame.width - box : frame.text_x() - box - 2 * gap;
  if (boxed) items.push_back(tick_box(box_x, baseline, clock));
  items.push_back(text_ending_at(box_x - gap * 1.4, baseline, QString::number(step.order), number));
  return items;
}

void add_text(SlabBuilder& out, const SheetStep& step) {
  const Frame& frame = out.frame();
  const Type body = frame.type(kBody), clock = frame.type(kBody, true);
  const auto lines = break_lines(step.text, frame.text_width(), body);
  const std::vector<Item> head = head_items(frame, step, ascent_of(body));
  const auto* when = std::get_if<TextItem>(&head.front());
  const bool too_wide = when->width > frame.side;
  if (frame.stacked() || too_wide) {
    Slab slab;
    slab.height = leading_of(clock);
    slab.items = head;
    out.add(std::move(slab));
    out.paragraph(lines, body);
    return;
  }
  const size_t first = out.size();
  out.paragraph(lines, body);
  auto& items = out.at(first).items;
  items.insert(items.begin(), head.begin(), head.end());
}

void add_ticks(SlabBuilder& out, const std::vector<Tick>& ticks) {
  if (ticks.size() <= 1) return;
  const Frame& frame = out.frame();
  const Type type = frame.type(9.4, true);
  const double box = type.size * 0.82, gap = 4 * frame.scale;
  Slab slab;
  slab.height = leading_of(type);
  double x = frame.text_x();
  const auto flush = [&] {
    out.space(1.5);
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
    x += width + 14 * frame.scale;
  }
  flush();
}

// `label` stands before the first caution of a step.
void add_caution(SlabBuilder& out, const std::string& label, const std::string& caution) {
  const Frame& frame = out.frame();
  const Type type = frame.type(kCaution);
  const double indent = 8 * frame.scale, thickness = 1.6 * frame.scale;
  const double bar_x = frame.text_x() + thickness / 2;
  std::vector<std::variant<Run, Waterline>> pieces;
  if (!label.empty()) pieces.emplace_back(Run{label + " ", frame.type(kCaution, true)});
  pieces.emplace_back(Run{caution, type});
  out.space(2);
  for (const TextLine& line : break_lines(pieces, frame.text_width() - indent, type)) {
    Slab slab;
    slab.height = leading_of(type);
    slab.items.push_back(LineItem{bar_x, 0, bar_x, slab.height, thickness, Ink::black});
    add_moved(slab.items, line.items, frame.text_x() + indent, ascent_of(type));
    out.add(std::move(slab));
  }
}

void add_step(SlabBuilder& out, const SheetStep& step, const std::string& label, bool first) {
  const size_t start = out.size();
  if (!first) add_rule(out);
  if (!step.day.empty()) add_day(out, step.day);
  add_text(out, step);
  if (!step.amount.empty()) {
    const Type type = out.frame().type(kBody, true);
    out.space(1);
    out.paragraph(break_lines(step.amount, out.frame().text_width(), type), type);
  }
  add_ticks(out, step.ticks);
  for (const std::string& caution : step.cautions)
    add_caution(out, &caution == &step.cautions.front() ? label : "", caution);
  out.keep_from(start);
}

}  // namespace

void add_steps(SlabBuilder& out, const Sheet& sheet) {
  if (sheet.steps.empty()) return;
  out.space(10);
  out.rule(0.9);
  out.space(4);
  const Type type = out.frame().type(12.5, true);
  Slab heading;
  heading.height = leading_of(type);
  heading.with_next = true;
  const auto lines = break_lines(sheet.titles.steps, out.frame().width, type);
  add_moved(heading.items, lines.front().items, 0, ascent_of(type));
  out.add(std::move(heading));
  bool first = true;
  for (const SheetStep& step : sheet.steps) {
    add_step(out, step, sheet.titles.caution, first);
    first = false;
  }
}

}  // namespace brimline
