// SPDX-License-Identifier: GPL-3.0-or-later
#include "qml/models/back_rows.h"

#include <QCoreApplication>

#include "analysis/findings/targets.h"
#include "analysis/panel/analyte.h"
#include "analysis/panel/names.h"
#include "devices/profile.h"
#include "qml/models/choices.h"
#include "qml/models/form_field.h"
#include "station/wording/fault_words.h"

namespace brimline {
namespace {

QString q(std::string_view text) {
  return QString::fromUtf8(text.data(), static_cast<int>(text.size()));
}
QString say(const char* text) {
  return QCoreApplication::translate("back", text);
}

// As few digits as tell the number.
QString plain(double value) {
  return QString::number(value, 'g', 6);
}

QString range_words(double low, double high, const QString& unit) {
  return say(QT_TRANSLATE_NOOP("back", "%1 to %2 %3")).arg(plain(low), plain(high), unit).trimmed();
}

// Where a number comes from, as its tag says (analysis/panel/analyte.h).
QString origin_words(const Origin& origin) {
  if (origin.tag == "W") return say(QT_TRANSLATE_NOOP("back", "common practice, no source"));
  if (origin.tag == "M") return say(QT_TRANSLATE_NOOP("back", "from memory"));
  if (origin.tag == "C") return say(QT_TRANSLATE_NOOP("back", "computed"));
  return q(origin.source);
}

QVariantList profile_choices(const QString& folder) {
  QVariantList out;
  for (const Profile& profile : all_profiles(folder.toStdString()))
    out.append(QVariantMap{{"key", q(profile.key())}, {"word", q(profile.name)}});
  return out;
}

}  // namespace

QString method_words(const AnalyteKind& kind, const MethodKind& method) {
  const QString spread =
      method.sd_proportional > 0
          ? say(QT_TRANSLATE_NOOP("back", "%1, spread %2 %3 and %4 %"))
                .arg(word_for("method", q(name_of(method.method))), plain(method.sd_constant),
                     unit_on_screen(kind), plain(100 * method.sd_proportional))
          : say(QT_TRANSLATE_NOOP("back", "%1, spread %2 %3"))
                .arg(word_for("method", q(name_of(method.method))), plain(method.sd_constant),
                     unit_on_screen(kind));
  return spread.simplified() + QStringLiteral("; ") + origin_words(method.origin);
}

QList<QVariantMap> instrument_fields(const Settings& settings, int line, const QString& folder) {
  QVariantList lines;
  for (int i = 0; i < kMostInstruments; ++i) {
    const QString number = QString::number(i + 1);
    const QString& port = settings.lines[i].port;
    lines.append(QVariantMap{{"key", number},
                             {"word", port.isEmpty() ? say(QT_TRANSLATE_NOOP("back", "%1: none")).arg(number)
                                                     : number + ": " + port}});
  }
  const InstrumentLine& shown = settings.lines[line];
  return {form_field("line", say(QT_TRANSLATE_NOOP("back", "Which instrument")), QString::number(line + 1),
                     lines),
          form_field("port", say(QT_TRANSLATE_NOOP("back", "Port")), shown.port, {}),
          form_field("profile", say(QT_TRANSLATE_NOOP("back", "Profile")), shown.profile,
                     profile_choices(folder))};
}

QVariantList code_choices() {
  QVariantList out{QVariantMap{{"key", QString()}, {"word", say(QT_TRANSLATE_NOOP("back", "None"))}}};
  for (const TargetSet& set : target_sets())
    if (set.id != "household") out.append(QVariantMap{{"key", q(set.id)}, {"word", q(set.name)}});
  return out;
}

QList<QVariantMap> instrument_rows(const QString& profile_id, const QString& folder, const Words& words) {
  QList<QVariantMap> rows;
  // A draft that is not finished, or a file with a slip: where, and what was expected.
  for (const Fault& fault : profiles_in(folder.toStdString()).faults)
    rows.append({{"name", say(QT_TRANSLATE_NOOP("back", "Not used"))},
                 {"detail", q(fault_words(words, fault))},
                 {"number", QString()}});
  const auto profile = load_profile(profile_id.toStdString());
  if (!profile) return rows;
  for (const MethodRow& method : profile->methods) {
    const AnalyteKind* kind = find_analyte(method.analyte);
    rows.append(
        {{"name", kind ? QCoreApplication::translate("analyte", kind->name.c_str()) : q(method.analyte)},
         {"detail", say(QT_TRANSLATE_NOOP("back", "method %1")).arg(q(method.code))},
         {"number", range_words(method.low, method.high, q(method.unit))}});
  }
  return rows;
}

QList<QVariantMap> method_rows() {
  QList<QVariantMap> rows;
  for (const AnalyteKind& kind : analyte_kinds())
    for (const MethodKind& method : kind.methods)
      rows.append({{"name", QCoreApplication::translate("analyte", kind.name.c_str())},
                   {"detail", method_words(kind, method)},
                   {"number", range_words(method.range.low, method.range.high, unit_on_screen(kind))}});
  return rows;
}

}  // namespace brimline
