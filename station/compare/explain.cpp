// SPDX-License-Identifier: GPL-3.0-or-later
// What may lie behind the changes: the causes the inference found likelier than not, and rules of the rest.
#include <algorithm>
#include <cmath>

#include "station/compare/expectation.h"
#include "station/compare/volume_words.h"

namespace brimline {

namespace {

enum class Move { not_read, down, stayed, up };

struct Facts {
  std::span<const Pair> pairs;
  const Comparison& comparison;
  const Inference& inference;
  const Visit& later;

  const ReadingChange* change(std::string_view analyte) const { return comparison.find(analyte); }
  // Of later less expected, in sds; 0 where not read.
  double distance(std::string_view analyte) const {
    const ReadingChange* c = change(analyte);
    return c && c->expected_sd > 0 ? (c->later - c->expected) / c->expected_sd : 0;
  }
  // Against the expectation, at 1.96 sd.
  Move move(std::string_view analyte) const {
    if (!change(analyte)) return Move::not_read;
    const double z = distance(analyte);
    return z > 1.96 ? Move::up : z < -1.96 ? Move::down : Move::stayed;
  }
  bool told(std::string_view analyte) const {
    for (const Pair& pair : pairs)
      if (pair.analyte == analyte) return pair.told_any;
    return false;
  }
  bool chlorine() const { return later.vessel.sanitizer && is_chlorine(*later.vessel.sanitizer); }
  double of(Cause cause) const { return inference.of(cause); }
  bool replaced() const { return comparison.water_replaced.has_value(); }
};

// mg/L of free chlorine: the least that the US model code allows without stabilizer (MAHC 5.7.3.1.1.2)
constexpr double kGone = 1;

// A cause is what happened besides what was told; a sign of how the doses answered comes after it.
enum class Tier { cause, sign };

struct Rule {
  const char* id;
  double (*chance)(const Facts&);  // over a half it is said; a cause also as the likeliest of all
  const char* text;
  Tier tier = Tier::cause;
};

// Something beyond what is told and what every month does: likelier than that there is nothing.
bool unexplained(const Facts& f) {
  return f.inference.nothing < 0.5;
}

bool told_dose(const Facts& f) {
  for (const Pair& pair : f.pairs)
    if (pair.told_any && !pair.amount_missing && f.move(pair.analyte) == Move::stayed &&
        std::abs(pair.told) > 1.96 * std::hypot(pair.before.sd, pair.now.sd))
      return true;
  return false;
}

// A told dose that did not show: now stands nearer to where it was than to what the dose should have made.
bool dose_not_seen(const Facts& f) {
  if (!unexplained(f)) return false;
  for (const Pair& pair : f.pairs) {
    const double z = f.change(pair.analyte) ? pair.now.value - pair.expected() : 0;
    if (pair.told_any && !pair.amount_missing && f.move(pair.analyte) != Move::stayed && z * pair.told < 0)
      return true;
  }
  return false;
}

bool dose_beyond(const Facts& f) {
  if (!unexplained(f)) return false;
  for (const Pair& pair : f.pairs)
    if (pair.told_any && !pair.amount_missing && f.move(pair.analyte) != Move::stayed &&
        (pair.now.value - pair.expected()) * pair.told > 0)
      return true;
  return false;
}

double one_if(bool holds, double chance) {
  return holds ? chance : 0;
}

// Salt and calcium rising together show what neither shows alone: their distances add in quadrature.
bool rose_together(const Facts& f) {
  const double calcium = f.distance("calcium_hardness"), salt = f.distance("salt");
  return calcium > 1 && salt > 1 && (calcium + salt) / std::sqrt(2.0) > 2.5 && !f.told("calcium_hardness") &&
         !f.told("salt") && f.move("cyanuric_acid") != Move::down && !f.replaced();
}

double evaporation(const Facts& f) {
  return std::max(f.of(Cause::evaporation), one_if(rose_together(f), 0.55));
}

double chlorine_demand(const Facts& f) {
  // It is fed day by day: that it is less than weeks ago says little, that it is gone does.
  const ReadingChange* free = f.change("free_chlorine");
  const bool lost = free && free->later < kGone && f.move("free_chlorine") == Move::down;
  return f.chlorine() ? std::max(one_if(lost, 0.95), f.of(Cause::stabilizer_eaten)) : 0;
}

bool outgassing(const Facts& f) {
  return f.move("ph") == Move::up && f.move("total_alkalinity") != Move::up;
}

bool metal_source(const Facts& f) {
  return (f.move("iron") == Move::up || f.move("copper") == Move::up) && !f.told("copper");
}

bool volume_differs(const Facts& f) {
  return f.comparison.volume && !f.comparison.volume->agrees;
}

constexpr Rule kRules[] = {
    {"water_replaced", [](const Facts& f) { return one_if(f.replaced(), f.of(Cause::replaced)); },
     phrase("compare",
            "What only new water brings down fell together: about %1 % of the water was replaced (backwash, "
            "splash, a leak, rain or a drain).")},
    {"dose_not_seen", [](const Facts& f) { return f.inference.not_put_in; },
     phrase("compare",
            "A dose that was told does not show in the water: perhaps it was not put in, or not all of it.")},
    {"acid_or_tablets", [](const Facts& f) { return f.inference.acid_or_tablets; },
     phrase("compare", "Alkalinity fell and calcium did not: acid, dry acid or trichlor tablets do that.")},
    {"tablets", [](const Facts& f) { return 0.99 * f.of(Cause::tablets); },
     phrase("compare", "Stabilizer rose: trichlor tablets or dichlor bring it with every dose.")},
    {"calcium_hypochlorite", [](const Facts& f) { return f.of(Cause::calcium_hypochlorite); },
     phrase(
         "compare",
         "Calcium rose and alkalinity did not: calcium hypochlorite brings 7 mg/L of calcium hardness with "
         "every 10 mg/L of chlorine.")},
    {"evaporation", evaporation,
     phrase("compare",
            "Salts rose with nothing told: water evaporates and its salts stay, and the fill brings more.")},
    {"chlorine_demand", chlorine_demand,
     phrase("compare",
            "Chlorine did not hold: sun, bathers, too little stabilizer, or a demand in the water. A "
            "chlorine-demand test tells.")},
    {"stabilizer_lost", [](const Facts& f) { return 0.99 * f.of(Cause::stabilizer_eaten); },
     phrase(
         "compare",
         "Stabilizer fell alone. Water was not replaced; bacteria can turn stabilizer to ammonia. Meet the "
         "chlorine demand before stabilizer is added again.")},
    {"alkali_added", [](const Facts& f) { return f.of(Cause::alkali); },
     phrase("compare",
            "Alkalinity rose with nothing told: bicarbonate, soda ash, fill water or dissolving plaster.")},
    {"salt_added", [](const Facts& f) { return f.of(Cause::salt_added); },
     phrase("compare", "Salt rose with nothing told: ask whether salt was added.")},
    {"volume_differs", [](const Facts& f) { return one_if(volume_differs(f), 0.95); },
     phrase("compare",
            "The water answers the doses like %1, which the volume on file does not fit: measure the "
            "vessel."),
     Tier::sign},
    {"dose_less", [](const Facts& f) { return one_if(dose_not_seen(f), 0.75); },
     phrase("compare",
            "A dose that was told moved the water less than it should: perhaps part of it was not put in, or "
            "the volume on file is too small."),
     Tier::sign},
    {"dose_beyond", [](const Facts& f) { return one_if(dose_beyond(f), 0.75); },
     phrase(
         "compare",
         "A dose that was told moved the water more than it should: perhaps more was put in, or the volume "
         "on file is too large."),
     Tier::sign},
    {"metal_source", [](const Facts& f) { return one_if(metal_source(f), 0.7); },
     phrase("compare", "A metal rose: fill water, a corroding heater at low pH, or a copper product."),
     Tier::sign},
    {"told_dose", [](const Facts& f) { return one_if(told_dose(f), 0.6); },
     phrase("compare", "The doses told explain what they should: they worked."), Tier::sign},
    {"outgassing", [](const Facts& f) { return one_if(outgassing(f), 0.55); },
     phrase("compare",
            "pH rose without alkalinity: carbon dioxide leaves the water, faster with jets, a salt cell or a "
            "waterfall."),
     Tier::sign}};

// A water without chlorine meets no trichlor tablets; bromine's own eat alkalinity too (common practice, no
// source).
const char* text_of(const Rule& rule, const Facts& facts) {
  if (rule.id != std::string_view("acid_or_tablets") || facts.chlorine()) return rule.text;
  return facts.later.vessel.sanitizer == Sanitizer::bromine
             ? phrase("compare",
                      "Alkalinity fell and calcium did not: acid, dry acid or bromine tablets do that.")
             : phrase("compare", "Alkalinity fell and calcium did not: acid or dry acid does that.");
}

std::vector<std::string> values_for(const Rule& rule, const Comparison& comparison, const Visit& later,
                                    const Words& words) {
  const std::string_view id = rule.id;
  if (id == "water_replaced") return {words.number(100 * comparison.water_replaced->fraction, 0)};
  if (id == "volume_differs") {
    const std::optional<Units> units = later.customer ? later.customer->units : std::nullopt;
    return {volume_words(words, comparison.volume->m3, comparison.volume->sd, units.value_or(Units::metric))};
  }
  return {};
}

}  // namespace

std::vector<Explanation> explain(std::span<const Pair> pairs, const Comparison& comparison,
                                 const Inference& inference, const Visit& later, const Words& words) {
  const Facts facts{pairs, comparison, inference, later};
  struct Said {
    const Rule* rule;
    double chance;
  };
  std::vector<Said> said;
  double likeliest = 0;
  for (const Rule& rule : kRules) {
    said.push_back({&rule, rule.chance(facts)});
    if (rule.tier == Tier::cause) likeliest = std::max(likeliest, said.back().chance);
  }
  // Over a half, or where something must have happened, the likeliest of what it may be.
  const bool perhaps = likeliest <= 0.5 && inference.nothing < likeliest;
  std::erase_if(said, [&](const Said& one) {
    const bool best = perhaps && one.rule->tier == Tier::cause && one.chance == likeliest;
    return one.chance <= 0.5 && !best;
  });
  std::stable_sort(said.begin(), said.end(), [](const Said& a, const Said& b) {
    return a.rule->tier != b.rule->tier ? a.rule->tier < b.rule->tier : a.chance > b.chance;
  });
  std::vector<Explanation> out;
  out.reserve(said.size());
  for (const Said& one : said) {
    const std::vector<std::string> values = values_for(*one.rule, comparison, later, words);
    const char* told = text_of(*one.rule, facts);
    const std::string text =
        values.empty() ? words.say("compare", told) : words.say("compare", told, {values.front()});
    const bool sure = one.chance > 0.5;
    out.push_back(
        {one.rule->id, sure ? text : words.say("compare", phrase("compare", "Perhaps: %1"), {text})});
  }
  return out;
}

}  // namespace brimline
