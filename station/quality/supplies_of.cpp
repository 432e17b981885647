// SPDX-License-Identifier: GPL-3.0-or-later
#include "station/quality/supplies_of.h"

#include <cmath>
#include <map>

namespace brimline {

namespace {

constexpr double kSameLineNm = 5;  // filters of one nominal wavelength differ by so much; common practice

// When the chart was last measured; where it never was, since its standards are there.
Instant checked_at(const CheckChart& chart, const QualityBook& book, const Instant& now) {
  if (chart.last) return *chart.last;
  for (const CheckStandard& standard : book.standards)
    if (standard.instrument == chart.instrument && standard.analyte == chart.analyte) return standard.since;
  return now;
}

// When the rule was broken that still stops the chart.
Instant stopped_at(const CheckChart& chart) {
  for (const ChartPoint& point : chart.points)
    if (point.counts)
      for (const ControlRule rule : point.broken)
        if (stops(rule)) return point.measured.at;
  return *chart.last;
}

}  // namespace

// Of two checks at one moment the later in the list counts.
Supplies with_charts(Supplies written, const QualityBook& book, const Instant& now) {
  const std::vector<InstrumentCheck> by_hand = written.checks;
  const std::vector<CheckChart> charts = charts_at(book, now);
  std::map<std::string, Instant> longest_ago;
  for (const CheckChart& chart : charts) {
    const Instant at = checked_at(chart, book, now);
    const auto [place, fresh] = longest_ago.emplace(chart.instrument, at);
    if (!fresh && hours_between(at, place->second) > 0) place->second = at;
  }
  for (const auto& [instrument, at] : longest_ago)
    written.checks.push_back({instrument, std::nullopt, at, true});
  for (const CheckChart& chart : charts) {
    if (chart.standing != CheckStanding::stopped) {
      written.checks.push_back({chart.instrument, chart.analyte, checked_at(chart, book, now), true});
      continue;
    }
    const Instant since = stopped_at(chart);
    written.checks.push_back({chart.instrument, chart.analyte, since, false});
    for (const InstrumentCheck& check : by_hand)
      if (check.instrument == chart.instrument && hours_between(since, check.at) > 0)
        written.checks.push_back({chart.instrument, chart.analyte, check.at, false});
    for (const CheckChart& other : charts)
      if (other.instrument == chart.instrument && other.last && hours_between(since, *other.last) > 0)
        written.checks.push_back({chart.instrument, chart.analyte, *other.last, false});
  }
  return written;
}

std::optional<LotCalibration> calibration_in_use(const Supplies& supplies, const QualityBook& book,
                                                 const AnalyteId& analyte, double wavelength_nm,
                                                 const Instant& now) {
  const ReagentLot* lot = lot_in_use(supplies, analyte);
  if (!lot) return std::nullopt;
  const LotCurve* latest = nullptr;
  for (const LotCurve& curve : book.curves)
    if (curve.lot == lot->lot && std::abs(curve.wavelength_nm - wavelength_nm) <= kSameLineNm &&
        hours_between(curve.at, now) >= 0)
      latest = &curve;
  if (!latest) return std::nullopt;
  const auto fitted = fit_best(latest->points);
  if (!fitted) return std::nullopt;
  return LotCalibration{lot->lot, analyte, latest->wavelength_nm, *fitted};
}

}  // namespace brimline
