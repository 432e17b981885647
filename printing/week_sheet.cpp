// SPDX-License-Identifier: GPL-3.0-or-later
#include "printing/week_sheet.h"

#include "printing/slab_builder.h"

namespace brimline {
namespace {

constexpr double kNarrow = 300;      // a roll
constexpr double kNameShare = 0.66;  // of a line; the rest is the number's, flush right

// A line of the list: its name and what more there is to say, the number at the right end.
Slab line_slab(const WeekLine& line, double width, const Frame& frame) {
  const Type type = frame.type(11), quiet = frame.type(9, false, Ink::quiet);
  Slab slab;
  double y = 0;
  const auto write = [&](const std::string& text, const Type& in) {
    for (const TextLine& piece : break_lines(text, width * kNameShare, in)) {
      add_moved(slab.items, piece.items, 0, y + ascent_of(in));
      y += leading_of(in);
    }
  };
  write(line.name, type);
  if (!line.detail.empty()) write(line.detail, quiet);
  const QString number = QString::fromStdString(line.number);
  slab.items.push_back(text_at(width - width_of(number, type), ascent_of(type), number, type));
  slab.height = y;
  return slab;
}

}  // namespace

WeekSheet make_week_sheet(const OwnersWeek& week, const ShopDetails& shop, const Words& words) {
  WeekSheet out;
  out.title = words.say("week", phrase("week", "The week at the counter"));
  out.span = week_title(week, words);
  out.shop = shop.name;
  out.parts = week_parts(week, words);
  out.footer = shop.name + " · " + out.span;
  out.page = "%1 / %2";
  return out;
}

Pages lay_out(const WeekSheet& sheet, Paper paper) {
  const auto slabs = [&](Frame frame) {
    frame.side = frame.gutter = 0;
    SlabBuilder out(frame);
    const double room = frame.width < kNarrow ? frame.width : frame.width * 0.8;
    const auto write = [&](const std::string& text, const Type& type) {
      out.paragraph(break_lines(text, room, type), type, 0, true);
    };
    write(sheet.shop, frame.type(11));
    out.space(4);
    out.rule(1.4, Ink::accent);
    out.space(16);
    write(sheet.title, frame.type(19, true));
    out.space(3);
    write(sheet.span, frame.type(12));
    for (const WeekPart& part : sheet.parts) {
      out.space(14);
      write(part.title, frame.type(12, true));
      for (const WeekLine& line : part.lines) {
        out.space(3);
        out.add(line_slab(line, room, frame));
      }
    }
    return out.take();
  };
  return lay_out(Body{slabs, sheet.footer, "", sheet.page}, Edition{paper});
}

}  // namespace brimline
