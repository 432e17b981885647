// SPDX-License-Identifier: GPL-3.0-or-later
// Against the bottles before: numbers copied from last month, and moves no water makes.
#include <algorithm>
#include <cmath>

#include "analysis/panel/check_rules.h"
#include "analysis/panel/told.h"

namespace brimline {

namespace {

// The latest earlier bottle that holds the analyte.
const Bottle* last_with(const Look& look, std::string_view analyte) {
  for (auto bottle = look.earlier.rbegin(); bottle != look.earlier.rend(); ++bottle)
    for (const Reading& reading : bottle->readings)
      if (reading.analyte == analyte) return &*bottle;
  return nullptr;
}

std::optional<Measured> value_in(const Bottle& bottle, std::string_view analyte) {
  const CheckedPanel panel = unchecked_panel(bottle.readings, Vessel{});
  const CheckedValue* value = panel.find(analyte);
  return value && !value->clipped ? std::optional(value->measured()) : std::nullopt;
}

std::optional<double> days_between(const Bottle& earlier, const Bottle& later) {
  const auto& from = earlier.taken_at ? earlier.taken_at : earlier.tested_at;
  const auto& to = later.taken_at ? later.taken_at : later.tested_at;
  if (!from || !to) return std::nullopt;
  return std::max(0.0, hours_between(*from, *to) / 24);
}

constexpr size_t kManySame = 3;
constexpr double kCopied = 1e-4;          // chance below which several equal values were copied
constexpr double kHardlyByChance = 0.05;  // of any question about single ones

// Chance that an unchanged water gives the same digits twice: the width of a digit over the spread of a
// difference, whose density is highest at nought, 1/(sd sqrt(4 pi)).
double chance_of_same(const Look& look, const CheckedValue& value) {
  const AnalyteKind* kind = find_analyte(value.analyte);
  const MethodKind* method = value.method ? kind->method(*value.method) : &kind->methods.front();
  const double step = std::max(method ? method->step : 0, std::pow(10, -kind->decimals));
  const double sd =
      value.used.empty() ? value.sd : reading_sd(look.bottle.readings[value.used.front()], *kind);
  return sd > 0 ? std::min(1.0, step / (sd * std::sqrt(4 * 3.14159265358979))) : 1;
}

struct Same {
  std::vector<AnalyteId> analytes;  // equal to the last bottle's, nought left out
  std::vector<AnalyteId> unlikely;  // those hardly so by chance
  double chance = 1;                // of all of them together
  size_t common = 0;                // analytes both bottles hold
  bool copied() const {
    return analytes.size() >= kManySame && 4 * analytes.size() >= 3 * common && chance <= kCopied;
  }
};

// The largest chance that is worth a question, so that all questions together come by chance in at most one
// pair of bottles of twenty.
double worth_a_question(std::vector<double> chances) {
  std::sort(chances.begin(), chances.end());
  double sum = 0, most = 0;
  for (const double chance : chances) {
    sum += chance;
    if (sum > kHardlyByChance) break;
    most = chance;
  }
  return most;
}

Same same_values(const Look& look) {
  Same same;
  if (look.earlier.empty()) return same;
  std::vector<double> all, equal;
  for (const CheckedValue& value : look.panel.values) {
    const auto before = value_in(look.earlier.back(), value.analyte);
    if (!before || value.value == 0 || !find_analyte(value.analyte)) continue;
    const double chance = chance_of_same(look, value);
    all.push_back(chance);
    if (before->value != value.value) continue;
    equal.push_back(chance);
    same.analytes.push_back(value.analyte);
    same.chance *= chance;
  }
  same.common = all.size();
  const double worth = worth_a_question(std::move(all));
  for (size_t i = 0; i < equal.size(); ++i)
    if (equal[i] <= worth) same.unlikely.push_back(same.analytes[i]);
  return same;
}

void same_as_last_time(const Look& look, Remarks& remarks) {
  const Same same = same_values(look);
  if (!same.copied()) return;
  remarks.say(Verdict::repeat, same.analytes,
              phrase("check",
                     "%1 readings (%2) equal last time's to the digit. Two waters hardly ever do: were last "
                     "visit's numbers shown or copied? Read them again from this bottle."),
              {number(static_cast<double>(same.analytes.size()), 0), names_of(same.analytes)});
}

void value_as_last_time(const Look& look, Remarks& remarks) {
  const Same same = same_values(look);
  if (same.copied() || same.unlikely.empty()) return;
  remarks.say(
      Verdict::note, same.unlikely,
      phrase("check",
             "Equal to last time's to the digit: %1. It may be chance; was it read from this bottle?"),
      {names_of(same.unlikely)});
}

// How far a reading may move without anybody telling why: `at_once` and so much a day, at most `most`; in its
// unit. Our own allowances, made wide: two months of tablets bring about 70 mg/L of stabilizer at 2 mg/L a
// day.
struct AllowanceRow {
  std::string_view analyte;
  double at_once, a_day, most;  // upwards
  double fall;                  // downwards, at once; 0: any share of the water may have been changed
};
constexpr AllowanceRow kAllowances[] = {{"ph", 1.5, 0, 1.5, 1.5},
                                        {"total_alkalinity", 60, 2, 120, 150},
                                        {"calcium_hardness", 60, 3, 200, 0},
                                        {"magnesium_hardness", 60, 3, 200, 0},
                                        {"total_hardness", 80, 4, 300, 0},
                                        {"cyanuric_acid", 25, 1.5, 80, 0},
                                        {"borate", 15, 0.2, 20, 0},
                                        {"salt", 500, 30, 1500, 0},
                                        {"tds", 800, 40, 3000, 0},
                                        {"iron", 1, 0.05, 2, 0},
                                        {"copper", 0.8, 0.05, 1.5, 0},
                                        {"sulfate", 100, 5, 300, 0}};

// Change the told doses make; nothing where one that moves the reading has no amount or the volume is not
// known.
std::optional<double> told_sum(const Look& look, std::string_view analyte) {
  double sum = 0;
  for (const Addition& addition : look.bottle.additions_since) {
    if (analyte == "ph" || analyte == "tds" || !is_total(analyte)) {
      if (analyte != "iron") return std::nullopt;
      continue;
    }
    if (told_direction(addition.chemical, analyte) == 0) continue;
    const auto change =
        look.vessel.volume ? told_change(addition, analyte, *look.vessel.volume) : std::nullopt;
    if (!change) return std::nullopt;
    sum += *change;
  }
  return sum;
}

bool water_is_new(const Look& look) {
  return look.bottle.occasion == Occasion::new_fill || look.bottle.occasion == Occasion::opening;
}

void say_moved(const AllowanceRow& row, double before, double now, Remarks& remarks) {
  remarks.say(
      Verdict::repeat, {AnalyteId(row.analyte)},
      phrase("check",
             "%1 went from %2 to %3 since the last reading, further than water moves by itself and than the "
             "doses told explain. Read it again; if it stands, ask what was added or changed."),
      {name_at_beginning(row.analyte), amount(row.analyte, before), amount(row.analyte, now)});
}

void moved_too_far(const Look& look, Remarks& remarks) {
  if (water_is_new(look)) return;
  for (const AllowanceRow& row : kAllowances) {
    const auto now = look.inside(row.analyte);
    const Bottle* last = last_with(look, row.analyte);
    const auto before = last ? value_in(*last, row.analyte) : std::nullopt;
    const auto told = told_sum(look, row.analyte);
    if (!now || !before || !told) continue;
    const double days = days_between(*last, look.bottle).value_or(60);
    const Measured move = difference(*now, *before);
    const double rise = std::min(row.most, row.at_once + row.a_day * days);
    const bool up = move.value - std::max(0.0, *told) > rise + 3 * move.sd;
    const bool down = row.fall > 0 && -(move.value - std::min(0.0, *told)) > row.fall + 3 * move.sd;
    if (up || down) say_moved(row, before->value, now->value, remarks);
  }
}

// Share of a conservative reading that is gone, with its sd.
std::optional<Measured> share_gone(const Look& look, std::string_view analyte) {
  const auto now = look.inside(analyte);
  const auto before = look.earlier.empty() ? std::nullopt : value_in(look.earlier.back(), analyte);
  if (!now || !before || before->value <= 5 * before->sd || now->value < 0) return std::nullopt;
  const double left = now->value / before->value;
  return Measured{1 - left, std::hypot(now->sd, left * before->sd) / before->value};
}

// Changing water takes salt, calcium and stabilizer in the same proportion, less what the fill brings.
void fell_alone(const Look& look, Remarks& remarks) {
  if (water_is_new(look)) return;
  constexpr std::string_view conservative[] = {"cyanuric_acid", "calcium_hardness", "salt"};
  for (const std::string_view analyte : conservative) {
    const auto gone = share_gone(look, analyte);
    if (!gone || gone->value - 3 * gone->sd <= 0.4) continue;
    bool others_stayed = false;
    for (const std::string_view other : conservative)
      if (const auto stayed = share_gone(look, other); other != analyte && stayed)
        others_stayed = others_stayed || stayed->value + 2 * stayed->sd < 0.15;
    if (!others_stayed) continue;
    remarks.say(Verdict::repeat, {AnalyteId(analyte)},
                phrase("check",
                       "%1 fell by %2 % while the rest of the salts stayed, so the water was not changed. "
                       "Read it again. Stabilizer alone can be turned to ammonia by bacteria: then expect a "
                       "large chlorine demand."),
                {name_at_beginning(analyte), number(100 * gone->value, 0)});
  }
}

void earlier_out_of_order(const Look& look, Remarks& remarks) {
  if (look.earlier.empty()) return;
  const auto& before = look.earlier.back().taken_at;
  if (!before || !look.bottle.taken_at || hours_between(*before, *look.bottle.taken_at) >= 0) return;
  remarks.say(
      Verdict::note, {},
      phrase("check",
             "By the times noted this bottle was filled before the visit called earlier. Check both dates."));
}

}  // namespace

std::span<const CheckRow> history_checks() {
  static constexpr CheckRow rows[] = {{"same_as_last_time", same_as_last_time},
                                      {"value_as_last_time", value_as_last_time},
                                      {"moved_too_far", moved_too_far},
                                      {"fell_alone", fell_alone},
                                      {"earlier_out_of_order", earlier_out_of_order}};
  return rows;
}

}  // namespace brimline
