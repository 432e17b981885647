// SPDX-License-Identifier: GPL-3.0-or-later
#include "printing/readings_table.h"

#include <algorithm>
#include <cctype>
#include <cmath>
#include <set>

#include "analysis/findings/targets.h"
#include "analysis/panel/uncertainty.h"
#include "station/wording/plan_words.h"
#include "station/wording/unit_words.h"

namespace brimline {
namespace {

constexpr const char* kContext = "sheet";
constexpr const char* kRatio = "stabilizer_ratio";

// Decimals of an analyte nobody described.
constexpr int kDecimals = 2;

std::string spread_words(const Words& words, const AnalyteId& analyte, double sd) {
  const AnalyteKind* kind = find_analyte(analyte);
  int decimals = kind ? kind->decimals : kDecimals;
  if (sd > 0 && sd < 0.5 * std::pow(10, -decimals)) ++decimals;
  return std::string("± ").append(words.number(sd, decimals));
}

std::string clipped_words(const Words& words, const Reading& reading) {
  std::string value = value_words(words, reading.analyte, reading.value, false);
  if (!reading.clipped) return value;
  return words.say(
      kContext,
      *reading.clipped == Clip::above ? phrase("sheet", "more than %1") : phrase("sheet", "less than %1"),
      {value});
}

std::string unit_of(const Words& words, const AnalyteId& analyte) {
  const AnalyteKind* kind = find_analyte(analyte);
  return kind ? unit_words(words, *kind) : std::string();
}

SheetRow row_of(const Reading& reading, const Words& words) {
  SheetRow row;
  row.name = analyte_name(words, reading.analyte);
  row.unit = unit_of(words, reading.analyte);
  row.value = clipped_words(words, reading);
  if (const auto sd = spread_of(reading); sd && !reading.clipped)
    row.spread = spread_words(words, reading.analyte, *sd);
  return row;
}

// Whether the finding is about this reading itself, and not about what is worked out from it and another.
bool is_of(const Finding& finding, const AnalyteId& analyte) {
  return finding.analyte == analyte && finding.id != kRatio && finding.id != "combined_chlorine_high";
}

// What the findings say of the analyte against its target, in a word.
std::string standing_words(const Words& words, const Plan& plan, const AnalyteId& analyte) {
  for (const Finding& finding : plan.findings) {
    if (!is_of(finding, analyte)) continue;
    const std::string_view id = finding.id;
    if (id.ends_with("_edge")) return words.say(kContext, phrase("sheet", "at the edge"));
    if (id.ends_with("_low")) return words.say(kContext, phrase("sheet", "low"));
    if (id.ends_with("_high")) return words.say(kContext, phrase("sheet", "high"));
  }
  return {};
}

// What belongs to the analyte rather than to one reading of it.
void add_context(SheetRow& row, const AnalyteId& analyte, const Visit& visit, const Visit* earlier,
                 const Words& words, const std::map<AnalyteId, Target>& targets) {
  if (const auto target = target_of(visit, analyte, targets))
    row.target = target_words(words, analyte, *target);
  if (visit.plan_as_told && !row.target.empty())
    row.standing = standing_words(words, *visit.plan_as_told, analyte);
  // The checked panel's error, as the findings tell it.
  if (visit.plan_as_told && !row.spread.empty())
    for (const Finding& finding : visit.plan_as_told->findings)
      if (is_of(finding, analyte) && finding.sd) row.spread = spread_words(words, analyte, *finding.sd);
  if (earlier)
    if (const Reading* last = standing_reading(earlier->bottle, analyte))
      row.last = clipped_words(words, *last);
  if (visit.bottle.fill_water)
    for (const Reading& reading : *visit.bottle.fill_water)
      if (reading.analyte == analyte) row.fill = clipped_words(words, reading);
  if (!visit.plan_as_told) return;
  const auto expected = visit.plan_as_told->predicted.find(analyte);
  if (expected == visit.plan_as_told->predicted.end()) return;
  row.expected = value_words(words, analyte, expected->second.value, false);
  if (expected->second.sd) row.expected += " " + spread_words(words, analyte, *expected->second.sd);
}

// In the order they were taken, but each analyte's readings one below the other.
std::vector<const Reading*> with_repeats_together(const std::vector<Reading>& readings) {
  std::vector<const Reading*> out;
  for (const Reading& reading : readings) {
    const auto same = std::find_if(out.rbegin(), out.rend(),
                                   [&](const Reading* r) { return r->analyte == reading.analyte; });
    out.insert(same.base() == out.begin() ? out.end() : same.base(), &reading);
  }
  return out;
}

// Where the first whole number equal to `number` begins.
size_t place_in(const std::string& text, const std::string& number) {
  const auto digit = [&](size_t at) {
    return at < text.size() && std::isdigit(static_cast<unsigned char>(text[at]));
  };
  const auto point = [&](size_t at) { return at < text.size() && (text[at] == '.' || text[at] == ','); };
  for (size_t at = text.find(number); at != std::string::npos; at = text.find(number, at + 1)) {
    const size_t end = at + number.size();
    const bool goes_on = digit(end) || (point(end) && digit(end + 1));
    const bool began_before = at > 0 && (digit(at - 1) || (point(at - 1) && at > 1 && digit(at - 2)));
    if (!goes_on && !began_before) return at;
  }
  return std::string::npos;
}

// The value as a sentence may have written it: all its decimals, or fewer where they are zero.
std::vector<std::string> spellings(const Words& words, const AnalyteId& analyte, double value) {
  std::vector<std::string> out{value_words(words, analyte, value, false)};
  while (out.back().find_first_of(".,") != std::string::npos && out.back().back() == '0') {
    std::string shorter = out.back().substr(0, out.back().size() - 1);
    if (shorter.back() == '.' || shorter.back() == ',') shorter.pop_back();
    out.push_back(std::move(shorter));
  }
  for (int decimals = 1; decimals >= 0; --decimals) out.push_back(words.number(value, decimals));
  return out;
}

Waterline waterline_of(const Finding& finding, const AnalyteKind& kind, const Reading* reading,
                       const Visit* earlier) {
  Waterline line;
  line.value = *finding.value;
  const MethodKind* method = reading && reading->method ? kind.method(*reading->method) : nullptr;
  if (!method && !kind.methods.empty()) method = &kind.methods.front();
  const Range range = method ? method->range : kind.believable;
  line.low = range.low;
  line.high = range.high;
  line.target = finding.target.value_or(Target{});
  if (reading) line.half_width = spread_of(*reading).value_or(0);
  if (earlier)
    if (const Reading* last = standing_reading(earlier->bottle, kind.id)) line.last = last->value;
  return line;
}

}  // namespace

std::string bound_words(const Words& words, const AnalyteId& analyte, double value) {
  std::string out = value_words(words, analyte, value, false);
  const size_t point = out.find_first_of(".,");
  if (point != std::string::npos && out.size() - point > 2 && out.back() == '0')
    out.pop_back();  // 7.2, not 7.20
  return out;
}

std::string target_words(const Words& words, const AnalyteId& analyte, const Target& target) {
  const auto number = [&](double v) { return bound_words(words, analyte, v); };
  // Much stabilizer wants more chlorine than anybody may swim in: what stands is the most.
  const bool crossed = target.low && target.high && *target.low > *target.high;
  if (target.low && target.high && !crossed) {
    // Both ends with as many decimals.
    const std::string low = number(*target.low), high = number(*target.high);
    if (low.size() == high.size() || low.find_first_of(".,") == std::string::npos) return low + "–" + high;
    return value_words(words, analyte, *target.low, false) + "–" +
           value_words(words, analyte, *target.high, false);
  }
  if (target.low && !crossed)
    return words.say(kContext, phrase("sheet", "%1 or more"), {number(*target.low)});
  if (target.high) return words.say(kContext, phrase("sheet", "up to %1"), {number(*target.high)});
  return {};
}

std::optional<Target> target_of(const Visit& visit, const AnalyteId& analyte,
                                const std::map<AnalyteId, Target>& targets) {
  if (visit.plan_as_told)
    for (const Finding& finding : visit.plan_as_told->findings)
      // What little chlorine can bear beside it is not the stabilizer's own target.
      if (finding.analyte == analyte && finding.target && finding.id != kRatio) return finding.target;
  const auto found = targets.find(analyte);
  if (found != targets.end()) return found->second;
  return std::nullopt;
}

const Reading* standing_reading(const Bottle& bottle, const AnalyteId& analyte) {
  const Reading* found = nullptr;
  for (const Reading& reading : bottle.readings)
    if (reading.analyte == analyte) found = &reading;
  return found;
}

std::optional<double> spread_of(const Reading& reading) {
  if (!find_analyte(reading.analyte) && !reading.sd) return std::nullopt;
  return reading_sd(reading);
}

std::map<AnalyteId, Target> regime_targets(const Visit& visit, const TargetSet* own) {
  if (!visit.plan_as_told) return {};
  const std::string& named = visit.plan_as_told->basis.targets;
  const TargetSet* regime = own && own->id == named ? own : find_targets(named);
  std::map<AnalyteId, Target> out;
  if (!regime) return out;
  const auto value = [&](const char* analyte) {
    const Reading* reading = standing_reading(visit.bottle, analyte);
    return reading ? std::optional(reading->value) : std::nullopt;
  };
  const TargetCase asked = case_of(visit.vessel, value("cyanuric_acid"), value("ph"));
  for (const Reading& reading : visit.bottle.readings)
    if (const auto aim = regime->find(reading.analyte, asked)) out[reading.analyte] = aim->range;
  return out;
}

std::string value_words(const Words& words, const AnalyteId& analyte, double value, bool with_unit) {
  if (with_unit) return reading_in_words(words, analyte, value);
  const AnalyteKind* kind = find_analyte(analyte);
  return words.number(value, kind ? kind->decimals : kDecimals);
}

std::vector<SheetRow> readings_table(const Visit& visit, const Visit* earlier, const Words& words,
                                     const std::map<AnalyteId, Target>& targets) {
  std::vector<SheetRow> rows;
  std::set<AnalyteId> told;
  for (const Reading* reading : with_repeats_together(visit.bottle.readings)) {
    SheetRow row = row_of(*reading, words);
    if (told.insert(reading->analyte).second)
      add_context(row, reading->analyte, visit, earlier, words, targets);
    else
      row.name = words.say(kContext, phrase("sheet", "%1, again"), {row.name});
    rows.push_back(std::move(row));
  }
  const auto add_unread = [&](const AnalyteId& analyte) {
    if (!told.insert(analyte).second) return;
    SheetRow row;
    row.name = analyte_name(words, analyte);
    row.unit = unit_of(words, analyte);
    row.value = words.say(kContext, phrase("sheet", "not read"));
    add_context(row, analyte, visit, earlier, words, targets);
    rows.push_back(std::move(row));
  };
  if (visit.plan_as_told)
    for (const auto& [analyte, expected] : visit.plan_as_told->predicted) add_unread(analyte);
  return rows;
}

Sentence finding_sentence(const Finding& finding, const Visit& visit, const Visit* earlier,
                          const Words& words) {
  const AnalyteKind* kind = finding.analyte ? find_analyte(*finding.analyte) : nullptr;
  // The value of a demand is what is to be added: no reading of this bottle, and no picture of one.
  if (!kind || !finding.value || finding.id == "chlorine_demand" || finding.id == kRatio)
    return {finding.text};
  const Waterline line = waterline_of(finding, *kind, standing_reading(visit.bottle, kind->id), earlier);
  for (const std::string& number : spellings(words, kind->id, *finding.value)) {
    const size_t at = place_in(finding.text, number);
    if (at != std::string::npos) return {finding.text.substr(0, at), line, finding.text.substr(at)};
  }
  return {line, finding.text};
}

}  // namespace brimline
