// SPDX-License-Identifier: GPL-3.0-or-later
#include "qml/models/chart_words.h"

#include <QCoreApplication>

#include "analysis/panel/analyte.h"
#include "qml/models/clock_face.h"

namespace brimline {
namespace {

QString say(const char* text) {
  return QCoreApplication::translate("charts", text);
}

QString signed_number(double value) {
  const QString digits = QString::number(std::abs(value), 'f', 1);
  return (value < 0 ? QStringLiteral("−") : QStringLiteral("+")) + digits;
}

}  // namespace

QString analyte_words(const AnalyteId& analyte) {
  const AnalyteKind* kind = find_analyte(analyte);
  return kind ? QCoreApplication::translate("analyte", kind->name.c_str()) : QString::fromStdString(analyte);
}

QString rule_words(ControlRule rule) {
  switch (rule) {
    case ControlRule::beyond_2s:
      return say(QT_TRANSLATE_NOOP("charts", "one beyond 2 sd, a warning (1-2s)"));
    case ControlRule::beyond_3s:
      return say(QT_TRANSLATE_NOOP("charts", "one beyond 3 sd (1-3s)"));
    case ControlRule::two_beyond_2s:
      return say(QT_TRANSLATE_NOOP("charts", "two in a row beyond the same 2 sd (2-2s)"));
    case ControlRule::range_4s:
      return say(QT_TRANSLATE_NOOP("charts", "one beyond +2 sd and one beyond −2 sd together (R-4s)"));
    case ControlRule::four_beyond_1s:
      return say(QT_TRANSLATE_NOOP("charts", "four in a row beyond the same 1 sd (4-1s)"));
    case ControlRule::ten_one_side:
      return say(QT_TRANSLATE_NOOP("charts", "ten in a row on one side of the mean (10x)"));
  }
  return {};
}

QString standing_words(CheckStanding standing) {
  switch (standing) {
    case CheckStanding::stopped:
      return say(QT_TRANSLATE_NOOP("charts", "stopped"));
    case CheckStanding::due:
      return say(QT_TRANSLATE_NOOP("charts", "to be checked"));
    case CheckStanding::sound:
      return say(QT_TRANSLATE_NOOP("charts", "right"));
  }
  return {};
}

QString chart_story(const CheckChart& chart, const Instant& now) {
  if (chart.standing == CheckStanding::stopped && chart.stopped_by)
    return say(QT_TRANSLATE_NOOP("charts",
                                 "Stopped: %1. Its readings do not count until somebody has found the cause "
                                 "and clears it here, by name."))
        .arg(rule_words(*chart.stopped_by));
  if (!chart.last) return say(QT_TRANSLATE_NOOP("charts", "Not measured yet: measure every standard once."));
  const bool warned =
      !chart.points.empty() && chart.points.back().counts && !chart.points.back().broken.empty();
  QString out = warned ? say(QT_TRANSLATE_NOOP("charts", "The last one is a warning: measure it once more. "))
                       : QString();
  if (chart.standing == CheckStanding::due)
    return out +
           say(QT_TRANSLATE_NOOP("charts", "Last measured %1: it is due.")).arg(when_words(now, *chart.last));
  return out + say(QT_TRANSLATE_NOOP("charts", "Last measured %1; next by %2."))
                   .arg(when_words(now, *chart.last), when_words(now, chart.due_at));
}

QString point_words(const ChartPoint& point, const Instant& now) {
  QString out = say(QT_TRANSLATE_NOOP("charts", "%1: %2, %3 sd"))
                    .arg(when_words(now, point.measured.at), QString::number(point.measured.value, 'g', 6),
                         signed_number(point.z));
  for (const ControlRule rule : point.broken) out += QStringLiteral("; ") + rule_words(rule);
  return out;
}

}  // namespace brimline
