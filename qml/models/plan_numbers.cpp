// SPDX-License-Identifier: GPL-3.0-or-later
#include "qml/models/plan_numbers.h"

#include <QCoreApplication>
#include <QStringList>
#include <QVariantMap>

#include <cmath>
#include <set>

#include "printing/readings_table.h"
#include "qml/models/facts.h"
#include "qml/models/sheet_rows.h"
#include "station/compare/volume_words.h"
#include "station/wording/sheet_words.h"

namespace brimline {
namespace {

QString q(const std::string& text) {
  return QString::fromStdString(text);
}
QString say(const char* text) {
  return QCoreApplication::translate("numbers", text);
}
QVariantMap row(const QString& name, const QString& number, const QString& detail) {
  return {{"name", name}, {"number", number}, {"detail", detail}};
}

QString volume_of(const Words& words, const Visit& visit) {
  const Vessel& vessel = visit.vessel;
  if (!vessel.volume) return {};
  constexpr double kUnsaid =
      0.1;  // of the volume, where nobody said how well it is known: for its digits only
  const double m3 = vessel.volume->cubic_metres();
  return q(volume_words(words, m3, m3 * vessel.volume_relative_sd.value_or(kUnsaid), units_of(visit)));
}

// What the dose is of, in moles, and for which water.
QString dose_detail(const Words& words, const Visit& visit, const Step& step) {
  QStringList parts;
  if (step.active_mol && *step.active_mol > 0) {
    const int decimals = std::max(0, 2 - static_cast<int>(std::floor(std::log10(*step.active_mol))));
    parts.append(say(QT_TRANSLATE_NOOP("numbers", "%1 mol by the strength on the label"))
                     .arg(q(words.number(*step.active_mol, decimals))));
  }
  if (const QString volume = volume_of(words, visit); !volume.isEmpty())
    parts.append(
        say(QT_TRANSLATE_NOOP("numbers", "worked out for %1 by the model of this water")).arg(volume));
  if (step.portions > 1) parts.append(say(QT_TRANSLATE_NOOP("numbers", "%1 portions")).arg(step.portions));
  return parts.join("; ");
}

// Of what the step is for: from what stood before it to what it leaves.
QVariantList changes_of(const Words& words, const Plan& plan, const Step& step, const After* before,
                        const Visit& visit) {
  QVariantList out;
  const std::set<AnalyteId> of_interest = analytes_of(step, plan);
  for (const auto& [analyte, value] : step.after->readings) {
    if (!of_interest.contains(analyte)) continue;
    std::optional<double> from;
    if (before) {
      if (const auto found = before->readings.find(analyte); found != before->readings.end())
        from = found->second;
    } else {
      for (const Reading& reading : visit.bottle.readings)
        if (reading.analyte == analyte) from = reading.value;
    }
    const QString to = q(value_words(words, analyte, value, true));
    out.append(row(QString(), q(analyte_name(words, analyte)),
                   from ? say(QT_TRANSLATE_NOOP("numbers", "from %1 to %2 once it has mixed"))
                              .arg(q(value_words(words, analyte, *from, false)), to)
                        : say(QT_TRANSLATE_NOOP("numbers", "%1 once it has mixed")).arg(to)));
  }
  return out;
}

}  // namespace

QVariantList plan_number_rows(const Words& words, const Visit& visit, const Plan& plan) {
  QVariantList out;
  const After* before = nullptr;
  for (const Step& step : plan.steps) {
    const QString name = say(QT_TRANSLATE_NOOP("numbers", "Step %1")).arg(step.order);
    if (step.amount) out.append(row(name, q(portion_words(words, step)), dose_detail(words, visit, step)));
    if (step.fraction)
      out.append(
          row(name, QString::number(std::lround(*step.fraction * 100)) + QStringLiteral(" %"),
              say(QT_TRANSLATE_NOOP(
                  "numbers", "of the water replaced; what is dissolved in it goes by the same share"))));
    if (!step.after) continue;
    if (step.amount || step.fraction) out.append(changes_of(words, plan, step, before, visit));
    before = &*step.after;
  }
  for (const auto& [analyte, predicted] : plan.predicted) {
    QString number = q(value_words(words, analyte, predicted.value, false));
    if (predicted.sd) {
      const int decimals = *predicted.sd < 0.095 ? 2 : *predicted.sd < 0.95 ? 1 : 0;
      number = q(words.number(predicted.value, decimals) + " ± " + words.number(*predicted.sd, decimals));
    }
    out.append(row(q(analyte_name(words, analyte)), number,
                   say(QT_TRANSLATE_NOOP("numbers",
                                         "at the plan’s end; ± from the errors of the readings and of "
                                         "the volume"))));
  }
  if (plan.proof)
    out.append(row(say(QT_TRANSLATE_NOOP("numbers", "Inside every target")),
                   QString::number(std::lround(plan.proof->in_target * 100)) + QStringLiteral(" %"),
                   say(QT_TRANSLATE_NOOP("numbers",
                                         "of %1 times that the plan was worked through, each with other "
                                         "errors of the readings and the volume"))
                       .arg(plan.proof->draws)));
  return out;
}

}  // namespace brimline
