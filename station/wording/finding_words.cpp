// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <iterator>

#include "analysis/panel/analyte.h"
#include "station/wording/plan_words.h"
#include "station/wording/unit_words.h"

namespace brimline {

namespace {

struct Sentence {
  const char* id;
  const char* text;  // %1 the reading, %2 the bound it passes, %3 the analyte's name
};

constexpr Sentence kFindings[] = {
    {"free_chlorine_low",
     phrase("plan", "Free chlorine is %1; it should be at least %2. Germs and algae can grow.")},
    {"free_chlorine_high",
     phrase("plan", "Free chlorine is %1; swim only below %2. Add none and let it fall.")},
    {"combined_chlorine_high",
     phrase("plan",
            "Total chlorine is %1; with this free chlorine %2 is the most. The rest "
            "is spent chlorine, which stings and smells.")},
    {"stabilizer_ratio", phrase("plan",
                                "Stabilizer is %1, and so little free chlorine beside it is held back too "
                                "strongly to protect anybody.")},
    {"total_bromine_low", phrase("plan", "Bromine is %1; it should be at least %2. Germs can grow.")},
    {"total_bromine_high",
     phrase("plan", "Bromine is %1; it should be at most %2. Add none and let it fall.")},
    {"biguanide_low",
     phrase("plan", "The biguanide sanitizer is %1; it should be at least %2. Germs can grow.")},
    {"biguanide_high",
     phrase("plan", "The biguanide sanitizer is %1; it should be at most %2. Add none; foam may come.")},
    {"peroxide_low", phrase("plan", "Peroxide is %1; it should be at least %2 to keep the water clear.")},
    {"peroxide_high", phrase("plan", "Peroxide is %1; it should be at most %2. Add none and let it fall.")},
    {"ph_low",
     phrase("plan", "pH is %1; it should be at least %2. Acid water attacks metal, plaster and eyes.")},
    {"ph_high",
     phrase("plan",
            "pH is %1; it should be at most %2. Eyes smart, scale can form, and chlorine works slowly.")},
    {"ph_high_other", phrase("plan", "pH is %1; it should be at most %2. Eyes smart and scale can form.")},
    {"ph_high_bromine",
     phrase("plan",
            "pH is %1; it should be at most %2. Eyes smart, scale can form, and bromine works less.")},
    {"total_alkalinity_high_sour",
     phrase(
         "plan",
         "Total alkalinity is %1; it should be at most %2. pH is low at once: air raises pH first, then acid "
         "takes alkalinity down.")},
    {"total_alkalinity_low",
     phrase("plan", "Total alkalinity is %1; it should be at least %2. pH will not stay put.")},
    {"total_alkalinity_high",
     phrase("plan", "Total alkalinity is %1; it should be at most %2. It keeps pushing pH up.")},
    {"calcium_hardness_low",
     phrase(
         "plan",
         "Calcium hardness is %1; it should be at least %2. Hungry water takes calcium from the surface.")},
    {"calcium_hardness_high",
     phrase("plan", "Calcium hardness is %1; it should be at most %2. Scale can form.")},
    {"cyanuric_acid_low",
     phrase("plan", "Stabilizer is %1; it should be at least %2. Sunlight takes the chlorine within hours.")},
    {"cyanuric_acid_high", phrase("plan",
                                  "Stabilizer is %1; it should be at most %2. It holds the chlorine back; "
                                  "only new water brings it down.")},
    {"salt_low", phrase("plan", "Salt is %1; the generator wants at least %2, or as its manual says.")},
    {"salt_high", phrase("plan",
                         "Salt is %1; the generator wants at most %2, or as its manual says. Only new water "
                         "brings it down.")},
    {"tds_high",
     phrase("plan", "Dissolved solids are %1; %2 is the most. The water is worn out; new water helps.")},
    {"sulfate_high",
     phrase("plan", "Sulfate is %1; above %2 it attacks cement. Only new water brings it down.")},
    {"iron_high", phrase("plan", "Iron is %1; from %2 on it can stain.")},
    {"copper_high", phrase("plan", "Copper is %1; from %2 on it can stain the surface and light hair.")},
    {"manganese_high", phrase("plan", "Manganese is %1; from %2 on it can stain.")},
    {"phosphate_high", phrase("plan", "Phosphate is %1; above %2 it feeds algae when chlorine runs low.")},
    {"nitrate_high",
     phrase("plan", "Nitrate is %1; above %2 it feeds algae. Only new water brings it down.")},
    {"borate_high", phrase("plan", "Borate is %1; it should be at most %2. Add none.")},
    {"turbidity_high", phrase("plan", "Turbidity is %1; clear water is below %2.")},
    {"si_edge",
     phrase("plan",
            "The saturation index in the vessel is %1, past %2 by less than its error: at the edge. "
            "No treatment is begun for it alone.")},
    {"si_low",
     phrase("plan", "The saturation index in the vessel is %1, below %2: the water dissolves calcium.")},
    {"si_high",
     phrase("plan", "The saturation index in the vessel is %1, above %2: the water lays down scale.")},
    {"too_hot", phrase("plan", "The water is at %1; %2 is the most that is safe to sit in.")},
    {"chlorine_demand",
     phrase("plan", "The overnight test shows that this water uses up %1 of chlorine before any is left.")},
    {"demand_not_found",
     phrase(
         "plan",
         "The demand test has not found how much chlorine this water uses up; no bottle held its chlorine.")},
    {"chemicals_mixed_or_fuming",
     phrase("plan", "Chemicals have been mixed or are fuming: this is an emergency.")},
    {"drain_not_visible",
     phrase("plan", "The main drain cannot be seen: nobody could see a swimmer in trouble.")},
    {"green_water", phrase("plan", "The water is green: algae are growing.")},
    {"slimy_walls", phrase("plan", "The walls are slimy: algae or a film of bacteria is growing.")},
    {"eye_irritation", phrase("plan", "Eyes smart after swimming.")},
    {"strong_smell", phrase("plan", "The water smells strongly.")},
    {"cloudy", phrase("plan", "The water is cloudy.")},
    {"foam", phrase("plan",
                    "The water foams: soap, lotion or old water. Rinse off before getting in; if it goes on, "
                    "change the water.")},
    {"stains",
     phrase("plan",
            "There are stains: metals or leaves; what is in the stain no longer shows in the water.")},
    {"scale", phrase("plan", "There is scale on the surface.")},
    {"green_hair", phrase("plan", "Light hair turns green: that is copper.")},
    {"tablets_in_use",
     phrase("plan", "Chlorine tablets are in use: each adds acid and, for good, stabilizer.")},
    {"incident", phrase("plan", "Something happened in this water that a home plan must not treat.")},
    {"public_vessel", phrase("plan", "This water is open to others than the household.")},
    {"sanitizer_unknown", phrase("plan", "Nobody has said what keeps this water clean.")},
    {"sanitizer_changed",
     phrase("plan", "The vessel has changed between biguanide and another sanitizer; they must not meet.")},
    {"sanitizer_not_read",
     phrase("plan", "The sanitizer was not read, so nobody knows whether the water is safe.")},
    {"sanitizer_doubtful",
     phrase("plan",
            "The sanitizer's reading cannot be believed yet, so nobody knows whether the water is safe.")},
    {"reading_clipped", phrase("plan",
                               "%3 was at the end of the method's range (%1): dilute the sample and read it "
                               "again. Nothing is dosed on it.")},
    {"reading_rejected", phrase("plan", "%3 (%1) cannot be believed: nothing is dosed on it.")},
    {"reading_repeat", phrase("plan", "%3 (%1) must be read again before anything is dosed on it.")},
    {"readings_contradict",
     phrase("plan", "The readings contradict each other: no water can have all of them.")},
    {"volume_unknown", phrase("plan",
                              "The volume is not known, so no amount can be worked out. Measure length, "
                              "width and average depth, or read the water meter while filling.")},
};

std::string bound(const Words& words, const Finding& f) {
  if (!f.target || !f.value) return "";
  const bool below = f.target->low && *f.value < *f.target->low;
  const std::optional<double> b = below ? f.target->low : f.target->high;
  return b ? reading_in_words(words, f.analyte, *b) : "";
}

constexpr const char* kBelowEdge = phrase(
    "plan",
    "%1 is %2, below %3 by less than the error of the reading: at the edge. Read it again; no treatment "
    "is begun for it alone.");
constexpr const char* kAboveEdge = phrase(
    "plan",
    "%1 is %2, above %3 by less than the error of the reading: at the edge. Read it again; no treatment "
    "is begun for it alone.");

constexpr const char* kBelowEdgeDosed = phrase("plan",
                                               "%1 is %2, below %3 by less than the error of the reading: at "
                                               "the edge. It is mended along with the rest.");
constexpr const char* kAboveEdgeDosed = phrase("plan",
                                               "%1 is %2, above %3 by less than the error of the reading: at "
                                               "the edge. It is mended along with the rest.");

bool is_edge(const Finding& f) {
  return f.id.ends_with("_edge");
}

// Of any reading: %1 its name, %2 the value with its error, %3 the bound it passes.
std::string edge_text(const Words& words, const Finding& f, const WaterCase& where) {
  const AnalyteKind* kind = find_analyte(*f.analyte);
  const Measured m{f.value.value_or(0), f.sd.value_or(0)};
  const bool below = f.target && f.target->low && m.value < *f.target->low;
  const std::string name = kind ? words.say("analyte", kind->name.c_str()) : *f.analyte;
  const bool dosed = where.dosed_for.contains(f.id);
  return words.say("plan",
                   dosed   ? (below ? kBelowEdgeDosed : kAboveEdgeDosed)
                   : below ? kBelowEdge
                           : kAboveEdge,
                   {name, measured_in_words(words, f.analyte, m), bound(words, f)});
}

}  // namespace

std::string reading_in_words(const Words& words, const std::optional<AnalyteId>& analyte, double value) {
  const AnalyteKind* kind = analyte ? find_analyte(*analyte) : nullptr;
  if (!kind) return words.number(value, 2);
  const std::string number = words.number(value, kind->decimals);
  return kind->unit.empty() ? number : number + " " + unit_words(words, *kind);
}

std::string measured_in_words(const Words& words, const std::optional<AnalyteId>& analyte,
                              const Measured& m) {
  const AnalyteKind* kind = analyte ? find_analyte(*analyte) : nullptr;
  const int decimals = decimals_for(m.sd);
  const std::string both = words.number(m.value, decimals) + " ± " + words.number(m.sd, decimals);
  return kind && !kind->unit.empty() ? both + " " + unit_words(words, *kind) : both;
}

// The sentence that fits this water.
std::string told_id(const Finding& f, const WaterCase& where) {
  if (f.id == "ph_high" && where.sanitizer == Sanitizer::bromine) return "ph_high_bromine";
  if (f.id == "ph_high" && where.sanitizer == Sanitizer::biguanide) return "ph_high_other";
  if (f.id == "total_alkalinity_high" && where.ph && *where.ph < 7.2) return "total_alkalinity_high_sour";
  return f.id;
}

std::string finding_text(const Words& words, const Finding& f, const WaterCase& where) {
  if (f.analyte && is_edge(f)) return edge_text(words, f, where);
  const std::string id = told_id(f, where);
  const auto found =
      std::find_if(std::begin(kFindings), std::end(kFindings), [&](const Sentence& s) { return id == s.id; });
  if (f.id == "too_hot" && f.value && f.target && f.target->high)
    return words.say("plan", found->text,
                     {temperature_words(words, *f.value, where.units),
                      temperature_words(words, *f.target->high, where.units)});
  if (found == std::end(kFindings)) return f.id;
  const AnalyteKind* kind = f.analyte ? find_analyte(*f.analyte) : nullptr;
  const std::string value = !f.value               ? ""
                            : f.sd.value_or(0) > 0 ? measured_in_words(words, f.analyte, {*f.value, *f.sd})
                                                   : reading_in_words(words, f.analyte, *f.value);
  const std::string name = kind ? words.say("analyte", kind->name.c_str()) : "";
  return words.say("plan", found->text, {value, bound(words, f), name});
}

std::vector<std::string> known_finding_ids() {
  std::vector<std::string> out;
  for (const Sentence& s : kFindings) out.emplace_back(s.id);
  return out;
}

}  // namespace brimline
