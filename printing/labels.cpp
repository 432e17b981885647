// SPDX-License-Identifier: GPL-3.0-or-later
#include "printing/labels.h"

#include <algorithm>

#include "printing/paragraph.h"
#include "station/wording/clock_words.h"

namespace brimline {
namespace {

constexpr const char* kContext = "label";
constexpr double kPointsPerMm = 72 / 25.4;
constexpr double kPad = 10, kQr = 50;  // points; a QR wants four modules of blank (ISO/IEC 18004)
constexpr double kHeight = 132;        // of one label, points: about 46 mm
constexpr double kPageMargin = 42, kRollMargin = 8;  // points
constexpr Type kCode{16, true, Ink::black}, kDose{21, true, Ink::black}, kStock{11.5, true, Ink::black},
    kText{8.8, false, Ink::black};

std::string number_of(const Words& words, double value) {
  std::string out = words.number(value, value < 1 && value > 0 ? 2 : 1);
  if (out.size() > 2 && out.ends_with("0") && !std::isdigit(static_cast<unsigned char>(out[out.size() - 2])))
    out.resize(out.size() - 2);
  return out;
}

std::string day_and_time(const Words& words, const Instant& when) {
  return date_words(words, when) + " " + time_words(words, when);
}

std::vector<std::string> lines_of(const OvernightTest& test, const Instant& now, const Words& words) {
  const Instant start = test.started_at.value_or(now);
  const char* hour = test.started_at ? phrase("label", "1 h: %1") : phrase("label", "1 h: about %1");
  const char* day = test.started_at ? phrase("label", "24 h: %1") : phrase("label", "24 h: about %1");
  return {words.say(kContext, hour, {day_and_time(words, due_at(start, OvernightDue::hour))}),
          words.say(kContext, day, {day_and_time(words, due_at(start, OvernightDue::day))}),
          words.say(kContext, phrase("label", "Overnight test, chlorine. Keep dark. Do not drink."))};
}

Label stock_label(const OvernightTest& test, const Instant& now, const Words& words) {
  Label out;
  out.dose = words.say(kContext, phrase("label", "STOCK"));
  out.stock =
      words.say(kContext, phrase("label", "chlorine %1 mg/L"), {words.number(stock_strength(test), 0)});
  out.lines = {
      words.say(kContext, phrase("label", "Made %1; good for today only."), {date_words(words, now)}),
      words.say(kContext,
                phrase("label", "Gloves, goggles. Never with acid or another chlorine. Do not drink."))};
  return out;
}

// One label, its left top corner at 0, 0.
std::vector<Item> items_of(const Label& label, double width) {
  std::vector<Item> out;
  out.push_back(BoxItem{{0, 0, width, kHeight}, 0.5, false});
  double y = kPad;
  const double text_width = width - 2 * kPad - (label.code.empty() ? 0 : kQr + kPad);
  const auto add = [&](const std::string& text, const Type& type, double room) {
    if (text.empty()) return;
    for (const TextLine& line : break_lines(text, room, type)) {
      add_moved(out, line.items, kPad, y + ascent_of(type));
      y += leading_of(type);
    }
  };
  add(label.code, kCode, text_width);
  add(label.dose, kDose, text_width);
  add(label.stock, kStock, text_width);
  if (!label.code.empty()) {
    add_moved(out, {qr_cells(QString::fromStdString(label.code), kQr)}, width - kPad - kQr, kPad);
    y = std::max(y, kPad + kQr + 2);
  }
  for (const std::string& line : label.lines) add(line, kText, width - 2 * kPad);
  return out;
}

}  // namespace

std::string overnight_code(const std::string& bottle_code, int bottle) {
  return bottle_code + "/" + std::to_string(bottle + 1);
}

std::vector<Label> overnight_labels(const OvernightTest& test, const Visit& visit, const Instant& now,
                                    const Words& words) {
  std::vector<Label> out;
  const std::vector<OvernightBottle> bottles = bottles_to_pour(test);
  for (size_t i = 0; i < bottles.size(); ++i) {
    Label label;
    label.code = overnight_code(visit.bottle.code, static_cast<int>(i));
    label.dose = number_of(words, bottles[i].aimed_mg_l) + " mg/L";
    label.stock = bottles[i].stock_ml > 0 ? words.say(kContext, phrase("label", "%1 mL of stock"),
                                                      {number_of(words, bottles[i].stock_ml)})
                                          : words.say(kContext, phrase("label", "no stock"));
    label.lines = lines_of(test, now, words);
    out.push_back(std::move(label));
  }
  out.push_back(stock_label(test, now, words));
  return out;
}

Pages lay_out_labels(const std::vector<Label>& labels, Paper paper) {
  const PaperSize size = size_of(paper);
  const bool roll = size.height_mm <= 0;
  const double margin = roll ? kRollMargin : kPageMargin;
  Pages out;
  out.width = size.width_mm * kPointsPerMm;
  out.height =
      roll ? 2 * margin + kHeight * static_cast<double>(labels.size()) : size.height_mm * kPointsPerMm;
  const int columns = roll ? 1 : 2;
  const double width = (out.width - 2 * margin) / columns;
  const int rows = std::max(1, static_cast<int>((out.height - 2 * margin) / kHeight));
  for (size_t i = 0; i < labels.size(); ++i) {
    const auto place = static_cast<int>(i) % (rows * columns);
    const int row = place / columns;
    if (place == 0) out.pages.emplace_back();
    add_moved(out.pages.back().items, items_of(labels[i], width), margin + width * (place % columns),
              margin + kHeight * static_cast<double>(row));
  }
  return out;
}

}  // namespace brimline
