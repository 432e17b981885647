// SPDX-License-Identifier: GPL-3.0-or-later
#include "station/week/week.h"

#include <algorithm>

namespace brimline {
namespace {

constexpr std::chrono::hours kWeek{7 * 24};
constexpr double kSoonDays = 30;
constexpr std::int64_t kWeeksAhead = 2;

double days_between(const Instant& from, const Instant& to) {
  return hours_between(from, to) / 24;
}

// A closed pack of the same reagent that is still good.
bool stands_by(const ReagentLot& other, const ReagentLot& lot, const Instant& now) {
  return other.lot != lot.lot && !other.gone && !other.opened && other.analyte == lot.analyte &&
         (!other.expires || days_between(now, *other.expires) > kSoonDays);
}

void count_visit(OwnersWeek& week, const Visit& visit) {
  ++week.bottles;
  for (const Reading& reading : visit.bottle.readings) ++week.readings[reading.analyte];
  if (!visit.plan_as_told) return;
  ++week.plans;
  if (!visit.plan_as_told->home_plan) ++week.not_at_home;
  for (const Finding& finding : visit.plan_as_told->findings) {
    const auto known = std::find_if(week.findings.begin(), week.findings.end(),
                                    [&](const FindingCount& count) { return count.id == finding.id; });
    if (known == week.findings.end())
      week.findings.push_back({finding.id, finding.analyte, 1});
    else
      ++known->visits;
  }
}

void count_lots(OwnersWeek& week, const Supplies& supplies, const std::map<std::string, std::int64_t>& used,
                const std::map<std::string, std::int64_t>& ever) {
  const auto of = [](const std::map<std::string, std::int64_t>& counts, const std::string& lot) {
    const auto found = counts.find(lot);
    return found == counts.end() ? std::int64_t{0} : found->second;
  };
  for (const ReagentLot& lot : supplies.lots) {
    if (lot.gone) continue;
    LotUse use{lot, of(used, lot.lot), std::nullopt, Reorder::no};
    if (lot.tests) use.left = std::max<std::int64_t>(0, *lot.tests - of(ever, lot.lot));
    use.reorder = reorder_of(use, supplies, week.until);
    week.lots.push_back(std::move(use));
  }
}

}  // namespace

Instant week_begin(const Instant& now, int weeks_ago) {
  const auto local = std::chrono::floor<std::chrono::days>(now.utc + now.offset);
  const auto back = std::chrono::weekday(local) - std::chrono::Monday;
  const auto monday = local - back - std::chrono::days(7 * weeks_ago);
  return {std::chrono::sys_seconds(monday) - now.offset, now.offset};
}

std::optional<Worked> verdict_of(const std::vector<PlanAnswer>& answers) {
  std::optional<Worked> out;
  for (const Worked worst : {Worked::cannot_tell, Worked::worked, Worked::partly, Worked::not_at_all})
    if (std::any_of(answers.begin(), answers.end(),
                    [&](const PlanAnswer& answer) { return answer.verdict == worst; }))
      out = worst;
  return out;
}

Reorder reorder_of(const LotUse& use, const Supplies& supplies, const Instant& now) {
  const ReagentLot& lot = use.lot;
  if (std::any_of(supplies.lots.begin(), supplies.lots.end(),
                  [&](const ReagentLot& other) { return stands_by(other, lot, now); }))
    return Reorder::no;
  if (lot.expires && days_between(now, *lot.expires) < 0) return Reorder::expired;
  if (use.left && *use.left < std::max<std::int64_t>(1, kWeeksAhead * use.used)) return Reorder::runs_out;
  if (lot.expires && days_between(now, *lot.expires) < kSoonDays) return Reorder::expires;
  return Reorder::no;
}

std::vector<InstrumentCheck> overdue_checks(const Supplies& supplies, const Instant& now) {
  Supplies until = supplies;
  std::erase_if(until.checks, [&](const InstrumentCheck& check) { return hours_between(check.at, now) < 0; });
  std::vector<InstrumentCheck> out;
  for (const InstrumentCheck* check : last_checks(until))
    if (!check->passed || days_between(check->at, now) > supplies.check_every_days) out.push_back(*check);
  return out;
}

Stored<OwnersWeek> week_of(Store& store, const Instant& from, const Supplies& supplies,
                           const Progress& progress) {
  OwnersWeek week;
  week.from = from;
  week.until = {from.utc + kWeek, from.offset};
  const auto ids = store.visit_ids_between(week.from, week.until);
  if (!ids) return tl::unexpected(ids.error());
  const Words words("en");  // verdicts alone are wanted
  std::map<std::string, std::int64_t> used;
  for (size_t i = 0; i < ids->size(); ++i) {
    if (!goes_on(progress, static_cast<double>(i) / static_cast<double>(ids->size())))
      return tl::unexpected(StoreError{StoreTrouble::refused, "stopped"});
    const auto found = store.visit((*ids)[i]);
    if (!found) return tl::unexpected(found.error());
    if (!*found) continue;  // forgotten meanwhile
    const Visit& visit = **found;
    count_visit(week, visit);
    for (const Reading& reading : visit.bottle.readings)
      if (reading.lot) ++used[*reading.lot];
    const auto before = store.visit_before(visit);
    if (!before) return tl::unexpected(before.error());
    ++(*before ? week.returns : week.first_visits);
    if (!*before) continue;
    if (const auto verdict = verdict_of(answers_of(**before, visit, words))) ++week.worked[*verdict];
  }
  std::stable_sort(week.findings.begin(), week.findings.end(),
                   [](const FindingCount& a, const FindingCount& b) { return a.visits > b.visits; });
  const auto ever = store.readings_by_lot(week.until);
  if (!ever) return tl::unexpected(ever.error());
  count_lots(week, supplies, used, *ever);
  week.overdue = overdue_checks(supplies, week.until);
  return week;
}

}  // namespace brimline
