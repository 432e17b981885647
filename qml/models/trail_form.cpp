// SPDX-License-Identifier: GPL-3.0-or-later
#include "qml/models/trail_form.h"

#include <QCoreApplication>

#include "analysis/panel/analyte.h"
#include "qml/models/clock_face.h"

namespace brimline {
namespace {

constexpr int kAtOnce = 60;

QString q(const std::string& text) {
  return QString::fromStdString(text);
}
QString say(const char* text) {
  return QCoreApplication::translate("trail", text);
}

// What was changed: a reading by its name, anything else by what it is called in the records.
QString subject_words(const AuditNote& note) {
  const AnalyteKind* kind = note.field ? find_analyte(*note.field) : nullptr;
  const QString field = kind
                            ? QCoreApplication::translate("analyte", kind->name.c_str())
                            : q(note.field.value_or("")).replace('_', ' ').replace('/', QStringLiteral(", "));
  return note.what == "reading" && kind ? field : q(note.what) + (field.isEmpty() ? QString() : ": " + field);
}

QString change_words(const AuditNote& note) {
  QString out;
  if (note.before && note.after)
    out = say(QT_TRANSLATE_NOOP("trail", "%1, before: %2")).arg(q(*note.after), q(*note.before));
  else if (note.after)
    out = q(*note.after);
  else if (note.before)
    out = say(QT_TRANSLATE_NOOP("trail", "taken out; before: %1")).arg(q(*note.before));
  if (note.reason && !note.reason->empty())
    out += (out.isEmpty() ? QString() : QStringLiteral("; ")) + q(*note.reason);
  return out + (out.isEmpty() ? QString() : QStringLiteral("  ")) +
         QStringLiteral("(%1)").arg(q(note.subject));
}

}  // namespace

QList<QVariantMap> TrailForm::rows() {
  QList<QVariantMap> out;
  oldest_ = 0;
  for (const AuditRow& row : counter_.records().audit_trail(kAtOnce, before_)) {
    out.append(
        {{"name", subject_words(row.note)},
         {"detail", change_words(row.note)},
         {"number", QStringLiteral("%1, %2").arg(q(row.by.who), when_words(counter_.now(), row.by.at))}});
    oldest_ = row.number;
  }
  return out;
}

QString TrailForm::act_word() const {
  return oldest_ > 1 ? say(QT_TRANSLATE_NOOP("trail", "Older"))
                     : say(QT_TRANSLATE_NOOP("trail", "The newest"));
}

QString TrailForm::act() {
  before_ = oldest_ > 1 ? oldest_ : 0;
  return {};
}

}  // namespace brimline
