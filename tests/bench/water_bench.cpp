// SPDX-License-Identifier: GPL-3.0-or-later
// How long one water takes: build/bench/water_bench. Judged by eye, never a test.
#include <benchmark/benchmark.h>

#include <vector>

#include "analysis/water/doses.h"
#include "analysis/water/saturation.h"
#include "analysis/water/uncertainty.h"
#include "analysis/water/water.h"
#include "station/batch/water_command.h"

namespace brimline {
namespace {

// Everyday waters, each a little different from the last.
WaterReadings everyday(int i) {
  WaterReadings r;
  r.temperature = Temperature::celsius(20 + i % 17);
  r.ph = 7.0 + 0.01 * (i % 97);
  r.total_alkalinity = 60 + i % 101;
  r.calcium_hardness = 150 + i % 307;
  r.cyanuric_acid = i % 71;
  r.free_chlorine = 0.1 * (i % 53);
  r.sulfate = i % 89;
  r.background_nacl = 400 + i % 3001;
  return r;
}

std::vector<Water> waters() {
  std::vector<Water> out;
  for (int i = 0; i < 1000; ++i) out.push_back(*water_from_readings(everyday(i)));
  return out;
}

void readings_to_water(benchmark::State& state) {
  for (int i = 0; state.KeepRunning(); ++i) benchmark::DoNotOptimize(water_from_readings(everyday(i)));
}
BENCHMARK(readings_to_water);

void totals_to_water(benchmark::State& state) {
  const auto all = waters();
  for (size_t i = 0; state.KeepRunning(); ++i) {
    const Water& w = all[i % all.size()];
    benchmark::DoNotOptimize(solve(w.totals, w.temperature));
  }
}
BENCHMARK(totals_to_water);

void dose(benchmark::State& state) {
  const auto all = waters();
  const Totals acid = *dose_vector("hydrochloric_acid") * 1e-4;
  for (size_t i = 0; state.KeepRunning(); ++i) {
    const Water& w = all[i % all.size()];
    benchmark::DoNotOptimize(solve(w.totals + acid, w));
  }
}
BENCHMARK(dose);

void to_the_vessel(benchmark::State& state) {
  const auto all = waters();
  for (size_t i = 0; state.KeepRunning(); ++i)
    benchmark::DoNotOptimize(at_temperature(all[i % all.size()], Temperature::celsius(38)));
}
BENCHMARK(to_the_vessel);

void calcite(benchmark::State& state) {
  const auto all = waters();
  for (size_t i = 0; state.KeepRunning(); ++i)
    benchmark::DoNotOptimize(calcite_equilibrium(all[i % all.size()]));
}
BENCHMARK(calcite);

void saturation(benchmark::State& state) {
  const auto all = waters();
  for (size_t i = 0; state.KeepRunning(); ++i) benchmark::DoNotOptimize(saturation_ph(all[i % all.size()]));
}
BENCHMARK(saturation);

void uncertainty(benchmark::State& state) {
  for (int i = 0; state.KeepRunning(); ++i)
    benchmark::DoNotOptimize(
        MovedWaters::of(everyday(i))->slopes([](const Water& w) { return w.si_calcite(); }));
}
BENCHMARK(uncertainty);

// Text in, text out, a thousand rows.
void table(benchmark::State& state, const char* columns) {
  const auto job = *batch::water_table(std::string(columns));
  const auto header = *batch::read_header(
      "id,temperature_c,ph,total_alkalinity_mg_l_caco3,calcium_hardness_mg_l_caco3,tds_mg_l", job.columns);
  benchmark::DoNotOptimize(job.header(header));
  std::string block;
  for (int i = 0; i < 1000; ++i)
    block += "W" + std::to_string(i) + "," + std::to_string(20 + i % 17) + ",7." + std::to_string(i % 97) +
             ",100,250,1000\n";
  batch::BlockAnswer answer;
  for (auto unused : state) {
    (void)unused;
    batch::answer_block(job, header, block, answer);
    benchmark::DoNotOptimize(answer.out.data());
  }
  state.SetItemsProcessed(state.iterations() * 1000);
}
BENCHMARK_CAPTURE(table, index_only, "si_calcite");
BENCHMARK_CAPTURE(table, with_saturation, "si_calcite,ph_saturation_const_alk,ccpp_mg_l_caco3");

}  // namespace
}  // namespace brimline

BENCHMARK_MAIN();
