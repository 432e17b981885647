// SPDX-License-Identifier: GPL-3.0-or-later
// Every row of the reference tables (tests/data/reference/README.md): the worst deviation is printed and
// bounded.
#include <gtest/gtest.h>

#include <cmath>
#include <cstdlib>
#include <map>

#include "analysis/water/doses.h"
#include "analysis/water/saturation.h"
#include "analysis/water/water.h"
#include "tests/analysis/water/reference_table.h"

namespace brimline {
namespace {

using reference::report;
using reference::Row;
using reference::Worst;

// Records what was seen and holds it to its bound.
void hold(const char* table, const char* what, const Worst& worst, double bound) {
  report(table, what, worst, bound);
  EXPECT_GT(worst.count, 0) << what;
  EXPECT_LE(std::abs(worst.value), bound) << table << " " << what << " at " << worst.id;
}

// Share of 1 % (or of an absolute allowance, whichever is wider) that a deviation uses up; 1 is the bound.
double used(double is, double expected, double relative, double absolute) {
  return (is - expected) / std::max(relative * std::abs(expected), absolute);
}

TEST(ReferenceTables, CalciteSaturation) {
  Worst si, strength, dic, alkalinity, ccpp, final_ph, saturation, pco2;
  int wrong_status = 0;
  for (const Row& row : reference::rows("calcite_saturation_open.csv")) {
    const std::string& id = row.text("id");
    const auto water = water_from_readings(reference::readings(row));
    ASSERT_TRUE(water) << id << " " << text(water.error());
    si.see(water->si_calcite().value() - row.need("si_calcite"), id);
    strength.see(water->ionic_strength / row.need("ionic_strength_mol_kgw") - 1, id);
    dic.see(water->dic_mmol() / row.need("dic_mmol_kgw") - 1, id);
    pco2.see(water->log10_pco2() - row.need("log10_pco2_atm"), id);
    alkalinity.see(water->carbonate_alkalinity() - row.need("carbonate_alkalinity_mg_l_caco3"), id);
    const auto equilibrium = calcite_equilibrium(*water);
    ASSERT_TRUE(equilibrium) << id;
    ccpp.see(used(equilibrium->ccpp(), row.need("ccpp_mg_l_caco3"), 0.01, 0.3), id);
    final_ph.see(equilibrium->ph - row.need("ccpp_final_ph"), id);
    const std::string& status = row.text("ph_saturation_status");
    const auto ph = saturation_ph(*water);
    if (status != "unresolved" && ph.has_value() != (status == "ok")) {
      ++wrong_status;
      ADD_FAILURE() << id << " status " << status << " but " << (ph ? *ph : NAN);
    }
    if (status != "ok" || !ph) continue;
    const double expected = row.need("ph_saturation_const_alk");
    // Where the index is nearly flat in pH the bound is 0.002 in SI: at the tabled pH ours must be within it
    // of 0.
    WaterReadings there = reference::readings(row);
    there.ph = expected;
    const auto at_expected = water_from_readings(there);
    ASSERT_TRUE(at_expected) << id;
    const double flat = std::abs(at_expected->si_calcite().value()) / 0.002;
    const double plain = std::abs(*ph - expected) / 0.005;
    saturation.see(std::min(flat, plain), id);
  }
  hold("saturation", "SI", si, 0.005);
  hold("saturation", "ionic strength, relative", strength, 0.005);
  hold("saturation", "carbon, relative", dic, 0.01);
  hold("saturation", "log10 pCO2", pco2, 0.005);
  hold("saturation", "carbonate alkalinity, mg/L", alkalinity, 0.5);
  hold("saturation", "CCPP, share of 1 % or 0.3 mg/L", ccpp, 1);
  hold("saturation", "pH after CCPP", final_ph, 0.01);
  hold("saturation", "saturation pH, share of its bound", saturation, 1);
  EXPECT_EQ(wrong_status, 0);
}

// The dissolved solids of a row stand for its background: both lead to the same water, and its sodium and
// chloride are those that the reference balanced.
TEST(ReferenceTables, DissolvedSolidsStandForTheBackground) {
  Worst si, strength, sodium, chloride;
  for (const Row& row : reference::rows("calcite_saturation_open.csv")) {
    const std::string& id = row.text("id");
    WaterReadings r = reference::readings(row);
    r.background_nacl.reset();
    const auto water = water_from_readings(r);
    ASSERT_TRUE(water) << id << " " << text(water.error());
    si.see(water->si_calcite().value() - row.need("si_calcite"), id);
    strength.see(water->ionic_strength / row.need("ionic_strength_mol_kgw") - 1, id);
    sodium.see(water->totals.sodium * 1e3 - row.need("na_mmol_kgw"), id);
    chloride.see(water->totals.chloride * 1e3 - row.need("cl_mmol_kgw"), id);
  }
  hold("by solids", "SI", si, 0.005);
  hold("by solids", "ionic strength, relative", strength, 0.005);
  hold("by solids", "sodium, mmol", sodium, 0.02);
  hold("by solids", "chloride, mmol", chloride, 0.02);
}

TEST(ReferenceTables, FreeChlorineSpeciation) {
  Worst hocl, ocl, chlorinated, strength;
  for (const Row& row : reference::rows("free_chlorine_speciation_open.csv")) {
    const std::string& id = row.text("id");
    const auto water = water_from_readings(reference::readings(row));
    ASSERT_TRUE(water) << id << " " << text(water.error());
    hocl.see(used(water->hocl(), row.need("hocl_mg_l_cl2"), 0.01, 0.0005), id);
    ocl.see(used(water->ocl(), row.need("ocl_mg_l_cl2"), 0.01, 0.0005), id);
    chlorinated.see(
        used(water->chlorinated_cyanurates(), row.need("chlorinated_cyanurates_mg_l_cl2"), 0.01, 0.0005), id);
    strength.see(water->ionic_strength / row.need("ionic_strength_mol_kgw") - 1, id);
  }
  hold("chlorine", "HOCl, share of 1 % or 0.0005", hocl, 1);
  hold("chlorine", "OCl-, share of 1 % or 0.0005", ocl, 1);
  hold("chlorine", "chlorinated, share of 1 %", chlorinated, 1);
  hold("chlorine", "ionic strength, relative", strength, 0.005);
}

// One addition by the table's own name.
tl::expected<Water, Refusal> after(const Water& water, const std::string& addition, double mmol) {
  if (addition == "aeration") return aerate(water);
  return solve(*add(water.totals, addition, mmol * 1e-3), water);
}

TEST(ReferenceTables, DosingResponse) {
  Worst ph, alkalinity, calcium, si, hocl, strength;
  for (const Row& row : reference::rows("dosing_response_open.csv")) {
    const std::string& id = row.text("id");
    auto water = water_from_readings(reference::readings(row, "start_"));
    ASSERT_TRUE(water) << id << " " << text(water.error());
    for (const char* step : {"1", "2"}) {
      const std::string& addition = row.text(std::string("addition_") + step);
      if (addition.empty()) continue;
      water = after(*water, addition, row.number(std::string("amount_") + step + "_mmol_kgw").value_or(0));
      ASSERT_TRUE(water) << id << " " << text(water.error());
    }
    ph.see(water->ph - row.need("end_ph"), id);
    alkalinity.see(used(water->total_alkalinity(), row.need("end_total_alkalinity_mg_l_caco3"), 0.003, 0.01),
                   id);
    calcium.see(used(water->calcium_hardness(), row.need("end_calcium_hardness_mg_l_caco3"), 0.003, 0.01),
                id);
    if (water->si_calcite() && row.number("end_si_calcite"))
      si.see(*water->si_calcite() - row.need("end_si_calcite"), id);
    hocl.see(used(water->hocl(), row.need("end_hocl_mg_l_cl2"), 0.01, 0.0005), id);
    strength.see(water->ionic_strength / row.need("end_ionic_strength_mol_kgw") - 1, id);
  }
  hold("dosing", "pH", ph, 0.005);
  hold("dosing", "alkalinity, share of 0.3 %", alkalinity, 1);
  hold("dosing", "calcium, share of 0.3 %", calcium, 1);
  hold("dosing", "SI", si, 0.005);
  hold("dosing", "HOCl, share of 1 % or 0.0005", hocl, 1);
  hold("dosing", "ionic strength, relative", strength, 0.005);
}

TEST(ReferenceTables, BufferCurves) {
  Worst ph, si, alkalinity;
  std::map<std::string, Water> starts;  // step 0 of each curve
  for (const Row& row : reference::rows("buffer_curve_open.csv")) {
    const std::string& id = row.text("id");
    const std::string& curve = row.text("curve");
    if (row.text("step") == "0") {
      WaterReadings r = reference::readings(row);
      r.ph = row.need("start_ph");
      r.total_alkalinity = row.need("start_total_alkalinity_mg_l_caco3");
      r.tds = row.number("start_tds_mg_l");
      const auto water = water_from_readings(r);
      ASSERT_TRUE(water) << id << " " << text(water.error());
      starts.emplace(curve, *water);
    }
    ASSERT_TRUE(starts.contains(curve)) << "no step 0 before " << id;
    const auto water = after(starts.at(curve), row.text("titrant"), row.need("added_mmol_kgw"));
    ASSERT_TRUE(water) << id << " " << text(water.error());
    ph.see(water->ph - row.need("ph"), id);
    alkalinity.see(used(water->total_alkalinity(), row.need("total_alkalinity_mg_l_caco3"), 0.003, 0.01), id);
    if (water->si_calcite() && row.number("si_calcite"))
      si.see(*water->si_calcite() - row.need("si_calcite"), id);
  }
  hold("buffer", "pH", ph, 0.01);
  hold("buffer", "SI", si, 0.01);
  hold("buffer", "alkalinity, share of 0.3 %", alkalinity, 1);
}

}  // namespace
}  // namespace brimline
