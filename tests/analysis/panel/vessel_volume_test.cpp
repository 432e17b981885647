// SPDX-License-Identifier: GPL-3.0-or-later
// Volumes by shape against solid geometry summed slice by slice, their sd against drawn measures; by meter.
#include "analysis/panel/vessel_volume.h"

#include <gtest/gtest.h>

#include <cmath>
#include <functional>
#include <numbers>
#include <random>

namespace brimline {
namespace {

using M = Measure;
using Lengths = std::map<Measure, double>;

ShapeMeasures shape(Shape of, Bottom bottom, const Lengths& metres) {
  ShapeMeasures out;
  out.shape = of;
  out.bottom = bottom;
  for (const auto& [which, value] : metres) {
    if (which == M::area)
      out.area = Area::square_metres(value);
    else
      out.lengths[which] = Length::metres(value);
  }
  return out;
}
double cubic_metres(const ShapeMeasures& m) {
  const VolumeAnswer found = volume_of(m);
  return found ? found->volume.cubic_metres() : std::nan("");
}
std::vector<VolumeFault> faults(const VolumeAnswer& answer) {
  return answer ? std::vector<VolumeFault>{} : answer.error();
}

using Along = std::function<double(double)>;  // of the place along the length, 0 to `length`

double in_slices(double length, const Along& width, const Along& depth) {
  constexpr int kSlices = 200000;
  double sum = 0;
  for (int i = 0; i < kSlices; ++i) {
    const double at = length * (i + 0.5) / kSlices;
    sum += width(at) * depth(at);
  }
  return sum * length / kSlices;
}

TEST(VesselVolume, OfEveryExactShapeIsThatOfItsSlices) {
  constexpr double kLength = 10, kWidth = 4, kShallow = 1.1, kDeep = 2.6;
  const auto oval = [](double broad) {
    return [broad](double at) { return broad * std::sqrt(1 - std::pow(at / (kLength / 2) - 1, 2)); };
  };
  const auto ends = [](double at) {
    const double from_end = std::min(at, kLength - at), r = kWidth / 2;
    return from_end >= r ? kWidth : 2 * std::sqrt(r * r - std::pow(r - from_end, 2));
  };
  const std::pair<Shape, Along> kinds[] = {{Shape::rectangle, [](double) { return kWidth; }},
                                           {Shape::round, oval(kLength)},
                                           {Shape::oval, oval(kWidth)},
                                           {Shape::rounded_ends, ends}};
  for (const auto& [kind, width] : kinds) {
    SCOPED_TRACE(static_cast<int>(kind));
    Lengths m{{M::length, kLength}, {M::width, kWidth}, {M::depth, kShallow}};
    EXPECT_NEAR(cubic_metres(shape(kind, Bottom::level, m)),
                in_slices(kLength, width, [](double) { return kShallow; }), 1e-3);
    m[M::deep_depth] = kDeep;
    EXPECT_NEAR(
        cubic_metres(shape(kind, Bottom::sloping, m)),
        in_slices(kLength, width, [](double at) { return kShallow + (kDeep - kShallow) * at / kLength; }),
        1e-3);
    for (const double part : {1.5, 4.0, 6.5, 9.0}) {
      m[M::deep_length] = part;
      EXPECT_NEAR(cubic_metres(shape(kind, Bottom::two_parts, m)),
                  in_slices(kLength, width, [part](double at) { return at < part ? kDeep : kShallow; }),
                  2e-3);
    }
  }
  EXPECT_DOUBLE_EQ(cubic_metres(shape(Shape::freeform, Bottom::sloping,
                                      {{M::area, 31}, {M::depth, 1}, {M::deep_depth, 2}})),
                   46.5);
}

// A hopper whose slope rises evenly from one depth to the other holds what two level parts do that meet in
// the middle of it.
TEST(VesselVolume, OfASlopeBetweenTwoPartsIsMeasuredToItsMiddle) {
  const auto depth = [](double at) { return at < 3 ? 2.5 : at > 5 ? 1.0 : 2.5 - 1.5 * (at - 3) / 2; };
  EXPECT_NEAR(cubic_metres(shape(
                  Shape::rectangle, Bottom::two_parts,
                  {{M::length, 9}, {M::width, 4}, {M::depth, 1}, {M::deep_depth, 2.5}, {M::deep_length, 4}})),
              in_slices(
                  9, [](double) { return 4.0; }, depth),
              1e-3);
}

// Two circles that overlap or touch, as wide as its lobes, straight along the outer side: summed on a grid,
// the rule of thumb stays within the 8 % that are taken for an outline.
TEST(VesselVolume, OfAKidneyIsNearThatOfTwoCircles) {
  for (const double narrow : {3.0, 3.6, 4.2, 4.8})
    for (const double apart : {0.4, 0.45, 0.5}) {  // centres, as a share of both widths together
      const double big = 2.4, small = narrow / 2, centres = apart * (2 * big + narrow);
      // Both touch the outer side, y = 0.
      const double dx = std::sqrt(centres * centres - std::pow(big - small, 2));
      const double length = big + dx + small;
      const auto inside = [&](double x, double y) {
        if (std::hypot(x, y - big) < big || std::hypot(x - dx, y - small) < small) return true;
        const double spine = big + (small - big) * x / dx;  // between the centres
        return x > 0 && x < dx && y > 0 && y < spine;
      };
      constexpr int kCells = 500;
      const double cell = 12.0 / kCells;
      int count = 0;
      for (int i = 0; i < kCells; ++i)
        for (int k = 0; k < kCells; ++k) count += inside(-3 + i * cell, -0.5 + k * cell) ? 1 : 0;
      const double grid = count * cell * cell;
      const double rule = cubic_metres(
          shape(Shape::kidney, Bottom::level,
                {{M::length, length}, {M::width, 2 * big}, {M::other_width, narrow}, {M::depth, 1}}));
      EXPECT_NEAR(rule, grid, 0.08 * grid) << narrow << " " << apart;
    }
}

// Exact: a foot is 0.3048 m, a US gallon 231 cubic inches (NIST Special Publication 811, appendix B.8; it
// gives the cubic foot as 2.831685 E-02 m3 and the gallon as 3.785412 E-03 m3).
TEST(VesselVolume, InFeetGivesGallons) {
  ShapeMeasures m;
  m.bottom = Bottom::sloping;
  for (const auto& [which, feet] :
       Lengths{{M::length, 40}, {M::width, 20}, {M::depth, 3}, {M::deep_depth, 8}})
    m.lengths[which] = Length::feet(feet);
  EXPECT_NEAR(volume_of(m)->volume.us_gallons(), 40.0 * 20 * 5.5 * 1728 / 231, 1e-6);
  EXPECT_NEAR(Volume::cubic_feet(1).cubic_metres(), 2.831685e-2, 5e-9);
  EXPECT_NEAR(Volume::cubic_feet(1).us_gallons(), 2.831685e-2 / 3.785412e-3, 1e-5);
  EXPECT_NEAR(Area::square_feet(1).square_metres(), 9.290304e-2, 1e-12);  // exact there
}

// Each measure drawn a thousand times over about its value (JCGM 101:2008): the volumes spread as is told.
TEST(VesselVolume, IsKnownAsWellAsItsMeasuresAre) {
  const Lengths m{{M::length, 9},  {M::width, 4.2},      {M::other_width, 3.4}, {M::area, 30},
                  {M::depth, 1.2}, {M::deep_depth, 2.3}, {M::deep_length, 3.5}};
  std::mt19937 draw(20260614);
  for (const Shape kind :
       {Shape::rectangle, Shape::round, Shape::oval, Shape::kidney, Shape::rounded_ends, Shape::freeform})
    for (const Bottom bottom : {Bottom::level, Bottom::sloping, Bottom::two_parts}) {
      if (bottom == Bottom::two_parts && !can_have_two_parts(kind)) continue;
      constexpr int kDraws = 4000;
      double sum = 0, squares = 0;
      for (int i = 0; i < kDraws; ++i) {
        Lengths drawn = m;
        for (auto& [which, value] : drawn) {
          const bool depth = which == M::depth || which == M::deep_depth;
          const double sd = which == M::area ? 0.05 * value : std::hypot(0.05, (depth ? 0.02 : 0.01) * value);
          value = std::normal_distribution<>(value, sd)(draw);
        }
        const double volume = cubic_metres(shape(kind, bottom, drawn));
        sum += volume;
        squares += volume * volume;
      }
      const VolumeMeasured told = *volume_of(shape(kind, bottom, m));
      const double mean = sum / kDraws, volume = told.volume.cubic_metres();
      const double assumed = std::sqrt(0.02 * 0.02 + (bottom == Bottom::level ? 0 : 0.05 * 0.05) +
                                       (kind == Shape::kidney ? 0.08 * 0.08 : 0));
      const double measured = std::sqrt(std::pow(told.sd.cubic_metres(), 2) - std::pow(assumed * volume, 2));
      EXPECT_NEAR(mean, volume, 0.005 * volume);
      EXPECT_NEAR(std::sqrt(squares / kDraws - mean * mean), measured, 0.06 * measured)
          << static_cast<int>(kind) << " " << static_cast<int>(bottom);
    }
}

TEST(VesselVolume, IsKnownWorseWhereMoreIsAssumed) {
  ShapeMeasures box =
      shape(Shape::rectangle, Bottom::level, {{M::length, 9}, {M::width, 4}, {M::depth, 1.4}});
  const double tape = volume_of(box)->relative_sd();
  box.seats = true;
  EXPECT_GT(volume_of(box)->relative_sd(), 0.2);
  box.seats = false;
  box.gauge = Gauge::eye;
  EXPECT_NEAR(volume_of(box)->relative_sd(), std::sqrt(0.1 * 0.1 * 2 + 0.15 * 0.15 + 0.02 * 0.02), 1e-3);
  const auto metered = metered_volume({Volume::cubic_metres(10), Volume::cubic_metres(60), {}});
  EXPECT_LT(metered->relative_sd(), tape);
}

TEST(VesselVolume, SaysWhatIsWrongAndWhere) {
  using F = std::vector<VolumeFault>;
  const auto told = [](Shape kind, Bottom bottom, const Lengths& m) {
    return faults(volume_of(shape(kind, bottom, m)));
  };
  EXPECT_EQ(told(Shape::rectangle, Bottom::level, {}),
            (F{{M::length, Wrong::missing}, {M::width, Wrong::missing}, {M::depth, Wrong::missing}}));
  EXPECT_EQ(told(Shape::freeform, Bottom::two_parts, {}),
            (F{{M::area, Wrong::missing}, {M::depth, Wrong::missing}, {M::deep_depth, Wrong::missing}}));
  EXPECT_EQ(told(Shape::round, Bottom::level, {{M::length, 0}, {M::depth, std::nan("")}}),
            (F{{M::length, Wrong::not_above_zero}, {M::depth, Wrong::not_above_zero}}));
  EXPECT_EQ(told(Shape::round, Bottom::level, {{M::length, 120}, {M::depth, 0.05}}),
            (F{{M::length, Wrong::too_large}, {M::depth, Wrong::too_small}}));
  EXPECT_EQ(told(Shape::oval, Bottom::sloping,
                 {{M::length, 9}, {M::width, 4}, {M::depth, 2}, {M::deep_depth, 1.2}}),
            (F{{M::deep_depth, Wrong::not_deeper}}));
  EXPECT_EQ(told(Shape::oval, Bottom::two_parts,
                 {{M::length, 9}, {M::width, 4}, {M::depth, 1}, {M::deep_depth, 2}, {M::deep_length, 9}}),
            (F{{M::deep_length, Wrong::not_shorter}}));
  EXPECT_EQ(told(Shape::rounded_ends, Bottom::level, {{M::length, 4}, {M::width, 9}, {M::depth, 1}}),
            (F{{M::width, Wrong::wider_than_long}}));
  EXPECT_EQ(told(Shape::rectangle, Bottom::level, {{M::length, 99}, {M::width, 99}, {M::depth, 9}}),
            (F{{M::length, Wrong::too_large}}));
  EXPECT_EQ(told(Shape::round, Bottom::level, {{M::length, 0.3}, {M::depth, 0.2}}),
            (F{{M::length, Wrong::too_small}}));
}

TEST(VesselVolume, ByMeterIsWhatWentThrough) {
  const auto read = [](double before, double after) {
    return metered_volume({Volume::us_gallons(before), Volume::us_gallons(after), Volume::us_gallons(1)});
  };
  EXPECT_NEAR(read(120000, 135000)->volume.us_gallons(), 15000, 1e-6);
  // 2 % at most, evenly spread, and 3 %: sqrt(0.02^2 / 3 + 0.03^2)
  EXPECT_NEAR(read(120000, 135000)->relative_sd(), 0.032146, 1e-5);
  // A spa of 1 m3 by a meter that is read to 1 m3: sqrt(2) x 1/sqrt(12) is most of the error.
  const auto coarse =
      metered_volume({Volume::cubic_metres(310), Volume::cubic_metres(311), Volume::cubic_metres(1)});
  EXPECT_NEAR(coarse->relative_sd(), std::hypot(1 / std::sqrt(6), 0.032146), 1e-5);
  using F = std::vector<VolumeFault>;
  EXPECT_EQ(faults(read(135000, 120000)), (F{{M::after, Wrong::meter_fell}}));
  EXPECT_EQ(faults(read(135000, 135000)), (F{{M::after, Wrong::meter_stood}}));
  EXPECT_EQ(faults(read(135000, 135001)), (F{{M::after, Wrong::too_small}}));
  EXPECT_EQ(faults(read(0, 9e9)), (F{{M::after, Wrong::too_large}}));
  EXPECT_EQ(faults(read(-1, 10)), (F{{M::before, Wrong::not_above_zero}}));
  EXPECT_EQ(faults(metered_volume({})), (F{{M::before, Wrong::missing}, {M::after, Wrong::missing}}));
}

}  // namespace
}  // namespace brimline
