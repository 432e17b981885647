// SPDX-License-Identifier: GPL-3.0-or-later
// Cyanuric acid by turbidity: both ends of the tube, cold and cloudy samples.
#include "analysis/panel/check_rules.h"

namespace brimline {

namespace {

constexpr double kCoolC = 18,
                 kMildC = 27;  // outside: the melamine cloud reads off; common practice, no source
constexpr double kTurbidNtu = 5;

bool by_cloud(const CheckedValue& value) {
  return value.method != Method::drop_titration && value.method != Method::strip;
}

const MethodKind* method_of(const CheckedValue& value) {
  const AnalyteKind* kind = find_analyte("cyanuric_acid");
  return value.method ? kind->method(*value.method) : &kind->methods.front();
}

void stabilizer_over_range(const Look& look, Remarks& remarks) {
  const CheckedValue* stabilizer = look.value("cyanuric_acid");
  if (!stabilizer) return;
  const MethodKind* method = method_of(*stabilizer);
  const double dilution =
      stabilizer->used.empty() ? 1 : look.bottle.readings[stabilizer->used.front()].dilution;
  const bool over = method && stabilizer->value / dilution > method->range.high;
  if (stabilizer->clipped != Clip::above && !over) return;
  const double factor = dilution < 2 ? 2 : 4;
  remarks.say(Verdict::dilute, {"cyanuric_acid"},
              phrase("check",
                     "Stabilizer is beyond the end of the %1 (%2). Mix 1 part of sample with %3 of deionised "
                     "water, read that and multiply by %4: a reading of 70 then means %5 mg/L."),
              {method_name(stabilizer->method), amount("cyanuric_acid", stabilizer->value),
               number(factor - 1, 0), number(factor, 0), number(70 * factor, 0)});
}

void stabilizer_below_floor(const Look& look, Remarks& remarks) {
  const auto stabilizer = look.inside("cyanuric_acid");
  if (!stabilizer) return;
  const MethodKind* method = method_of(*look.value("cyanuric_acid"));
  if (!method || stabilizer->value <= 0 || stabilizer->value >= method->range.low) return;
  remarks.say(
      Verdict::note, {"cyanuric_acid"},
      phrase("check",
             "Below %1 the %2 cannot tell how much stabilizer there is: %3 counts as \"little or none\"."),
      {amount("cyanuric_acid", method->range.low), method_name(method->method),
       amount("cyanuric_acid", stabilizer->value)});
}

void stabilizer_temperature(const Look& look, Remarks& remarks) {
  const CheckedValue* stabilizer = look.value("cyanuric_acid");
  const auto& temperature = look.bottle.sample_temperature;
  if (!stabilizer || !temperature || !by_cloud(*stabilizer) || stabilizer->value <= 0) return;
  const double celsius = temperature->celsius();
  if (celsius < 15 || celsius > 30 || (celsius >= kCoolC && celsius <= kMildC))
    return;  // colder, warmer: sample_*
  remarks.say(
      Verdict::note, {"cyanuric_acid"},
      celsius < kCoolC
          ? phrase("check", "At %1 C the stabilizer cloud reads somewhat high; at 20 to 25 C it is right.")
          : phrase("check", "At %1 C the stabilizer cloud reads somewhat low; at 20 to 25 C it is right."),
      {number(celsius, 0)});
}

void stabilizer_in_cloudy_sample(const Look& look, Remarks& remarks) {
  const CheckedValue* stabilizer = look.value("cyanuric_acid");
  const auto turbidity = look.inside("turbidity");
  if (!stabilizer || !by_cloud(*stabilizer)) return;
  if (turbidity && turbidity->value > kTurbidNtu)
    remarks.say(Verdict::repeat, {"cyanuric_acid"},
                phrase("check",
                       "The sample is itself cloudy (%1) and the stabilizer test counts cloud. Filter the "
                       "sample until it is clear and read again."),
                {amount("turbidity", turbidity->value)});
  else if (!turbidity && look.shows(Sign::cloudy))
    remarks.say(Verdict::note, {"cyanuric_acid"},
                phrase("check",
                       "The water is cloudy and the stabilizer test counts cloud: filter the sample clear "
                       "before reading it."));
}

void stabilizer_indoors(const Look& look, Remarks& remarks) {
  const auto stabilizer = look.inside("cyanuric_acid");
  if (look.vessel.place != Place::indoor || !stabilizer || stabilizer->value <= 3 * stabilizer->sd) return;
  remarks.say(Verdict::note, {"cyanuric_acid"},
              phrase("check",
                     "There is no sun indoors to protect chlorine from: %1 of stabilizer only slows it. Ask "
                     "for dichlor or tablets in use."),
              {amount("cyanuric_acid", stabilizer->value)});
}

void tablets_in_use(const Look& look, Remarks& remarks) {
  if (!look.shows(Sign::tablets_in_use) || look.uses(Sanitizer::bromine) || look.uses(Sanitizer::biguanide))
    return;
  remarks.say(Verdict::note, {"cyanuric_acid"},
              phrase("check",
                     "Tablets are in use: each 10 mg/L of chlorine from trichlor brings 6 mg/L of stabilizer "
                     "and takes 7 mg/L of alkalinity. Read stabilizer every month."));
}

}  // namespace

std::span<const CheckRow> stabilizer_checks() {
  static constexpr CheckRow rows[] = {{"stabilizer_over_range", stabilizer_over_range},
                                      {"stabilizer_below_floor", stabilizer_below_floor},
                                      {"stabilizer_temperature", stabilizer_temperature},
                                      {"stabilizer_in_cloudy_sample", stabilizer_in_cloudy_sample},
                                      {"stabilizer_indoors", stabilizer_indoors},
                                      {"tablets_in_use", tablets_in_use}};
  return rows;
}

}  // namespace brimline
