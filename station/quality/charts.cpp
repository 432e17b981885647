// SPDX-License-Identifier: GPL-3.0-or-later
#include "station/quality/charts.h"

#include <algorithm>
#include <cmath>

namespace brimline {

namespace {

constexpr double kRunHours = 1;  // measured within it: together; common practice, no source

bool of_chart(const CheckChart& chart, const CheckStandard* standard) {
  return standard && standard->instrument == chart.instrument && standard->analyte == chart.analyte;
}

// Points that count, as the rules take them.
std::vector<ControlPoint> counting(const std::vector<ChartPoint>& points) {
  std::vector<ControlPoint> out;
  for (const ChartPoint& p : points)
    if (p.counts) out.push_back({p.z, p.run});
  return out;
}

void clear(CheckChart& chart, const Clearance& clearance) {
  for (ChartPoint& point : chart.points) point.counts = false;
  chart.cleared.push_back(clearance);
  chart.stopped_by.reset();
}

void measure(CheckChart& chart, const CheckMeasurement& measured, const CheckStandard& standard) {
  ChartPoint point{measured, (measured.value - standard.value) / standard.sd, 1, {}, true};
  if (!chart.points.empty()) {
    const int last = chart.points.back().run;
    const auto first = std::find_if(chart.points.begin(), chart.points.end(),
                                    [&](const ChartPoint& p) { return p.run == last; });
    point.run = hours_between(first->measured.at, measured.at) <= kRunHours ? last : last + 1;
  }
  chart.points.push_back(point);
  chart.points.back().broken = rules_broken(counting(chart.points));
  for (const ControlRule rule : chart.points.back().broken)
    if (stops(rule) && !chart.stopped_by) chart.stopped_by = rule;
  chart.last = measured.at;
}

// Due once the standard that waits longest has waited its days.
void settle(CheckChart& chart, const QualityBook& book, const Instant& now) {
  std::optional<Instant> due;
  for (const CheckStandard& standard : book.standards) {
    if (!of_chart(chart, &standard)) continue;
    Instant last = standard.since;
    for (const ChartPoint& point : chart.points)
      if (point.measured.standard == standard.id) last = point.measured.at;
    last.utc += std::chrono::seconds(std::llround(standard.every_days * 86400));
    if (!due || hours_between(last, *due) > 0) due = last;
  }
  chart.due_at = due.value_or(now);
  const bool late = !chart.last || hours_between(chart.due_at, now) >= 0;
  chart.standing = chart.stopped_by ? CheckStanding::stopped
                   : late           ? CheckStanding::due
                                    : CheckStanding::sound;
}

CheckChart chart_of(CheckChart chart, const QualityBook& book, const Instant& now) {
  auto clearance = book.clearances.begin();
  const auto clear_until = [&](const Instant& at) {
    for (; clearance != book.clearances.end() && hours_between(clearance->at, at) > 0; ++clearance)
      if (clearance->instrument == chart.instrument && clearance->analyte == chart.analyte)
        clear(chart, *clearance);
  };
  for (const CheckMeasurement& measured : book.measurements) {
    const CheckStandard* standard = book.standard(measured.standard);
    if (!of_chart(chart, standard) || hours_between(measured.at, now) < 0) continue;
    clear_until(measured.at);
    measure(chart, measured, *standard);
  }
  Instant after = now;
  after.utc += std::chrono::seconds(1);
  clear_until(after);
  settle(chart, book, now);
  return chart;
}

}  // namespace

const CheckStandard* QualityBook::standard(const std::string& id) const {
  const auto found =
      std::find_if(standards.begin(), standards.end(), [&](const auto& s) { return s.id == id; });
  return found == standards.end() ? nullptr : &*found;
}

std::vector<CheckChart> charts_at(const QualityBook& book, const Instant& now) {
  std::vector<CheckChart> out;
  for (const CheckStandard& standard : book.standards) {
    const bool known =
        std::any_of(out.begin(), out.end(), [&](const CheckChart& c) { return of_chart(c, &standard); });
    if (known) continue;
    CheckChart chart;
    chart.instrument = standard.instrument;
    chart.analyte = standard.analyte;
    out.push_back(chart_of(std::move(chart), book, now));
  }
  return out;
}

}  // namespace brimline
