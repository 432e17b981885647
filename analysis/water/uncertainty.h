// SPDX-License-Identifier: GPL-3.0-or-later
// How far the errors of readings carry into what the model makes of them: central differences through the
// full model, combined in quadrature (JCGM 100:2008, equation 10; from memory).
//
//   const auto moved = MovedWaters::of(readings, vessel);
//   const auto sd = combined(moved->slopes([](const Water& w) { return w.si_calcite(); }), errors);
#pragma once

#include <array>
#include <optional>

#include <tl/expected.hpp>

#include "analysis/water/water.h"

namespace brimline {

// A number for each reading, in the reading's unit or per unit of it. The background is the reading that the
// salt follows from; where none was told it is the dissolved solids assumed.
struct PerReading {
  double temperature = 0, vessel_temperature = 0, ph = 0, total_alkalinity = 0, calcium_hardness = 0,
         magnesium_hardness = 0, cyanuric_acid = 0, borate = 0, free_chlorine = 0, total_bromine = 0,
         sulfate = 0, background = 0;
};
using ReadingErrors = PerReading;  // standard deviations; 0: exact
using Sensitivity = PerReading;    // change of a result per unit of each reading

inline constexpr std::array<double PerReading::*, 12> kReadingMembers = {&PerReading::temperature,
                                                                         &PerReading::vessel_temperature,
                                                                         &PerReading::ph,
                                                                         &PerReading::total_alkalinity,
                                                                         &PerReading::calcium_hardness,
                                                                         &PerReading::magnesium_hardness,
                                                                         &PerReading::cyanuric_acid,
                                                                         &PerReading::borate,
                                                                         &PerReading::free_chlorine,
                                                                         &PerReading::total_bromine,
                                                                         &PerReading::sulfate,
                                                                         &PerReading::background};

// The water of some readings, and the same with each reading moved a little either way.
class MovedWaters {
 public:
  // In the vessel, closed, where its temperature is told. Absent readings are not moved.
  [[nodiscard]] static tl::expected<MovedWaters, Refusal> of(
      const WaterReadings& readings, std::optional<Temperature> vessel = std::nullopt);

  const Water& centre() const { return centre_; }
  // `result` takes a water and gives an optional number. One-sided at the edge of what can be; none where the
  // water itself has no such result.
  template <class Result>
  std::optional<Sensitivity> slopes(Result result) const {
    const auto of = [&](const std::optional<Water>& w) { return w ? result(*w) : std::nullopt; };
    Results results;
    results.centre = result(centre_);
    for (size_t i = 0; i < moved_.size(); ++i) results.moved[i] = {of(moved_[i].up), of(moved_[i].down)};
    return slopes_of(results);
  }

 private:
  struct Results {
    struct Pair {
      std::optional<double> up, down;
    };
    std::optional<double> centre;
    std::array<Pair, kReadingMembers.size()> moved;
  };
  static std::optional<Sensitivity> slopes_of(const Results& results);

  struct Pair {
    std::optional<Water> up, down;
  };
  Water centre_;
  std::array<Pair, kReadingMembers.size()> moved_;
};

// Root of the sum of squares of slope times error; none without slopes.
std::optional<double> combined(const std::optional<Sensitivity>& slope, const ReadingErrors& errors);

}  // namespace brimline
