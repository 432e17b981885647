// SPDX-License-Identifier: GPL-3.0-or-later
// Repeats of one reading, and two methods for one analyte.
#include <algorithm>
#include <map>

#include "analysis/panel/check_rules.h"

namespace brimline {

namespace {

std::vector<Measured> used_readings(const Look& look, const CheckedValue& value) {
  std::vector<Measured> out;
  for (const size_t i : value.used) out.push_back(measured(look.bottle.readings[i]));
  return out;
}

void repeats_scatter(const Look& look, Remarks& remarks) {
  for (const CheckedValue& value : look.panel.values) {
    const std::vector<Measured> used = used_readings(look, value);
    if (!scatter(used)) continue;
    std::vector<AmountTerm> numbers;
    for (const size_t i : value.used) numbers.push_back({value.analyte, look.bottle.readings[i].value});
    remarks.say(Verdict::repeat, {value.analyte},
                phrase("check",
                       "The %1 readings of %2 (%3) lie further apart than the method's own error. Read it "
                       "once more; the mean of those that agree is used."),
                {number(static_cast<double>(used.size()), 0), name_of_analyte(value.analyte), numbers});
  }
}

void repeat_outlier(const Look& look, Remarks& remarks) {
  for (const CheckedValue& value : look.panel.values)
    for (const size_t i : value.outliers)
      remarks.say(Verdict::note, {value.analyte},
                  phrase("check",
                         "One %1 reading (%2) lies outside the others and is left out of the mean of %3 "
                         "(test of Grubbs, ISO 5725-2)."),
                  {name_of_analyte(value.analyte), amount(value.analyte, look.bottle.readings[i].value),
                   amount(value.analyte, value.value)});
}

// Means by method, of readings inside the range.
std::map<std::optional<Method>, Measured> by_method(const Look& look, const AnalyteId& analyte) {
  std::map<std::optional<Method>, std::vector<Measured>> groups;
  for (const Reading& reading : look.bottle.readings)
    if (reading.analyte == analyte && !reading.clipped) groups[reading.method].push_back(measured(reading));
  std::map<std::optional<Method>, Measured> means;
  for (const auto& [method, readings] : groups) means[method] = combine(readings);
  return means;
}

void methods_disagree(const Look& look, Remarks& remarks) {
  for (const CheckedValue& value : look.panel.values) {
    const auto means = by_method(look, value.analyte);
    for (const auto& [method, mean] : means) {
      if (method == value.method || standard_distance(mean, value.measured()) <= 3) continue;
      remarks.say(
          Verdict::repeat, {value.analyte},
          phrase("check",
                 "Two methods disagree on %1: the %2 says %3, the %4 says %5, further apart than their "
                 "errors explain. Read both again; until then neither is to be dosed on."),
          {name_of_analyte(value.analyte), method_name(value.method), amount(value.analyte, value.value),
           method_name(method), amount(value.analyte, mean.value)});
    }
  }
}

// An undiluted reading that a diluted one has proved bleached.
void bleaching_proved(const Look& look, Remarks& remarks) {
  for (const CheckedValue& value : look.panel.values)
    for (size_t i = 0; i < look.bottle.readings.size(); ++i) {
      const Reading& reading = look.bottle.readings[i];
      if (reading.analyte != value.analyte || reading.clipped || reading.method != value.method) continue;
      const bool left_out =
          std::find(value.used.begin(), value.used.end(), i) == value.used.end() &&
          std::find(value.outliers.begin(), value.outliers.end(), i) == value.outliers.end();
      if (left_out)
        remarks.say(Verdict::note, {value.analyte},
                    phrase("check",
                           "The undiluted %1 reading of %2 was bleached: the diluted sample shows %3, and "
                           "that is used."),
                    {name_of_analyte(value.analyte), amount(value.analyte, reading.value),
                     amount(value.analyte, value.value)});
    }
}

}  // namespace

std::span<const CheckRow> repeat_checks() {
  static constexpr CheckRow rows[] = {{"repeats_scatter", repeats_scatter},
                                      {"repeat_outlier", repeat_outlier},
                                      {"methods_disagree", methods_disagree},
                                      {"bleaching_proved", bleaching_proved}};
  return rows;
}

}  // namespace brimline
