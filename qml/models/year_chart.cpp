// SPDX-License-Identifier: GPL-3.0-or-later
#include "qml/models/year_chart.h"

#include <algorithm>
#include <cmath>

#include "analysis/findings/edge.h"
#include "analysis/panel/analyte.h"
#include "printing/readings_table.h"
#include "station/compare/compare.h"
#include "station/wording/clock_words.h"
#include "station/wording/unit_words.h"

namespace brimline {
namespace {

constexpr double kIntervals = 4;  // of the axis, about
constexpr double kApart = 0.09;   // of the picture's height, between two numbers beside it
constexpr size_t kSpoken = 12;    // readings told one by one
constexpr double kUnitSteps[] = {1, 2, 5, 10};

QString q(const std::string& text) {
  return QString::fromStdString(text);
}

// 1, 2 or 5 of the power of ten that parts the span into about four.
double step_of(double span) {
  const double power = std::pow(10, std::floor(std::log10(span / kIntervals)));
  for (const double unit : kUnitSteps)
    if (unit * power * kIntervals >= span) return unit * power;
  return 10 * power;
}

std::optional<double> last_of(const VesselYear& year, std::string_view analyte) {
  const YearOfReading* of = year.find(analyte);
  return of ? std::optional(of->points.back().read.value) : std::nullopt;
}

}  // namespace

YearChart::YearChart(Counter& counter, const Services& services, QObject* parent)
    : QObject(parent), counter_(counter), targets_of_(services.targets) {
  connect(&counter_, &Counter::changed, this, &YearChart::refresh);
}

YearChart::~YearChart() {
  pool_.wait();
}

// The visits are those that the counter holds: nothing is read again. The targets stand in a file.
void YearChart::refresh() {
  const int request = ++asked_;
  pool_.clear();
  if (!counter_.open() || counter_.earlier().empty()) {
    year_ = {};
    targets_.clear();
    emit changed();
    return;
  }
  std::vector<Visit> visits = counter_.earlier();
  visits.push_back(counter_.visit());
  pool_.start([this, request, visits = std::move(visits), targets_of = targets_of_, now = counter_.now()] {
    VesselYear year = year_of(visits, time_of(visits.back()).value_or(now));
    std::map<AnalyteId, Target> targets;
    if (targets_of) targets = targets_of(visits.back(), last_of(year, "cyanuric_acid"), last_of(year, "ph"));
    QMetaObject::invokeMethod(
        this, [this, request, year = std::move(year), targets = std::move(targets)]() mutable {
          if (request != asked_) return;
          year_ = std::move(year);
          targets_ = std::move(targets);
          emit changed();
        });
  });
}

const YearOfReading* YearChart::shown() const {
  const YearOfReading* chosen = year_.find(reading_);
  if (chosen && chosen->points.size() > 1) return chosen;
  const auto first = std::find_if(year_.readings.begin(), year_.readings.end(),
                                  [](const YearOfReading& of) { return of.points.size() > 1; });
  return first == year_.readings.end() ? nullptr : &*first;
}

QVariantList YearChart::readings() const {
  QVariantList out;
  for (const YearOfReading& of : year_.readings)
    if (of.points.size() > 1)
      out.append(
          QVariantMap{{"key", q(of.analyte)}, {"word", q(analyte_name(counter_.words(), of.analyte))}});
  return out;
}

QString YearChart::reading() const {
  return shown() ? q(shown()->analyte) : QString();
}

void YearChart::setReading(const QString& analyte) {
  reading_ = analyte.toStdString();
  emit changed();
}

// Much stabilizer wants more chlorine than anybody may swim in: what stands is the most.
Target YearChart::target() const {
  const auto found = shown() ? targets_.find(shown()->analyte) : targets_.end();
  if (found == targets_.end()) return {};
  Target out = found->second;
  if (out.low && out.high && *out.low > *out.high) out.low.reset();
  return out;
}

bool YearChart::outside(const YearPoint& point) const {
  const Target wanted = target();
  if (point.clipped)
    return *point.clipped == Clip::above ? wanted.high && point.read.value >= *wanted.high
                                         : wanted.low && point.read.value <= *wanted.low;
  const Standing stands = standing(point.read, wanted);
  return stands == Standing::below || stands == Standing::above;
}

YearChart::Scale YearChart::scale() const {
  const YearOfReading* of = shown();
  if (!of) return {};
  double low = of->points.front().read.value, high = low;
  const auto take = [&](double value) {
    low = std::min(low, value);
    high = std::max(high, value);
  };
  for (const YearPoint& point : of->points) {
    take(std::max(0.0, point.read.value - point.read.sd));
    take(point.read.value + point.read.sd);
  }
  const Target wanted = target();
  if (wanted.low) take(*wanted.low);
  if (wanted.high) take(*wanted.high);
  const double finest = std::pow(10, -find_analyte(of->analyte)->decimals);
  const double step = std::max(step_of(std::max(high - low, finest)), finest);
  Scale out{std::floor(low / step) * step, std::ceil(high / step) * step, step};
  if (out.high - out.low < step / 2) out.high += step;
  return out;
}

QString YearChart::value_words(double value) const {
  return q(bound_words(counter_.words(), shown()->analyte, value));
}

QVariantList YearChart::rules() const {
  QVariantList out;
  if (!shown()) return out;
  const Scale of = scale();
  std::vector<double> taken;
  const auto add = [&](double value, const char* weight) {
    const double up = of.up(value);
    const bool free =
        std::none_of(taken.begin(), taken.end(), [&](double other) { return std::abs(other - up) < kApart; });
    if (free) taken.push_back(up);
    out.append(QVariantMap{{"up", up}, {"word", free ? value_words(value) : QString()}, {"weight", weight}});
  };
  const Target wanted = target();
  if (wanted.low) add(*wanted.low, "main");
  if (wanted.high) add(*wanted.high, "main");
  const int count = static_cast<int>(std::lround((of.high - of.low) / of.step));
  for (int i = 0; i <= count; ++i) add(of.low + i * of.step, "pale");
  return out;
}

QVariantMap YearChart::band() const {
  const Target wanted = target();
  if (!wanted.low && !wanted.high) return {};
  const Scale of = scale();
  return {{"low", wanted.low ? of.up(*wanted.low) : 0.0}, {"high", wanted.high ? of.up(*wanted.high) : 1.0}};
}

QVariantList YearChart::points() const {
  QVariantList out;
  if (!shown()) return out;
  const Scale of = scale();
  for (const YearPoint& point : shown()->points)
    out.append(QVariantMap{{"at", point.at},
                           {"up", of.up(point.read.value)},
                           {"half", point.read.sd / (of.high - of.low)},
                           {"out", outside(point)},
                           {"counts", !point.clipped}});
  return out;
}

QVariantList YearChart::ticks() const {
  QVariantList out;
  if (!shown()) return out;
  for (const ToldDose& dose : year_.doses)
    out.append(
        QVariantMap{{"at", dose.at},
                    {"tall", std::binary_search(dose.moves.begin(), dose.moves.end(), shown()->analyte)}});
  return out;
}

QVariantList YearChart::dates() const {
  QVariantList out;
  if (!shown()) return out;
  for (const int quarter : {0, 1, 2, 3, 4}) {
    Instant when = year_.from;
    when.utc += std::chrono::hours(static_cast<int>(kYearHours) * quarter / 4);
    out.append(QVariantMap{{"at", quarter / 4.0}, {"word", q(short_date_words(counter_.words(), when))}});
  }
  return out;
}

QString YearChart::says() const {
  const YearOfReading* of = shown();
  if (!of) return {};
  const auto& all = of->points;
  const auto out = std::count_if(all.begin(), all.end(), [&](const auto& p) { return outside(p); });
  const auto [low, high] = std::minmax_element(
      all.begin(), all.end(), [](const auto& a, const auto& b) { return a.read.value < b.read.value; });
  const std::string wanted = target_words(counter_.words(), of->analyte, target());
  const QString spread =
      tr("%1 readings in the year, from %2 to %3.")
          .arg(QString::number(all.size()), value_words(low->read.value), value_words(high->read.value));
  const QString held = wanted.empty() ? tr("It has no target.")
                                      : tr("Target %1: %2 outside it.").arg(q(wanted), QString::number(out));
  const auto moving = std::count_if(year_.doses.begin(), year_.doses.end(), [&](const ToldDose& dose) {
    return std::binary_search(dose.moves.begin(), dose.moves.end(), of->analyte);
  });
  const QString doses = year_.doses.empty()
                            ? tr("No doses were told.")
                            : tr("Doses told: %1, of which %2 move it.").arg(year_.doses.size()).arg(moving);
  return spread + QLatin1Char(' ') + held + QLatin1Char(' ') + doses;
}

QString YearChart::inWords() const {
  const YearOfReading* of = shown();
  if (!of) return {};
  const std::string unit = unit_words(counter_.words(), *find_analyte(of->analyte));
  const QString name = q(analyte_name(counter_.words(), of->analyte));
  QString out = (unit.empty() ? name : name + ", " + q(unit)) + QStringLiteral(". ") + says();
  for (size_t i = 0; i < std::min(kSpoken, of->points.size()); ++i) {
    const YearPoint& point = of->points[of->points.size() - 1 - i];
    const QString day = q(date_words(counter_.words(), point.when)), value = value_words(point.read.value);
    out += QLatin1Char(' ');
    if (point.clipped)
      out +=
          (*point.clipped == Clip::above ? tr("%1: more than %2.") : tr("%1: less than %2.")).arg(day, value);
    else
      out += (outside(point) ? tr("%1: %2, outside.") : tr("%1: %2.")).arg(day, value);
  }
  return out;
}

}  // namespace brimline
