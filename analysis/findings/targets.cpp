// SPDX-License-Identifier: GPL-3.0-or-later
#include "analysis/findings/targets.h"

#include <algorithm>
#include <map>

#include "analysis/embedded.h"

namespace brimline {

namespace embedded {
std::span<const Text> targets();
}

namespace {

template <class Value>
std::vector<Value> choices(Fields& f, const char* key,
                           std::initializer_list<std::pair<const char*, Value>> names) {
  std::vector<Value> out;
  for (const std::string& text : f.texts_if(key).value_or(std::vector<std::string>{})) {
    const auto found =
        std::find_if(names.begin(), names.end(), [&](const auto& n) { return text == n.first; });
    if (found == names.end())
      f.fault(key, "`" + text + "` is not known", "a word of the visit's form");
    else
      out.push_back(found->second);
  }
  return out;
}

void read_conditions(Fields& f, TargetRow& row) {
  row.sanitizers = choices<Sanitizer>(f, "sanitizers",
                                      {{"chlorine", Sanitizer::chlorine},
                                       {"salt_chlorine", Sanitizer::salt_chlorine},
                                       {"bromine", Sanitizer::bromine},
                                       {"biguanide", Sanitizer::biguanide}});
  row.kinds = choices<VesselKind>(f, "kinds",
                                  {{"pool", VesselKind::pool},
                                   {"spa", VesselKind::spa},
                                   {"swim_spa", VesselKind::swim_spa},
                                   {"plunge", VesselKind::plunge}});
  row.places = choices<Place>(f, "places", {{"outdoor", Place::outdoor}, {"indoor", Place::indoor}});
  row.surfaces = choices<Surface>(f, "surfaces",
                                  {{"plaster", Surface::plaster},
                                   {"tile", Surface::tile},
                                   {"vinyl", Surface::vinyl},
                                   {"fibreglass", Surface::fibreglass},
                                   {"painted", Surface::painted},
                                   {"acrylic", Surface::acrylic}});
  row.stabilised = f.flag_if("stabilised");
  row.above_ph = f.number_if("above_ph");
  row.above_celsius = f.number_if("above_celsius");
}

TargetRow read_row(Fields& f) {
  TargetRow row;
  row.analyte = f.text("analyte");
  row.low = f.number_if("low");
  row.high = f.number_if("high");
  row.aim = f.number_if("aim");
  row.low_per_cyanuric = f.number_if("low_per_cyanuric");
  read_conditions(f, row);
  row.source = f.text("source");
  row.tag = f.text("tag");
  if (!row.low && !row.high) f.fault("analyte", "neither `low` nor `high` is there", "one of them");
  if (row.low && row.high && *row.low > *row.high) f.fault("low", "`low` is above `high`", "low up to high");
  if (row.aim && ((row.low && *row.aim < *row.low) || (row.high && *row.aim > *row.high)))
    f.fault("aim", "`aim` is outside the target", "a value between low and high");
  static const std::vector<std::string> tags = {"R", "R2", "W", "M", "C"};
  if (std::find(tags.begin(), tags.end(), row.tag) == tags.end())
    f.fault("tag", "`" + row.tag + "` is no tag", "R, R2, W, M or C");
  return row;
}

struct Loaded {
  std::vector<TargetSet> sets;
  std::vector<Fault> faults;
};

struct ReadSet {
  TargetSet set;
  std::optional<std::string> builds_on;
};

tl::expected<ReadSet, std::vector<Fault>> read_set(std::string_view text, std::string_view file) {
  auto f = Fields::parse(text, file);
  if (!f) return tl::unexpected(std::vector<Fault>{f.error()});
  ReadSet out{{f->text("id"), f->text("name"), f->text("source"), {}}, f->text_if("builds_on")};
  for (Fields& row : f->tables("target")) out.set.rows.push_back(read_row(row));
  std::vector<Fault> faults = f->finish();
  if (!faults.empty()) return tl::unexpected(std::move(faults));
  return out;
}

Loaded load() {
  Loaded out;
  std::map<std::string, std::string> base;
  for (const embedded::Text& file : embedded::targets()) {
    auto read = read_set(file.text, file.name);
    if (!read) {
      out.faults.insert(out.faults.end(), read.error().begin(), read.error().end());
      continue;
    }
    if (read->builds_on) base[read->set.id] = *read->builds_on;
    out.sets.push_back(std::move(read->set));
  }
  for (TargetSet& set : out.sets) {
    const auto on = base.find(set.id);
    if (on == base.end()) continue;
    const auto below = std::find_if(out.sets.begin(), out.sets.end(),
                                    [&](const TargetSet& s) { return s.id == on->second; });
    if (below == out.sets.end() || base.contains(below->id))
      out.faults.push_back(
          {set.id, 0, "`builds_on` names `" + on->second + "`", "a set that builds on no other"});
    else
      set.rows.insert(set.rows.begin(), below->rows.begin(), below->rows.end());
  }
  return out;
}

template <class Value>
bool among(const std::vector<Value>& list, const std::optional<Value>& value) {
  return list.empty() || (value && std::find(list.begin(), list.end(), *value) != list.end());
}

bool holds(const TargetRow& row, const TargetCase& c) {
  if (!among(row.sanitizers, c.sanitizer) || !among(row.places, c.place) || !among(row.surfaces, c.surface) ||
      !among(row.kinds, std::optional(c.kind)))
    return false;
  if (row.stabilised && *row.stabilised != (c.cyanuric_acid.value_or(0) > 0)) return false;
  if (row.above_ph && !(c.ph && *c.ph > *row.above_ph)) return false;
  return !row.above_celsius || (c.celsius && *c.celsius > *row.above_celsius);
}

}  // namespace

namespace {
constexpr double kLeastWidth = 0.5;  // mg/L of free chlorine between its bounds; our own
}  // namespace

std::optional<Aim> TargetSet::find(std::string_view analyte, const TargetCase& c) const {
  const TargetRow* found = nullptr;
  for (const TargetRow& row : rows)
    if (row.analyte == analyte && holds(row, c)) found = &row;
  if (!found) return std::nullopt;
  Aim out{{found->low, found->high}, 0, found};
  if (found->low_per_cyanuric && c.cyanuric_acid) {
    double low = *found->low_per_cyanuric * *c.cyanuric_acid;
    // So much stabilizer wants more chlorine than anybody may swim in: new water is the answer then.
    if (found->high) low = std::min(low, std::max(found->low.value_or(0), *found->high - kLeastWidth));
    out.range.low = std::max(out.range.low.value_or(0), low);
  }
  const Target& r = out.range;
  out.aim = found->aim ? *found->aim : r.low && r.high ? (*r.low + *r.high) / 2 : r.low ? *r.low : *r.high;
  if (r.low) out.aim = std::max(out.aim, *r.low);
  return out;
}

TargetCase case_of(const Vessel& v, std::optional<double> cyanuric_acid, std::optional<double> ph) {
  TargetCase c{v.sanitizer, kind_of(v), v.place, v.surface, cyanuric_acid, ph, std::nullopt};
  if (v.water_temperature) c.celsius = v.water_temperature->celsius();
  return c;
}

std::span<const TargetSet> target_sets() {
  static const std::vector<TargetSet> all = load().sets;
  return all;
}

const TargetSet* find_targets(std::string_view id) {
  for (const TargetSet& set : target_sets())
    if (set.id == id) return &set;
  return nullptr;
}

tl::expected<TargetSet, std::vector<Fault>> read_targets(std::string_view text, std::string_view file) {
  auto read = read_set(text, file);
  if (!read) return tl::unexpected(read.error());
  if (!read->builds_on) return std::move(read->set);
  const TargetSet* below = find_targets(*read->builds_on);
  if (!below)
    return tl::unexpected(std::vector<Fault>{
        {std::string(file), 1, "`builds_on` names `" + *read->builds_on + "`", "a set that is built in"}});
  read->set.rows.insert(read->set.rows.begin(), below->rows.begin(), below->rows.end());
  return std::move(read->set);
}

std::vector<Fault> target_faults() {
  return load().faults;
}

}  // namespace brimline
