// SPDX-License-Identifier: GPL-3.0-or-later
// How long one plan takes, its thousand draws included, and how that grows with the shelf:
// build/bench/plan_bench. Judged by eye, never a test.
#include <benchmark/benchmark.h>

#include <algorithm>
#include <vector>

#include "tests/station/plan/homes.h"

namespace brimline {
namespace {

Shelf shelf_of(size_t products) {
  Shelf out = built_in_shelf();
  Household h(3);
  const std::vector<Product> base = out.products;
  if (out.products.size() > products) {
    const std::vector<std::string> kept = {
        "muriatic_acid_31", "dry_acid",   "bicarbonate",         "soda_ash",
        "calcium_flake_77", "stabilizer", "liquid_chlorine_125", "bromine_tablets",
        "pool_salt",        "peroxide_27"};
    std::erase_if(out.products,
                  [&](const Product& p) { return std::find(kept.begin(), kept.end(), p.id) == kept.end(); });
  }
  for (size_t i = 0; out.products.size() < products; ++i) {
    Product p = base[i % base.size()];
    p.id += "_" + std::to_string(i);
    p.price *= h.between(0.6, 1.6);
    out.products.push_back(p);
  }
  return out;
}

void plan_by_shelf(benchmark::State& state) {
  const Shelf shelf = shelf_of(static_cast<size_t>(state.range(0)));
  std::vector<Visit> visits;
  for (int i = 0; i < 320; ++i)
    visits.push_back(random_home(static_cast<Home>(i % kHomes), static_cast<std::uint64_t>(i / kHomes)));
  const TargetSet& targets = *find_targets("household");
  const Words words("en");
  for (size_t i = 0; state.KeepRunning(); ++i)
    benchmark::DoNotOptimize(make_plan(visits[i % visits.size()], {}, shelf, targets, words));
}
BENCHMARK(plan_by_shelf)->Arg(10)->Arg(100)->Arg(1000)->Unit(benchmark::kMillisecond)->MinTime(3);

}  // namespace
}  // namespace brimline

BENCHMARK_MAIN();
