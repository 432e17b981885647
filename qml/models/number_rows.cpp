// SPDX-License-Identifier: GPL-3.0-or-later
#include "qml/models/number_rows.h"

#include <QCoreApplication>
#include <QStringList>
#include <QVariantMap>

#include <algorithm>

#include "analysis/panel/analyte.h"
#include "analysis/panel/uncertainty.h"
#include "qml/models/back_rows.h"
#include "station/wording/unit_words.h"

namespace brimline {
namespace {

QString q(const std::string& text) {
  return QString::fromStdString(text);
}

QString say(const char* text) {
  return QCoreApplication::translate("numbers", text);
}

// The method it was read by, as the table of methods has it; null: not told, or not one of the analyte's.
const MethodKind* method_of(const AnalyteKind& kind, const Reading& reading) {
  if (!reading.method) return nullptr;
  const auto found = std::find_if(kind.methods.begin(), kind.methods.end(),
                                  [&](const MethodKind& m) { return m.method == *reading.method; });
  return found == kind.methods.end() ? nullptr : &*found;
}

QString origin_of(const AnalyteKind& kind, const Reading& reading) {
  QStringList parts;
  if (reading.sd)
    parts.append(say(QT_TRANSLATE_NOOP("numbers", "the error came with the reading")));
  else if (const MethodKind* method = method_of(kind, reading))
    parts.append(method_words(kind, *method));
  else
    parts.append(say(QT_TRANSLATE_NOOP("numbers", "how it was read is not told: the error is the widest")));
  if (reading.instrument) parts.append(q(*reading.instrument));
  if (reading.lot) parts.append(say(QT_TRANSLATE_NOOP("numbers", "lot %1")).arg(q(*reading.lot)));
  if (reading.dilution != 1)
    parts.append(say(QT_TRANSLATE_NOOP("numbers", "diluted %1 times, which widens the error"))
                     .arg(QString::number(reading.dilution, 'g', 4)));
  if (reading.clipped)
    parts.append(say(QT_TRANSLATE_NOOP("numbers", "at the end of the method’s range: no dose hangs on it")));
  if (reading.repeat_of) parts.append(say(QT_TRANSLATE_NOOP("numbers", "a repeat")));
  return parts.join("; ");
}

}  // namespace

QVariantList number_rows(const Counter& counter) {
  QVariantList out;
  if (!counter.open()) return out;
  const Words& words = counter.words();
  for (const Reading& reading : counter.visit().bottle.readings) {
    const AnalyteKind* kind = find_analyte(reading.analyte);
    if (!kind) continue;
    const double sd = reading_sd(reading, *kind);
    const int decimals = decimals_for(sd);
    const std::string number = words.number(reading.value, decimals) + " ± " + words.number(sd, decimals);
    out.append(QVariantMap{{"name", QCoreApplication::translate("analyte", kind->name.c_str())},
                           {"number", (q(number) + " " + q(unit_words(words, *kind))).trimmed()},
                           {"detail", origin_of(*kind, reading)}});
  }
  return out;
}

}  // namespace brimline
