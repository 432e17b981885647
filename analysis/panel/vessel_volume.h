// SPDX-License-Identifier: GPL-3.0-or-later
// The volume of a vessel from its shape, or from a water meter read before and after the fill; and how well
// it is then known.
#pragma once

#include <tl/expected.hpp>

#include <map>
#include <optional>
#include <vector>

#include "analysis/length.h"
#include "analysis/quantities.h"

namespace brimline {

enum class Shape { rectangle, round, oval, kidney, rounded_ends, freeform };
enum class Bottom { level, sloping, two_parts };
// By tape: within 1 % and 5 cm across, 2 % and 5 cm in depth. By eye: 10 % and 15 %. As one standard
// deviation each; common practice, no source.
enum class Gauge { tape, eye };
enum class Measure {
  length,       // of a round vessel its diameter
  width,        // of a kidney its wider lobe
  other_width,  // of a kidney its narrower lobe
  area,
  depth,        // of the water; the shallow end's or the shallow part's where there are two
  deep_depth,   // at the deep end, or of the deep part
  deep_length,  // of the deep part, along the length; to the middle of a slope between the parts
  before,       // the meter's readings
  after,
};

// Inner measures at the waterline. What is not in it was not measured.
struct ShapeMeasures {
  Shape shape = Shape::rectangle;
  Bottom bottom = Bottom::level;
  Gauge gauge = Gauge::tape;
  bool seats = false;  // a spa's, which take room that the outline does not show
  std::map<Measure, Length> lengths;
  std::optional<Area> area;
};

struct MeteredFill {
  std::optional<Volume> before, after;
  Volume step;  // the last digit that was read
};

struct VolumeMeasured {
  Volume volume;
  Volume sd;
  std::optional<double> deep_share;  // of the area, where there are two parts
  double relative_sd() const { return sd / volume; }
};

enum class Wrong {
  missing,
  not_above_zero,
  too_small,  // no vessel is: under 0.3 m across, 0.1 m deep, 0.05 m3
  too_large,  // over 100 m across, 10 m deep, 5,000 m3
  not_deeper,
  not_shorter,  // the deep part is as long as the whole
  wider_than_long,
  meter_fell,
  meter_stood,
};
struct VolumeFault {
  Measure at;
  Wrong wrong;
  friend bool operator==(const VolumeFault&, const VolumeFault&) = default;
};
using VolumeAnswer = tl::expected<VolumeMeasured, std::vector<VolumeFault>>;

// What has to be measured, in the order in which it is asked.
std::vector<Measure> measures_of(Shape shape, Bottom bottom);
// Where a part's area follows from its length: all but kidney and freeform, which count as sloping instead.
bool can_have_two_parts(Shape shape);

// Area times mean depth. Exact by geometry: rectangle, round, oval (an ellipse) and rounded ends (half a
// circle at each), level, of two level parts, or falling evenly along an axis of theirs, where the middle is
// as deep as the mean. Not exact, common practice with no source: a kidney's area is 0.45 x (A + B) x length,
// A and B its two widths, which lies within 8 % of two overlapping or touching circles as
// wide as that, joined along the outer side.
// The sd: each measure's (Gauge) carried through the formula by JCGM 100:2008, 5.1.3 note 2; besides, as
// shares of the volume and common practice with no source, 2 % for corners, steps and the level of the water,
// 5 % for a bottom that is not level, 8 % for a kidney's outline, 20 % for seats.
// Every fault is told, at its measure.
VolumeAnswer volume_of(const ShapeMeasures& measures);

// What went through the meter. The sd: the meter is right within 2 % (ISO 4064-1:2014, class 2, from memory),
// each reading within half its last digit, both evenly spread (JCGM 100:2008, 4.3.7); and 3 % for the level
// that it was filled to (common practice, no source).
VolumeAnswer metered_volume(const MeteredFill& fill);

}  // namespace brimline
