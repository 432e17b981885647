// SPDX-License-Identifier: GPL-3.0-or-later
// Free and total chlorine by DPD: what contradicts, what bleaches, what reads as chlorine and is none.
// Interferences: Standard Methods 4500-Cl G, as NEMI records it; bleaching: Pool & Spa News, 2018.
#include <algorithm>
#include <cmath>

#include "analysis/panel/check_rules.h"
#include "analysis/panel/demand.h"
#include "analysis/panel/demand_setup.h"

namespace brimline {

namespace {

constexpr double kContradiction = 2.8;  // in sds of the difference, one side: 0.3 % by chance
constexpr double kBleachingMgL = 10;    // mg/L Cl2 from which the dye may be bleached to nothing
constexpr double kUndilutedMgL = 5;     // mg/L Cl2: end of the scope of ISO 7393-2:2017
constexpr double kRecentDays = 2;
constexpr double kHardlyAny = 0.3;                         // mg/L Cl2 that a bleached vial may still show
constexpr double kLittleAfterDose = 0.5;                   // and where chlorine went in lately
constexpr double kChlorinePerManganese = 70.906 / 54.938;  // Mn(IV) takes two electrons, as Cl2 does

constexpr std::string_view kChlorineSources[] = {"sodium_hypochlorite", "calcium_hypochlorite", "dichlor",
                                                 "trichlor"};

bool chlorine_added(const Look& look, double days) {
  return std::any_of(std::begin(kChlorineSources), std::end(kChlorineSources),
                     [&](std::string_view chemical) { return look.added(chemical, days); });
}

std::vector<AnalyteId> chlorine_read(const Look& look) {
  std::vector<AnalyteId> out;
  for (const char* analyte : {"free_chlorine", "total_chlorine"})
    if (look.value(analyte)) out.emplace_back(analyte);
  return out;
}

void free_above_total(const Look& look, Remarks& remarks) {
  const auto free = look.inside("free_chlorine"), total = look.inside("total_chlorine");
  if (!free || !total) return;
  const Measured excess = difference(*free, *total);
  if (excess.value <= kContradiction * excess.sd) return;
  remarks.say(Verdict::repeat, {"free_chlorine", "total_chlorine"},
              phrase("check",
                     "Free chlorine (%1) cannot be above total chlorine (%2). Were the vials exchanged, or "
                     "the second reagent forgotten? Rinse both vials and read both again."),
              {amount("free_chlorine", free->value), amount("total_chlorine", total->value)});
}

// Bromine reads free and combined alike, and biguanide spoils the test: combined chlorine is of chlorine
// water only.
std::optional<Measured> combined_chlorine(const Look& look) {
  if (look.uses(Sanitizer::bromine) || look.uses(Sanitizer::biguanide)) return std::nullopt;
  return look.panel.combined_chlorine();
}

void combined_not_significant(const Look& look, Remarks& remarks) {
  const auto combined = combined_chlorine(look);
  if (!combined || combined->value <= 0 || combined->value > 2 * combined->sd) return;
  remarks.say(
      Verdict::note, {"total_chlorine"},
      phrase("check",
             "The combined chlorine (%1 mg/L) is within the error of the two readings: it counts as none."),
      {MeasuredTerm{*combined}});
}

bool near_nothing(const Look& look, std::string_view analyte, double most = kHardlyAny) {
  const auto value = look.inside(analyte);
  return !value || value->value <= std::max(most, 2 * value->sd);
}

bool undiluted_colour(const Look& look) {
  return std::none_of(look.bottle.readings.begin(), look.bottle.readings.end(), [](const Reading& r) {
    return r.analyte == "free_chlorine" && (r.dilution > 1 || r.method == Method::drop_titration);
  });
}

// Why chlorine should be there although the dye shows none; null: nothing says so.
const char* reason_to_expect_chlorine(const Look& look) {
  if (chlorine_added(look, kRecentDays)) return phrase("check", "chlorine was added in the last two days");
  if (look.shows(Sign::tablets_in_use)) return phrase("check", "chlorine tablets are in use");
  const auto total = look.inside("total_chlorine");
  if (total && total->value >= 3) return phrase("check", "the total reading shows a good deal of chlorine");
  // Fresh fill water holds no chlorine and may well be that alkaline.
  if (look.bottle.occasion == Occasion::new_fill) return nullptr;
  const CheckedValue* ph = look.value("ph");
  if (ph && ph->method != Method::probe && ph->value >= 8.2)
    return phrase("check", "the pH dye is at its purple end, as much chlorine turns it");
  return nullptr;
}

// A demand test that found the demand gives the same dose however much the sample itself held.
bool demand_found(const Look& look) {
  const auto free = look.inside("free_chlorine");
  return look.bottle.demand_test && free && judge_demand(*look.bottle.demand_test, *free, 0).enough();
}

void bleached(const Look& look, Remarks& remarks) {
  if (demand_found(look)) return;
  const CheckedValue* free = look.value("free_chlorine");
  if (!free || look.uses(Sanitizer::biguanide) || free->clipped == Clip::above || !undiluted_colour(look))
    return;
  const double most = chlorine_added(look, kRecentDays) ? kLittleAfterDose : kHardlyAny;
  if (!near_nothing(look, "free_chlorine", most)) return;
  const char* reason = reason_to_expect_chlorine(look);
  if (!reason) return;
  remarks.say(
      Verdict::dilute, chlorine_read(look),
      phrase("check",
             "Hardly any chlorine shows, yet %1. Above about %2 mg/L the colour is bleached and looks like "
             "none. Mix 1 part of sample with 4 parts of chlorine-free (deionised) water, read again and "
             "multiply by 5, before any chlorine is dosed. Do not smell the bottle to find out."),
      {PhraseTerm{"check", reason}, number(kBleachingMgL, 0)});
}

void chlorine_near_bleaching(const Look& look, Remarks& remarks) {
  for (const Reading& reading : look.bottle.readings) {
    if (reading.analyte != "free_chlorine" || reading.clipped || reading.dilution > 1) continue;
    if (reading.method != Method::photometer && reading.method != Method::comparator) continue;
    if (reading.value <= kUndilutedMgL || reading.value > kBleachingMgL) continue;
    remarks.say(Verdict::note, {"free_chlorine"},
                phrase("check",
                       "%1 is beyond %2 mg/L, where the colour test is made for undiluted water: it may read "
                       "low. Mix 1+1 with chlorine-free water and multiply by 2 if a dose depends on it."),
                {amount("free_chlorine", reading.value), number(kUndilutedMgL, 0)});
  }
}

void non_chlorine_oxidiser(const Look& look, Remarks& remarks) {
  const auto combined = combined_chlorine(look);
  if (!combined || !look.added("potassium_monopersulfate", kRecentDays)) return;
  if (combined->value <= std::max(0.2, 2 * combined->sd)) return;
  remarks.say(Verdict::repeat, {"total_chlorine"},
              phrase("check",
                     "Non-chlorine shock (monopersulfate) went in during the last two days and reads as "
                     "combined chlorine: %1 mg/L here may be that. Read total chlorine again in two days, or "
                     "with the reagent that masks monopersulfate; do not shock on this number."),
              {number(combined->value, 2)});
}

void manganese_reads_as_chlorine(const Look& look, Remarks& remarks) {
  const auto manganese = look.inside("manganese"), free = look.inside("free_chlorine");
  if (!manganese || !free || free->value <= 0) return;
  const double false_chlorine = kChlorinePerManganese * manganese->value;
  if (manganese->value <= 2 * manganese->sd || false_chlorine <= std::max(0.2, 0.1 * free->value)) return;
  remarks.say(
      Verdict::repeat, chlorine_read(look),
      phrase(
          "check",
          "Manganese (%1), once oxidised, reads as up to %2 mg/L of chlorine. Read a second vial in which "
          "the chlorine is destroyed first (arsenite or thioacetamide, as the method says) and take it off."),
      {amount("manganese", manganese->value), number(false_chlorine, 1)});
}

void copper_reads_as_chlorine(const Look& look, Remarks& remarks) {
  const auto copper = look.inside("copper");
  if (!copper || copper->value < 10 || !look.value("free_chlorine")) return;
  remarks.say(Verdict::repeat, chlorine_read(look),
              phrase("check",
                     "Copper at %1 is more than the reagent can mask (about 10 mg/L): the chlorine reading "
                     "may be false. Dilute 1+4 with deionised water and read again."),
              {amount("copper", copper->value)});
}

void bromine_reads_as_chlorine(const Look& look, Remarks& remarks) {
  if (look.uses(Sanitizer::bromine) || !look.value("free_chlorine")) return;
  const auto bromine = look.inside("total_bromine"), bromide = look.inside("bromide");
  const bool seen =
      (bromine && bromine->value > 3 * bromine->sd) || (bromide && bromide->value > 3 * bromide->sd);
  const bool told = look.added("sodium_bromide", 3650) || look.added("bcdmh", 3650) ||
                    look.vessel.previous_sanitizer == Sanitizer::bromine;
  if (!seen && !told) return;
  remarks.say(Verdict::note, {"free_chlorine"},
              phrase("check",
                     "There is or was bromide in this water. Chlorine turns it into bromine, which reads as "
                     "chlorine and which stabilizer does not protect: treat the vessel as a bromine one "
                     "until the water is changed."));
}

void peroxide_with_chlorine(const Look& look, Remarks& remarks) {
  const auto peroxide = look.inside("peroxide"), free = look.inside("free_chlorine");
  if (!peroxide || !free || peroxide->value <= 3 * peroxide->sd || free->value <= std::max(0.5, 3 * free->sd))
    return;
  remarks.say(Verdict::repeat, {"peroxide", "free_chlorine"},
              phrase("check",
                     "Peroxide (%1) and free chlorine (%2) destroy each other and cannot both be there. "
                     "Peroxide colours the chlorine test: ask what went in, and read both again."),
              {amount("peroxide", peroxide->value), amount("free_chlorine", free->value)});
}

void reducer_left_over(const Look& look, Remarks& remarks) {
  if (!look.value("free_chlorine") || !near_nothing(look, "free_chlorine")) return;
  for (const char* chemical : {"sodium_thiosulfate", "sodium_sulfite", "ascorbic_acid"})
    if (look.added(chemical, 7)) {
      remarks.say(
          Verdict::note, {"free_chlorine"},
          phrase("check",
                 "A chlorine neutraliser went in during the last week: what is left of it eats the next "
                 "chlorine first, and may spoil the colour. The missing chlorine need not mean a demand."));
      return;
    }
}

void demand_test_due(const Look& look, Remarks& remarks) {
  if (look.bottle.demand_test) return;
  const auto sign = demand_sign(look.bottle, look.vessel, look.earlier);
  if (sign == DemandSign::used_up)
    remarks.say(
        Verdict::note, {"free_chlorine"},
        phrase("check",
               "Chlorine is used up: the overnight demand test says how much this water takes before any "
               "is left."));
  if (sign == DemandSign::combined_stays)
    remarks.say(Verdict::note, {"total_chlorine"},
                phrase("check",
                       "Combined chlorine stays from visit to visit: the overnight demand test says how much "
                       "this water takes to be rid of it."));
}

void green_in_spite_of_chlorine(const Look& look, Remarks& remarks) {
  const auto free = look.inside("free_chlorine");
  if (!look.shows(Sign::green_water) || !free || free->value < 3) return;
  if (look.value("copper") && look.value("iron")) return;
  remarks.say(
      Verdict::note, {"copper", "iron"},
      phrase("check",
             "Green water with %1 of free chlorine is more likely metal than algae: read copper and iron."),
      {amount("free_chlorine", free->value)});
}

}  // namespace

std::span<const CheckRow> chlorine_checks() {
  static constexpr CheckRow rows[] = {{"free_above_total", free_above_total},
                                      {"combined_not_significant", combined_not_significant},
                                      {"bleached", bleached},
                                      {"chlorine_near_bleaching", chlorine_near_bleaching},
                                      {"non_chlorine_oxidiser", non_chlorine_oxidiser},
                                      {"manganese_reads_as_chlorine", manganese_reads_as_chlorine},
                                      {"copper_reads_as_chlorine", copper_reads_as_chlorine},
                                      {"bromine_reads_as_chlorine", bromine_reads_as_chlorine},
                                      {"peroxide_with_chlorine", peroxide_with_chlorine},
                                      {"reducer_left_over", reducer_left_over},
                                      {"demand_test_due", demand_test_due},
                                      {"green_in_spite_of_chlorine", green_in_spite_of_chlorine}};
  return rows;
}

}  // namespace brimline
