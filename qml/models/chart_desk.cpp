// SPDX-License-Identifier: GPL-3.0-or-later
#include "qml/models/chart_desk.h"

#include <algorithm>
#include <cmath>

#include "analysis/panel/analyte.h"
#include "qml/models/chart_words.h"
#include "qml/models/choices.h"
#include "qml/models/clock_face.h"

namespace brimline {
namespace {

constexpr int kShown = 30;  // points of a chart on the screen

QString q(const std::string& text) {
  return QString::fromStdString(text);
}
QString key_of(const CheckChart& chart) {
  return q(chart.instrument + "/" + chart.analyte);
}

// "1,02" or "1.02"; nothing for anything else.
std::optional<double> number_in(const QString& text) {
  bool sound = false;
  const double value = text.trimmed().replace(',', '.').toDouble(&sound);
  if (!sound || !std::isfinite(value)) return std::nullopt;
  return value;
}

// Of the picture's height, which goes from -4 to 4 standard deviations.
double up_of(double z) {
  return 0.5 + std::clamp(z, -4.0, 4.0) / 8;
}

std::span<const ChartPoint> shown(const CheckChart& chart) {
  const std::span<const ChartPoint> all(chart.points);
  return all.size() > kShown ? all.last(kShown) : all;
}

}  // namespace

ChartDesk::ChartDesk(Counter& counter, QObject* parent)
    : QObject(parent), counter_(counter), charts_({"key", "name", "detail", "standing", "waits", "here"}) {
  connect(&counter_, &Counter::changed, this, &ChartDesk::refresh);
  refresh();
}

const CheckChart* ChartDesk::chart() const {
  const auto found = std::find_if(all_.begin(), all_.end(), [&](const auto& c) { return key_of(c) == key_; });
  return found == all_.end() ? nullptr : &*found;
}

void ChartDesk::refresh() {
  all_ = charts_at(counter_.quality(), counter_.now());
  if (!chart()) key_ = all_.empty() ? QString() : key_of(all_.front());
  const QVariantList own = standards();
  const bool known = std::any_of(own.begin(), own.end(),
                                 [&](const QVariant& s) { return s.toMap().value("key") == standard_; });
  if (!known) standard_ = own.isEmpty() ? QString() : own.first().toMap().value("key").toString();
  QList<QVariantMap> rows;
  for (const CheckChart& one : all_)
    rows.append({{"key", key_of(one)},
                 {"name", analyte_words(one.analyte)},
                 {"detail", q(one.instrument)},
                 {"standing", standing_words(one.standing)},
                 {"waits", one.standing != CheckStanding::sound},
                 {"here", key_of(one) == key_}});
  charts_.replace(rows);
  emit changed();
}

int ChartDesk::waiting() const {
  return static_cast<int>(std::count_if(all_.begin(), all_.end(),
                                        [](const auto& c) { return c.standing != CheckStanding::sound; }));
}

QString ChartDesk::headline() const {
  const CheckChart* one = chart();
  return one ? analyte_words(one->analyte) + QStringLiteral(", ") + q(one->instrument) : QString();
}

QString ChartDesk::story() const {
  const CheckChart* one = chart();
  return one ? chart_story(*one, counter_.now())
             : tr("No standard is written down yet. A glass or a solution of known value, measured every "
                  "week, "
                  "shows when an instrument drifts.");
}

bool ChartDesk::stopped() const {
  const CheckChart* one = chart();
  return one && one->standing == CheckStanding::stopped;
}

QVariantList ChartDesk::points() const {
  QVariantList out;
  const CheckChart* one = chart();
  if (!one) return out;
  const auto last = shown(*one);
  for (size_t i = 0; i < last.size(); ++i) {
    const ChartPoint& p = last[i];
    const bool out_of_it = std::any_of(p.broken.begin(), p.broken.end(), stops);
    out.append(QVariantMap{{"at", (static_cast<double>(i) + 0.5) / kShown},
                           {"up", up_of(p.z)},
                           {"out", out_of_it},
                           {"counts", p.counts},
                           {"says", point_words(p, counter_.now())}});
  }
  return out;
}

QString ChartDesk::pointsInWords() const {
  QStringList out;
  const CheckChart* one = chart();
  if (!one) return {};
  const auto all = shown(*one);
  for (const ChartPoint& point : all.size() > 3 ? all.last(3) : all)
    out.prepend(point_words(point, counter_.now()));
  return out.join(QStringLiteral("\n"));
}

QVariantList ChartDesk::limits() const {
  QVariantList out;
  for (const int z : {3, 2, 1, 0, -1, -2, -3})
    out.append(QVariantMap{
        {"up", up_of(z)},
        {"weight", z == 0             ? "main"
                   : std::abs(z) == 1 ? "pale"
                                      : "plain"},
        {"word", z == 0 ? tr("should be") : (z > 0 ? tr("+%1 sd") : tr("−%1 sd")).arg(std::abs(z))}});
  return out;
}

QVariantList ChartDesk::standards() const {
  QVariantList out;
  const CheckChart* one = chart();
  if (!one) return out;
  const AnalyteKind* kind = find_analyte(one->analyte);
  for (const CheckStandard& s : counter_.quality().standards)
    if (s.instrument == one->instrument && s.analyte == one->analyte)
      out.append(QVariantMap{{"key", q(s.id)},
                             {"word", tr("%1: %2 %3")
                                          .arg(q(s.name), QString::number(s.value, 'g', 6),
                                               kind ? unit_on_screen(*kind) : QString())
                                          .trimmed()}});
  return out;
}

QVariantList ChartDesk::analytes() const {
  QVariantList out;
  for (const AnalyteKind& kind : analyte_kinds())
    if (kind.method(Method::photometer))
      out.append(QVariantMap{{"key", q(kind.id)}, {"word", analyte_words(kind.id)}});
  return by_word(out);
}

bool ChartDesk::say(const QString& sentence) {
  says_ = sentence;
  emit changed();
  return false;
}

void ChartDesk::choose(const QString& key) {
  key_ = key;
  says_.clear();
  listening_ = false;
  refresh();
}

void ChartDesk::setStandard(const QString& id) {
  standard_ = id;
  listening_ = false;
  emit changed();
}

bool ChartDesk::measure(double value, bool typed) {
  const CheckStandard* of = counter_.quality().standard(standard_.toStdString());
  if (!of) return say(tr("Not kept: choose the standard first."));
  const ReagentLot* lot = lot_in_use(counter_.supplies(), of->analyte);
  const CheckMeasurement measured{counter_.new_id("M"),          of->id, counter_.now(), value, typed,
                                  lot ? lot->lot : std::string()};
  if (const auto kept = counter_.add_measurement(measured); !kept)
    return say(tr("Not kept: %1").arg(q(kept.error())));
  listening_ = false;
  say(tr("%1 is kept.").arg(QString::number(value, 'g', 6)));
  return true;
}

bool ChartDesk::keepMeasurement(const QString& text) {
  const auto value = number_in(text);
  const CheckChart* one = chart();
  const AnalyteKind* kind = one ? find_analyte(one->analyte) : nullptr;
  if (!value || (kind && !kind->possible.holds(*value)))
    return say(tr("Not kept: “%1” is not what the instrument can show.").arg(text));
  return measure(*value, true);
}

void ChartDesk::listen(bool on) {
  listening_ = on && !standard_.isEmpty();
  say(listening_ ? tr("Put the standard in and measure it: the next value that comes in is kept here.")
                 : QString());
}

bool ChartDesk::take(const InstrumentReading& reading, const std::string& instrument) {
  const CheckStandard* of = counter_.quality().standard(standard_.toStdString());
  if (!listening_ || !of || of->analyte != reading.analyte || of->instrument != instrument || reading.clipped)
    return false;
  measure(reading.value, false);
  return true;
}

bool ChartDesk::clearStop(const QString& by, const QString& reason) {
  const CheckChart* one = chart();
  if (!one || !stopped()) return false;
  if (by.trimmed().isEmpty()) return say(tr("Not cleared: write who clears it."));
  if (reason.trimmed().isEmpty()) return say(tr("Not cleared: write what was found and done."));
  const Clearance clearance{counter_.new_id("K"),
                            one->instrument,
                            one->analyte,
                            counter_.now(),
                            by.trimmed().toStdString(),
                            reason.trimmed().toStdString()};
  if (const auto kept = counter_.add_clearance(clearance); !kept)
    return say(tr("Not cleared: %1").arg(q(kept.error())));
  say(tr("Cleared by %1. Measure the standards now, before the next bottle.").arg(by.trimmed()));
  return true;
}

bool ChartDesk::addStandard(const QVariantMap& form) {
  CheckStandard s;
  s.id = counter_.new_id("S");
  s.instrument = form.value("instrument").toString().trimmed().toStdString();
  s.analyte = form.value("analyte").toString().toStdString();
  s.name = form.value("name").toString().trimmed().toStdString();
  s.since = counter_.now();
  if (s.instrument.empty()) return say(tr("Not kept: name the instrument, as its readings do."));
  if (s.name.empty()) return say(tr("Not kept: name the standard."));
  const AnalyteKind* kind = find_analyte(s.analyte);
  if (!kind) return say(tr("Not kept: say what it is a standard of."));
  const auto value = number_in(form.value("value").toString());
  if (!value || !kind->possible.holds(*value)) return say(tr("Not kept: its value is missing or cannot be."));
  const auto sd = number_in(form.value("sd").toString());
  if (!sd || *sd <= 0) return say(tr("Not kept: the spread is to be a number above zero."));
  const auto days = number_in(form.value("days").toString());
  if (!days || *days < 1) return say(tr("Not kept: the days between checks are to be 1 or more."));
  s.value = *value;
  s.sd = *sd;
  s.every_days = *days;
  if (const auto kept = counter_.add_standard(s); !kept) return say(tr("Not kept: %1").arg(q(kept.error())));
  choose(q(s.instrument + "/" + s.analyte));
  say(tr("%1 is kept: measure it once now.").arg(q(s.name)));
  return true;
}

}  // namespace brimline
