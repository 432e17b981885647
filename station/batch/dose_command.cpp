// SPDX-License-Identifier: GPL-3.0-or-later
// `dose`: a table of waters and one or two additions in, a table of the waters they end as out.
#include <algorithm>
#include <array>
#include <memory>

#include "analysis/water/doses.h"
#include "station/batch/usage.h"
#include "station/batch/water_command.h"

namespace brimline::batch {
namespace {

enum In : size_t {
  kId,
  kAddition1,
  kAmount1,
  kAddition2,
  kAmount2,
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
  kBromine,
  kBromide
};

constexpr std::array kInput = {
    InputColumn{"id", true},
    InputColumn{"addition_1", true},
    InputColumn{"amount_1_mmol_kgw"},
    InputColumn{"addition_2"},
    InputColumn{"amount_2_mmol_kgw"},
    InputColumn{"temperature_c", true},
    InputColumn{"start_ph", true},
    InputColumn{"start_total_alkalinity_mg_l_caco3", true},
    InputColumn{"start_calcium_hardness_mg_l_caco3"},
    InputColumn{"start_cyanuric_acid_mg_l"},
    InputColumn{"start_borate_mg_l_b"},
    InputColumn{"start_free_chlorine_mg_l_cl2"},
    InputColumn{"start_magnesium_hardness_mg_l_caco3"},
    InputColumn{"start_sulfate_mg_l"},
    InputColumn{"start_background_nacl_mg_l"},
    InputColumn{"start_salt_mg_l"},
    InputColumn{"start_tds_mg_l"},
    InputColumn{"start_total_bromine_mg_l_br2"},
    InputColumn{"start_bromide_mg_l"},
};

constexpr std::string_view kAeration = "aeration";
WaterReadings start_of(Cells& cells) {
  WaterReadings r;
  r.temperature = Temperature::celsius(cells.needed(kTemperature, -273.15));
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
  return r;
}

struct Addition {
  std::string_view chemical;  // empty: none
  double mol_per_kgw = 0;
};

Addition addition_of(Cells& cells, size_t name, size_t amount) {
  const std::string_view chemical = cells.text(name);
  if (chemical.empty()) {
    if (!cells.text(amount).empty()) cells.fault(name, "the name of what is added");
    return {};
  }
  if (chemical == kAeration) {
    cells.number(amount);
    return {chemical, 0};
  }
  if (!find_dose(chemical)) cells.fault(name, "a chemical, or aeration");
  return {chemical, cells.needed(amount) * 1e-3};
}

tl::expected<Water, Refusal> after(const Water& water, const Addition& addition) {
  if (addition.chemical.empty()) return water;
  if (addition.chemical == kAeration) return aerate(water);
  return solve(*add(water.totals, addition.chemical, addition.mol_per_kgw), water);
}

using Number = std::optional<double>;

// A dosed water, and the same once its chlorine and bromine are spent, solved when a column asks for it.
class Dosed {
 public:
  Dosed(const WaterReadings& r, const Water& w) : start(r), end(w) {}
  const WaterReadings& start;
  const Water& end;

  const std::optional<Water>& spent() {
    if (spent_) return *spent_;
    const Totals& t = end.totals;
    const auto water = solve(spend_bromine(spend_chlorine(t, t.chlorine), t.bromine), end);
    spent_.emplace(water ? std::optional(*water) : std::nullopt);
    return *spent_;
  }

 private:
  std::optional<std::optional<Water>> spent_;
};

// Unmeasured calcium, chlorine and the like stay unknown whatever is added to them.
Number if_read(const std::optional<double>& reading, Number result) {
  return reading ? result : std::nullopt;
}

struct OutputColumn {
  std::string_view name;
  bool always;  // false: when asked for
  Number (*number)(Dosed&);
};

constexpr std::array kOutput = {
    OutputColumn{"end_ph", true, [](Dosed& d) { return Number(d.end.ph); }},
    OutputColumn{"end_total_alkalinity_mg_l_caco3", true,
                 [](Dosed& d) { return Number(d.end.total_alkalinity()); }},
    OutputColumn{"end_calcium_hardness_mg_l_caco3", true,
                 [](Dosed& d) { return if_read(d.start.calcium_hardness, d.end.calcium_hardness()); }},
    OutputColumn{"end_si_calcite", true,
                 [](Dosed& d) { return if_read(d.start.calcium_hardness, d.end.si_calcite()); }},
    OutputColumn{"end_hocl_mg_l_cl2", true,
                 [](Dosed& d) { return if_read(d.start.free_chlorine, d.end.hocl()); }},
    OutputColumn{"end_free_chlorine_mg_l_cl2", false,
                 [](Dosed& d) { return if_read(d.start.free_chlorine, d.end.free_chlorine()); }},
    OutputColumn{"end_total_bromine_mg_l_br2", false,
                 [](Dosed& d) { return if_read(d.start.total_bromine, d.end.total_bromine()); }},
    OutputColumn{"end_cyanuric_acid_mg_l", false,
                 [](Dosed& d) { return if_read(d.start.cyanuric_acid, d.end.cyanuric_acid()); }},
    OutputColumn{"end_borate_mg_l_b", false,
                 [](Dosed& d) { return if_read(d.start.borate, d.end.borate()); }},
    OutputColumn{"end_dic_mmol_kgw", false, [](Dosed& d) { return Number(d.end.dic_mmol()); }},
    OutputColumn{"end_ionic_strength_mol_kgw", false, [](Dosed& d) { return Number(d.end.ionic_strength); }},
    // The acid that chlorine and bromine leave behind when they are spent, one equivalent each.
    OutputColumn{"acid_when_spent_mmol_kgw", false,
                 [](Dosed& d) { return Number(1e3 * (d.end.totals.chlorine + d.end.totals.bromine)); }},
    OutputColumn{"spent_ph", false, [](Dosed& d) { return d.spent() ? Number(d.spent()->ph) : Number(); }},
    OutputColumn{"spent_total_alkalinity_mg_l_caco3", false,
                 [](Dosed& d) { return d.spent() ? Number(d.spent()->total_alkalinity()) : Number(); }},
};
using Chosen = std::vector<const OutputColumn*>;

tl::expected<Chosen, std::string> chosen(const std::optional<std::string>& names) {
  Chosen out;
  if (!names)
    for (const OutputColumn& column : kOutput)
      if (column.always) out.push_back(&column);
  const std::string asked = names.value_or("");
  for (const std::string_view name : column_names(asked)) {
    const auto found =
        std::find_if(kOutput.begin(), kOutput.end(), [&](const auto& c) { return c.name == name; });
    if (found == kOutput.end())
      return tl::unexpected("--columns names no column `" + std::string(name) + "`");
    out.push_back(&*found);
  }
  return out;
}

void answer(const Chosen& columns, Cells& cells, std::string& out) {
  const WaterReadings start = start_of(cells);
  const Addition first = addition_of(cells, kAddition1, kAmount1);
  const Addition second = addition_of(cells, kAddition2, kAmount2);
  if (cells.fault()) return;
  out += cells.text(kId);
  const auto end = water_from_readings(start)
                       .and_then([&](const Water& w) { return after(w, first); })
                       .and_then([&](const Water& w) { return after(w, second); });
  if (!end) {
    out.append(columns.size() + 1, ',');
    append_text(out, text(end.error()));
    out += '\n';
    return;
  }
  Dosed dosed(start, *end);
  for (const OutputColumn* column : columns) {
    out += ',';
    append_number(out, column->number(dosed));
  }
  out += ",\n";
}

std::string header_line(const Chosen& columns) {
  std::string line = "id";
  for (const OutputColumn* column : columns) line.append(",").append(column->name);
  return line + ",refused\n";
}

}  // namespace

tl::expected<Table, std::string> dose_table(const std::optional<std::string>& names) {
  const auto found = chosen(names);
  if (!found) return tl::unexpected(found.error());
  const auto columns = std::make_shared<const Chosen>(*found);
  return Table{kInput, [columns](const Header&) { return header_line(*columns); },
               [columns](Cells& cells, std::string& out) { answer(*columns, cells, out); }};
}

int dose_command(const Arguments& arguments) {
  const auto parsed = parse(arguments, {"--in", "--out", "--threads", "--columns"});
  if (!parsed) return bad_usage("dose", parsed.error());
  const auto files = table_files(*parsed);
  if (!files) return bad_usage("dose", files.error());
  const auto table = dose_table(parsed->value("--columns"));
  if (!table) return bad_usage("dose", table.error());
  return run_table(*table, *files);
}

}  // namespace brimline::batch
