// SPDX-License-Identifier: GPL-3.0-or-later
// `water`: a table of readings in, a table of solved waters out.
#include "station/batch/water_command.h"

#include <algorithm>
#include <array>
#include <memory>

#include "analysis/water/saturation.h"
#include "analysis/water/uncertainty.h"
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
  kVesselTemperature,
  kBromine,
  kBromide,
  kConductivity,
  kFirstError  // then a standard deviation for each of kErrors
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
    InputColumn{"total_bromine_mg_l_br2"},
    InputColumn{"bromide_mg_l"},
    InputColumn{"conductivity_us_cm"},
    InputColumn{"temperature_c_sd"},
    InputColumn{"ph_sd"},
    InputColumn{"total_alkalinity_mg_l_caco3_sd"},
    InputColumn{"calcium_hardness_mg_l_caco3_sd"},
    InputColumn{"cyanuric_acid_mg_l_sd"},
    InputColumn{"borate_mg_l_b_sd"},
    InputColumn{"free_chlorine_mg_l_cl2_sd"},
    InputColumn{"magnesium_hardness_mg_l_caco3_sd"},
    InputColumn{"sulfate_mg_l_sd"},
    InputColumn{"background_nacl_mg_l_sd"},
    InputColumn{"salt_mg_l_sd"},
    InputColumn{"tds_mg_l_sd"},
    InputColumn{"vessel_temperature_c_sd"},
    InputColumn{"total_bromine_mg_l_br2_sd"},
    InputColumn{"conductivity_us_cm_sd"},
};

// What each column from kFirstError on is the error of; the background's four are told apart by which was
// read.
constexpr std::array kErrors = {&ReadingErrors::temperature,
                                &ReadingErrors::ph,
                                &ReadingErrors::total_alkalinity,
                                &ReadingErrors::calcium_hardness,
                                &ReadingErrors::cyanuric_acid,
                                &ReadingErrors::borate,
                                &ReadingErrors::free_chlorine,
                                &ReadingErrors::magnesium_hardness,
                                &ReadingErrors::sulfate,
                                &ReadingErrors::background,
                                &ReadingErrors::background,
                                &ReadingErrors::background,
                                &ReadingErrors::vessel_temperature,
                                &ReadingErrors::total_bromine,
                                &ReadingErrors::background};
static_assert(kInput.size() == kFirstError + kErrors.size());

constexpr double kAbsoluteZero = -273.15;
constexpr std::string_view kError = "_sd";

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
  r.total_bromine = cells.number(kBromine);
  r.bromide = cells.number(kBromide);
  r.conductivity = cells.number(kConductivity);
  return r;
}

// Absent errors are none. Of the background the error of the reading that is used, or with none read that of
// the dissolved solids.
ReadingErrors errors_of(Cells& cells, const WaterReadings& readings) {
  const BackgroundReading used = background_reading(readings);
  const std::string_view background = used == BackgroundReading::background_nacl ? "background_nacl_mg_l_sd"
                                      : used == BackgroundReading::salt          ? "salt_mg_l_sd"
                                      : used == BackgroundReading::conductivity  ? "conductivity_us_cm_sd"
                                                                                 : "tds_mg_l_sd";
  ReadingErrors out;
  for (size_t i = 0; i < kErrors.size(); ++i) {
    const auto error = cells.number(kFirstError + i);
    const bool of_used =
        kErrors[i] != &ReadingErrors::background || kInput[kFirstError + i].name == background;
    if (error && of_used) out.*kErrors[i] = *error;
  }
  return out;
}

// One solved row; what costs more is computed once, when a column asks for it.
class Solved {
 public:
  Solved(const WaterReadings& r, const Water& w) : readings(r), water(w) {}
  const WaterReadings& readings;
  const Water& water;

  const std::optional<double>& saturation() {
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

using Number = std::optional<double>;

// What hangs on a reading that was not taken is left empty, not computed as if it were zero.
Number if_read(const std::optional<double>& reading, double result) {
  return reading ? Number(result) : std::nullopt;
}
bool knows_calcium(const Solved& s) {
  return s.readings.calcium_hardness.has_value();
}

enum class Shown { always, in_the_vessel, when_asked };  // the second: or when asked for

struct OutputColumn {
  std::string_view name;
  Shown shown;
  Number (*number)(Solved&);  // null: it is words
  std::string_view (*words)(Solved&) = nullptr;
};

constexpr std::array kOutput = {
    OutputColumn{"si_calcite", Shown::always, [](Solved& s) { return s.water.si_calcite(); }},
    OutputColumn{"si_factor_table", Shown::always, [](Solved& s) { return factor_table_index(s.water); }},
    OutputColumn{"ionic_strength_mol_kgw", Shown::always,
                 [](Solved& s) { return Number(s.water.ionic_strength); }},
    OutputColumn{"dic_mmol_kgw", Shown::always, [](Solved& s) { return Number(s.water.dic_mmol()); }},
    OutputColumn{"carbonate_alkalinity_mg_l_caco3", Shown::always,
                 [](Solved& s) { return Number(s.water.carbonate_alkalinity()); }},
    OutputColumn{"ph_saturation_const_alk", Shown::always,
                 [](Solved& s) { return knows_calcium(s) ? s.saturation() : Number(); }},
    OutputColumn{"ph_saturation_status", Shown::always, nullptr,
                 [](Solved& s) -> std::string_view {
                   if (!knows_calcium(s)) return "";
                   return s.saturation() ? "ok" : "none";
                 }},
    OutputColumn{
        "ccpp_mg_l_caco3", Shown::always,
        [](Solved& s) { return knows_calcium(s) && s.calcite() ? Number(s.calcite()->ccpp()) : Number(); }},
    OutputColumn{"hocl_mg_l_cl2", Shown::always,
                 [](Solved& s) { return if_read(s.readings.free_chlorine, s.water.hocl()); }},
    OutputColumn{"ocl_mg_l_cl2", Shown::always,
                 [](Solved& s) { return if_read(s.readings.free_chlorine, s.water.ocl()); }},
    OutputColumn{
        "chlorinated_cyanurates_mg_l_cl2", Shown::always,
        [](Solved& s) { return if_read(s.readings.free_chlorine, s.water.chlorinated_cyanurates()); }},
    OutputColumn{"ph_vessel", Shown::in_the_vessel, [](Solved& s) { return Number(s.water.ph); }},
    OutputColumn{
        "ph_at_calcite_equilibrium", Shown::in_the_vessel,
        [](Solved& s) { return knows_calcium(s) && s.calcite() ? Number(s.calcite()->ph) : Number(); }},
    OutputColumn{"hocl_share", Shown::when_asked, [](Solved& s) { return s.water.hocl_share(); }},
    OutputColumn{"hobr_mg_l_br2", Shown::when_asked,
                 [](Solved& s) { return if_read(s.readings.total_bromine, s.water.hobr()); }},
    OutputColumn{"free_chlorine_to_stabilizer", Shown::when_asked,
                 [](Solved& s) { return s.water.chlorine_to_stabilizer(); }},
    OutputColumn{"background_from", Shown::when_asked, nullptr,
                 [](Solved& s) { return text(background_reading(s.readings)); }},
};

// A column to write: a result itself, or its standard deviation.
struct Column {
  const OutputColumn* of;
  bool error = false;

  std::string name() const { return std::string(of->name).append(error ? kError : ""); }
};
using Chosen = std::vector<Column>;

std::optional<Column> column_named(std::string_view name) {
  for (const OutputColumn& column : kOutput) {
    if (column.name == name) return Column{&column};
    if (column.number && name.ends_with(kError) && column.name == name.substr(0, name.size() - kError.size()))
      return Column{&column, true};
  }
  return std::nullopt;
}

tl::expected<Chosen, std::string> chosen(std::string_view names) {
  Chosen out;
  for (const std::string_view name : column_names(names)) {
    const auto found = column_named(name);
    if (!found) return tl::unexpected("--columns names no column `" + std::string(name) + "`");
    out.push_back(*found);
  }
  return out;
}

Chosen all_columns(bool with_vessel) {
  Chosen out;
  for (const OutputColumn& column : kOutput)
    if (column.shown == Shown::always || (with_vessel && column.shown == Shown::in_the_vessel))
      out.push_back({&column});
  return out;
}

tl::expected<Water, Refusal> solved(const WaterReadings& readings, std::optional<Temperature> vessel) {
  auto water = water_from_readings(readings);
  return water && vessel ? at_temperature(*water, *vessel) : water;
}

// The moved waters are solved once a row, when the first error is asked for.
class Errors {
 public:
  Errors(const WaterReadings& readings, std::optional<Temperature> vessel, const ReadingErrors& errors)
      : readings_(readings), vessel_(vessel), errors_(errors) {}

  Number of(const OutputColumn& column) {
    if (!moved_) moved_.emplace(MovedWaters::of(readings_, vessel_));
    if (!*moved_) return std::nullopt;
    return combined((*moved_)->slopes([&](const Water& water) {
      Solved s(readings_, water);
      return column.number(s);
    }),
                    errors_);
  }

 private:
  const WaterReadings& readings_;
  std::optional<Temperature> vessel_;
  ReadingErrors errors_;
  std::optional<tl::expected<MovedWaters, Refusal>> moved_;
};

void write_row(const Chosen& columns, Solved& row, Errors& errors, std::string& out) {
  for (const Column& column : columns) {
    out += ',';
    if (column.error)
      append_number(out, errors.of(*column.of));
    else if (column.of->number)
      append_number(out, column.of->number(row));
    else
      append_text(out, column.of->words(row));
  }
}

void answer(const Chosen& columns, bool with_errors, Cells& cells, std::string& out) {
  const WaterReadings readings = readings_of(cells);
  const auto celsius = cells.number(kVesselTemperature, kAbsoluteZero);
  const auto vessel = celsius ? std::optional(Temperature::celsius(*celsius)) : std::nullopt;
  const ReadingErrors told = with_errors ? errors_of(cells, readings) : ReadingErrors{};
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
  Errors errors(readings, vessel, told);
  write_row(columns, row, errors, out);
  out += ",\n";
}

std::string header_line(const Chosen& columns) {
  std::string line = "id";
  for (const Column& column : columns) line.append(",").append(column.name());
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
  const bool with_errors =
      std::any_of(columns->begin(), columns->end(), [](const Column& column) { return column.error; });
  return Table{
      kInput,
      [columns, told](const Header& header) {
        if (!told) *columns = all_columns(header.present[kVesselTemperature]);
        return header_line(*columns);
      },
      [columns, with_errors](Cells& cells, std::string& out) { answer(*columns, with_errors, cells, out); }};
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
