// SPDX-License-Identifier: GPL-3.0-or-later
// The end of a method's range, dilution, and what is hard to believe.
#include <algorithm>
#include <cmath>

#include "analysis/panel/check_rules.h"

namespace brimline {

namespace {

// Whether a repeat inside the range has already replaced the reading.
bool superseded(const Look& look, size_t index) {
  const CheckedValue* value = look.value(look.bottle.readings[index].analyte);
  return value && std::find(value->used.begin(), value->used.end(), index) == value->used.end();
}

const MethodKind* method_of(const Reading& reading, const AnalyteKind& kind) {
  return reading.method ? kind.method(*reading.method) : nullptr;
}

// Parts of water to one part of sample for the next dilution: 1+1, 1+4 or 1+9.
double next_water_parts(double dilution) {
  return dilution < 2 ? 4 : 9;
}

template <class Visit>
void each_reading(const Look& look, Visit visit) {
  for (size_t i = 0; i < look.bottle.readings.size(); ++i) {
    const Reading& reading = look.bottle.readings[i];
    if (const AnalyteKind* kind = find_analyte(reading.analyte); kind && !superseded(look, i))
      visit(reading, *kind);
  }
}

// cyanuric acid and pH have rules of their own
bool has_own_rule(const Reading& reading) {
  return reading.analyte == "ph" || reading.analyte == "cyanuric_acid";
}

void say_dilute(const Reading& reading, Remarks& remarks) {
  const double parts = next_water_parts(reading.dilution), factor = parts + 1;
  remarks.say(Verdict::dilute, {reading.analyte},
              phrase("check",
                     "The %1 reading of %2 is at or past the end of the range of the %3. Mix 1 part of "
                     "sample with %4 parts of chlorine-free (deionised) water, read that, and multiply by "
                     "%5: a reading of 2 then means %6. Dose nothing on this number."),
              {name_of_analyte(reading.analyte), amount(reading.analyte, reading.value),
               method_name(reading.method), number(parts, 0), number(factor, 0), number(2 * factor, 0)});
}

void clipped_above(const Look& look, Remarks& remarks) {
  each_reading(look, [&](const Reading& reading, const AnalyteKind&) {
    if (reading.clipped == Clip::above && !has_own_rule(reading)) say_dilute(reading, remarks);
  });
}

// A colour test is what a chlorine reading of no told method most likely is, and the one that bleaches.
bool bleaches(const Reading& reading) {
  return reading.analyte == "free_chlorine" || reading.analyte == "total_chlorine" ||
         reading.analyte == "total_bromine";
}

void over_range(const Look& look, Remarks& remarks) {
  each_reading(look, [&](const Reading& reading, const AnalyteKind& kind) {
    const bool guess = !reading.method && bleaches(reading);
    const MethodKind* method = guess ? &kind.methods.front() : method_of(reading, kind);
    if (!method || reading.clipped || has_own_rule(reading)) return;
    if (reading.value / reading.dilution > method->range.high) say_dilute(reading, remarks);
  });
}

void clipped_below(const Look& look, Remarks& remarks) {
  each_reading(look, [&](const Reading& reading, const AnalyteKind&) {
    if (reading.clipped != Clip::below || reading.analyte == "ph") return;
    const bool diluted = reading.dilution > 1;
    remarks.say(
        diluted ? Verdict::repeat : Verdict::note, {reading.analyte},
        diluted
            ? phrase("check", "The diluted sample is below the range of the %1 for %2: read it undiluted.")
            : phrase("check", "There is less %2 than the %1 can show: below %3. It counts as at most that."),
        {method_name(reading.method), name_of_analyte(reading.analyte),
         amount(reading.analyte, reading.value)});
  });
}

void diluted_too_far(const Look& look, Remarks& remarks) {
  each_reading(look, [&](const Reading& reading, const AnalyteKind& kind) {
    const MethodKind* method = method_of(reading, kind);
    if (!method || reading.dilution <= 1 || reading.clipped || reading.sd) return;
    if (reading.value / reading.dilution >= 3 * method->sd_constant) return;
    remarks.say(Verdict::note, {reading.analyte},
                phrase("check",
                       "Diluted %1 times, the %2 reading is lost in the error of the %3 (%4). Dilute less "
                       "and read again if a dose depends on it."),
                {number(reading.dilution, 0), name_of_analyte(reading.analyte), method_name(reading.method),
                 MeasuredTerm{measured(reading)}});
  });
}

void ph_diluted(const Look& look, Remarks& remarks) {
  for (const Reading& reading : look.bottle.readings)
    if (reading.analyte == "ph" && reading.dilution > 1)
      remarks.say(Verdict::reject, {"ph"},
                  phrase("check",
                         "pH was read in a diluted sample. Dilution changes pH and no factor brings it back: "
                         "read it undiluted."));
}

void ph_outside_dye(const Look& look, Remarks& remarks) {
  each_reading(look, [&](const Reading& reading, const AnalyteKind& kind) {
    if (reading.analyte != "ph") return;
    const MethodKind* method = method_of(reading, kind);
    const bool below = reading.clipped == Clip::below || (method && reading.value < method->range.low);
    const bool above = reading.clipped == Clip::above || (method && reading.value > method->range.high);
    if (!below && !above) return;
    remarks.say(Verdict::repeat, {"ph"},
                above ? phrase("check",
                               "pH %1 is at the upper end of what the %2 can show: the true pH may be "
                               "higher. Read it with a probe checked in two buffers; never dilute for pH.")
                      : phrase("check",
                               "pH %1 is at the lower end of what the %2 can show: the true pH may be lower. "
                               "Read it with a probe checked in two buffers; never dilute for pH."),
                {amount("ph", reading.value), method_name(reading.method)});
  });
}

void ph_unbelievable(const Look& look, Remarks& remarks) {
  const auto ph = look.inside("ph");
  if (!ph || find_analyte("ph")->believable.holds(ph->value)) return;
  remarks.say(
      Verdict::repeat, {"ph"},
      phrase("check",
             "pH %1 is hardly ever seen in a filled pool or spa. Rinse the vial, take fresh sample from the "
             "bottle and read again, with a probe if there is one, before anything is dosed."),
      {amount("ph", ph->value)});
}

void unbelievable(const Look& look, Remarks& remarks) {
  for (const CheckedValue& value : look.panel.values) {
    const AnalyteKind* kind = find_analyte(value.analyte);
    if (!kind || value.analyte == "ph" || kind->believable.holds(value.value)) continue;
    remarks.say(
        Verdict::repeat, {value.analyte},
        phrase("check",
               "%1 of %2 is outside what is believable (%3 to %4). Look at the unit and the dilution factor, "
               "then measure a second time."),
        {name_at_beginning(value.analyte), amount(value.analyte, value.value),
         number(kind->believable.low, kind->decimals), number(kind->believable.high, kind->decimals)});
  }
}

void method_not_for_analyte(const Look& look, Remarks& remarks) {
  each_reading(look, [&](const Reading& reading, const AnalyteKind& kind) {
    if (!reading.method || kind.method(*reading.method)) return;
    remarks.say(Verdict::note, {reading.analyte},
                phrase("check",
                       "No %1 is known for %2; the widest error of its methods is assumed. Was the method "
                       "typed wrongly?"),
                {method_name(reading.method), name_of_analyte(reading.analyte)});
  });
}

}  // namespace

std::span<const CheckRow> range_checks() {
  static constexpr CheckRow rows[] = {{"clipped_above", clipped_above},
                                      {"over_range", over_range},
                                      {"clipped_below", clipped_below},
                                      {"diluted_too_far", diluted_too_far},
                                      {"ph_diluted", ph_diluted},
                                      {"ph_outside_dye", ph_outside_dye},
                                      {"ph_unbelievable", ph_unbelievable},
                                      {"unbelievable", unbelievable},
                                      {"method_not_for_analyte", method_not_for_analyte}};
  return rows;
}

}  // namespace brimline
