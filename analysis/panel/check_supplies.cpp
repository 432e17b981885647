// SPDX-License-Identifier: GPL-3.0-or-later
// Reagents and instruments behind the readings. Days and degrees are the shop's settings: common practice, no
// source.
#include <algorithm>
#include <map>

#include "analysis/panel/check_rules.h"

namespace brimline {

namespace {

std::optional<Instant> read_at(const Look& look) {
  if (look.bottle.tested_at) return look.bottle.tested_at;
  return look.bottle.taken_at ? look.bottle.taken_at : look.now;
}

// Analytes whose value rests on a reading of the lot.
std::map<const ReagentLot*, std::vector<AnalyteId>> lots_used(const Look& look) {
  std::map<const ReagentLot*, std::vector<AnalyteId>> out;
  for (const ReagentLot& lot : look.supplies.lots)
    for (const CheckedValue& value : look.panel.values)
      if (std::any_of(value.used.begin(), value.used.end(),
                      [&](size_t i) { return look.bottle.readings[i].lot == lot.lot; }))
        out[&lot].push_back(value.analyte);
  return out;
}

void reagent_expired(const Look& look, Remarks& remarks) {
  const auto now = read_at(look);
  for (const auto& [lot, analytes] : lots_used(look))
    if (now && lot->expires && hours_between(*lot->expires, *now) > 0)
      remarks.say(Verdict::repeat, analytes,
                  phrase("check", "Reagent lot %1 has expired: read %2 again with a fresh one."),
                  {lot->lot, names_of(analytes)});
}

void reagent_old_opened(const Look& look, Remarks& remarks) {
  const auto now = read_at(look);
  for (const auto& [lot, analytes] : lots_used(look)) {
    if (!now || !lot->opened) continue;
    const double days = hours_between(*lot->opened, *now) / 24;
    if (days > look.supplies.good_once_opened_days)
      remarks.say(
          Verdict::repeat, analytes,
          phrase("check",
                 "Reagent lot %1 was opened %2 days ago, last season: read %3 again with a fresh one."),
          {lot->lot, number(days, 0), names_of(analytes)});
  }
}

void reagent_kept_hot(const Look& look, Remarks& remarks) {
  for (const auto& [lot, analytes] : lots_used(look))
    if (lot->warmest_c && *lot->warmest_c > look.supplies.warm_c)
      remarks.say(
          Verdict::repeat, analytes,
          phrase("check",
                 "Reagent lot %1 was kept at %2 C and may be spoilt: read %3 again with one kept cool."),
          {lot->lot, number(*lot->warmest_c, 0), names_of(analytes)});
}

void reagent_beside_chlorine(const Look& look, Remarks& remarks) {
  for (const auto& [lot, analytes] : lots_used(look))
    if (lot->beside_chlorine)
      remarks.say(Verdict::repeat, analytes,
                  phrase("check",
                         "Reagent lot %1 stood beside chlorine, whose vapour spoils it: read %2 again with "
                         "one kept apart."),
                  {lot->lot, names_of(analytes)});
}

// The latest check of the instrument for the analyte: of its channel, or of the whole.
const InstrumentCheck* latest_check(const Look& look, const std::string& instrument, const AnalyteId& analyte,
                                    const Instant& now) {
  const InstrumentCheck* latest = nullptr;
  for (const InstrumentCheck& check : look.supplies.checks) {
    const bool covers = check.instrument == instrument && (!check.analyte || *check.analyte == analyte);
    if (covers && hours_between(check.at, now) >= 0 && (!latest || hours_between(latest->at, check.at) >= 0))
      latest = &check;
  }
  return latest;
}

bool has_records(const Look& look, const std::string& instrument) {
  return std::any_of(look.supplies.checks.begin(), look.supplies.checks.end(),
                     [&](const InstrumentCheck& check) { return check.instrument == instrument; });
}

// Calls `visit` for every instrument with records that a value rests on, and its latest check or null.
template <class Visit>
void each_instrument(const Look& look, Visit visit) {
  const auto now = read_at(look);
  if (!now) return;
  for (const CheckedValue& value : look.panel.values)
    for (const size_t i : value.used) {
      const auto& instrument = look.bottle.readings[i].instrument;
      if (!instrument || !has_records(look, *instrument)) continue;
      visit(value.analyte, *instrument, latest_check(look, *instrument, value.analyte, *now), *now);
      break;
    }
}

void instrument_check_failed(const Look& look, Remarks& remarks) {
  std::map<std::string, std::vector<AnalyteId>> failed;
  each_instrument(look, [&](const AnalyteId& analyte, const std::string& instrument,
                            const InstrumentCheck* latest, const Instant&) {
    if (latest && !latest->passed) failed[instrument].push_back(analyte);
  });
  for (const auto& [instrument, analytes] : failed)
    remarks.say(Verdict::reject, analytes,
                phrase("check",
                       "The last check of %1 failed: what it says of %2 does not count. Read them on another "
                       "instrument, or check this one again first."),
                {instrument, names_of(analytes)});
}

void instrument_check_overdue(const Look& look, Remarks& remarks) {
  std::map<std::string, std::vector<AnalyteId>> overdue;
  each_instrument(look, [&](const AnalyteId& analyte, const std::string& instrument,
                            const InstrumentCheck* latest, const Instant& now) {
    if (!latest || hours_between(latest->at, now) > 24 * look.supplies.check_every_days)
      overdue[instrument].push_back(analyte);
  });
  for (const auto& [instrument, analytes] : overdue)
    remarks.say(Verdict::note, analytes,
                phrase("check",
                       "%1 has not been checked against its standards for over %2 days. Check it before the "
                       "next bottle; until then %3 may be off."),
                {instrument, number(look.supplies.check_every_days, 0), names_of(analytes)});
}

}  // namespace

std::vector<const InstrumentCheck*> last_checks(const Supplies& supplies) {
  std::map<std::pair<std::string, std::string>, const InstrumentCheck*> last;
  for (const InstrumentCheck& check : supplies.checks) {
    const InstrumentCheck*& known = last[{check.instrument, check.analyte.value_or("")}];
    if (!known || hours_between(known->at, check.at) >= 0) known = &check;
  }
  std::vector<const InstrumentCheck*> out;
  out.reserve(last.size());
  for (const auto& [of, check] : last) out.push_back(check);
  return out;
}

const ReagentLot* lot_in_use(const Supplies& supplies, const AnalyteId& analyte) {
  const ReagentLot* found = nullptr;
  for (const ReagentLot& lot : supplies.lots) {
    if (lot.gone || !lot.opened || lot.analyte != analyte) continue;
    if (!found || hours_between(*found->opened, *lot.opened) > 0) found = &lot;
  }
  return found;
}

std::span<const CheckRow> supply_checks() {
  static constexpr CheckRow rows[] = {{"reagent_expired", reagent_expired},
                                      {"reagent_old_opened", reagent_old_opened},
                                      {"reagent_kept_hot", reagent_kept_hot},
                                      {"reagent_beside_chlorine", reagent_beside_chlorine},
                                      {"instrument_check_failed", instrument_check_failed},
                                      {"instrument_check_overdue", instrument_check_overdue}};
  return rows;
}

}  // namespace brimline
