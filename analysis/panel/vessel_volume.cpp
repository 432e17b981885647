// SPDX-License-Identifier: GPL-3.0-or-later
#include "analysis/panel/vessel_volume.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace brimline {
namespace {

using std::numbers::pi, std::numbers::sqrt3;

constexpr double kEdges = 0.02, kUneven = 0.05, kOutline = 0.08, kSeats = 0.2;
constexpr double kMeter = 0.02 / sqrt3, kLevel = 0.03;
constexpr double kKidney = 0.45;

// In metres and square metres; what the shape does not have is absent.
using Bases = std::map<Measure, double>;

struct Limits {
  double low, high;
};
constexpr Limits kAcross{0.3, 100}, kDepth{0.1, 10}, kArea{0.1, 5000}, kVolume{0.05, 5000};

bool is_depth(Measure m) {
  return m == Measure::depth || m == Measure::deep_depth;
}
Limits limits_of(Measure m) {
  return m == Measure::area ? kArea : is_depth(m) ? kDepth : kAcross;
}

// The area of an ellipse's part within a share of its length from one end, as a share of the whole.
double ellipse_share(double share) {
  const double at = 1 - 2 * share;
  return (std::acos(at) - at * std::sqrt(1 - at * at)) / pi;
}

double rounded_ends_area(double length, double width) {
  return width * (length - width) + pi / 4 * width * width;
}

// The area within `from_end` of an end.
double rounded_ends_part(double length, double width, double from_end) {
  const double radius = width / 2;
  if (from_end > length / 2)
    return rounded_ends_area(length, width) - rounded_ends_part(length, width, length - from_end);
  if (from_end < radius) return pi * radius * radius * ellipse_share(from_end / width);
  return pi / 2 * radius * radius + width * (from_end - radius);
}

double area_of(Shape shape, const Bases& at) {
  const auto length = [&] { return at.at(Measure::length); };
  const auto width = [&] { return at.at(Measure::width); };
  switch (shape) {
    case Shape::rectangle:
      return length() * width();
    case Shape::round:
      return pi / 4 * length() * length();
    case Shape::oval:
      return pi / 4 * length() * width();
    case Shape::kidney:
      return kKidney * (width() + at.at(Measure::other_width)) * length();
    case Shape::rounded_ends:
      return rounded_ends_area(length(), width());
    case Shape::freeform:
      break;
  }
  return at.at(Measure::area);
}

double deep_share(Shape shape, const Bases& at) {
  const double length = at.at(Measure::length), part = at.at(Measure::deep_length);
  if (shape == Shape::rectangle) return part / length;
  if (shape != Shape::rounded_ends) return ellipse_share(part / length);
  const double width = at.at(Measure::width);
  return rounded_ends_part(length, width, part) / rounded_ends_area(length, width);
}

double cubic_metres(Shape shape, Bottom bottom, const Bases& at) {
  const double shallow = at.at(Measure::depth);
  if (bottom == Bottom::level) return area_of(shape, at) * shallow;
  const double share = bottom == Bottom::sloping ? 0.5 : deep_share(shape, at);
  return area_of(shape, at) * (shallow + share * (at.at(Measure::deep_depth) - shallow));
}

double sd_of(Measure m, double value, Gauge gauge) {
  if (gauge == Gauge::eye) return (is_depth(m) || m == Measure::area ? 0.15 : 0.1) * value;
  if (m == Measure::area)
    return 0.05 * value;  // from a plan, or squares counted (common practice, no source)
  return std::hypot(0.05, (is_depth(m) ? 0.02 : 0.01) * value);
}

// What one measure's error does to the volume. A step that would leave the shape stays at its edge.
double carried(const ShapeMeasures& m, const Bases& at, Measure moved) {
  const double value = at.at(moved), sd = sd_of(moved, value, m.gauge);
  const auto when = [&](double now) {
    Bases other = at;
    other[moved] = now;
    if (m.bottom == Bottom::two_parts)
      other[Measure::deep_length] = std::min(other[Measure::deep_length], other[Measure::length]);
    if (m.shape == Shape::rounded_ends)
      other[Measure::width] = std::min(other[Measure::width], other[Measure::length]);
    return cubic_metres(m.shape, m.bottom, other);
  };
  return (when(value + sd) - when(std::max(value - sd, 0.0))) / 2;
}

double assumed(const ShapeMeasures& m) {
  return std::hypot(std::hypot(kEdges, m.bottom == Bottom::level ? 0 : kUneven),
                    m.shape == Shape::kidney ? kOutline : 0, m.seats ? kSeats : 0);
}

std::optional<Wrong> wrong_with(Measure m, std::optional<double> value) {
  if (!value) return Wrong::missing;
  if (!(*value > 0)) return Wrong::not_above_zero;
  const Limits limits = limits_of(m);
  if (*value < limits.low) return Wrong::too_small;
  if (*value > limits.high) return Wrong::too_large;
  return std::nullopt;
}

std::optional<double> measured(const ShapeMeasures& m, Measure which) {
  if (which == Measure::area) return m.area ? std::optional(m.area->square_metres()) : std::nullopt;
  const auto found = m.lengths.find(which);
  return found == m.lengths.end() ? std::nullopt : std::optional(found->second.metres());
}

std::optional<Wrong> wrong_together(const ShapeMeasures& m, const Bases& at, Measure which) {
  const auto has = [&](Measure other) { return at.count(other) > 0; };
  if (which == Measure::deep_depth && has(Measure::depth) && at.at(which) <= at.at(Measure::depth))
    return Wrong::not_deeper;
  if (!has(Measure::length)) return std::nullopt;
  if (which == Measure::deep_length && at.at(which) >= at.at(Measure::length)) return Wrong::not_shorter;
  if (m.shape == Shape::rounded_ends && which == Measure::width && at.at(which) > at.at(Measure::length))
    return Wrong::wider_than_long;
  return std::nullopt;
}

tl::unexpected<std::vector<VolumeFault>> fault(Measure at, Wrong wrong) {
  return tl::unexpected(std::vector{VolumeFault{at, wrong}});
}

}  // namespace

bool can_have_two_parts(Shape shape) {
  return shape != Shape::kidney && shape != Shape::freeform;
}

std::vector<Measure> measures_of(Shape shape, Bottom bottom) {
  if (!can_have_two_parts(shape) && bottom == Bottom::two_parts) bottom = Bottom::sloping;
  std::vector<Measure> out{shape == Shape::freeform ? Measure::area : Measure::length};
  if (shape != Shape::freeform && shape != Shape::round) out.push_back(Measure::width);
  if (shape == Shape::kidney) out.push_back(Measure::other_width);
  out.push_back(Measure::depth);
  if (bottom != Bottom::level) out.push_back(Measure::deep_depth);
  if (bottom == Bottom::two_parts) out.push_back(Measure::deep_length);
  return out;
}

VolumeAnswer volume_of(const ShapeMeasures& measures) {
  ShapeMeasures m = measures;
  if (!can_have_two_parts(m.shape) && m.bottom == Bottom::two_parts) m.bottom = Bottom::sloping;
  Bases at;
  std::vector<VolumeFault> faults;
  const std::vector<Measure> wanted = measures_of(m.shape, m.bottom);
  for (const Measure which : wanted) {
    const std::optional<double> value = measured(m, which);
    if (const auto wrong = wrong_with(which, value))
      faults.push_back({which, *wrong});
    else
      at[which] = *value;
  }
  for (const auto& [which, value] : at)
    if (const auto wrong = wrong_together(m, at, which)) faults.push_back({which, *wrong});
  if (!faults.empty()) return tl::unexpected(std::move(faults));
  const double volume = cubic_metres(m.shape, m.bottom, at);
  if (volume < kVolume.low) return fault(wanted.front(), Wrong::too_small);
  if (volume > kVolume.high) return fault(wanted.front(), Wrong::too_large);
  double variance = std::pow(assumed(m) * volume, 2);
  for (const Measure which : wanted) variance += std::pow(carried(m, at, which), 2);
  VolumeMeasured out{Volume::cubic_metres(volume), Volume::cubic_metres(std::sqrt(variance)), {}};
  if (m.bottom == Bottom::two_parts) out.deep_share = deep_share(m.shape, at);
  return out;
}

VolumeAnswer metered_volume(const MeteredFill& fill) {
  std::vector<VolumeFault> faults;
  const auto look = [&](Measure at, const std::optional<Volume>& reading) {
    if (!reading) faults.push_back({at, Wrong::missing});
    if (reading && !(*reading >= Volume())) faults.push_back({at, Wrong::not_above_zero});
  };
  look(Measure::before, fill.before);
  look(Measure::after, fill.after);
  if (!faults.empty()) return tl::unexpected(std::move(faults));
  const double volume = (*fill.after - *fill.before).cubic_metres();
  if (volume < 0) return fault(Measure::after, Wrong::meter_fell);
  if (volume == 0) return fault(Measure::after, Wrong::meter_stood);
  if (volume < kVolume.low) return fault(Measure::after, Wrong::too_small);
  if (!(volume <= kVolume.high)) return fault(Measure::after, Wrong::too_large);
  const double digits = fill.step.cubic_metres() / std::sqrt(6);  // of two readings, a twelfth each
  return VolumeMeasured{Volume::cubic_metres(volume),
                        Volume::cubic_metres(std::hypot(std::hypot(kMeter, kLevel) * volume, digits)),
                        {}};
}

}  // namespace brimline
