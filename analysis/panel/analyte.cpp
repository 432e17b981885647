// SPDX-License-Identifier: GPL-3.0-or-later
#include "analysis/panel/analyte.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>

#include "analysis/panel/names.h"

namespace brimline {

namespace {

constexpr std::array<std::string_view, 5> kTags = {"R", "R2", "W", "M", "C"};

std::string ticked(std::string_view key, std::string_view rest) {
  return std::string("`").append(key).append("` ").append(rest);
}

Range read_range(Fields& fields, std::string_view key) {
  const std::vector<double> ends = fields.numbers(key);
  if (ends.size() == 2 && ends[0] < ends[1]) return {ends[0], ends[1]};
  if (!ends.empty()) fields.fault(key, ticked(key, "is no range"), "[low, high] with low < high");
  return {};
}

double read_at_least_zero(Fields& fields, std::string_view key) {
  const double value = fields.number(key);
  if (value < 0) fields.fault(key, ticked(key, "is negative"), "zero or more");
  return value;
}

Origin read_origin(Fields& fields) {
  Origin origin{fields.text("source"), fields.text("tag")};
  if (!origin.tag.empty() && std::find(kTags.begin(), kTags.end(), origin.tag) == kTags.end())
    fields.fault("tag", "`tag` is " + origin.tag, "one of R, R2, W, M, C");
  return origin;
}

MethodKind read_method(Fields& fields) {
  MethodKind kind;
  const std::string name = fields.text("method");
  if (const auto method = named<Method>(name))
    kind.method = *method;
  else if (!name.empty())
    fields.fault("method", "`method` is " + name, "one of " + choices<Method>());
  kind.range = read_range(fields, "range");
  kind.step = read_at_least_zero(fields, "step");
  kind.sd_constant = read_at_least_zero(fields, "sd_constant");
  kind.sd_proportional = read_at_least_zero(fields, "sd_proportional");
  kind.origin = read_origin(fields);
  return kind;
}

AnalyteKind read_fields(Fields& fields) {
  AnalyteKind kind;
  kind.id = fields.text("id");
  kind.name = fields.text("name");
  kind.unit = fields.text("unit");
  kind.decimals = fields.whole("decimals");
  if (kind.decimals < 0 || kind.decimals > 4)
    fields.fault("decimals", "`decimals` is out of reach", "0 to 4");
  kind.possible = read_range(fields, "possible");
  kind.believable = read_range(fields, "believable");
  if (fields.has("default_target")) kind.default_target = read_range(fields, "default_target");
  kind.sound_h = read_at_least_zero(fields, "sound_h");
  kind.indicative_h = read_at_least_zero(fields, "indicative_h");
  kind.interferences = fields.texts("interferences");
  kind.origin = read_origin(fields);
  for (Fields& table : fields.tables("methods")) kind.methods.push_back(read_method(table));
  return kind;
}

std::vector<AnalyteKind> read_all() {
  std::vector<AnalyteKind> kinds;
  for (const embedded::Text& file : embedded::readings())
    if (auto kind = read_analyte(file.text, file.name)) kinds.push_back(std::move(*kind));
  std::sort(kinds.begin(), kinds.end(), [](const auto& a, const auto& b) { return a.id < b.id; });
  return kinds;
}

}  // namespace

const MethodKind* AnalyteKind::method(Method m) const {
  for (const MethodKind& kind : methods)
    if (kind.method == m) return &kind;
  return nullptr;
}

tl::expected<AnalyteKind, std::vector<Fault>> read_analyte(std::string_view text, std::string_view file) {
  auto fields = Fields::parse(text, file);
  if (!fields) return tl::unexpected(std::vector<Fault>{fields.error()});
  AnalyteKind kind = read_fields(*fields);
  std::vector<Fault> faults = fields->finish();
  if (!faults.empty()) return tl::unexpected(std::move(faults));
  return kind;
}

double value_of_drops(const MethodKind& method, double drops, double dilution) {
  return drops * method.step * dilution;
}

std::span<const AnalyteKind> analyte_kinds() {
  static const std::vector<AnalyteKind> kinds = read_all();
  return kinds;
}

const AnalyteKind* find_analyte(std::string_view id) {
  const auto kinds = analyte_kinds();
  const auto found =
      std::lower_bound(kinds.begin(), kinds.end(), id,
                       [](const AnalyteKind& kind, std::string_view key) { return kind.id < key; });
  return found != kinds.end() && found->id == id ? &*found : nullptr;
}

std::string format_value(const AnalyteKind& kind, double value) {
  char buffer[512];
  const auto end =
      std::to_chars(buffer, buffer + sizeof buffer, value, std::chars_format::fixed, kind.decimals);
  std::string out(buffer, end.ec == std::errc() ? end.ptr : buffer);
  // a value that rounds to nothing has no sign
  if (out.starts_with('-') && out.find_first_of("123456789") == std::string::npos) out.erase(0, 1);
  return out;
}

std::string format_with_unit(const AnalyteKind& kind, double value) {
  return kind.unit.empty() ? format_value(kind, value) : format_value(kind, value) + " " + kind.unit;
}

}  // namespace brimline
