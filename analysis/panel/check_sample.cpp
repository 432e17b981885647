// SPDX-License-Identifier: GPL-3.0-or-later
// The story of the bottle: age, warmth, and what was poured in just before. The hours are the counter's own
// policy; rules for laboratories ask for chlorine and pH within 15 minutes (40 CFR 136.3, table II; from
// memory).
#include <algorithm>

#include "analysis/panel/check_rules.h"

namespace brimline {

namespace {

constexpr double kDayH = 24;
constexpr double kTurnoverH = 8;  // where not told: Australian fact sheet 605 (2013) gives 6 to 8 h
constexpr double kColdC = 15, kWarmC = 30;

// Analytes read whose value holds up to `sound` hours and is a hint up to `hint`.
template <class Keep>
std::vector<AnalyteId> analytes_that(const Look& look, Keep keep) {
  std::vector<AnalyteId> out;
  for (const CheckedValue& value : look.panel.values)
    if (const AnalyteKind* kind = find_analyte(value.analyte); kind && keep(*kind, value))
      out.push_back(value.analyte);
  return out;
}

void bottle_two_hours(const Look& look, Remarks& remarks) {
  const auto age = look.age_h();
  if (!age || *age > kDayH) return;
  const auto analytes = analytes_that(look, [&](const AnalyteKind& kind, const CheckedValue&) {
    return *age > kind.sound_h && *age <= kind.indicative_h;
  });
  if (!analytes.empty())
    remarks.say(Verdict::note, analytes,
                phrase("check",
                       "The bottle was %1 hours old when read. What it says of %2 is a hint only: have the "
                       "customer test that at home or bring water less than 2 hours old."),
                {number(*age, 1), names_of(analytes)});
}

void bottle_six_hours(const Look& look, Remarks& remarks) {
  const auto age = look.age_h();
  if (!age || *age > kDayH) return;
  const auto analytes = analytes_that(
      look, [&](const AnalyteKind& kind, const CheckedValue&) { return *age > kind.indicative_h; });
  if (!analytes.empty())
    remarks.say(
        Verdict::reject, analytes,
        phrase("check",
               "The bottle was %1 hours old when read: too old for %2. Use it for alkalinity, hardness, "
               "stabilizer, salt and metals only, and ask for water less than 2 hours old for the rest."),
        {number(*age, 1), names_of(analytes)});
}

void bottle_day_old(const Look& look, Remarks& remarks) {
  const auto age = look.age_h();
  if (!age || *age <= kDayH) return;
  remarks.say(Verdict::fresh_sample,
              analytes_that(look, [](const AnalyteKind&, const CheckedValue&) { return true; }),
              phrase("check",
                     "The bottle was %1 hours old when read. After a day nothing in it can be trusted: ask "
                     "for a new sample, filled and capped under water, elbow deep, away from the inlets."),
              {number(*age, 0)});
}

void age_unknown(const Look& look, Remarks& remarks) {
  if (look.bottle.taken_at && look.bottle.tested_at) return;
  const auto analytes =
      analytes_that(look, [](const AnalyteKind& kind, const CheckedValue&) { return kind.sound_h < kDayH; });
  if (!analytes.empty())
    remarks.say(Verdict::note, analytes,
                phrase("check",
                       "Nobody noted when the bottle was %1. Ask: after 2 hours sanitizer and pH are a hint "
                       "only, after 6 they count for nothing."),
                {look.bottle.taken_at ? "read" : "filled"});
}

void clocks_contradict(const Look& look, Remarks& remarks) {
  if (!look.bottle.taken_at || !look.bottle.tested_at) return;
  if (hours_between(*look.bottle.taken_at, *look.bottle.tested_at) >= 0) return;
  remarks.say(Verdict::note, {},
              phrase("check",
                     "By the times noted the bottle was read before it was filled. One clock is wrong, or "
                     "the day was mistyped: ask how old the water is."));
}

void time_in_future(const Look& look, Remarks& remarks) {
  const auto& written = look.bottle.tested_at ? look.bottle.tested_at : look.bottle.taken_at;
  if (!look.now || !written || hours_between(*look.now, *written) <= 1) return;
  remarks.say(Verdict::note, {},
              phrase("check",
                     "The bottle's time (%1) lies ahead of this counter's clock (%2). Set the clock or "
                     "correct the time, or the visits will come out of order."),
              {written->text(), look.now->text()});
}

bool by_colour(const CheckedValue& value) {
  return value.method != Method::probe && value.method != Method::drop_titration;
}

// Colour tests that come out wrong in cold or hot water: the sanitizer's, pH and stabilizer.
std::vector<AnalyteId> colour_tests(const Look& look) {
  return analytes_that(look, [](const AnalyteKind& kind, const CheckedValue& value) {
    return by_colour(value) && (kind.sound_h < kDayH || kind.id == "cyanuric_acid");
  });
}

void sample_cold(const Look& look, Remarks& remarks) {
  const auto& temperature = look.bottle.sample_temperature;
  if (!temperature || temperature->celsius() >= kColdC) return;
  if (const auto analytes = colour_tests(look); !analytes.empty())
    remarks.say(
        Verdict::repeat, analytes,
        phrase("check",
               "The sample was read at %1 C. Below 15 C colours form slowly and stabilizer reads wrong: "
               "stand the closed bottle in warm water until it is at 20 to 25 C and read %2 again."),
        {number(temperature->celsius(), 0), names_of(analytes)});
}

void sample_warm(const Look& look, Remarks& remarks) {
  const auto& temperature = look.bottle.sample_temperature;
  if (!temperature || temperature->celsius() <= kWarmC) return;
  if (const auto analytes = colour_tests(look); !analytes.empty())
    remarks.say(
        Verdict::repeat, analytes,
        phrase("check",
               "The sample was read at %1 C. Above 30 C chlorine is lost and combined chlorine breaks into "
               "the free reading: cool the closed bottle to 20 to 25 C and read %2 again."),
        {number(temperature->celsius(), 0), names_of(analytes)});
}

// What a chemical moves at once, until the pump has mixed it.
struct MovesRow {
  std::string_view chemical;
  std::vector<AnalyteId> analytes;
};

const std::vector<MovesRow>& moves() {
  static const std::vector<AnalyteId> chlorine = {"free_chlorine", "total_chlorine", "ph"},
                                      acid = {"ph", "total_alkalinity"},
                                      salt = {"salt", "tds", "conductivity"};
  static const std::vector<MovesRow> rows = {
      {"hydrochloric_acid", acid},
      {"sodium_bisulfate", acid},
      {"sodium_bicarbonate", acid},
      {"sodium_carbonate", acid},
      {"sodium_sesquicarbonate", acid},
      {"borax", {"ph", "total_alkalinity", "borate"}},
      {"boric_acid", {"ph", "borate"}},
      {"calcium_chloride", {"calcium_hardness", "total_hardness"}},
      {"cyanuric_acid", {"cyanuric_acid", "ph"}},
      {"sodium_hypochlorite", chlorine},
      {"calcium_hypochlorite", chlorine},
      {"dichlor", chlorine},
      {"trichlor", chlorine},
      {"potassium_monopersulfate", chlorine},
      {"sodium_thiosulfate", chlorine},
      {"sodium_sulfite", chlorine},
      {"ascorbic_acid", chlorine},
      {"hydrogen_peroxide", {"free_chlorine", "total_chlorine", "peroxide"}},
      {"bcdmh", {"total_bromine", "free_chlorine", "total_chlorine"}},
      {"sodium_bromide", {"bromide"}},
      {"sodium_chloride", salt},
      {"lanthanum_chloride", {"phosphate"}},
      {"copper_sulfate", {"copper"}},
      {"phmb", {"biguanide"}}};
  return rows;
}

// What is not the vessel's own water there: chlorine and pH come fresh from feeder, cell and heater at an
// inlet or in a pipe; where tablets lie, acid and stabilizer too; rain, oils and sun lie on the surface.
// Common practice, no source.
struct WrongPlace {
  SampledAt at;
  std::vector<AnalyteId> analytes;
  const char* words;
};

const std::vector<WrongPlace>& wrong_places() {
  static const std::vector<AnalyteId> sanitizer = {"free_chlorine", "total_chlorine", "total_bromine",
                                                   "biguanide",     "peroxide",       "ph"};
  static const std::vector<AnalyteId> tablets = {"free_chlorine",    "total_chlorine", "total_bromine",
                                                 "biguanide",        "peroxide",       "ph",
                                                 "total_alkalinity", "cyanuric_acid"};
  static const std::vector<WrongPlace> rows = {
      {SampledAt::surface, sanitizer,
       phrase("check",
              "The bottle was filled at the surface, where sun, rain and oils change the water. It says "
              "nothing of %1; it holds for %2. Ask for water from elbow deep, away from the inlets.")},
      {SampledAt::skimmer, tablets,
       phrase("check",
              "The bottle was filled at the skimmer, where tablets may lie. It says nothing of %1; it holds "
              "for %2. Ask for water from elbow deep, away from skimmer and inlets.")},
      {SampledAt::inlet, sanitizer,
       phrase("check",
              "The bottle was filled at an inlet, fresh from feeder, cell or heater. It says nothing of %1; "
              "it holds for %2. Ask for water from elbow deep, away from the inlets.")},
      {SampledAt::pipe, tablets,
       phrase("check",
              "The bottle was filled out of a pipe, not out of the vessel. It says nothing of %1; it holds "
              "for %2. Ask for water from elbow deep, away from the inlets.")}};
  return rows;
}

void wrong_place(const Look& look, Remarks& remarks) {
  if (!look.bottle.sampled_at) return;
  for (const WrongPlace& row : wrong_places()) {
    if (row.at != *look.bottle.sampled_at) continue;
    const auto spoilt = [&](const AnalyteKind& kind) {
      return std::find(row.analytes.begin(), row.analytes.end(), kind.id) != row.analytes.end();
    };
    const auto lost =
        analytes_that(look, [&](const AnalyteKind& kind, const CheckedValue&) { return spoilt(kind); });
    const auto held =
        analytes_that(look, [&](const AnalyteKind& kind, const CheckedValue&) { return !spoilt(kind); });
    if (!lost.empty()) remarks.say(Verdict::fresh_sample, lost, row.words, {names_of(lost), names_of(held)});
  }
}

void just_dosed(const Look& look, Remarks& remarks) {
  const double turnover = look.vessel.turnover_h.value_or(kTurnoverH);
  for (const Addition& addition : look.bottle.additions_since) {
    if (!addition.days_before || *addition.days_before * 24 >= turnover) continue;
    const auto row = std::find_if(moves().begin(), moves().end(),
                                  [&](const MovesRow& r) { return r.chemical == addition.chemical; });
    if (row == moves().end()) continue;
    const auto analytes = analytes_that(look, [&](const AnalyteKind& kind, const CheckedValue&) {
      return std::find(row->analytes.begin(), row->analytes.end(), kind.id) != row->analytes.end();
    });
    if (!analytes.empty())
      remarks.say(Verdict::fresh_sample, analytes,
                  phrase("check",
                         "A dose went in %1 hours before the bottle was filled; the pump needs %2 hours to "
                         "mix it. Ask for a new sample after that: %3 of this one may be anything."),
                  {number(*addition.days_before * 24, 1), number(turnover, 0), names_of(analytes)});
  }
}

void after_storm(const Look& look, Remarks& remarks) {
  if (look.bottle.occasion == Occasion::after_storm)
    remarks.say(Verdict::note, {},
                phrase("check",
                       "After a storm rain lies on top of the pool. If the pump has not run since for a "
                       "whole turnover, the bottle shows the rain and not the pool: ask."));
}

void opening_in_layers(const Look& look, Remarks& remarks) {
  if (look.bottle.occasion == Occasion::opening)
    remarks.say(Verdict::note, {},
                phrase("check",
                       "At an opening the water has stood in layers. Ask whether the pump has run for a "
                       "whole turnover; if not, have a new bottle filled after it has."));
}

}  // namespace

std::span<const CheckRow> sample_checks() {
  static constexpr CheckRow rows[] = {{"bottle_two_hours", bottle_two_hours},
                                      {"bottle_six_hours", bottle_six_hours},
                                      {"bottle_day_old", bottle_day_old},
                                      {"age_unknown", age_unknown},
                                      {"clocks_contradict", clocks_contradict},
                                      {"time_in_future", time_in_future},
                                      {"sample_cold", sample_cold},
                                      {"sample_warm", sample_warm},
                                      {"wrong_place", wrong_place},
                                      {"just_dosed", just_dosed},
                                      {"after_storm", after_storm},
                                      {"opening_in_layers", opening_in_layers}};
  return rows;
}

}  // namespace brimline
