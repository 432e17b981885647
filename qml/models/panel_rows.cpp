// SPDX-License-Identifier: GPL-3.0-or-later
#include "qml/models/panel_rows.h"

#include <QCoreApplication>
#include <QSet>

#include <algorithm>
#include <span>

#include "analysis/panel/analyte.h"
#include "analysis/panel/check.h"
#include "analysis/panel/due.h"
#include "analysis/panel/names.h"
#include "qml/models/choices.h"
#include "station/wording/statement_words.h"
#include "station/wording/unit_words.h"

namespace brimline {
namespace {

QString q(std::string_view text) {
  return QString::fromUtf8(text.data(), static_cast<int>(text.size()));
}
QString say(const char* text) {
  return QCoreApplication::translate("panel", text);
}

bool has(const std::vector<AnalyteId>& list, const AnalyteId& id) {
  return std::find(list.begin(), list.end(), id) != list.end();
}

std::vector<Bottle> bottles_of(const std::vector<Visit>& visits) {
  std::vector<Bottle> out;
  out.reserve(visits.size());
  for (const Visit& visit : visits) out.push_back(visit.bottle);
  return out;
}

// The last reading of the analyte: a repeat follows what it repeats.
const Reading* last_reading(const Bottle& bottle, const AnalyteId& id) {
  const Reading* found = nullptr;
  for (const Reading& reading : bottle.readings)
    if (reading.analyte == id) found = &reading;
  return found;
}

// The check that asks most of the clerk about the analyte; null: none fired.
const Check* worst_check(std::span<const Check> checks, const AnalyteId& id) {
  const Check* worst = nullptr;
  for (const Check& check : checks)
    if (has(check.analytes, id) && (!worst || check.verdict > worst->verdict)) worst = &check;
  return worst;
}

QString state_of(const Check* check) {
  if (!check || check->verdict == Verdict::note) return say(QT_TRANSLATE_NOOP("panel", "kept"));
  if (check->verdict == Verdict::repeat) return say(QT_TRANSLATE_NOOP("panel", "kept; read it again"));
  if (check->verdict == Verdict::dilute)
    return say(QT_TRANSLATE_NOOP("panel", "kept; dilute and read again"));
  return say(QT_TRANSLATE_NOOP("panel", "kept; says nothing"));
}

QString value_text(const Words& words, const AnalyteKind& kind, const Reading& reading) {
  QString number = q(words.number(reading.value, kind.decimals));
  if (reading.clipped == Clip::above) return QStringLiteral("> ") + number;
  if (reading.clipped == Clip::below) return QStringLiteral("< ") + number;
  return number;
}

QVariantMap row_of(const Words& words, const AnalyteKind& kind, const Bottle& bottle,
                   std::span<const Check> checks, bool due, bool chosen) {
  const Reading* reading = last_reading(bottle, kind.id);
  const Check* check = reading ? worst_check(checks, kind.id) : nullptr;
  QVariantMap row{{"analyte", q(kind.id)},
                  {"name", q(words.say("analyte", kind.name.c_str()))},
                  {"unit", q(unit_words(words, kind))},
                  {"value", QString()},
                  {"how", QString()},
                  {"note", QString()},
                  {"chosen", chosen},
                  {"waits", due && !reading}};
  row["standing"] = due ? say(QT_TRANSLATE_NOOP("panel", "due")) : say(QT_TRANSLATE_NOOP("panel", "not due"));
  if (!reading) return row;
  row["value"] = value_text(words, kind, *reading);
  if (reading->method) row["how"] = word_for("method", q(name_of(*reading->method)));
  row["standing"] = state_of(check);
  row["waits"] = check && (check->verdict == Verdict::repeat || check->verdict == Verdict::dilute);
  // A unit is not broken at its stroke.
  if (check) row["note"] = q(check_text(words, *check)).replace('/', QStringLiteral("\u2060/\u2060"));
  return row;
}

// A check that names several readings speaks at the first of them.
void tell_once(QList<QVariantMap>& rows) {
  QSet<QString> told;
  for (QVariantMap& row : rows) {
    const QString note = row.value("note").toString();
    if (!note.isEmpty() && told.contains(note)) row["note"] = QString();
    told.insert(note);
  }
}

}  // namespace

std::vector<AnalyteId> due_of(const Counter& counter) {
  return panel_due(counter.visit().bottle, counter.visit().vessel, bottles_of(counter.earlier()));
}

std::vector<AnalyteId> still_due(const Bottle& bottle, const std::vector<AnalyteId>& due) {
  std::vector<AnalyteId> out;
  for (const AnalyteId& id : due)
    if (!last_reading(bottle, id)) out.push_back(id);
  return out;
}

QList<QVariantMap> panel_rows(const Counter& counter, const std::vector<AnalyteId>& due,
                              const AnalyteId& chosen) {
  const Visit& visit = counter.visit();
  const std::vector<Bottle> earlier = bottles_of(counter.earlier());
  const std::vector<Check> checks =
      check_bottle(visit.bottle, visit.vessel, earlier, counter.now(), counter.supplies());
  QList<QVariantMap> rows;
  const auto add = [&](const AnalyteKind& kind, bool is_due) {
    rows.append(row_of(counter.words(), kind, visit.bottle, checks, is_due, kind.id == chosen));
  };
  for (const AnalyteId& id : due)
    if (const AnalyteKind* kind = find_analyte(id)) add(*kind, true);
  for (const AnalyteKind& kind : analyte_kinds())
    if (!has(due, kind.id) && last_reading(visit.bottle, kind.id)) add(kind, false);
  for (const AnalyteKind& kind : analyte_kinds())
    if (!has(due, kind.id) && !last_reading(visit.bottle, kind.id)) add(kind, false);
  tell_once(rows);
  return rows;
}

}  // namespace brimline
