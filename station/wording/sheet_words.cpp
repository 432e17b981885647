// SPDX-License-Identifier: GPL-3.0-or-later
#include "station/wording/sheet_words.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <string_view>

#include "station/wording/amount_words.h"
#include "station/wording/clock_words.h"
#include "station/wording/plan_words.h"

namespace brimline {
namespace {

constexpr const char* kContext = "sheet";

bool any_step(const Plan& plan, bool (*is)(const Step&)) {
  return std::any_of(plan.steps.begin(), plan.steps.end(), is);
}

template <size_t N>
bool among(const std::array<std::string_view, N>& ids, const std::optional<std::string>& id) {
  return id && std::find(ids.begin(), ids.end(), *id) != ids.end();
}

bool adds(const Step& step) {
  return step.action == Action::add;
}

bool adds_oxidiser(const Step& step) {
  static constexpr std::array<std::string_view, 6> ids{
      "sodium_hypochlorite",      "calcium_hypochlorite", "dichlor", "trichlor",
      "potassium_monopersulfate", "hydrogen_peroxide"};
  return adds(step) && among(ids, step.chemical);
}

bool adds_hardness_or_alkalinity(const Step& step) {
  static constexpr std::array<std::string_view, 4> ids{"calcium_chloride", "sodium_bicarbonate",
                                                       "sodium_carbonate", "sodium_sesquicarbonate"};
  return adds(step) && among(ids, step.chemical);
}

bool works_the_filter(const Step& step) {
  return step.action == Action::filter || step.action == Action::clean_filter ||
         step.action == Action::vacuum;
}

bool drains(const Step& step) {
  return step.action == Action::drain_refill;
}

// What to look out for, and when it concerns this plan. Common practice; the visible drain as in
// Maryland Department of Health's safety page for pool operators.
struct WatchRow {
  bool (*when)(const Step&);  // null: always
  const char* text;
};
constexpr WatchRow kWatch[] = {
    {nullptr,
     phrase("sheet", "Nobody gets in unless the bottom and its drain can be seen clearly from the edge.")},
    {adds,
     phrase("sheet", "Keep to the times: going on sooner than shown is how products meet that must not.")},
    {adds_oxidiser,
     phrase("sheet",
            "If the water turns brown, black or like tea after a dose, stop there and call us: "
            "that can be metal.")},
    {adds_hardness_or_alkalinity,
     phrase("sheet",
            "A light cloud after a dose clears with the pump running; if it is still there the next day, "
            "stop and bring us a bottle.")},
    {works_the_filter,
     phrase("sheet", "Watch the filter's pressure gauge, and clean the filter when its maker says so.")},
    {drains, phrase("sheet",
                    "While draining, stop at once if the shell or liner moves, lifts or cracks, or if it "
                    "rains hard.")},
};

struct Tri {
  const char *outdoor, *indoor, *unknown;
};
constexpr Tri kVessels[] = {
    {phrase("sheet", "outdoor pool"), phrase("sheet", "indoor pool"), phrase("sheet", "pool")},
    {phrase("sheet", "outdoor spa"), phrase("sheet", "indoor spa"), phrase("sheet", "spa")},
    {phrase("sheet", "outdoor swim spa"), phrase("sheet", "indoor swim spa"), phrase("sheet", "swim spa")},
    {phrase("sheet", "outdoor plunge"), phrase("sheet", "indoor plunge"), phrase("sheet", "plunge")},
};
constexpr const char* kSanitizers[] = {phrase("sheet", "chlorine"), phrase("sheet", "salt chlorine"),
                                       phrase("sheet", "bromine"), phrase("sheet", "biguanide")};

// Three significant digits, no trailing zeros.
std::string three_digits(const Words& words, double value) {
  const int decimals = value >= 99.95 ? 0 : value >= 9.995 ? 1 : 2;
  std::string out = words.number(value, decimals);
  if (decimals == 0) return out;
  while (out.back() == '0') out.pop_back();
  if (out.back() == '.' || out.back() == ',') out.pop_back();
  return out;
}

// "15,000" in English, "15 000" with a space that does not break elsewhere.
std::string grouped(const Words& words, double value) {
  std::string out = words.number(value, 0);
  for (size_t at = out.size(); at > 3; at -= 3) out.insert(at - 3, words.language() == "en" ? "," : "\u00a0");
  return out;
}

std::string amount_words(const Words& words, double value, const std::string& unit) {
  if (value < 1 && unit == "L") return three_digits(words, value * 1e3) + " mL";
  if (value < 1 && unit == "kg") return three_digits(words, value * 1e3) + " g";
  if (value >= 1000 && unit == "mL") return three_digits(words, value * 1e-3) + " L";
  if (value >= 1000 && unit == "g") return three_digits(words, value * 1e-3) + " kg";
  return three_digits(words, value) + " " + unit;
}

// Whether swimming waits for what the next bottle says: it opens no sooner than that is due.
bool opens_after_retest(const Plan& plan) {
  return plan.retest && plan.swim.not_before_h &&
         *plan.swim.not_before_h + 0.01 >= plan_end_h(plan) + plan.retest->after_h;
}

std::string no_answer(const Words& words, const Plan& plan, const std::optional<Instant>& home_at,
                      const Vessel& vessel) {
  const Swim& swim = plan.swim;
  if (opens_after_retest(plan) && home_at) {
    const Instant when = by_day(later(*home_at, *swim.not_before_h));
    return words.say(kContext, phrase("sheet", "No – not until we have tested the water again, %1 or later."),
                     {clock_words(words, *home_at, when)});
  }
  if (opens_after_retest(plan))
    return words.say(kContext, phrase("sheet", "No – not until we have tested the water again."));
  const std::string step = swim.after_step ? std::to_string(*swim.after_step) : "";
  const std::string clear = span_words(words, hours_after_dose(vessel));
  if (swim.not_before_h && home_at) {
    const std::string when = clock_words(words, *home_at, by_day(later(*home_at, *swim.not_before_h)));
    if (step.empty()) return words.say(kContext, phrase("sheet", "No – not before %1."), {when});
    return words.say(kContext, phrase("sheet", "No – not before %1, and not for %2 after any dose."),
                     {when, clear});
  }
  if (swim.not_before_h) {
    const std::string span = span_words(words, *swim.not_before_h);
    if (step.empty()) return words.say(kContext, phrase("sheet", "No – not for %1 after you start."), {span});
    return words.say(
        kContext,
        phrase("sheet", "No – not for %1 after you start, after step %2, and not for %3 after any dose."),
        {span, step, clear});
  }
  if (!step.empty()) return words.say(kContext, phrase("sheet", "No – not before step %1 is done."), {step});
  return words.say(kContext, phrase("sheet", "No – not until we have tested the water again."));
}

}  // namespace

double end_h(const Step& step) {
  return step.start_h + std::max(0, step.portions - 1) * step.portion_gap_h + step.wait_h;
}

double plan_end_h(const Plan& plan) {
  double end = 0;
  for (const Step& step : plan.steps) end = std::max(end, end_h(step));
  return end;
}

std::string swim_answer(const Words& words, const Plan& plan, const std::optional<Instant>& home_at,
                        const Vessel& vessel) {
  if (!plan.home_plan)
    return plan.swim.now
               ? words.say(kContext, phrase("sheet", "That is for the operator of this water to say."))
               : words.say(kContext, phrase("sheet", "No."));
  if (!plan.swim.now) return no_answer(words, plan, home_at, vessel);
  if (any_step(plan, adds))
    return words.say(kContext,
                     phrase("sheet", "Yes – but nobody in while anything is being added, nor for %1 after."),
                     {span_words(words, hours_after_dose(vessel))});
  return words.say(kContext, phrase("sheet", "Yes."));
}

std::string sooner_bottle(const Words& words, const Plan& plan, const std::optional<Instant>& home_at) {
  constexpr double kDay = 24, kWorthIt = 12;  // hours: between the step and the bottle; gained
  if (!plan.home_plan || plan.swim.now || !home_at || !opens_after_retest(plan)) return {};
  const Step* mends = nullptr;
  for (const Step& step : plan.steps)
    for (const std::string& id : step.for_findings)
      if (std::find(plan.swim.because.begin(), plan.swim.because.end(), id) != plan.swim.because.end())
        mends = &step;
  if (!mends || end_h(*mends) + kDay + kWorthIt > *plan.swim.not_before_h) return {};
  const Instant when = by_day(later(*home_at, end_h(*mends) + kDay));
  return words.say(kContext,
                   phrase("sheet",
                          "Sooner: bring a bottle from %1 on, a day after step %2; it tells whether this is "
                          "mended. Go on with the other steps."),
                   {clock_words(words, *home_at, when), std::to_string(mends->order)});
}

std::string vessel_words(const Words& words, const Vessel& vessel, std::optional<Units> units) {
  const Tri& names = kVessels[static_cast<size_t>(kind_of(vessel))];
  std::string out = words.say(kContext, !vessel.place                     ? names.unknown
                                        : *vessel.place == Place::outdoor ? names.outdoor
                                                                          : names.indoor);
  if (vessel.volume) {
    const double m3 = vessel.volume->cubic_metres();
    const std::string metric = three_digits(words, m3) + " m³";
    if (units.value_or(Units::metric) == Units::us) {
      const double gallons = std::round(vessel.volume->us_gallons() / 10) * 10;
      out += ", " + words.say(kContext, phrase("sheet", "%1 US gallons"), {grouped(words, gallons)}) + " (" +
             metric + ")";
    } else {
      out += ", " + metric;
    }
  } else {
    out += ", " + words.say(kContext, phrase("sheet", "volume not known"));
  }
  if (vessel.sanitizer)
    out += ", " + words.say(kContext, kSanitizers[static_cast<size_t>(*vessel.sanitizer)]);
  return out;
}

// Maryland Department of Health, safety page for pool operators: follow the label, never mix,
// chemical to water, nobody in the water. The plan's own sentences (plan_words.cpp), so that one
// which a plan brings along is not said twice.
std::vector<std::string> standing_lines(const Words& words, const Vessel& vessel, bool with_doses) {
  std::vector<std::string> out{
      words.say("plan", phrase("plan", "The product's label and your local code come first."))};
  if (!with_doses) return out;
  out.push_back(words.say(
      "plan", phrase("plan", "Never mix chemicals. Each goes into the water by itself, pump running.")));
  out.push_back(nobody_in_text(words, vessel));
  out.push_back(
      words.say(kContext, phrase("sheet",
                                 "A jug of its own for each product, clean and dry: never one for acid and "
                                 "chlorine. None of them for food.")));
  return out;
}

std::vector<std::string> watch_lines(const Words& words, const Plan& plan) {
  std::vector<std::string> out;
  for (const WatchRow& row : kWatch)
    if (!row.when || any_step(plan, row.when)) out.push_back(words.say(kContext, row.text));
  return out;
}

// Rinsing for at least 15 minutes: Arizona Poison and Drug Information Center. Fresh air, never
// sniff: Illinois Poison Center. Storing: Maryland Department of Health. Not to induce vomiting,
// late symptoms, and staying out of fumes: from memory, common first aid.
std::vector<std::string> trouble_lines(const Words& words, const ShopDetails& shop) {
  const std::string local = words.say(kContext, phrase("sheet", "your local emergency number"));
  const auto call = [](const EmergencyNumber& n) {
    return n.number.empty() ? n.label : n.number + " (" + n.label + ")";
  };
  const std::string first = shop.emergency.empty() ? local : call(shop.emergency.front());
  const std::string advice = shop.emergency.size() > 1 ? call(shop.emergency[1]) : first;
  std::vector<std::string> out;
  const auto line = [&](const char* text, std::initializer_list<std::string> values) {
    out.push_back(words.say(kContext, text, values));
  };
  line(phrase("sheet",
              "Fumes, fizzing, or products that have met: leave at once, away from them and upwind, keep "
              "others out and call "
              "%1 "
              "from outside. Do not go back, add no water, move nothing."),
       {first});
  line(phrase("sheet", "Breathed in: fresh air; trouble breathing: call %1. Symptoms can come hours later."),
       {first});
  line(phrase("sheet",
              "In the eyes or on the skin: brush dry powder off, then rinse with running water for at least "
              "15 minutes; take out contact lenses, take off wet clothing. Call %1."),
       {advice});
  line(phrase("sheet", "Swallowed: do not make the person vomit. Call %1."), {advice});
  line(phrase("sheet",
              "Store dry, cool, locked and upright, each product in its own container and apart from the "
              "others: acid far from chlorine, liquids never above powders. Never sniff a container."),
       {});
  return out;
}

std::string portion_words(const Words& words, const Step& step) {
  std::string metric;
  std::string out = step.amount_household.value_or("");
  const auto ends_in = [&](const char* unit) { return out.ends_with(unit); };
  const bool told_metric = ends_in(" mL") || ends_in(" L") || ends_in(" g") || ends_in(" kg");
  const bool told_us = !out.empty() && !told_metric && out.front() >= '0' && out.front() <= '9';
  if (step.amount) {
    const ProductAmount portion =
        as_told({step.amount->value / std::max(1, step.portions), step.amount->unit},
                told_us ? Units::us : Units::metric);
    metric = amount_words(words, portion.value, portion.unit);
  }
  if (out.empty())
    out = metric;
  else if (!metric.empty() && !told_metric)
    out += " (" + metric + ")";
  if (out.empty() || step.portions <= 1) return out;
  return words.say(kContext, phrase("sheet", "%1 each time, %2 times"), {out, std::to_string(step.portions)});
}

}  // namespace brimline
