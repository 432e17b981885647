// SPDX-License-Identifier: GPL-3.0-or-later
#include "station/wording/overnight_words.h"

#include <algorithm>
#include <cmath>

#include "station/wording/clock_words.h"
#include "station/wording/statement_words.h"

namespace brimline {

namespace {

constexpr const char* kContext = "overnight";
constexpr double kCoverage = 1.96;  // of a normal distribution: 95 in 100
constexpr double kVeryHigh = 30;    // mg/L: price dilution first; common practice, no source
constexpr double kLate = 2;         // hours after which a reading is overdue and not merely due

std::string ml_words(const Words& words, double ml) {
  return words.number(ml, ml < 1 ? 2 : ml < 100 ? 1 : 0);
}

std::string whole(const Words& words, double value) {
  return words.number(value, std::abs(value - std::round(value)) < 1e-9 ? 0 : 1);
}

// Settling, temperature, pH, darkness and the stock: procedure of the house after Standard Methods 2350
// (from memory); common practice, no source.
std::vector<std::string> bottle_steps(const Words& words, const OvernightTest& test,
                                      std::optional<double> ph) {
  const auto count = bottles_to_pour(test).size();
  std::vector<std::string> out;
  out.push_back(words.say(
      kContext,
      phrase("overnight",
             "Take %1 clean bottles with caps, of glass or hard plastic, and rinse them with the sample."),
      {std::to_string(count)}));
  out.push_back(words.say(kContext, phrase("overnight",
                                           "Let dirt and leaves settle, or pour the sample through a paper "
                                           "filter. It should be at 20 to 25 °C.")));
  out.push_back(words.say(kContext,
                          phrase("overnight", "Measure %1 mL of the sample into each: %2 mL in all."),
                          {whole(words, test.sample_ml), whole(words, sample_needed_ml(test))}));
  if (ph && (*ph < 7.2 || *ph > 7.6))
    out.push_back(words.say(kContext,
                            phrase("overnight",
                                   "pH was read as %1. The test is made for 7.2 to 7.6; beyond, chlorine "
                                   "works at another pace, so correct pH first where there is time."),
                            {words.number(*ph, 1)}));
  return out;
}

std::vector<std::string> stock_steps(const Words& words, const OvernightTest& test) {
  std::vector<std::string> out;
  out.push_back(words.say(
      kContext,
      phrase("overnight", "Label first: write STOCK, CHLORINE 1 g/L and today’s date on a clean bottle.")));
  if (test.bleach)
    out.push_back(words.say(kContext,
                            phrase("overnight",
                                   "Half fill a litre measure with distilled water, add %1 mL of the bleach, "
                                   "fill up to the litre mark, mix."),
                            {ml_words(words, bleach_for_stock(test.bleach->available_g_l))}));
  out.push_back(
      words.say(kContext, phrase("overnight",
                                 "Strength check: make 1 mL of the stock up to 500 mL with distilled water "
                                 "and read free chlorine. It should show about 2.0 mg/L.")));
  return out;
}

std::vector<std::string> pour_steps(const Words& words) {
  return {words.say(kContext, phrase("overnight", "Label every bottle before any chlorine goes in.")),
          words.say(kContext, phrase("overnight",
                                     "With a syringe, give each bottle the stock its label says. Cap it and "
                                     "turn it over three times.")),
          words.say(kContext, phrase("overnight",
                                     "When the last has its chlorine, start the clock. Keep them in the "
                                     "dark, at the warmth of the room."))};
}

std::vector<std::string> reading_steps(const Words& words) {
  return {words.say(kContext,
                    phrase("overnight",
                           "Weakest bottle first: free chlorine, then total. Dilute with distilled water as "
                           "the pad proposes; a strong bottle read undiluted can bleach and look empty.")),
          words.say(kContext, phrase("overnight",
                                     "Type the number as shown, or let the photometer send it: it goes to "
                                     "the marked place and is multiplied by the dilution."))};
}

std::string name_of_due(const Words& words, OvernightDue due) {
  return words.say(kContext, due == OvernightDue::hour ? phrase("overnight", "1-hour readings")
                                                       : phrase("overnight", "24-hour readings"));
}

}  // namespace

std::string demand_sign_words(const Words& words, DemandSign sign) {
  return words.say(
      kContext, sign == DemandSign::used_up
                    ? phrase("overnight",
                             "Free chlorine is used up: an overnight test tells how much this water needs.")
                    : phrase("overnight",
                             "Combined chlorine was there last time and still is: an overnight test tells "
                             "how much breaks it."));
}

std::string reach_reason_words(const Words& words, const DemandReachAdvice& advice) {
  const std::string least = whole(words, advice.least);
  switch (advice.reason) {
    case ReachReason::holds:
      return words.say(
          kContext,
          phrase("overnight",
                 "Free chlorine stands, so a small loss is looked for: doses up to %1 mg/L or more."),
          {least});
    case ReachReason::combined:
      return words.say(
          kContext,
          phrase("overnight",
                 "Combined chlorine may take up to ten times as much to break: doses up to %1 mg/L or more."),
          {least});
    case ReachReason::used_up:
      return words.say(
          kContext,
          phrase("overnight",
                 "No chlorine stands and nobody knows how much is missing: doses up to %1 mg/L or more."),
          {least});
    case ReachReason::algae:
      return words.say(kContext,
                       phrase("overnight", "Green or slimy water uses up much: doses up to %1 mg/L or more."),
                       {least});
    case ReachReason::known_above:
      return words.say(
          kContext,
          phrase("overnight",
                 "The test before was used up, so its bottles were too weak: doses up to %1 mg/L or more."),
          {least});
  }
  return {};
}

std::string reach_words(const Words& words, DemandReach reach) {
  const auto doses = demand_doses(reach);
  return words.say(kContext, phrase("overnight", "%1 bottles, 0 to %2 mg/L"),
                   {std::to_string(doses.size()), whole(words, doses.back())});
}

std::vector<std::string> overnight_steps(const Words& words, const OvernightTest& test,
                                         std::optional<double> ph) {
  switch (test.stage) {
    case OvernightStage::bottles:
      return bottle_steps(words, test, ph);
    case OvernightStage::stock:
      return stock_steps(words, test);
    case OvernightStage::pour:
      return pour_steps(words);
    case OvernightStage::running:
      return reading_steps(words);
    case OvernightStage::result:
    case OvernightStage::closed:
      break;
  }
  return {words.say(kContext, phrase("overnight",
                                     "Empty the bottles into the drain with plenty of water, as the local "
                                     "code allows: never back into the pool, never together with acid."))};
}

// Gloves and goggles, never mixing, acid: as the plan's own cautions; common practice, no source.
std::vector<std::string> overnight_cautions(const Words& words, OvernightStage stage) {
  std::vector<std::string> out;
  if (stage == OvernightStage::stock || stage == OvernightStage::pour)
    out.push_back(words.say(
        kContext,
        phrase("overnight",
               "Gloves and goggles on; bleach burns and bleaches. The product’s label comes first.")));
  if (stage == OvernightStage::stock)
    out.push_back(words.say(
        kContext, phrase("overnight",
                         "Liquid chlorine alone: never another kind of chlorine, never acid, ammonia or a "
                         "cleaner near it. Chlorine into water, not water into chlorine.")));
  if (stage == OvernightStage::pour)
    out.push_back(words.say(
        kContext, phrase("overnight",
                         "Out of reach of children and apart from drinks: these bottles look like water.")));
  return out;
}

std::string bleach_words(const Words& words, const Bleach& bleach) {
  const std::string grams = whole(words, bleach.available_g_l),
                    percent = whole(words, bleach.available_g_l / 10);
  return words.say(kContext,
                   phrase("overnight",
                          "%1 % trade is %1 g of chlorine in 100 mL, %2 g in a litre. The 1 g wanted is in "
                          "1000 / %2 = %3 mL."),
                   {percent, grams, ml_words(words, bleach_for_stock(bleach.available_g_l))});
}

std::string check_words(const Words& words, const OvernightTest& test) {
  if (!test.check_mg_l) return {};
  const double stock = stock_strength(test);
  const std::string read = words.number(*test.check_mg_l, 2), strength = words.number(stock, 0);
  if (is_sound_stock(stock))
    return words.say(
        kContext,
        phrase("overnight",
               "It reads %1: the stock holds 500 × %1 = %2 mg/L, and the bottles are reckoned with that."),
        {read, strength});
  if (stock < kStockAimed)
    return words.say(kContext,
                     phrase("overnight",
                            "It reads %1: the stock would hold only %2 mg/L. The bleach is old or too little "
                            "went in. Make it again with fresh bleach."),
                     {read, strength});
  return words.say(kContext,
                   phrase("overnight",
                          "It reads %1: the stock would hold %2 mg/L, twice what was meant. Read again; if "
                          "it stays, make the stock again."),
                   {read, strength});
}

std::string overnight_due_words(const Words& words, const OvernightTest& test, const Instant& now) {
  if (test.stage == OvernightStage::result)
    return words.say(kContext, phrase("overnight", "the result is in"));
  if (!test.started_at) return words.say(kContext, phrase("overnight", "being set up"));
  const auto due = waits_for(test, now);
  if (!due) return words.say(kContext, phrase("overnight", "all bottles are read"));
  const Instant at = due_at(*test.started_at, *due);
  const double over = hours_between(at, now);
  const std::string name = name_of_due(words, *due);
  if (over < 0)
    return words.say(kContext, phrase("overnight", "%1 due %2"), {name, clock_words(words, now, at)});
  if (over < kLate)
    return words.say(kContext, phrase("overnight", "%1 due now, since %2"), {name, time_words(words, at)});
  return words.say(kContext, phrase("overnight", "%1 overdue by %2"),
                   {name, span_words(words, std::floor(over))});
}

bool overnight_calls(const OvernightTest& test, const Instant& now) {
  if (test.stage == OvernightStage::result) return true;
  if (!test.started_at) return false;
  const auto due = waits_for(test, now);
  return !due || hours_between(due_at(*test.started_at, *due), now) >= 0;
}

std::string demand_word_words(const Words& words, DemandWord word) {
  switch (word) {
    case DemandWord::measures:
      return words.say(kContext, phrase("overnight", "holds"));
    case DemandWord::lower_bound:
      return words.say(kContext, phrase("overnight", "used up"));
    case DemandWord::upper_bound:
      return words.say(kContext, phrase("overnight", "over range: dilute"));
    case DemandWord::nothing:
      break;
  }
  return words.say(kContext, phrase("overnight", "may be bleached: dilute"));
}

// How the dose comes from the demand: what is to stand in the end, less what stands now.
static std::string dose_sum(const Words& words, const DemandResult& result) {
  if (!result.demand || !result.dose || *result.dose <= 0) return {};
  const double more = *result.dose - result.demand->value;
  const std::string size = words.number(std::abs(more), 1);
  if (more > 0.05)
    return " " + words.say(kContext,
                           phrase("overnight",
                                  "That is what it uses up and %1 mg/L more, for what is to stand in the end "
                                  "is more than stands now."),
                           {size});
  if (more < -0.05)
    return " " + words.say(kContext,
                           phrase("overnight",
                                  "That is what it uses up less %1 mg/L, for more stands in it now than has "
                                  "to in the end."),
                           {size});
  return {};
}

std::string demand_finding(const Words& words, const DemandResult& result) {
  const auto one = [&](double value) { return words.number(value, 1); };
  if (!result.enough())
    return words.say(kContext,
                     phrase("overnight",
                            "The overnight test was not enough: no bottle kept its chlorine, so this water "
                            "uses up more than %1 mg/L."),
                     {one(result.demand_above.value_or(0))});
  const Measured demand = *result.demand;
  std::string out = words.say(
      kContext,
      phrase("overnight",
             "The overnight test: this water uses up %1 mg/L of chlorine in %2 hours (most likely %3 to %4), "
             "so it takes %5 mg/L until some is left."),
      {one(demand.value), words.number(result.at_hours, 0),
       one(std::max(0.0, demand.value - kCoverage * demand.sd)), one(demand.value + kCoverage * demand.sd),
       one(result.dose.value_or(0))});
  out += dose_sum(words, result);
  if (demand.value > kVeryHigh)
    out +=
        " " + words.say(kContext,
                        phrase("overnight",
                               "That is very much. Changing part of the water first takes the same part of "
                               "it away: ask us what that costs against the chlorine."));
  return out;
}

std::string test_running_words(const Words& words, const Instant& start, const Instant& due) {
  return words.say(
      kContext,
      phrase("overnight",
             "Wait for the overnight test of this bottle: it is read %1, and we call you with what "
             "the water needs. Add no chlorine by guess."),
      {clock_words(words, start, due)});
}

std::vector<std::string> demand_lines(const Words& words, const DemandResult& result) {
  std::vector<std::string> out;
  for (const Statement& statement : result.statements()) out.push_back(statement_text(words, statement));
  return out;
}

}  // namespace brimline
