// SPDX-License-Identifier: GPL-3.0-or-later
#include "station/week/week_words.h"

#include <cmath>

#include "station/records/csv.h"
#include "station/reminder/due.h"
#include "station/wording/clock_words.h"
#include "station/wording/plan_words.h"

namespace brimline {
namespace {

constexpr const char* kContext = "week";

struct Kind {
  const char* id;
  const char* word;
};

// Findings whose sentence holds a reading, and whose id does not end in _low or _high.
constexpr Kind kKinds[] = {
    {"stabilizer_ratio", phrase("week", "Too little chlorine for its stabilizer")},
    {"too_hot", phrase("week", "Water too hot")},
    {"chlorine_demand", phrase("week", "Chlorine used up overnight")},
    {"reading_clipped", phrase("week", "A reading at the end of its range")},
    {"reading_rejected", phrase("week", "A reading not believed")},
    {"reading_repeat", phrase("week", "A reading to be taken again")},
};

constexpr Kind kVerdicts[] = {
    {"worked", phrase("week", "worked")},
    {"partly", phrase("week", "worked in part")},
    {"not_at_all", phrase("week", "did not work")},
    {"cannot_tell", phrase("week", "cannot be told")},
};

std::string count(const Words& words, std::int64_t n) {
  return words.number(static_cast<double>(n), 0);
}

std::string name_of_analyte(const Words& words, const std::string& id) {
  if (id == "si") return words.say(kContext, phrase("week", "Saturation index"));
  return analyte_name(words, id);
}

const char* reorder_word(Reorder reorder) {
  switch (reorder) {
    case Reorder::runs_out:
      return phrase("week", "runs out: order it");
    case Reorder::expires:
      return phrase("week", "not good for much longer: order it");
    case Reorder::expired:
      return phrase("week", "expired: throw it away and order it");
    case Reorder::no:
      break;
  }
  return "";
}

std::string_view reorder_id(Reorder reorder) {
  switch (reorder) {
    case Reorder::runs_out:
      return "runs_out";
    case Reorder::expires:
      return "expires";
    case Reorder::expired:
      return "expired";
    case Reorder::no:
      break;
  }
  return "no";
}

WeekPart bottles_part(const OwnersWeek& week, const Words& words) {
  const auto line = [&](const char* name, int n) {
    return WeekLine{words.say(kContext, name), "", count(words, n)};
  };
  return {words.say(kContext, phrase("week", "Bottles")),
          {line(phrase("week", "Bottles tested"), week.bottles),
           line(phrase("week", "Here for the first time"), week.first_visits),
           line(phrase("week", "Back again"), week.returns), line(phrase("week", "Plans told"), week.plans),
           line(phrase("week", "Of them without a plan for home"), week.not_at_home)}};
}

WeekPart worked_part(const OwnersWeek& week, const Words& words) {
  WeekPart out{words.say(kContext, phrase("week", "Plans of the visit before")), {}};
  for (const Kind& verdict : kVerdicts)
    for (const auto& [worked, n] : week.worked)
      if (name_of(worked) == verdict.id)
        out.lines.push_back({words.say(kContext, verdict.word), "", count(words, n)});
  return out;
}

WeekPart lots_part(const OwnersWeek& week, const Words& words) {
  WeekPart out{words.say(kContext, phrase("week", "Reagents")), {}};
  for (const LotUse& use : week.lots) {
    std::string name = use.lot.lot;
    if (use.lot.analyte) name.insert(0, analyte_name(words, *use.lot.analyte) + " · ");
    const std::string number = use.left
                                   ? words.say(kContext, phrase("week", "used %1, left %2"),
                                               {count(words, use.used), count(words, *use.left)})
                                   : words.say(kContext, phrase("week", "used %1"), {count(words, use.used)});
    const char* order = reorder_word(use.reorder);
    out.lines.push_back({name, *order ? words.say(kContext, order) : "", number});
  }
  return out;
}

WeekPart checks_part(const OwnersWeek& week, const Words& words) {
  WeekPart out{words.say(kContext, phrase("week", "Instrument checks that are due")), {}};
  for (const InstrumentCheck& check : week.overdue) {
    std::string name = check.instrument;
    if (check.analyte) name += " · " + analyte_name(words, *check.analyte);
    const double days = std::floor(hours_between(check.at, week.until) / 24);
    out.lines.push_back({name, check.passed ? "" : words.say(kContext, phrase("week", "the last one failed")),
                         words.say(kContext, phrase("week", "days since: %1"), {words.number(days, 0)})});
  }
  return out;
}

}  // namespace

std::string finding_kind(const Words& words, const FindingCount& finding) {
  for (const Kind& kind : kKinds)
    if (finding.id == kind.id) return words.say(kContext, kind.word);
  constexpr Kind kEnds[] = {{"_low", phrase("week", "%1 too low")},
                            {"_high", phrase("week", "%1 too high")},
                            {"_edge", phrase("week", "%1 at the edge of its range")}};
  for (const Kind& end : kEnds) {
    if (!finding.id.ends_with(end.id)) continue;
    const std::string analyte = finding.id.substr(0, finding.id.size() - std::string_view(end.id).size());
    if (analyte == "combined_chlorine")
      return words.say(kContext, phrase("week", "Too much combined chlorine"));
    return words.say(kContext, end.word, {name_of_analyte(words, analyte)});
  }
  Finding bare;
  bare.id = finding.id;
  bare.analyte = finding.analyte;
  const std::string text = finding_text(words, bare);
  const size_t ends = text.find_first_of(".:;");
  return ends == std::string::npos ? text : text.substr(0, ends);
}

std::vector<WeekPart> week_parts(const OwnersWeek& week, const Words& words) {
  std::vector<WeekPart> out{bottles_part(week, words)};
  WeekPart findings{words.say(kContext, phrase("week", "What was found, in bottles")), {}};
  for (const FindingCount& finding : week.findings)
    findings.lines.push_back({finding_kind(words, finding), "", count(words, finding.visits)});
  for (WeekPart& part : std::vector<WeekPart>{worked_part(week, words), findings, lots_part(week, words),
                                              checks_part(week, words)})
    if (!part.lines.empty()) out.push_back(std::move(part));
  return out;
}

std::string week_title(const OwnersWeek& week, const Words& words) {
  const Instant last{week.until.utc - std::chrono::hours(24), week.until.offset};
  return words.say(kContext, phrase("week", "%1 to %2"),
                   {date_words(words, week.from), date_words(words, last)});
}

std::string week_csv(const OwnersWeek& week) {
  std::string out;
  const auto row = [&](std::string_view part, const std::string& name, const std::string& of, double number,
                       std::string_view unit) {
    CsvRow cells(out);
    cells.word(part).text(name).text(of).number(number).word(unit).end();
  };
  CsvRow heading(out);
  for (const char* cell : {"part", "name", "of", "number", "unit"}) heading.word(cell);
  heading.end();
  const std::string monday = week.from.text().substr(0, 10);
  row("bottles", "tested", monday, week.bottles, "bottles");
  row("bottles", "first_visit", monday, week.first_visits, "bottles");
  row("bottles", "return", monday, week.returns, "bottles");
  row("plans", "told", monday, week.plans, "plans");
  row("plans", "not_at_home", monday, week.not_at_home, "plans");
  for (const auto& [worked, n] : week.worked) row("worked", std::string(name_of(worked)), monday, n, "plans");
  for (const FindingCount& finding : week.findings)
    row("finding", finding.id, finding.analyte.value_or(""), finding.visits, "bottles");
  for (const auto& [analyte, n] : week.readings) row("reading", analyte, monday, n, "readings");
  for (const LotUse& use : week.lots) {
    const std::string of = use.lot.analyte.value_or("");
    row("reagent_used", use.lot.lot, of, static_cast<double>(use.used), "tests");
    if (use.left) row("reagent_left", use.lot.lot, of, static_cast<double>(*use.left), "tests");
    if (use.reorder != Reorder::no)
      row("reorder", use.lot.lot, std::string(reorder_id(use.reorder)), 1, "packs");
  }
  for (const InstrumentCheck& check : week.overdue)
    row("check_due", check.instrument, check.analyte.value_or(""),
        std::floor(hours_between(check.at, week.until) / 24), "days");
  return out;
}

}  // namespace brimline
