// SPDX-License-Identifier: GPL-3.0-or-later
// The inner loop asks the heap for nothing: every allocation of this program is counted.
#include <gtest/gtest.h>

#include <atomic>
#include <cstdlib>
#include <new>

#include "analysis/water/doses.h"
#include "analysis/water/saturation.h"
#include "analysis/water/uncertainty.h"
#include "station/batch/water_command.h"

namespace {
std::atomic<long> allocations{0};
}

void* operator new(std::size_t size) {
  ++allocations;
  if (void* p = std::malloc(size)) return p;
  throw std::bad_alloc();
}
void operator delete(void* p) noexcept {
  std::free(p);
}
void operator delete(void* p, std::size_t) noexcept {
  std::free(p);
}

namespace brimline {
namespace {

WaterReadings everyday(int i) {
  WaterReadings r;
  r.temperature = Temperature::celsius(5 + i % 37);
  r.ph = 6.8 + 0.01 * (i % 130);
  r.total_alkalinity = 60 + i % 101;
  r.calcium_hardness = i % 400;
  r.cyanuric_acid = i % 71;
  r.free_chlorine = 0.1 * (i % 53);
  r.sulfate = i % 89;
  if (i % 2) r.tds = 1500;
  return r;
}

TEST(Allocations, ACountIsKept) {
  const long before = allocations;
  void* volatile kept = ::operator new(1);  // volatile: not to be optimised away
  ::operator delete(kept);
  EXPECT_GT(allocations, before);
}

TEST(Allocations, AWaterNeedsNone) {
  const long before = allocations;
  int answered = 0;
  for (int i = 0; i < 1000; ++i) {
    const auto water = water_from_readings(everyday(i));
    if (!water) continue;
    const auto warm = at_temperature(*water, Temperature::celsius(38));
    const auto aired = aerate(*water);
    const auto dosed = solve(*add(water->totals, "hydrochloric_acid", 1e-4), *water);
    const auto mixed = mix_waters(*water, *warm, 0.3);
    const auto calcite = calcite_equilibrium(*water);
    const auto ph = saturation_ph(*water);
    const auto table = factor_table_index(*water);
    const auto moved = MovedWaters::of(everyday(i));
    const auto slope = moved->slopes([](const Water& w) { return w.si_calcite(); });
    answered += warm && aired && dosed && mixed && calcite && (ph || table || slope);
  }
  EXPECT_EQ(allocations, before);
  EXPECT_GT(answered, 800);
}

TEST(Allocations, ATableNeedsNoneARow) {
  const auto job = *batch::water_table(std::nullopt);
  const auto header = *batch::read_header(
      "id,temperature_c,ph,total_alkalinity_mg_l_caco3,calcium_hardness_mg_l_caco3,free_chlorine_mg_l_cl2,"
      "cyanuric_"
      "acid_mg_l",
      job.columns);
  job.header(header);
  std::string block;
  for (int i = 0; i < 1000; ++i)
    block += "W" + std::to_string(i) + "," + std::to_string(20 + i % 17) + ",7." + std::to_string(i % 97) +
             ",100,250,2,30\n";
  batch::BlockAnswer answer;
  batch::answer_block(job, header, block, answer);  // the answer's own text finds its size
  const long before = allocations;
  batch::answer_block(job, header, block, answer);
  EXPECT_LE(allocations - before, 2);  // a row's cells, once a block
  EXPECT_EQ(answer.lines, 1000u);
}

}  // namespace
}  // namespace brimline
