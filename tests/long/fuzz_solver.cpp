// SPDX-License-Identifier: GPL-3.0-or-later
#include <bit>
#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <cstring>

#include "analysis/water/doses.h"
#include "analysis/water/saturation.h"
#include "analysis/water/uncertainty.h"
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

// Two bytes a number, over a range a little wider than what is accepted; or eight, any number at all.
class Numbers {
 public:
  explicit Numbers(std::span<const std::uint8_t> bytes) : bytes_(bytes) {}
  double next(double low, double high) {
    return low + (high - low) * static_cast<double>(take<std::uint16_t>()) / 65535;
  }
  double any() { return std::bit_cast<double>(take<std::uint64_t>()); }
  std::uint8_t byte() { return take<std::uint8_t>(); }

 private:
  template <class T>
  T take() {
    T v = 0;
    if (at_ + sizeof v <= bytes_.size()) std::memcpy(&v, bytes_.data() + at_, sizeof v);
    at_ += sizeof v;
    return v;
  }

  std::span<const std::uint8_t> bytes_;
  size_t at_ = 0;
};

WaterReadings readings_from(Numbers& n, std::uint8_t background) {
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
  r.bromide = background & 8 ? std::optional(n.next(0, 200)) : std::nullopt;
  switch (background % 5) {
    case 0:
      r.background_nacl = n.next(-500, 40000);
      break;
    case 1:
      r.salt = n.next(0, 40000);
      break;
    case 2:
      r.tds = n.next(0, 60000);
      break;
    case 3:
      r.conductivity = n.next(0, 60000);
      break;
    default:
      break;  // assumed
  }
  return r;
}

void require_sound(const Water& w, const WaterReadings& r) {
  require(std::isfinite(w.ph) && std::isfinite(w.ionic_strength) && w.ionic_strength >= 0 &&
              w.totals.carbon >= -1e-12,
          "a solved water has a pH, ions and carbon", r);
  require(!w.si_calcite() || std::isfinite(*w.si_calcite()), "an index is a number", r);
  require(std::isfinite(w.carbonate_alkalinity()) && std::isfinite(w.dissolved_solids()),
          "results are numbers", r);
  if (const auto calcite = calcite_equilibrium(w))
    require(std::isfinite(calcite->ccpp()) && std::isfinite(calcite->ph), "CCPP is a number", r);
  if (const auto ph = saturation_ph(w)) require(*ph >= 4 && *ph <= 11, "the saturation pH is a pH", r);
}

// Any numbers whatever: an answer or a refusal with words.
void anything(Numbers& n) {
  WaterReadings r;
  r.temperature = Temperature::celsius(n.any());
  r.ph = n.any();
  r.total_alkalinity = n.any();
  r.calcium_hardness = n.any();
  r.cyanuric_acid = n.any();
  r.free_chlorine = n.any();
  r.tds = n.any();
  if (const auto water = water_from_readings(r))
    require_sound(*water, r);
  else
    require(!text(water.error()).empty(), "a refusal has its words", r);
  Totals t;
  for (const auto member : kTotalMembers) t.*member = n.any();
  t.alkalinity = charge_left(t);
  if (const auto water = solve(t, Temperature::celsius(n.next(0, 45)))) require_sound(*water, r);
}

void likely(Numbers& n, std::uint8_t choice) {
  const WaterReadings r = readings_from(n, choice);
  const auto rows = dose_rows();
  const DoseRow& dose = rows[static_cast<size_t>(n.next(0, static_cast<double>(rows.size()) - 0.01))];
  const double mol = n.next(0, 0.01);
  const auto vessel = Temperature::celsius(n.next(-1, 46));

  const auto water = water_from_readings(r);
  if (!water) return require(!text(water.error()).empty(), "a refusal has its words", r);
  require_sound(*water, r);
  if (*r.free_chlorine > 0)
    require(
        std::abs(water->hocl() + water->ocl() + water->chlorinated_cyanurates() - *r.free_chlorine) < 1e-6,
        "all chlorine is somewhere", r);
  const auto again = solve(water->totals, water->temperature);
  require(again.has_value(), "its totals can be solved", r);
  require(std::abs(again->ph - r.ph) < 1e-6, "they lead back to the pH", r);
  if (const auto warm = at_temperature(*water, vessel)) {
    require_sound(*warm, r);
    const auto back = at_temperature(*warm, water->temperature);
    require(back && std::abs(back->ph - r.ph) < 1e-6, "there and back is the same pH", r);
  }
  if (const auto aired = aerate(*water)) require_sound(*aired, r);
  const auto dosed = solve(*add(water->totals, dose.id, mol), *water);
  if (!dosed) return;
  require(dosed->ph >= 3 && dosed->ph <= 12, "a dosed water has a pH", r);
  require_sound(*dosed, r);
  if (const auto mixed = mix_waters(*water, *dosed, 0.5)) require_sound(*mixed, r);
  if (!(choice & 16)) return;
  const auto moved = MovedWaters::of(r);
  require(moved.has_value(), "a water that can be solved can be moved", r);
  if (const auto slope = moved->slopes([](const Water& w) { return w.si_calcite(); }))
    require(std::isfinite(combined(slope, {1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1}).value()),
            "an error is a number", r);
}

}  // namespace

void solver(std::span<const std::uint8_t> bytes) {
  Numbers n(bytes);
  const std::uint8_t choice = n.byte();
  if (choice & 128)
    anything(n);
  else
    likely(n, choice);
}

}  // namespace brimline::fuzz

#ifdef BRIMLINE_FUZZ_SOLVER
extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, size_t size) {
  brimline::fuzz::solver({data, size});
  return 0;
}
#endif
