// SPDX-License-Identifier: GPL-3.0-or-later
// `water`: a table of readings in, a table of solved waters out.
#include "station/batch/water_command.h"

#include <algorithm>
#include <array>
#include <memory>

#include "analysis/water/saturation.h"
#include "analysis/water/water.h"
#include "station/batch/usage.h"

namespace brimline::batch {
namespace {

enum In : size_t {
  kId,
  kTemperature,
  kPh,
  kAlkalinity,
  kCalcium,
  kCyanuric,
  kBorate,
  kChlorine,
  kMagnesium,
  kSulfate,
  kBackground,
  kSalt,
  kTds,
  kVesselTemperature
};

constexpr std::array kInput = {
    InputColumn{"id", true},
    InputColumn{"temperature_c", true},
    InputColumn{"ph", true},
    InputColumn{"total_alkalinity_mg_l_caco3", true},
    InputColumn{"calcium_hardness_mg_l_caco3"},
    InputColumn{"cyanuric_acid_mg_l"},
    InputColumn{"borate_mg_l_b"},
    InputColumn{"free_chlorine_mg_l_cl2"},
    InputColumn{"magnesium_hardness_mg_l_caco3"},
    InputColumn{"sulfate_mg_l"},
    InputColumn{"background_nacl_mg_l"},
    InputColumn{"salt_mg_l"},
    InputColumn{"tds_mg_l"},
    InputColumn{"vessel_temperature_c"},
};

constexpr double kAbsoluteZero = -273.15;

WaterReadings readings_of(Cells& cells) {
  WaterReadings r;
  r.temperature = Temperature::celsius(cells.needed(kTemperature, kAbsoluteZero));
  r.ph = cells.needed(kPh, 0, 14);
  r.total_alkalinity = cells.needed(kAlkalinity);
  r.calcium_hardness = cells.number(kCalcium);
  r.cyanuric_acid = cells.number(kCyanuric);
  r.borate = cells.number(kBorate);
  r.free_chlorine = cells.number(kChlorine);
  r.magnesium_hardness = cells.number(kMagnesium);
  r.sulfate = cells.number(kSulfate);
  r.background_nacl = cells.number(kBackground, -std::numeric_limits<double>::infinity());
  r.salt = cells.number(kSalt);
  r.tds = cells.number(kTds);
  return r;
}

// One solved row; what costs more is computed once, when a column asks for it.
class Solved {
 public:
  Solved(const WaterReadings& r, const Water& w) : readings(r), water(w) {}
  const WaterReadings& readings;
  const Water& water;

  std::optional<double> saturation() {
    if (!saturation_) saturation_.emplace(saturation_ph(water));
    return *saturation_;
  }
  const std::optional<CalciteEquilibrium>& calcite() {
    if (!calcite_) calcite_.emplace(calcite_equilibrium(water));
    return *calcite_;
  }

 private:
  std::optional<std::optional<double>> saturation_;
  std::optional<std::optional<CalciteEquilibrium>> calcite_;
};

// What hangs on a reading that was not taken is left empty, not computed as if it were zero.
bool knows_calcium(const Solved& s) {
  return s.readings.calcium_hardness.has_value();
}
bool knows_chlorine(const Solved& s) {
  return s.readings.free_chlorine.has_value();
}

struct OutputColumn {
  std::string_view name;
  bool always;  // false: only where asked for, or where the vessel's temperature is told
  void (*write)(Solved&, std::string& out);
};

constexpr std::array kOutput = {
    OutputColumn{"si_calcite", true,
                 [](Solved& s, std::string& o) { append_number(o, s.water.si_calcite()); }},
    OutputColumn{"si_factor_table", true,
                 [](Solved& s, std::string& o) { append_number(o, factor_table_index(s.water)); }},
    OutputColumn{"ionic_strength_mol_kgw", true,
                 [](Solved& s, std::string& o) { append_number(o, s.water.ionic_strength); }},
    OutputColumn{"dic_mmol_kgw", true,
                 [](Solved& s, std::string& o) { append_number(o, s.water.dic_mmol()); }},
    OutputColumn{"carbonate_alkalinity_mg_l_caco3", true,
                 [](Solved& s, std::string& o) { append_number(o, s.water.carbonate_alkalinity()); }},
    OutputColumn{"ph_saturation_const_alk", true,
                 [](Solved& s, std::string& o) {
                   if (knows_calcium(s)) append_number(o, s.saturation());
                 }},
    OutputColumn{"ph_saturation_status", true,
                 [](Solved& s, std::string& o) {
                   if (knows_calcium(s)) o += s.saturation() ? "ok" : "none";
                 }},
    OutputColumn{"ccpp_mg_l_caco3", true,
                 [](Solved& s, std::string& o) {
                   if (knows_calcium(s) && s.calcite()) append_number(o, s.calcite()->ccpp());
                 }},
    OutputColumn{"hocl_mg_l_cl2", true,
                 [](Solved& s, std::string& o) {
                   if (knows_chlorine(s)) append_number(o, s.water.hocl());
                 }},
    OutputColumn{"ocl_mg_l_cl2", true,
                 [](Solved& s, std::string& o) {
                   if (knows_chlorine(s)) append_number(o, s.water.ocl());
                 }},
    OutputColumn{"chlorinated_cyanurates_mg_l_cl2", true,
                 [](Solved& s, std::string& o) {
                   if (knows_chlorine(s)) append_number(o, s.water.chlorinated_cyanurates());
                 }},
    OutputColumn{"ph_vessel", false, [](Solved& s, std::string& o) { append_number(o, s.water.ph); }},
    OutputColumn{"ph_at_calcite_equilibrium", false,
                 [](Solved& s, std::string& o) {
                   if (knows_calcium(s) && s.calcite()) append_number(o, s.calcite()->ph);
                 }},
};

using Chosen = std::vector<const OutputColumn*>;

// The columns named, in that order; `id` and `refused` always stand first and last.
tl::expected<Chosen, std::string> chosen(std::string_view names) {
  Chosen out;
  while (!names.empty()) {
    const size_t comma = std::min(names.find(','), names.size());
    const std::string_view name = names.substr(0, comma);
    names.remove_prefix(std::min(comma + 1, names.size()));
    if (name == "id" || name == "refused") continue;
    const auto found =
        std::find_if(kOutput.begin(), kOutput.end(), [&](const auto& c) { return c.name == name; });
    if (found == kOutput.end())
      return tl::unexpected("--columns names no column `" + std::string(name) + "`");
    out.push_back(&*found);
  }
  return out;
}

Chosen all_columns(bool with_vessel) {
  Chosen out;
  for (const OutputColumn& column : kOutput)
    if (column.always || with_vessel) out.push_back(&column);
  return out;
}

tl::expected<Water, Refusal> solved(const WaterReadings& readings, std::optional<double> vessel_celsius) {
  auto water = water_from_readings(readings);
  if (!water || !vessel_celsius) return water;
  return at_temperature(*water, Temperature::celsius(*vessel_celsius));
}

void answer(const Chosen& columns, Cells& cells, std::string& out) {
  const WaterReadings readings = readings_of(cells);
  const auto vessel = cells.number(kVesselTemperature, kAbsoluteZero);
  if (cells.fault()) return;
  out += cells.text(kId);
  const auto water = solved(readings, vessel);
  if (!water) {
    out.append(columns.size() + 1, ',');
    append_text(out, text(water.error()));
    out += '\n';
    return;
  }
  Solved row(readings, *water);
  for (const OutputColumn* column : columns) {
    out += ',';
    column->write(row, out);
  }
  out += ",\n";
}

std::string header_line(const Chosen& columns) {
  std::string line = "id";
  for (const OutputColumn* column : columns) line.append(",").append(column->name);
  return line + ",refused\n";
}

}  // namespace

tl::expected<Table, std::string> water_table(const std::optional<std::string>& names) {
  auto columns = std::make_shared<Chosen>();
  if (names) {
    auto found = chosen(*names);
    if (!found) return tl::unexpected(found.error());
    *columns = std::move(*found);
  }
  const bool told = names.has_value();
  return Table{kInput,
               [columns, told](const Header& header) {
                 if (!told) *columns = all_columns(header.present[kVesselTemperature]);
                 return header_line(*columns);
               },
               [columns](Cells& cells, std::string& out) { answer(*columns, cells, out); }};
}

int water_command(const Arguments& arguments) {
  const auto parsed = parse(arguments, {"--in", "--out", "--threads", "--columns"});
  if (!parsed) return bad_usage("water", parsed.error());
  const auto files = table_files(*parsed);
  if (!files) return bad_usage("water", files.error());
  const auto table = water_table(parsed->value("--columns"));
  if (!table) return bad_usage("water", table.error());
  return run_table(*table, *files);
}

}  // namespace brimline::batch
