// SPDX-License-Identifier: GPL-3.0-or-later
#include "printing/sheet.h"

#include <algorithm>

#include "printing/charts.h"
#include "printing/readings_table.h"
#include "station/compare/plan_answer.h"
#include "station/reminder/due.h"
#include "station/wording/clock_words.h"
#include "station/wording/hand_words.h"
#include "station/wording/sheet_words.h"
#include "station/wording/visit_code.h"

namespace brimline {
namespace {

constexpr const char* kContext = "sheet";

SheetTitles titles_of(const Words& words, const Plan* plan) {
  const auto say = [&](const char* text) { return words.say(kContext, text); };
  const bool doses = plan && plan->home_plan;
  SheetTitles t;
  t.sheet = say(phrase("sheet", "Take-home sheet"));
  t.findings = say(phrase("sheet", "What the water says"));
  t.before = doses ? say(phrase("sheet", "Before you start")) : say(phrase("sheet", "First of all"));
  t.steps = doses ? say(phrase("sheet", "What to do, and when")) : say(phrase("sheet", "What to do instead"));
  t.caution = say(phrase("sheet", "Caution:"));
  t.still_open = say(phrase("sheet", "Still open"));
  t.watch = say(phrase("sheet", "What to watch"));
  t.come_back = say(phrase("sheet", "Come back"));
  t.readings = say(phrase("sheet", "All readings"));
  t.trouble = say(phrase("sheet", "If something goes wrong"));
  t.page = say(phrase("sheet", "page %1 of %2"));
  t.charts = say(phrase("sheet", "Over your visits"));
  t.last_plan = say(phrase("sheet", "Did last visit’s plan work?"));
  t.scan = say(phrase("sheet", "for our counter"));
  t.columns = {say(phrase("sheet", "Reading")),    say(phrase("sheet", "This bottle")),
               say(phrase("sheet", "Target")),     say(phrase("sheet", "After the steps")),
               say(phrase("sheet", "Last visit")), say(phrase("sheet", "Fill water"))};
  return t;
}

std::vector<Labelled> who_of(const Visit& visit, const Words& words) {
  std::vector<Labelled> out;
  const auto row = [&](const char* label, std::string value) {
    if (!value.empty()) out.push_back({words.say(kContext, label), std::move(value)});
  };
  std::optional<Units> units;
  if (visit.customer) {
    row(phrase("sheet", "For"), visit.customer->name.value_or(""));
    units = visit.customer->units;
  }
  row(phrase("sheet", "Water"), vessel_words(words, visit.vessel, units));
  std::string bottle = visit.bottle.code;
  const auto add = [&](const char* text, const std::optional<Instant>& when) {
    if (!when) return;
    if (!bottle.empty()) bottle += " · ";
    const bool known_day =
        when != visit.bottle.taken_at && visit.bottle.taken_at && same_day(*when, *visit.bottle.taken_at);
    bottle +=
        words.say(kContext, text, {known_day ? time_words(words, *when) : date_and_time_words(words, *when)});
  };
  add(phrase("sheet", "taken %1"), visit.bottle.taken_at);
  add(phrase("sheet", "tested %1"), visit.bottle.tested_at);
  row(phrase("sheet", "Bottle"), bottle);
  return out;
}

// The time at the step's left; `before` is the step before, or null.
std::string when_of(const Step& step, const Step* before, const std::optional<Instant>& home_at,
                    const Words& words) {
  if (home_at) return label_words(words, *home_at, later(*home_at, step.start_h));
  const double gap = before ? step.start_h - end_h(*before) + before->wait_h : step.start_h;
  if (!before && gap <= 0) return words.say(kContext, phrase("sheet", "first"));
  if (gap <= 0) return words.say(kContext, phrase("sheet", "then"));
  return words.say(kContext, phrase("sheet", "%1 later"), {span_words(words, gap)});
}

std::vector<Tick> ticks_of(const Step& step, const std::optional<Instant>& home_at, const Words& words) {
  if (step.portions <= 1) return {Tick{}};
  std::vector<Tick> out;
  for (int i = 0; i < step.portions; ++i) {
    const double hours = i * step.portion_gap_h;
    if (home_at)
      out.push_back({label_words(words, *home_at, later(*home_at, step.start_h + hours))});
    else if (i == 0)
      out.push_back({words.say(kContext, phrase("sheet", "first"))});
    else
      out.push_back(
          {words.say(kContext, phrase("sheet", "%1 later"), {span_words(words, step.portion_gap_h)})});
  }
  return out;
}

std::vector<SheetStep> steps_of(const Plan& plan, const std::optional<Instant>& home_at, const Words& words) {
  std::vector<SheetStep> out;
  const Step* before = nullptr;
  for (const Step& step : plan.steps) {
    if (!plan.home_plan && step.action == Action::add) continue;
    SheetStep shown;
    shown.order = step.order;
    shown.when =
        plan.home_plan ? when_of(step, before, home_at, words) : words.say(kContext, phrase("sheet", "now"));
    if (home_at && plan.home_plan) {
      const Instant start = later(*home_at, step.start_h);
      shown.clock = time_words(words, start);
      if (!before || !same_day(start, later(*home_at, before->start_h))) shown.day = date_words(words, start);
    }
    shown.text = step.text;
    if (step.action == Action::add) shown.amount = portion_words(words, step);
    shown.ticks = ticks_of(step, home_at, words);
    shown.cautions = step.cautions;
    const auto same = std::find_if(out.begin(), out.end(), [&](const SheetStep& earlier) {
      return !step.cautions.empty() && earlier.cautions == step.cautions;
    });
    if (same != out.end())
      shown.cautions_as =
          words.say(kContext, phrase("sheet", "the same as in step %1."), {std::to_string(same->order)});
    out.push_back(std::move(shown));
    before = &step;
  }
  return out;
}

// Where no plan is given, the next bottle waits for whoever decides, or is what is wanted now.
std::string come_back_without_plan(const Plan& plan, const Words& words) {
  const bool handed_over = std::any_of(plan.steps.begin(), plan.steps.end(), [](const Step& step) {
    return step.action == Action::call_professional;
  });
  if (plan.swim.now) return words.say(kContext, phrase("sheet", "Bring this sheet with your next bottle."));
  if (handed_over) return words.say(kContext, phrase("sheet", "Bring a fresh bottle once that is settled."));
  return words.say(kContext, phrase("sheet", "Bring a fresh bottle and this sheet as soon as you can."));
}

std::string come_back_of(const Visit& visit, const Plan& plan, const Words& words) {
  const std::optional<Instant>& home_at = visit.home_at;
  if (!plan.home_plan) return come_back_without_plan(plan, words);
  if (!visit.vessel.volume && plan.steps.empty())
    return words.say(kContext, phrase("sheet",
                                      "Come back with the volume, today if you can: the amounts follow from "
                                      "these readings."));
  if (!plan.retest) return words.say(kContext, phrase("sheet", "Bring this sheet with your next bottle."));
  std::string out;
  if (home_at) {
    const Instant when = by_day(later(*home_at, plan_end_h(plan) + plan.retest->after_h));
    // "tomorrow 08:00 (Monday 15 June)", and from the day after "Tuesday 16 June, 08:00"
    const bool near = same_day(*home_at, when) || same_day(later(*home_at, 24), when);
    const std::string date = date_words(words, when);
    out = words.say(kContext, phrase("sheet", "Bring a fresh bottle and this sheet: %1 or soon after."),
                    {near ? clock_words(words, *home_at, when) + " (" + date + ")"
                          : date + ", " + time_words(words, when)});
  } else {
    out = words.say(kContext, phrase("sheet", "Bring a fresh bottle and this sheet %1 after the last step."),
                    {span_words(words, plan.retest->after_h)});
  }
  if (!plan.retest->analytes.empty())
    out += " " + words.say(kContext, phrase("sheet", "We will read: %1."),
                           {analyte_list(words, plan.retest->analytes)});
  return out;
}

void add_new(std::vector<std::string>& lines, const std::vector<std::string>& more) {
  for (const std::string& line : more)
    if (std::find(lines.begin(), lines.end(), line) == lines.end()) lines.push_back(line);
}

// "pH is 8.20; it should be at most 7.80." of "pH is 8.20; it should be at most 7.80. Eyes smart."
std::string first_sentence(const std::string& text) {
  const size_t end = text.find(". ");
  return end == std::string::npos ? text : text.substr(0, end + 1);
}

// The reasons that keep people out, two at most: the rest stands with the findings.
std::vector<std::string> reasons_of(const Plan& plan) {
  constexpr size_t kMost = 2;
  std::vector<std::string> out;
  for (const std::string& id : plan.swim.because)
    for (const Finding& finding : plan.findings)
      if (finding.id == id && out.size() < kMost) out.push_back(first_sentence(finding.text));
  return out;
}

void add_plan(Sheet& sheet, const Visit& visit, const Visit* earlier, const Words& words) {
  const Plan& plan = *visit.plan_as_told;
  sheet.answer = swim_answer(words, plan, visit.home_at, visit.vessel);
  if (plan.home_plan && !plan.swim.now) sheet.because = reasons_of(plan);
  if (std::string sooner = sooner_bottle(words, plan, visit.home_at); !sooner.empty())
    sheet.because.push_back(std::move(sooner));
  if (!plan.home_plan)
    sheet.why_not =
        plan.why_not.value_or(words.say(kContext, phrase("sheet", "No plan for home can be given.")));
  std::vector<Finding> findings = plan.findings;
  std::stable_sort(findings.begin(), findings.end(),
                   [](const auto& a, const auto& b) { return a.rank < b.rank; });
  for (const Finding& finding : findings)
    sheet.findings.push_back(finding_sentence(finding, visit, earlier, words));
  sheet.steps = steps_of(plan, visit.home_at, words);
  for (const HandChange& change : plan.changes)
    sheet.who.push_back({words.say(kContext, phrase("sheet", "Changed")), hand_change_line(words, change)});
  for (const Remains& remains : plan.remains) sheet.still_open.push_back(remains.text);
  if (plan.home_plan) sheet.watch = watch_lines(words, plan);
  sheet.come_back = come_back_of(visit, plan, words);
  // Where nothing is dosed, how to dose only hides what is to be done.
  std::vector<std::string> cautions = plan.cautions;
  const std::vector<std::string> dosing = standing_lines(words, visit.vessel, true);
  if (!plan.home_plan)
    std::erase_if(cautions, [&](const std::string& line) {
      return std::find(dosing.begin(), dosing.end(), line) != dosing.end();
    });
  // What this water must never get comes before all else.
  std::vector<std::string> first;
  const std::string label = dosing.front();
  const auto standing = std::find(cautions.begin(), cautions.end(), label);
  if (standing != cautions.end()) first.assign(cautions.begin(), standing);
  sheet.before.insert(sheet.before.begin(), first.begin(), first.end());
  add_new(sheet.before, cautions);
}

bool has_waterline(const std::vector<Sentence>& sentences) {
  return std::any_of(sentences.begin(), sentences.end(), [](const Sentence& s) {
    return std::any_of(s.begin(), s.end(),
                       [](const Piece& p) { return std::holds_alternative<Waterline>(p); });
  });
}

constexpr double kShock = 5;  // mg/L that no plan leaves standing but a shock

std::string rows_note_of(const Visit& visit, const Words& words) {
  std::string out = words.say(kContext, phrase("sheet",
                                               "± is one standard deviation: about two readings in three "
                                               "come that near."));
  if (visit.bottle.sample_temperature)
    out = words.say(kContext, phrase("sheet", "Read at %1 °C."),
                    {words.number(visit.bottle.sample_temperature->celsius(), 0)}) +
          " " + out;
  // A shock stands overnight: what is predicted is read before it is used up.
  double chlorine = 0;
  if (visit.plan_as_told)
    if (const auto found = visit.plan_as_told->predicted.find("free_chlorine");
        found != visit.plan_as_told->predicted.end())
      chlorine = found->second.value;
  if (chlorine > kShock)
    out += " " + words.say(kContext,
                           phrase("sheet",
                                  "Free chlorine and pH are shown before the chlorine is used up: both come "
                                  "down after."));
  return out;
}

// The numbers' labels are the shop's settings, whose English is a key like any other sentence's.
ShopDetails in_language(ShopDetails shop, const Words& words) {
  [[maybe_unused]] constexpr const char* kLabels[] = {phrase("sheet", "Emergency"),
                                                      phrase("sheet", "Poison line")};
  for (EmergencyNumber& number : shop.emergency) number.label = words.say(kContext, number.label.c_str());
  return shop;
}

}  // namespace

std::string plain(const Sentence& sentence) {
  std::string out;
  for (const Piece& piece : sentence)
    if (const auto* text = std::get_if<std::string>(&piece)) out += *text;
  return out;
}

Sheet make_sheet(const Visit& visit, const Visit* earlier, const ShopDetails& shop, const Words& staff_words,
                 const SheetOptions& options) {
  const Words words =
      staff_words.with_clock(clock_for(staff_words, visit.customer ? visit.customer->units : std::nullopt));
  const Plan* plan = visit.plan_as_told ? &*visit.plan_as_told : nullptr;
  Sheet sheet;
  sheet.language = words.language();
  sheet.titles = titles_of(words, plan);
  sheet.shop = in_language(shop, words);
  sheet.who = who_of(visit, words);
  sheet.question = words.say(kContext, phrase("sheet", "May we swim?"));
  sheet.before = standing_lines(words, visit.vessel, plan && plan->home_plan);
  sheet.come_back = words.say(kContext, phrase("sheet", "Bring this sheet with your next bottle."));
  sheet.answer = words.say(kContext, phrase("sheet", "Not said: this sheet has readings only."));
  if (plan) add_plan(sheet, visit, earlier, words);
  if (has_waterline(sheet.findings))
    sheet.waterline_key =
        words.say(kContext, phrase("sheet",
                                   "The small line after a sentence: what the test can read, from end to "
                                   "end; brackets, the target; dark mark, this bottle, as wide as its "
                                   "likely error; ring, last visit."));
  const auto targets = options.targets.empty() ? regime_targets(visit) : options.targets;
  sheet.rows = readings_table(visit, earlier, words, targets);
  sheet.charts = charts_of(visit, options.history, words, targets);
  sheet.rows_note = rows_note_of(visit, words);
  if (earlier)
    for (const PlanAnswer& answer : answers_of(*earlier, visit, words))
      sheet.last_plan.push_back(answer.text);
  sheet.trouble = trouble_lines(words, sheet.shop);
  sheet.code = visit_code(visit.id);
  sheet.footer = (shop.name.empty() ? sheet.titles.sheet : shop.name) +
                 (visit.bottle.code.empty() ? "" : " · " + visit.bottle.code) + " · " + sheet.code;
  return sheet;
}

}  // namespace brimline
