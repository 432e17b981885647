// SPDX-License-Identifier: GPL-3.0-or-later
#include "printing/reminder.h"

#include "printing/slab_builder.h"
#include "station/wording/clock_words.h"
#include "station/wording/sheet_words.h"
#include "station/wording/visit_code.h"

namespace brimline {
namespace {

constexpr const char* kContext = "reminder";
constexpr double kNarrow = 300;  // a roll

std::vector<std::string> lines_of(const DueVisit& due, const Words& words, const Instant& now) {
  const Visit& visit = due.visit;
  std::optional<Units> units;
  if (visit.customer) units = visit.customer->units;
  const std::string day = date_words(words, due.due);
  std::vector<std::string> out;
  out.push_back(words.say(kContext,
                          hours_between(now, due.due) < 0
                              ? phrase("reminder", "The next bottle of your water was due on %1: %2.")
                              : phrase("reminder", "The next bottle of your water is due on %1: %2."),
                          {day, vessel_words(words, visit.vessel, units)}));
  out.push_back(words.say(kContext, phrase("reminder", "We will read: %1."),
                          {analyte_list(words, due_analytes(visit))}));
  out.push_back(words.say(kContext, phrase("reminder",
                                           "Fill the bottle an elbow deep, away from the returns, cap it "
                                           "under water and bring it the same day, "
                                           "out of the sun.")));
  out.push_back(words.say(
      kContext, phrase("reminder",
                       "Water can look fine and be unsafe: until then test sanitizer, pH and alkalinity "
                       "at home every week.")));
  return out;
}

}  // namespace

Reminder make_reminder(const DueVisit& due, const ShopDetails& shop, const Words& words, const Instant& now) {
  Reminder out;
  out.title = words.say(kContext, phrase("reminder", "Your water is due for a test"));
  out.shop = shop.name;
  for (const auto* more : {&shop.street, &shop.phone})
    if (*more) out.shop.append(" · ").append(**more);
  if (const auto& customer = due.visit.customer)
    for (const auto* line : {&customer->name, &customer->street})
      if (*line) out.to.push_back(**line);
  out.lines = lines_of(due, words, now);
  out.code = visit_code(due.visit.id);
  out.scan = words.say("sheet", phrase("sheet", "for our counter"));
  out.page = "%1 / %2";
  out.footer = shop.name + " · " + out.code;
  return out;
}

Pages lay_out(const Reminder& reminder, Paper paper) {
  const auto slabs = [&](Frame frame) {
    frame.side = frame.gutter = 0;
    SlabBuilder out(frame);
    const bool narrow = frame.width < kNarrow;
    const double room = narrow ? frame.width : frame.width * 0.7;
    const auto write = [&](const std::string& text, const Type& type) {
      out.paragraph(break_lines(text, room, type), type, 0, true);
    };
    write(reminder.shop, frame.type(11));
    out.space(4);
    out.rule(1.4, Ink::accent);
    out.space(18);
    for (const std::string& line : reminder.to) write(line, frame.type(12));
    out.space(22);
    write(reminder.title, frame.type(19, true));
    for (const std::string& line : reminder.lines) {
      out.space(9);
      write(line, frame.type(12));
    }
    Slab code;
    const double size = 62;
    const Type caption = frame.type(7.6, false, Ink::quiet);
    add_moved(code.items, {qr_cells(QString::fromStdString(reminder.code), size)}, 8, 0);
    code.items.push_back(
        text_at(8, size + 4 + ascent_of(caption), QString::fromStdString(reminder.scan), caption));
    code.height = size + 4 + leading_of(caption);
    out.space(20);
    out.add(std::move(code));
    return out.take();
  };
  return lay_out(Body{slabs, reminder.footer, reminder.code, reminder.page}, Edition{paper});
}

}  // namespace brimline
