// SPDX-License-Identifier: GPL-3.0-or-later
// The laws of the plan over many random waters, and where they end, by kind of water:
//   build/long/plan_waters 5000 > tests/long/plan_waters.txt
#include <algorithm>
#include <cstdio>
#include <cstdlib>
#include <ctime>
#include <map>

#include "tests/station/plan/homes.h"

namespace brimline {
namespace {

struct Tally {
  int waters = 0, reachable = 0, inside = 0, cut = 0, silent = 0;
  std::map<std::string, int> outside;
  std::vector<std::uint64_t> lost;
};

double cpu_ms() {
  return 1e3 * static_cast<double>(std::clock()) / CLOCKS_PER_SEC;
}

void print(const char* name, const Tally& t) {
  const double share = t.reachable ? 100.0 * (t.inside + t.cut) / t.reachable : 100;
  std::printf("%-24s %7d %10d %7d %5d %7.1f %7d ", name, t.waters, t.reachable, t.inside, t.cut, share,
              t.silent);
  for (const auto& [what, n] : t.outside) std::printf(" %s:%d", what.c_str(), n);
  std::printf("\n");
}

// One water and its plan, to look at: plan_waters show KIND SEED.
int show(Home home, std::uint64_t seed) {
  const Visit v = random_home(home, seed);
  for (const Reading& r : v.bottle.readings) std::printf("%s %.3g  ", r.analyte.c_str(), r.value);
  std::printf("\n%.1f m3, %.0f C\n", v.vessel.volume->cubic_metres(), v.vessel.water_temperature->celsius());
  const Plan plan = make_plan(v, {}, built_in_shelf(), *find_targets("household"), Words("en"));
  for (const Finding& f : plan.findings) std::printf("- %s\n", f.text.c_str());
  for (const Step& s : plan.steps) {
    std::printf("%d. %.1f h (%.1f) %s %s%s\n    ", s.order, s.start_h, s.wait_h,
                s.chemical.value_or("").c_str(), s.text.c_str(), s.from_home ? " [home]" : "");
    if (s.after)
      for (const auto& [analyte, value] : s.after->readings) std::printf("%s %.3g  ", analyte.c_str(), value);
    if (s.after && s.after->vessel.contains("si_calcite"))
      std::printf("si %.2f", s.after->vessel.at("si_calcite"));
    std::printf("\n");
  }
  for (const Remains& r : plan.remains) std::printf("remains: %s (%s)\n", r.text.c_str(), r.reason.c_str());
  if (plan.proof) std::printf("in target %.3f harm %.4f\n", plan.proof->in_target, plan.proof->harm);
  if (plan.cost) std::printf("to buy %.2f weighed %.3f\n", plan.cost->to_buy, plan.cost->weighed);
  return 0;
}

}  // namespace
}  // namespace brimline

int main(int argc, char** argv) {
  using namespace brimline;
  if (argc == 4) return show(static_cast<Home>(std::atoi(argv[2])), std::strtoull(argv[3], nullptr, 10));
  const int waters = argc > 1 ? std::atoi(argv[1]) : 5000;
  const int draws = argc > 2 ? std::atoi(argv[2]) : 1000;
  const TargetSet& targets = *find_targets("household");
  std::map<int, Tally> tallies;
  Tally all;
  std::map<std::string, int> laws;
  std::vector<double> times;
  for (int i = 0; i < waters; ++i) {
    const Home home = static_cast<Home>(i % kHomes);
    const auto seed = static_cast<std::uint64_t>(i / kHomes);
    const Visit v = random_home(home, seed);
    const double begun = cpu_ms();
    const Plan plan = make_plan(v, {}, built_in_shelf(), targets, Words("en"), PlanOptions{draws, 7});
    times.push_back(cpu_ms() - begun);
    for (const std::string& law : broken_laws(v, plan, built_in_shelf(), targets)) {
      if (laws[law]++ < 3)
        std::fprintf(stderr, "%s %d: %s\n", name_of(home), static_cast<int>(seed), law.c_str());
    }
    Tally& t = tallies[static_cast<int>(home)];
    for (Tally* x : {&t, &all}) ++x->waters;
    const auto out = outside(v, plan, targets);
    const bool can = reachable(v, plan, targets);
    const bool cut = std::any_of(plan.remains.begin(), plan.remains.end(),
                                 [](const Remains& r) { return r.reason == "cut_for_harm"; });
    for (Tally* x : {&t, &all}) {
      x->reachable += can;
      x->inside += can && out.empty();
      x->cut += can && !out.empty() && cut;
      for (const AnalyteId& analyte : out) {
        const bool told = std::any_of(plan.remains.begin(), plan.remains.end(),
                                      [&](const Remains& r) { return r.analyte == analyte; });
        if (!told) {
          if (x == &t)
            std::fprintf(stderr, "silent: %s %d %s\n", name_of(home), static_cast<int>(seed),
                         analyte.c_str());
          ++x->silent;
          break;
        }
      }
      if (can && !out.empty() && !cut) {
        std::string what;
        for (const AnalyteId& analyte : out) what += (what.empty() ? "" : "+") + analyte;
        ++x->outside[what];
        if (x == &t && t.lost.size() < 3) {
          t.lost.push_back(seed);
          std::fprintf(stderr, "lost: %s %d %s\n", name_of(home), static_cast<int>(seed), what.c_str());
        }
      }
    }
  }
  std::printf("%-24s %7s %10s %7s %5s %7s %7s  %s\n", "kind of water", "waters", "reachable", "inside", "cut",
              "share%", "silent", "not inside: what");
  for (const auto& [home, t] : tallies) print(name_of(static_cast<Home>(home)), t);
  print("all", all);
  std::sort(times.begin(), times.end());
  std::printf("\nplan with %d draws, processor time: median %.1f ms, 99th %.1f ms, longest %.1f ms\n", draws,
              times[times.size() / 2], times[times.size() * 99 / 100], times.back());
  std::printf("laws broken: %zu kinds\n", laws.size());
  for (const auto& [law, n] : laws) std::printf("  %d x %s\n", n, law.c_str());
  return laws.empty() ? 0 : 1;
}
