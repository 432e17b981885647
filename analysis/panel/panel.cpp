// SPDX-License-Identifier: GPL-3.0-or-later
#include "analysis/panel/panel.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <set>

namespace brimline {

namespace {

// 159.808 g/mol Br2 over 70.906 g/mol Cl2 (IUPAC atomic weights).
constexpr double kBromineOverChlorine = 159.808 / 70.906;

using Indices = std::vector<size_t>;

std::vector<Measured> measured_of(std::span<const Reading> readings, const Indices& which) {
  std::vector<Measured> out;
  for (const size_t i : which) out.push_back(measured(readings[i]));
  return out;
}

// The readings of the method whose first reading has the smallest sd.
Indices most_exact_method(std::span<const Reading> readings, const Indices& which) {
  std::map<std::optional<Method>, Indices> groups;
  for (const size_t i : which) groups[readings[i].method].push_back(i);
  const auto best = std::min_element(groups.begin(), groups.end(), [&](const auto& a, const auto& b) {
    return reading_sd(readings[a.second.front()]) < reading_sd(readings[b.second.front()]);
  });
  return best->second;
}

bool is_oxidiser(std::string_view analyte) {
  return analyte == "free_chlorine" || analyte == "total_chlorine" || analyte == "total_bromine";
}

// A diluted repeat far above an undiluted one: the undiluted dye was bleached (facts of DPD at 10 mg/L and
// over).
Indices without_bleached(std::span<const Reading> readings, const Indices& which) {
  if (!is_oxidiser(readings[which.front()].analyte)) return which;
  Indices out;
  for (const size_t i : which) {
    const bool bleached = readings[i].dilution <= 1 && std::any_of(which.begin(), which.end(), [&](size_t k) {
                            return readings[k].dilution > 1 && readings[k].value > readings[i].value &&
                                   standard_distance(measured(readings[k]), measured(readings[i])) > 3;
                          });
    if (!bleached) out.push_back(i);
  }
  return out;
}

CheckedValue of_clipped(std::span<const Reading> readings, const Indices& which) {
  const auto further = [&](size_t a, size_t b) { return readings[a].value < readings[b].value; };
  const bool above = readings[which.back()].clipped == Clip::above;
  const size_t i = above ? *std::max_element(which.begin(), which.end(), further)
                         : *std::min_element(which.begin(), which.end(), further);
  CheckedValue out;
  out.value = readings[i].value;
  out.sd = reading_sd(readings[i]);
  out.clipped = readings[i].clipped;
  out.method = readings[i].method;
  out.used = {i};
  return out;
}

CheckedValue of_inside(std::span<const Reading> readings, const Indices& which) {
  CheckedValue out;
  const Indices series = without_bleached(readings, most_exact_method(readings, which));
  const std::vector<size_t> out_of_line = outliers(measured_of(readings, series));
  for (size_t k = 0; k < series.size(); ++k) {
    const bool outlier = std::find(out_of_line.begin(), out_of_line.end(), k) != out_of_line.end();
    (outlier ? out.outliers : out.used).push_back(series[k]);
  }
  const Measured mean = combine(measured_of(readings, out.used));
  out.value = mean.value;
  out.sd = mean.sd;
  out.method = readings[series.front()].method;
  return out;
}

CheckedValue value_of(std::span<const Reading> readings, const AnalyteId& analyte) {
  Indices inside, clipped;
  for (size_t i = 0; i < readings.size(); ++i)
    if (readings[i].analyte == analyte) (readings[i].clipped ? clipped : inside).push_back(i);
  CheckedValue out = inside.empty() ? of_clipped(readings, clipped) : of_inside(readings, inside);
  out.analyte = analyte;
  return out;
}

// Chlorine tests in bromine water read the bromine: free where read, else total.
void chlorine_as_bromine(CheckedPanel& panel) {
  const CheckedValue* source = panel.find("free_chlorine");
  if (!source) source = panel.find("total_chlorine");
  if (!source) return;
  CheckedValue bromine = *source;
  bromine.analyte = "total_bromine";
  bromine.value *= kBromineOverChlorine;
  bromine.sd *= kBromineOverChlorine;
  bromine.derived = true;
  const bool read = panel.find("total_bromine") != nullptr;
  std::erase_if(panel.values, [](const CheckedValue& v) {
    return v.analyte == "free_chlorine" || v.analyte == "total_chlorine";
  });
  if (!read) panel.values.push_back(bromine);
}

void calcium_from_hardness(CheckedPanel& panel) {
  const CheckedValue *total = panel.find("total_hardness"), *magnesium = panel.find("magnesium_hardness");
  if (panel.find("calcium_hardness") || !total || !magnesium || total->clipped || magnesium->clipped) return;
  const Measured left = difference(total->measured(), magnesium->measured());
  CheckedValue calcium;
  calcium.analyte = "calcium_hardness";
  calcium.value = std::max(0.0, left.value);
  calcium.sd = left.sd;
  calcium.derived = true;
  panel.values.push_back(calcium);
}

// A derived value carries the verdicts of what it was derived from.
std::set<AnalyteId> sources(const CheckedValue& value) {
  if (value.derived && value.analyte == "total_bromine")
    return {"total_bromine", "free_chlorine", "total_chlorine"};
  if (value.derived) return {value.analyte, "total_hardness", "magnesium_hardness"};
  return {value.analyte};
}

void take_verdicts(CheckedPanel& panel) {
  for (CheckedValue& value : panel.values) {
    const std::set<AnalyteId> names = sources(value);
    for (const Check& check : panel.checks)
      if (std::any_of(check.analytes.begin(), check.analytes.end(),
                      [&](const AnalyteId& id) { return names.contains(id); }))
        value.verdict = std::max(value.verdict.value_or(Verdict::note), check.verdict);
  }
}

}  // namespace

const CheckedValue* CheckedPanel::find(std::string_view analyte) const {
  for (const CheckedValue& value : values)
    if (value.analyte == analyte) return &value;
  return nullptr;
}

std::optional<double> CheckedPanel::value(std::string_view analyte) const {
  const CheckedValue* found = find(analyte);
  return found ? std::optional(found->value) : std::nullopt;
}

std::optional<double> CheckedPanel::usable(std::string_view analyte) const {
  const CheckedValue* found = find(analyte);
  return found && found->usable() ? std::optional(found->value) : std::nullopt;
}

const Check* CheckedPanel::check(std::string_view id) const {
  for (const Check& c : checks)
    if (c.id == id) return &c;
  return nullptr;
}

std::optional<Measured> CheckedPanel::combined_chlorine() const {
  const CheckedValue *total = find("total_chlorine"), *free = find("free_chlorine");
  if (!total || !free || total->clipped || free->clipped) return std::nullopt;
  Measured combined = difference(total->measured(), free->measured());
  combined.value = std::max(0.0, combined.value);
  return combined;
}

CheckedPanel unchecked_panel(std::span<const Reading> readings, const Vessel& vessel) {
  CheckedPanel panel;
  std::set<AnalyteId> analytes;
  for (const Reading& reading : readings) analytes.insert(reading.analyte);
  for (const AnalyteId& analyte : analytes) panel.values.push_back(value_of(readings, analyte));
  if (vessel.sanitizer == Sanitizer::bromine) chlorine_as_bromine(panel);
  calcium_from_hardness(panel);
  std::sort(panel.values.begin(), panel.values.end(),
            [](const CheckedValue& a, const CheckedValue& b) { return a.analyte < b.analyte; });
  return panel;
}

CheckedPanel checked_panel(const Bottle& bottle, const Vessel& vessel, std::span<const Bottle> earlier,
                           std::optional<Instant> now, const Supplies& supplies) {
  CheckedPanel panel = unchecked_panel(bottle.readings, vessel);
  panel.checks = check_bottle(bottle, vessel, earlier, now, supplies);
  take_verdicts(panel);
  return panel;
}

}  // namespace brimline
