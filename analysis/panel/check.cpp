// SPDX-License-Identifier: GPL-3.0-or-later
#include "analysis/panel/check.h"

#include <algorithm>
#include <array>

#include "analysis/panel/check_rules.h"

namespace brimline {

namespace {

constexpr std::array kTables = {range_checks,     repeat_checks,  sample_checks,     chlorine_checks,
                                sanitizer_checks, balance_checks, stabilizer_checks, mineral_checks,
                                history_checks,   vessel_checks,  supply_checks};

}  // namespace

template <>
std::span<const Named<Verdict>> names() {
  static constexpr Named<Verdict> rows[] = {{Verdict::note, "note"},
                                            {Verdict::repeat, "repeat"},
                                            {Verdict::dilute, "dilute"},
                                            {Verdict::reject, "reject"},
                                            {Verdict::fresh_sample, "fresh_sample"}};
  return rows;
}

std::vector<Check> check_bottle(const Bottle& bottle, const Vessel& vessel, std::span<const Bottle> earlier,
                                std::optional<Instant> now, const Supplies& supplies) {
  const Look look{bottle, vessel, earlier, now, supplies, unchecked_panel(bottle.readings, Vessel{})};
  std::vector<Check> out;
  for (const auto table : kTables)
    for (const CheckRow& row : table()) {
      Remarks remarks(row.id, out);
      row.run(look, remarks);
    }
  return out;
}

std::vector<std::string_view> check_ids() {
  std::vector<std::string_view> out;
  for (const auto table : kTables)
    for (const CheckRow& row : table()) out.push_back(row.id);
  return out;
}

std::optional<Measured> Look::inside(std::string_view analyte) const {
  const CheckedValue* found = value(analyte);
  return found && !found->clipped ? std::optional(found->measured()) : std::nullopt;
}

bool Look::shows(Sign sign) const {
  return std::find(bottle.signs.begin(), bottle.signs.end(), sign) != bottle.signs.end();
}

bool Look::added(std::string_view chemical, double days) const {
  return std::any_of(bottle.additions_since.begin(), bottle.additions_since.end(), [&](const Addition& a) {
    return a.chemical == chemical && a.days_before.value_or(0) <= days;
  });
}

std::optional<double> Look::age_h() const {
  if (!bottle.taken_at || !bottle.tested_at) return std::nullopt;
  const double age = hours_between(*bottle.taken_at, *bottle.tested_at);
  return age >= 0 ? std::optional(age) : std::nullopt;
}

}  // namespace brimline
