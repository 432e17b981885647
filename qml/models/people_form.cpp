// SPDX-License-Identifier: GPL-3.0-or-later
#include "qml/models/people_form.h"

#include <QCoreApplication>
#include <QDir>
#include <QSaveFile>

#include <nlohmann/json.hpp>

#include "qml/models/choices.h"
#include "qml/models/clock_face.h"
#include "qml/models/form_field.h"
#include "station/visit_json.h"

namespace brimline {
namespace {

QString q(const std::string& text) {
  return QString::fromStdString(text);
}
QString say(const char* text) {
  return QCoreApplication::translate("people", text);
}

}  // namespace

QList<QVariantMap> PeopleForm::fields() {
  QVariantList found;
  const QString asked = form_.value("person_search").toString();
  if (!asked.trimmed().isEmpty())
    for (const FoundCustomer& one : counter_.records().customers(asked.toStdString()))
      found.append(
          QVariantMap{{"key", q(one.customer.id)},
                      {"word", q(one.customer.name.value_or(one.customer.id)) +
                                   (one.customer.street ? ", " + q(*one.customer.street) : QString())}});
  const auto field = [&](const char* key, const char* label, QVariantList options = {}) {
    return form_field(key, say(label), form_.value(QString::fromLatin1(key)).toString(), std::move(options));
  };
  QList<QVariantMap> out{
      field("person_search", QT_TRANSLATE_NOOP("people", "A customer: name, phone or street")),
      field("person_reason", QT_TRANSLATE_NOOP("people", "Why, if they are to be forgotten"))};
  if (!found.isEmpty()) out.append(field("person", QT_TRANSLATE_NOOP("people", "Which one"), found));
  if (!form_.value("person").toString().isEmpty())
    out.append(field("person_act", QT_TRANSLATE_NOOP("people", "What is wanted"), choices_for("person_act")));
  out.append(form_field("keep_months", say(QT_TRANSLATE_NOOP("people", "Names and addresses are kept")),
                        QString::number(settings_.keep_months), choices_for("keep_months")));
  return out;
}

QList<QVariantMap> PeopleForm::rows() {
  QList<QVariantMap> out;
  const std::string id = form_.value("person").toString().toStdString();
  if (id.empty()) return out;
  for (const Vessel& vessel : counter_.records().vessels_of(id)) {
    Visit shown;
    shown.vessel = vessel;
    const auto visits = counter_.records().visits_of_vessel(vessel.id);
    out.append({{"name", q(vessel.id)},
                {"detail", visits.empty() || !visits.back().bottle.taken_at
                               ? QString()
                               : say(QT_TRANSLATE_NOOP("people", "last bottle %1"))
                                     .arg(when_words(counter_.now(), *visits.back().bottle.taken_at))},
                {"number", say(QT_TRANSLATE_NOOP("people", "%1 visits")).arg(visits.size())}});
  }
  return out;
}

bool PeopleForm::set(const QString& key, const QString& text) {
  form_[key] = text;
  if (key == QLatin1String("keep_months")) settings_.keep_months = text.toInt();
  if (key == QLatin1String("person")) form_["person_act"] = "hand_out";
  return key != QLatin1String("person_search") && key != QLatin1String("person_reason");
}

QString PeopleForm::act_word() const {
  const QString act = form_.value("person_act").toString();
  if (form_.value("person").toString().isEmpty())
    return form_.value("person_search").toString().isEmpty() ? say(QT_TRANSLATE_NOOP("people", "Keep"))
                                                             : say(QT_TRANSLATE_NOOP("people", "Look"));
  return act == QLatin1String("forget") ? say(QT_TRANSLATE_NOOP("people", "Forget them"))
                                        : say(QT_TRANSLATE_NOOP("people", "Write the file"));
}

// Everything that is stored of them, as JSON: their card, their vessels, their visits.
QString PeopleForm::hand_out(const std::string& id) {
  nlohmann::ordered_json out;
  nlohmann::ordered_json visits = nlohmann::ordered_json::array(), vessels = nlohmann::ordered_json::array();
  for (const Vessel& vessel : counter_.records().vessels_of(id)) {
    vessels.push_back(vessel_to_json(vessel));
    for (const Visit& visit : counter_.records().visits_of_vessel(vessel.id)) {
      if (!visit.customer || visit.customer->id != id) continue;
      out["customer"] = customer_to_json(*visit.customer);
      visits.push_back(visit_to_json(visit));
    }
  }
  out["vessels"] = vessels;
  out["visits"] = visits;
  QDir().mkpath(out_dir_);
  const QString file = QDir(out_dir_).filePath("customer-" + q(id).replace('/', '_') + ".json");
  QSaveFile save(file);
  const std::string text = out.dump(2) + "\n";
  const bool done =
      save.open(QIODevice::WriteOnly) &&
      save.write(text.data(), static_cast<qint64>(text.size())) == static_cast<qint64>(text.size()) &&
      save.commit();
  if (!done)
    return say(QT_TRANSLATE_NOOP("people", "%1 cannot be written: %2")).arg(file, save.errorString());
  QFile::setPermissions(file, QFileDevice::ReadOwner | QFileDevice::WriteOwner);
  return say(QT_TRANSLATE_NOOP("people", "Written: %1")).arg(file);
}

QString PeopleForm::act() {
  const std::string id = form_.value("person").toString().toStdString();
  if (id.empty()) return {};
  if (form_.value("person_act").toString() != QLatin1String("forget")) return hand_out(id);
  const QString reason = form_.value("person_reason").toString().trimmed();
  if (reason.isEmpty())
    return say(QT_TRANSLATE_NOOP("people", "Not done: say why; it stands in the audit trail."));
  const auto done = counter_.records().erase_customer(id, reason.toStdString());
  if (!done) return say(QT_TRANSLATE_NOOP("people", "Not done: %1")).arg(q(done.error()));
  form_.clear();
  return say(QT_TRANSLATE_NOOP(
      "people",
      "Forgotten: name, phone, street and email are gone, the water’s visits stay. Backups made "
      "before still hold them, at most a year."));
}

}  // namespace brimline
