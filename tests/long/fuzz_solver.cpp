// SPDX-License-Identifier: GPL-3.0-or-later
#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <cstring>

#include "analysis/water/doses.h"
#include "analysis/water/saturation.h"
#include "analysis/water/water.h"
#include "tests/long/fuzz.h"

namespace brimline::fuzz {
namespace {

void require(bool held, const char* what, const WaterReadings& r) {
  if (held) return;
  std::fprintf(stderr,
               "broken: %s at %.17g C pH %.17g TA %.17g CH %.17g CYA %.17g B %.17g FC %.17g salt %.17g\n",
               what, r.temperature.celsius(), r.ph, r.total_alkalinity, r.calcium_hardness.value_or(-1),
               r.cyanuric_acid.value_or(-1), r.borate.value_or(-1), r.free_chlorine.value_or(-1),
               r.background_nacl.value_or(-1));
  std::abort();
}

// Two bytes a number, over a range a little wider than what is accepted.
class Numbers {
 public:
  explicit Numbers(std::span<const std::uint8_t> bytes) : bytes_(bytes) {}
  double next(double low, double high) {
    std::uint16_t v = 0;
    if (at_ + 2 <= bytes_.size()) std::memcpy(&v, bytes_.data() + at_, 2);
    at_ += 2;
    return low + (high - low) * v / 65535;
  }

 private:
  std::span<const std::uint8_t> bytes_;
  size_t at_ = 0;
};

}  // namespace

void solver(std::span<const std::uint8_t> bytes) {
  Numbers n(bytes);
  WaterReadings r;
  r.temperature = Temperature::celsius(n.next(-1, 46));
  r.ph = n.next(3.9, 11.1);
  r.total_alkalinity = n.next(0, 600);
  r.calcium_hardness = n.next(0, 3000);
  r.cyanuric_acid = n.next(0, 400);
  r.borate = n.next(0, 120);
  r.free_chlorine = n.next(0, 60);
  r.total_bromine = n.next(0, 30);
  r.magnesium_hardness = n.next(0, 2000);
  r.sulfate = n.next(0, 2000);
  r.background_nacl = n.next(-500, 40000);
  const auto rows = dose_rows();
  const DoseRow& dose = rows[static_cast<size_t>(n.next(0, static_cast<double>(rows.size()) - 0.01))];
  const double mol = n.next(0, 0.01);

  const auto water = water_from_readings(r);
  if (!water) return require(!text(water.error()).empty(), "a refusal has its words", r);
  require(water->ionic_strength > 0 && water->totals.carbon >= 0, "a solved water has ions and carbon", r);
  require(std::abs(water->hocl() + water->ocl() + water->chlorinated_cyanurates() - *r.free_chlorine) < 1e-6,
          "all chlorine is somewhere", r);
  const auto again = solve(water->totals, water->temperature);
  require(again.has_value(), "its totals can be solved", r);
  require(std::abs(again->ph - r.ph) < 1e-6, "they lead back to the pH", r);
  if (const auto calcite = calcite_equilibrium(*water))
    require(std::isfinite(calcite->ccpp()), "CCPP is a number", r);
  if (const auto ph = saturation_ph(*water)) require(*ph >= 4 && *ph <= 11, "the saturation pH is a pH", r);
  const auto dosed = solve(*add(water->totals, dose.id, mol), *water);
  if (dosed) require(dosed->ph >= 3 && dosed->ph <= 12, "a dosed water has a pH", r);
}

}  // namespace brimline::fuzz

#ifdef BRIMLINE_FUZZ_SOLVER
extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, size_t size) {
  brimline::fuzz::solver({data, size});
  return 0;
}
#endif
