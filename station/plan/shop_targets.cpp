// SPDX-License-Identifier: GPL-3.0-or-later
#include "station/plan/shop_targets.h"

#include <QFileInfo>
#include <QSaveFile>
#include <fstream>
#include <sstream>

#include "analysis/panel/names.h"
#include "analysis/toml_text.h"

namespace brimline {

namespace {

constexpr const char* kHousehold = "household";

std::string known_ids() {
  std::string out;
  for (const TargetSet& set : target_sets()) out += (out.empty() ? "" : ", ") + set.id;
  return out;
}

std::vector<Fault> fault(const std::string& where, std::string what, std::string expected) {
  return {{where, 1, std::move(what), std::move(expected)}};
}

template <class E>
std::string listed(const char* key, const std::vector<E>& values) {
  if (values.empty()) return {};
  std::string out;
  for (const E value : values) out += (out.empty() ? "" : ", ") + toml_string(name_of(value));
  return std::string(key) + " = [" + out + "]\n";
}

std::string numbered(const char* key, const std::optional<double>& value) {
  return value ? std::string(key) + " = " + toml_number(*value) + "\n" : std::string();
}

std::string row_to_toml(const TargetRow& row) {
  std::string out = "\n[[target]]\nanalyte = " + toml_string(row.analyte) + "\n";
  out += numbered("low", row.low) + numbered("high", row.high) + numbered("aim", row.aim) +
         numbered("low_per_cyanuric", row.low_per_cyanuric);
  out += listed("sanitizers", row.sanitizers) + listed("kinds", row.kinds) + listed("places", row.places) +
         listed("surfaces", row.surfaces);
  if (row.stabilised) out += std::string("stabilised = ") + (*row.stabilised ? "true" : "false") + "\n";
  out += numbered("above_ph", row.above_ph) + numbered("above_celsius", row.above_celsius);
  return out + "source = " + toml_string(row.source) + "\ntag = " + toml_string(row.tag) + "\n";
}

}  // namespace

tl::expected<TargetSet, std::vector<Fault>> targets_named(const std::string& name) {
  if (const TargetSet* set = find_targets(name)) return *set;
  std::ifstream file(name, std::ios::binary);
  std::ostringstream text;
  if (!file || !(text << file.rdbuf()))
    return tl::unexpected(
        fault(name, "is no target set and cannot be read", "a TOML file, or one of " + known_ids()));
  return read_targets(text.str(), name);
}

tl::expected<TargetSet, std::vector<Fault>> shop_targets(const std::string& file) {
  const bool own = !file.empty() && QFileInfo::exists(QString::fromStdString(file));
  return targets_named(own ? file : kHousehold);
}

std::string targets_to_toml(const TargetSet& set) {
  std::string out = "id = " + toml_string(set.id) + "\nname = " + toml_string(set.name) +
                    "\nsource = " + toml_string(set.source) + "\n";
  for (const TargetRow& row : set.rows) out += row_to_toml(row);
  return out;
}

tl::expected<void, std::vector<Fault>> keep_target(const std::string& file, size_t row,
                                                   const std::optional<OwnTarget>& own) {
  auto set = shop_targets(file);
  if (!set) return tl::unexpected(set.error());
  if (row >= set->rows.size()) return tl::unexpected(fault(file, "has no such row", "a row of the list"));
  TargetRow& kept = set->rows[row];
  if (own) {
    kept.low = own->low;
    kept.high = own->high;
    kept.aim = own->aim;
    kept.source = own->source.empty() ? "set by the shop" : own->source;
    kept.tag = "M";
  } else {
    const TargetSet* built_in = find_targets(kHousehold);
    if (built_in && row < built_in->rows.size() && built_in->rows[row].analyte == kept.analyte)
      kept = built_in->rows[row];
  }
  set->id = "shop";
  set->name = "The shop's own";
  set->source = "the shop; each row names its source";
  const std::string text = targets_to_toml(*set);
  if (auto judged = read_targets(text, file); !judged) return tl::unexpected(judged.error());
  QSaveFile out(QString::fromStdString(file));
  const auto size = static_cast<qint64>(text.size());
  if (!out.open(QIODevice::WriteOnly) || out.write(text.data(), size) != size || !out.commit())
    return tl::unexpected(fault(file, out.errorString().toStdString(), "a file that can be written"));
  return {};
}

}  // namespace brimline
