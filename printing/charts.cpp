// SPDX-License-Identifier: GPL-3.0-or-later
#include "printing/charts.h"

#include <algorithm>
#include <cmath>

#include "printing/readings_table.h"
#include "station/compare/compare.h"
#include "station/wording/clock_words.h"
#include "station/wording/unit_words.h"

namespace brimline {
namespace {

constexpr size_t kMostPoints = 8;
constexpr const char* kWeekly[] = {"free_chlorine", "total_bromine", "biguanide", "ph", "total_alkalinity"};

void add_point(Chart& chart, const Visit& visit, const AnalyteId& analyte, const Words& words,
               std::optional<Instant>& first) {
  const Reading* reading = standing_reading(visit.bottle, analyte);
  if (!reading || reading->clipped) return;
  Chart::Point point;
  point.value = reading->value;
  point.days = static_cast<double>(chart.points.size());
  if (const auto when = time_of(visit)) {
    if (!first) first = when;
    point.date = short_date_words(words, *when);
    point.days = hours_between(*first, *when) / 24;
  }
  chart.points.push_back(std::move(point));
}

struct Scale {
  double low, high, top, bottom;
  double y(double value) const { return bottom - (bottom - top) * (value - low) / (high - low); }
};

Scale scale_of(const Chart& chart, double top, double bottom) {
  Scale out{chart.points.front().value, chart.points.front().value, top, bottom};
  const auto take = [&](double value) {
    out.low = std::min(out.low, value);
    out.high = std::max(out.high, value);
  };
  for (const Chart::Point& point : chart.points) take(point.value);
  if (chart.target.low) take(*chart.target.low);
  if (chart.target.high) take(*chart.target.high);
  const double room = std::max(out.high - out.low, 1e-6) * 0.06;
  out.low -= room;
  out.high += room;
  return out;
}

}  // namespace

std::vector<Chart> charts_of(const Visit& visit, const std::vector<Visit>& history, const Words& words,
                             const std::map<AnalyteId, Target>& targets) {
  std::vector<Chart> out;
  const size_t from = history.size() > kMostPoints - 1 ? history.size() - (kMostPoints - 1) : 0;
  for (const char* analyte : kWeekly) {
    const Reading* now = standing_reading(visit.bottle, analyte);
    const AnalyteKind* kind = find_analyte(analyte);
    if (!now || now->clipped || !kind) continue;
    Chart chart;
    chart.name = analyte_name(words, analyte);
    chart.unit = unit_words(words, *kind);
    chart.target = target_of(visit, analyte, targets).value_or(Target{});
    if (chart.target.low) chart.low = bound_words(words, analyte, *chart.target.low);
    if (chart.target.high) chart.high = bound_words(words, analyte, *chart.target.high);
    std::optional<Instant> first;
    for (size_t i = from; i < history.size(); ++i) add_point(chart, history[i], analyte, words, first);
    if (chart.points.empty()) continue;
    add_point(chart, visit, analyte, words, first);
    out.push_back(std::move(chart));
  }
  return out;
}

double chart_height(const Type& type) {
  return type.size * 7.6;
}

std::vector<Item> chart_items(const Chart& chart, double width, const Type& type) {
  const Type strong{type.size, true, Ink::black}, quiet{type.size * 0.94, false, Ink::quiet};
  std::vector<Item> out;
  const QString name = QString::fromStdString(chart.name);
  out.push_back(text_at(0, ascent_of(strong), name, strong));
  if (!chart.unit.empty())
    out.push_back(
        text_at(width_of(name + " ", strong), ascent_of(strong), QString::fromStdString(chart.unit), quiet));
  const double mark = type.size * 0.24;
  const QString low = QString::fromStdString(chart.low), high = QString::fromStdString(chart.high);
  const double right = width - std::max(width_of(low, quiet), width_of(high, quiet)) - type.size * 0.5;
  const Scale scale = scale_of(chart, type.size * 2, type.size * 5.6);
  const double days = std::max(chart.points.back().days, 1e-6);
  const auto x_of = [&](const Chart::Point& p) {
    return mark + (right - 2 * mark) * std::clamp(p.days / days, 0.0, 1.0);
  };
  const auto bound = [&](const std::optional<double>& at, const QString& words) {
    if (!at) return;
    const double y = scale.y(*at);
    out.push_back(LineItem{0, y, right, y, 0.4, Ink::quiet});
    out.push_back(text_at(right + type.size * 0.4, y + quiet.size * 0.34, words, quiet));
  };
  bound(chart.target.low, low);
  if (!chart.target.low || scale.y(*chart.target.low) - scale.y(chart.target.high.value_or(1e9)) > quiet.size)
    bound(chart.target.high, high);
  for (size_t i = 0; i + 1 < chart.points.size(); ++i)
    out.push_back(LineItem{x_of(chart.points[i]), scale.y(chart.points[i].value), x_of(chart.points[i + 1]),
                           scale.y(chart.points[i + 1].value), 0.5});
  for (const Chart::Point& point : chart.points) {
    const bool last = &point == &chart.points.back();
    const double half = last ? mark * 1.25 : mark;
    out.push_back(MarkItem{x_of(point), scale.y(point.value), half, last});
  }
  const double foot = type.size * 7.1;
  const QString from = QString::fromStdString(chart.points.front().date);
  const QString to = QString::fromStdString(chart.points.back().date);
  out.push_back(text_at(0, foot, from, quiet));
  out.push_back(text_ending_at(right, foot, to, quiet));
  return out;
}

}  // namespace brimline
