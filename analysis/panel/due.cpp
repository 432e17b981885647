// SPDX-License-Identifier: GPL-3.0-or-later
#include "analysis/panel/due.h"

#include <algorithm>

namespace brimline {

namespace {

constexpr double kMonthDays = 28;  // four weeks: who comes every fourth Saturday is due every time

enum class Pace { each_bottle, month };

struct DueRow {
  std::string_view analyte;
  Pace pace;
  bool (*applies)(std::optional<Sanitizer>);
};

bool always(std::optional<Sanitizer>) {
  return true;
}
// A vessel whose sanitizer nobody knows is tested for chlorine.
bool chlorine(std::optional<Sanitizer> s) {
  return !s || is_chlorine(*s);
}
bool salt_cell(std::optional<Sanitizer> s) {
  return s == Sanitizer::salt_chlorine;
}
bool bromine(std::optional<Sanitizer> s) {
  return s == Sanitizer::bromine;
}
bool biguanide(std::optional<Sanitizer> s) {
  return s == Sanitizer::biguanide;
}

constexpr DueRow kRows[] = {{"free_chlorine", Pace::each_bottle, chlorine},
                            {"total_chlorine", Pace::each_bottle, chlorine},
                            {"total_bromine", Pace::each_bottle, bromine},
                            {"biguanide", Pace::each_bottle, biguanide},
                            {"peroxide", Pace::each_bottle, biguanide},
                            {"ph", Pace::each_bottle, always},
                            {"total_alkalinity", Pace::each_bottle, always},
                            {"calcium_hardness", Pace::month, always},
                            {"cyanuric_acid", Pace::month, chlorine},
                            {"iron", Pace::month, always},
                            {"copper", Pace::month, always},
                            {"salt", Pace::month, salt_cell}};

struct SignRow {
  Sign sign;
  std::string_view analyte;
};
constexpr SignRow kSigns[] = {{Sign::green_water, "phosphate"},
                              {Sign::green_water, "nitrate"},
                              {Sign::slimy_walls, "phosphate"},
                              {Sign::slimy_walls, "nitrate"},
                              {Sign::stains, "iron"},
                              {Sign::stains, "copper"},
                              {Sign::stains, "manganese"},
                              {Sign::green_hair, "copper"},
                              {Sign::scale, "calcium_hardness"},
                              {Sign::foam, "tds"}};

bool shows(const Bottle& bottle, Sign sign) {
  return std::find(bottle.signs.begin(), bottle.signs.end(), sign) != bottle.signs.end();
}

bool added_borate(const Bottle& bottle) {
  return std::any_of(bottle.additions_since.begin(), bottle.additions_since.end(),
                     [](const Addition& a) { return a.chemical == "borax" || a.chemical == "boric_acid"; });
}

// In the order of the bench, each once.
void add_by_sign(const Bottle& bottle, std::vector<AnalyteId>& due) {
  const auto add = [&](std::string_view analyte) {
    if (std::find(due.begin(), due.end(), analyte) == due.end()) due.emplace_back(analyte);
  };
  for (const SignRow& row : kSigns)
    if (shows(bottle, row.sign)) add(row.analyte);
  if (added_borate(bottle)) add("borate");
}

bool asks_for_all(std::optional<Occasion> occasion) {
  return occasion == Occasion::opening || occasion == Occasion::new_fill ||
         occasion == Occasion::after_storm || occasion == Occasion::trouble;
}

std::optional<Instant> time_of(const Bottle& bottle) {
  return bottle.taken_at ? bottle.taken_at : bottle.tested_at;
}

bool reads(const Bottle& bottle, std::string_view analyte) {
  return std::any_of(bottle.readings.begin(), bottle.readings.end(),
                     [&](const Reading& reading) { return reading.analyte == analyte; });
}

// Read within the month before this bottle; a time not known does not count.
bool read_lately(const Bottle& bottle, std::span<const Bottle> earlier, std::string_view analyte) {
  const auto now = time_of(bottle);
  return std::any_of(earlier.begin(), earlier.end(), [&](const Bottle& past) {
    const auto then = time_of(past);
    return now && then && reads(past, analyte) && hours_between(*then, *now) < kMonthDays * 24;
  });
}

}  // namespace

std::vector<AnalyteId> panel_due(const Bottle& bottle, const Vessel& vessel,
                                 std::span<const Bottle> earlier) {
  const bool all = earlier.empty() || asks_for_all(bottle.occasion);
  std::vector<AnalyteId> due;
  for (const DueRow& row : kRows)
    if (row.applies(vessel.sanitizer) &&
        (all || row.pace == Pace::each_bottle || !read_lately(bottle, earlier, row.analyte)))
      due.emplace_back(row.analyte);
  add_by_sign(bottle, due);
  return due;
}

bool fill_water_due(const Bottle& bottle, std::span<const Bottle> earlier) {
  if (bottle.fill_water && !bottle.fill_water->empty()) return false;
  return earlier.empty() || bottle.occasion == Occasion::opening || bottle.occasion == Occasion::new_fill;
}

}  // namespace brimline
