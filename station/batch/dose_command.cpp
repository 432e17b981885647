// SPDX-License-Identifier: GPL-3.0-or-later
// `dose`: a table of waters and one or two additions in, a table of the waters they end as out.
#include <array>

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
  kTds
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
};

constexpr std::string_view kAeration = "aeration";
constexpr std::string_view kHeader =
    "id,end_ph,end_total_alkalinity_mg_l_caco3,end_calcium_hardness_mg_l_caco3,end_si_calcite,end_hocl_mg_l_"
    "cl2,"
    "refused\n";

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

void write_end(const WaterReadings& start, const Water& end, std::string& out) {
  out += ',';
  append_number(out, end.ph);
  out += ',';
  append_number(out, end.total_alkalinity());
  out += ',';
  // Unmeasured calcium and chlorine stay unknown whatever is added to them.
  if (start.calcium_hardness) append_number(out, end.calcium_hardness());
  out += ',';
  if (start.calcium_hardness) append_number(out, end.si_calcite());
  out += ',';
  if (start.free_chlorine) append_number(out, end.hocl());
  out += ',';
}

void answer(Cells& cells, std::string& out) {
  const WaterReadings start = start_of(cells);
  const Addition first = addition_of(cells, kAddition1, kAmount1);
  const Addition second = addition_of(cells, kAddition2, kAmount2);
  if (cells.fault()) return;
  out += cells.text(kId);
  const auto end = water_from_readings(start)
                       .and_then([&](const Water& w) { return after(w, first); })
                       .and_then([&](const Water& w) { return after(w, second); });
  if (end) {
    write_end(start, *end, out);
  } else {
    out += ",,,,,,";
    append_text(out, text(end.error()));
  }
  out += '\n';
}

}  // namespace

Table dose_table() {
  return {kInput, [](const Header&) { return std::string(kHeader); }, answer};
}

int dose_command(const Arguments& arguments) {
  const auto parsed = parse(arguments, {"--in", "--out", "--threads"});
  if (!parsed) return bad_usage("dose", parsed.error());
  const auto files = table_files(*parsed);
  if (!files) return bad_usage("dose", files.error());
  return run_table(dose_table(), *files);
}

}  // namespace brimline::batch
