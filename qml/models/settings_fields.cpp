// SPDX-License-Identifier: GPL-3.0-or-later
#include "qml/models/settings_fields.h"

#include <QCoreApplication>

#include "qml/models/back_rows.h"
#include "qml/models/choices.h"
#include "qml/models/form_field.h"

namespace brimline {
namespace {

struct FieldRow {
  const char* shelf;
  const char* key;
  const char* label;
  QString (*get)(const Settings&);
  void (*set)(Settings&, const QString&);
};

QString q(const std::optional<std::string>& text) {
  return text ? QString::fromStdString(*text) : QString();
}

std::optional<std::string> opt(const QString& text) {
  if (text.trimmed().isEmpty()) return std::nullopt;
  return text.trimmed().toStdString();
}

QString number_of(const Settings& s, const char* label) {
  for (const EmergencyNumber& entry : s.shop.emergency)
    if (entry.label == label) return QString::fromStdString(entry.number);
  return {};
}

// Emergency first, then the poison line; an empty number is none.
void set_number(Settings& s, const char* label, const QString& number) {
  std::erase_if(s.shop.emergency, [&](const EmergencyNumber& entry) { return entry.label == label; });
  if (number.trimmed().isEmpty()) return;
  const EmergencyNumber entry{label, number.trimmed().toStdString()};
  auto& list = s.shop.emergency;
  list.insert(std::string_view(label) == "Emergency" ? list.begin() : list.end(), entry);
}

const FieldRow kFields[] = {
    {"shop", "name", QT_TRANSLATE_NOOP("back", "Name"),
     [](const Settings& s) { return QString::fromStdString(s.shop.name); },
     [](Settings& s, const QString& t) { s.shop.name = t.trimmed().toStdString(); }},
    {"shop", "street", QT_TRANSLATE_NOOP("back", "Street"),
     [](const Settings& s) { return q(s.shop.street); },
     [](Settings& s, const QString& t) { s.shop.street = opt(t); }},
    {"shop", "phone", QT_TRANSLATE_NOOP("back", "Phone"), [](const Settings& s) { return q(s.shop.phone); },
     [](Settings& s, const QString& t) { s.shop.phone = opt(t); }},
    {"shop", "emergency", QT_TRANSLATE_NOOP("back", "Emergency number here"),
     [](const Settings& s) { return number_of(s, "Emergency"); },
     [](Settings& s, const QString& t) { set_number(s, "Emergency", t); }},
    {"shop", "poison", QT_TRANSLATE_NOOP("back", "Poison line"),
     [](const Settings& s) { return number_of(s, "Poison line"); },
     [](Settings& s, const QString& t) { set_number(s, "Poison line", t); }},
    {"screen", "language", QT_TRANSLATE_NOOP("back", "Language of this screen"),
     [](const Settings& s) { return s.language; }, [](Settings& s, const QString& t) { s.language = t; }},
    {"screen", "theme", QT_TRANSLATE_NOOP("back", "Colours"), [](const Settings& s) { return s.theme; },
     [](Settings& s, const QString& t) { s.theme = t; }},
    {"screen", "motion", QT_TRANSLATE_NOOP("back", "Motion"),
     [](const Settings& s) { return s.motion ? QStringLiteral("on") : QStringLiteral("off"); },
     [](Settings& s, const QString& t) { s.motion = t == QLatin1String("on"); }},
    {"screen", "sounds", QT_TRANSLATE_NOOP("back", "Sounds"),
     [](const Settings& s) { return s.sounds ? QStringLiteral("on") : QStringLiteral("off"); },
     [](Settings& s, const QString& t) { s.sounds = t == QLatin1String("on"); }},
    {"screen", "hide_names", QT_TRANSLATE_NOOP("back", "Customers on Arrivals"),
     [](const Settings& s) { return s.hide_names ? QStringLiteral("on") : QStringLiteral("off"); },
     [](Settings& s, const QString& t) { s.hide_names = t == QLatin1String("on"); }},
    {"screen", "idle_minutes", QT_TRANSLATE_NOOP("back", "A PIN is asked for again after"),
     [](const Settings& s) { return QString::number(s.idle_minutes); },
     [](Settings& s, const QString& t) { s.idle_minutes = t.toInt(); }},
    {"shop", "units", QT_TRANSLATE_NOOP("back", "A new customer measures in"),
     [](const Settings& s) { return s.units; }, [](Settings& s, const QString& t) { s.units = t; }},
    {"shop", "paper", QT_TRANSLATE_NOOP("back", "Paper"), [](const Settings& s) { return s.paper; },
     [](Settings& s, const QString& t) { s.paper = t; }},
    {"shop", "printer", QT_TRANSLATE_NOOP("back", "Printer’s queue; empty for the usual one"),
     [](const Settings& s) { return s.printer; },
     [](Settings& s, const QString& t) { s.printer = t.trimmed(); }},
    {"shop", "code", QT_TRANSLATE_NOOP("back", "Code for public water"),
     [](const Settings& s) { return s.code; }, [](Settings& s, const QString& t) { s.code = t; }},
};

QVariantList options_of(const FieldRow& field) {
  const QLatin1String key(field.key);
  if (key == QLatin1String("code")) return code_choices();
  return choices_for(key);
}

}  // namespace

QList<QVariantMap> settings_fields(const QString& shelf, const Settings& settings) {
  QList<QVariantMap> out;
  for (const FieldRow& field : kFields)
    if (shelf == QLatin1String(field.shelf))
      out.append(form_field(field.key, QCoreApplication::translate("back", field.label), field.get(settings),
                            options_of(field)));
  return out;
}

bool set_field(const QString& key, const QString& text, Settings& settings) {
  for (const FieldRow& field : kFields) {
    if (key != QLatin1String(field.key)) continue;
    field.set(settings, text);
    return !options_of(field).isEmpty();
  }
  return false;
}

}  // namespace brimline
