// SPDX-License-Identifier: GPL-3.0-or-later
#include "station/records/import_readings.h"

#include <algorithm>

#include <nlohmann/json.hpp>

#include "station/known_ids.h"
#include "station/records/amounts.h"
#include "station/visit_json.h"

namespace brimline {
namespace {

struct Shorthand {
  std::string_view short_name, analyte;
};
// As counters write them on slips; common practice, no source.
constexpr Shorthand kShorthands[] = {{"fc", "free_chlorine"},       {"tc", "total_chlorine"},
                                     {"ta", "total_alkalinity"},    {"alkalinity", "total_alkalinity"},
                                     {"ch", "calcium_hardness"},    {"calcium", "calcium_hardness"},
                                     {"cya", "cyanuric_acid"},      {"stabiliser", "cyanuric_acid"},
                                     {"bromine", "total_bromine"},  {"th", "total_hardness"},
                                     {"hardness", "total_hardness"}};

// By id, by name ("Free chlorine") or by shorthand.
const AnalyteKind* analyte_called(const std::string& name) {
  const std::string plain = ImportTable::simplified(name);
  for (const Shorthand& row : kShorthands)
    if (row.short_name == plain) return find_analyte(row.analyte);
  if (const AnalyteKind* kind = find_analyte(plain)) return kind;
  for (const AnalyteKind& kind : analyte_kinds())
    if (ImportTable::simplified(kind.name) == plain) return &kind;
  return nullptr;
}

bool holds(const std::vector<Reading>& readings, const Reading& reading) {
  return std::any_of(readings.begin(), readings.end(), [&](const Reading& there) {
    return there.analyte == reading.analyte && there.value == reading.value;
  });
}

std::optional<int> first_of(const std::vector<Reading>& readings, const AnalyteId& analyte) {
  for (size_t i = 0; i < readings.size(); ++i)
    if (readings[i].analyte == analyte) return static_cast<int>(i);
  return std::nullopt;
}

}  // namespace

std::span<const ImportColumn> ImportReadings::columns() {
  static const std::vector<ImportColumn> columns = {
      {"visit_id", {"visit", "test_id"}},
      {"customer_id", {"customer_number", "customer"}},
      {"name", {"customer_name", "full_name"}},
      {"phone", {"telephone", "phone_number", "tel", "mobile"}},
      {"vessel_id", {"vessel"}},
      {"taken_at", {"date", "taken", "day", "tested_at", "date_time"}},
      {"bottle", {}},
      {"analyte", {"reading", "test"}},
      {"value", {"result"}},
      {"unit", {"units"}},
      {"method", {}},
      {"water", {}},
      {"dilution", {}},
      {"clipped", {}},
      {"sd", {}},
      {"instrument", {}},
      {"lot", {}},
      {"position", {}},
      {"repeat_of", {}}};
  return columns;
}

void ImportReadings::begin(ImportTable& table, Import& out) {
  wide_.clear();
  long_form_ = table.has("analyte");
  const auto extras = table.extras();
  for (const auto& extra : extras) {
    if (long_form_) break;
    const AnalyteKind* kind = analyte_called(extra.name);
    if (!kind) continue;
    AnalyteColumn column{extra.index, kind, extra.bracket, std::nullopt};
    table.forget_extra(extra.index);
    for (const auto& other : extras)
      if (other.name == extra.name + "_unit" || other.name == extra.name + "_units") {
        column.unit_from = other.index;
        table.forget_extra(other.index);
      }
    wide_.push_back(column);
  }
  if (!long_form_ && wide_.empty())
    out.faults.add(table.at_line("no column of readings",
                                 "`analyte` and `value`, or columns such as `ph` and `free_chlorine`"));
}

// The bottle that the row belongs to, begun where it is the first of it.
std::optional<Visit*> ImportReadings::bottle_on(ImportTable& row) {
  const auto owner = people_.owner_of(row);
  const auto taken = row.text("taken_at");
  const auto at = taken ? moment_from(*taken) : std::nullopt;
  if (!at) row.fault("taken_at", "a day or moment as ISO 8601, 2026-06-14 or 2026-06-14T08:10:00-05:00");
  if (row.spoilt() || !owner) return std::nullopt;
  const std::string id =
      row.text("visit_id").value_or(stable_id("V", {owner->customer, owner->vessel, at->wall}));
  const auto [found, fresh] = visits_.try_emplace(id);
  Visit& visit = found->second;
  if (fresh) {
    order_.push_back(id);
    first_seen_.emplace(id, row.at_line("", ""));
    visit.id = id;
    visit.bottle.taken_at = at->at;
    visit.bottle.code = row.text("bottle").value_or("");
    if (const Customer* card = people_.card(owner->customer)) visit.customer = *card;
    visit.vessel = people_.vessel(owner->vessel);
  } else if (visit.vessel.id != owner->vessel || !visit.customer || visit.customer->id != owner->customer ||
             visit.bottle.taken_at != at->at) {
    row.fault("visit_id", "one bottle's: the same customer, vessel and moment as above");
    return std::nullopt;
  }
  return &visit;
}

void ImportReadings::add(ImportTable& row, Visit& visit, const AnalyteKind& kind, const std::string& value,
                         const std::string& unit, Import& out) {
  const auto number = number_from(value, row.comma());
  const auto factor = factor_of(kind, unit);
  if (!number) return row.fault(row.at_line("`" + kind.id + "` is `" + value + "`", "a number"));
  if (!factor)
    return row.fault(row.at_line("`" + kind.id + "` is in `" + unit + "`", "one of " + units_of(kind)));
  Reading reading;
  reading.analyte = kind.id;
  reading.value = *number * *factor;
  reading.method = row.choice<Method>("method");
  reading.clipped = row.choice<Clip>("clipped");
  reading.dilution = row.number("dilution").value_or(1);
  if (const auto sd = row.number("sd")) reading.sd = *sd * *factor;
  reading.instrument = row.text("instrument");
  reading.lot = row.text("lot");
  if (const auto judged = reading_from(reading_to_json(reading), "row"); !judged)
    for (const Fault& fault : judged.error()) row.fault(row.at_line(fault.what, fault.expected));
  if (row.spoilt()) return;
  const bool fill = row.text("water") == "fill";
  if (fill && !visit.bottle.fill_water) visit.bottle.fill_water.emplace();
  std::vector<Reading>& readings = fill ? *visit.bottle.fill_water : visit.bottle.readings;
  if (holds(readings, reading) && !row.has("repeat_of")) {
    out.notes.add(
        row.at_line("the same reading of " + kind.id + " stands above", "it once; it is kept once"));
    return;
  }
  reading.repeat_of = first_of(readings, reading.analyte);
  readings.push_back(std::move(reading));
}

void ImportReadings::read(ImportTable& row, Import& out) {
  const auto visit = bottle_on(row);
  if (!visit) return;
  if (long_form_) {
    const auto name = row.text("analyte"), value = row.text("value");
    const AnalyteKind* kind = name ? analyte_called(*name) : nullptr;
    if (!kind) return row.fault("analyte", "one of " + list_of_analytes());
    if (!value) return row.fault("value", "a number");
    return add(row, **visit, *kind, *value, row.text("unit").value_or(""), out);
  }
  for (const AnalyteColumn& column : wide_) {
    const auto value = row.cell(column.index);
    if (!value) continue;  // not read
    const auto unit = column.unit_from ? row.cell(*column.unit_from) : std::nullopt;
    add(row, **visit, *column.kind, *value, unit.value_or(column.unit), out);
  }
}

Stored<void> ImportReadings::settle(Import& out, const Progress& progress) {
  for (size_t i = 0; i < order_.size(); ++i) {
    if (i % 256 == 0 &&
        !goes_on(progress, 0.9 + 0.1 * static_cast<double>(i) / static_cast<double>(order_.size())))
      return tl::unexpected(StoreError{StoreTrouble::refused, "stopped"});
    Visit& visit = visits_[order_[i]];
    const auto count = static_cast<std::int64_t>(
        visit.bottle.readings.size() + (visit.bottle.fill_water ? visit.bottle.fill_water->size() : 0));
    if (count == 0) continue;  // all of its lines were faulty
    const Fault& seen = first_seen_.at(visit.id);
    if (visit.customer && people_.erased(visit.customer->id)) {
      out.notes.add(
          {seen.file, seen.line, "the customer was erased: visit " + visit.id + " is left out", "-"});
      continue;
    }
    const auto there = store_.visit(visit.id);
    if (!there) return tl::unexpected(there.error());
    ++(*there ? out.counts.visits.there : out.counts.visits.fresh);
    (*there ? out.counts.readings.there : out.counts.readings.fresh) += count;
    if (!*there) {
      out.visits.push_back(std::move(visit));
      continue;
    }
    const bool same = std::all_of(visit.bottle.readings.begin(), visit.bottle.readings.end(),
                                  [&](const Reading& r) { return holds((*there)->bottle.readings, r); });
    if (!same)
      out.notes.add({seen.file, seen.line, "visit " + visit.id + " is in the records with other readings",
                     "the same; what is there stays"});
  }
  return {};
}

}  // namespace brimline
