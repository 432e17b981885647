// SPDX-License-Identifier: GPL-3.0-or-later
#include "qml/models/supply_form.h"

#include <QCoreApplication>
#include <QDate>
#include <QVariantList>

#include "analysis/panel/analyte.h"
#include "qml/models/choices.h"
#include "qml/models/clock_face.h"

namespace brimline {
namespace {

QString q(const std::string& text) {
  return QString::fromStdString(text);
}
QString say(const char* text) {
  return QCoreApplication::translate("supplies", text);
}

QVariantList yes_no() {
  return {QVariantMap{{"key", "yes"}, {"word", say(QT_TRANSLATE_NOOP("supplies", "Yes"))}},
          QVariantMap{{"key", "no"}, {"word", say(QT_TRANSLATE_NOOP("supplies", "No"))}}};
}

// What a photometer reads, by the reading's name.
QVariantList analytes(bool whole) {
  QVariantList out;
  if (whole)
    out.append(
        QVariantMap{{"key", ""}, {"word", say(QT_TRANSLATE_NOOP("supplies", "The whole instrument"))}});
  for (const AnalyteKind& kind : analyte_kinds())
    if (kind.method(Method::photometer))
      out.append(QVariantMap{{"key", q(kind.id)},
                             {"word", QCoreApplication::translate("analyte", kind.name.c_str())}});
  return by_word(out, whole ? 1 : 0);
}

QString name_of_analyte(const std::optional<AnalyteId>& id) {
  const AnalyteKind* kind = id ? find_analyte(*id) : nullptr;
  return kind ? QCoreApplication::translate("analyte", kind->name.c_str())
              : say(QT_TRANSLATE_NOOP("supplies", "The whole instrument"));
}

// "2027-03-31", or "2027-03" for the end of that month; the last second of the day.
std::optional<Instant> end_of_day(const QString& text, std::chrono::minutes offset) {
  QDate day = QDate::fromString(text.trimmed(), "yyyy-MM-dd");
  if (!day.isValid()) {
    const QDate month = QDate::fromString(text.trimmed() + "-01", "yyyy-MM-dd");
    if (month.isValid()) day = QDate(month.year(), month.month(), month.daysInMonth());
  }
  if (!day.isValid()) return std::nullopt;
  const qint64 seconds = QDateTime(day, QTime(23, 59, 59), Qt::UTC).toSecsSinceEpoch();
  return Instant{std::chrono::sys_seconds(std::chrono::seconds(seconds)) - offset, offset};
}

QString day_text(const std::optional<Instant>& at) {
  return at ? q(at->text().substr(0, 10)) : QString();
}

double days_since(const Instant& then, const Instant& now) {
  return hours_between(then, now) / 24;
}

QString standing_of(const ReagentLot& lot, const Supplies& supplies, const Instant& now) {
  if (lot.expires && hours_between(*lot.expires, now) > 0)
    return say(QT_TRANSLATE_NOOP("supplies", "expired: throw it away"));
  if (lot.opened && days_since(*lot.opened, now) > supplies.good_once_opened_days)
    return say(QT_TRANSLATE_NOOP("supplies", "opened last season: replace it"));
  if (lot.beside_chlorine) return say(QT_TRANSLATE_NOOP("supplies", "stood beside chlorine: replace it"));
  if (lot.warmest_c && *lot.warmest_c > supplies.warm_c)
    return say(QT_TRANSLATE_NOOP("supplies", "kept warm: replace it"));
  if (!lot.opened) return say(QT_TRANSLATE_NOOP("supplies", "closed"));
  const bool used = lot.analyte && lot_in_use(supplies, *lot.analyte) == &lot;
  return used ? say(QT_TRANSLATE_NOOP("supplies", "in use")) : say(QT_TRANSLATE_NOOP("supplies", "open"));
}

QVariantMap field(const char* key, const char* label, const QVariantMap& from, QVariantList options = {}) {
  return {{"key", QString::fromLatin1(key)},
          {"label", say(label)},
          {"value", from.value(QString::fromLatin1(key)).toString()},
          {"options", std::move(options)}};
}

}  // namespace

bool SupplyForm::is_ours(const QString& shelf) {
  return shelf == QLatin1String("reagents") || shelf == QLatin1String("checks");
}

QString SupplyForm::act_word(const QString& shelf) const {
  return shelf == QLatin1String("reagents") ? say(QT_TRANSLATE_NOOP("supplies", "Keep this lot"))
                                            : say(QT_TRANSLATE_NOOP("supplies", "Keep this check"));
}

QList<QVariantMap> SupplyForm::fields(const QString& shelf) const {
  if (shelf == QLatin1String("reagents"))
    return {
        field("lot", QT_TRANSLATE_NOOP("supplies", "Number of the lot"), lot_),
        field("lot_analyte", QT_TRANSLATE_NOOP("supplies", "It reads"), lot_, analytes(false)),
        field("lot_expires", QT_TRANSLATE_NOOP("supplies", "Good until: year-month-day"), lot_),
        field("lot_opened", QT_TRANSLATE_NOOP("supplies", "Opened: year-month-day; empty while closed"),
              lot_),
        field("lot_tests", QT_TRANSLATE_NOOP("supplies", "Tests in its pack; empty where not known"), lot_),
        field("lot_warmest", QT_TRANSLATE_NOOP("supplies", "Warmest it was kept at, °C"), lot_),
        field("lot_beside", QT_TRANSLATE_NOOP("supplies", "It stood beside chlorine"), lot_, yes_no()),
        field("lot_gone", QT_TRANSLATE_NOOP("supplies", "Used up or thrown away"), lot_, yes_no())};
  return {
      field("check_instrument", QT_TRANSLATE_NOOP("supplies", "Instrument, as its readings name it"), check_),
      field("check_analyte", QT_TRANSLATE_NOOP("supplies", "Checked"), check_, analytes(true)),
      field("check_passed", QT_TRANSLATE_NOOP("supplies", "It read its standards right"), check_, yes_no())};
}

bool SupplyForm::set(const QString& key, const QString& text, const Counter& counter) {
  QVariantMap& form = key.startsWith("check") ? check_ : lot_;
  form[key] = text;
  if (key != QLatin1String("lot"))
    return !key.startsWith("lot_e") && !key.startsWith("lot_o") && !key.startsWith("lot_w") &&
           key != QLatin1String("lot_tests") && key != QLatin1String("check_instrument");
  for (const ReagentLot& lot : counter.supplies().lots) {
    if (q(lot.lot) != text.trimmed()) continue;
    lot_ = {{"lot", q(lot.lot)},
            {"lot_analyte", q(lot.analyte.value_or(""))},
            {"lot_expires", day_text(lot.expires)},
            {"lot_opened", day_text(lot.opened)},
            {"lot_warmest", lot.warmest_c ? QString::number(*lot.warmest_c) : QString()},
            {"lot_tests", lot.tests ? QString::number(*lot.tests) : QString()},
            {"lot_beside", lot.beside_chlorine ? "yes" : "no"},
            {"lot_gone", lot.gone ? "yes" : "no"}};
    return true;
  }
  return false;
}

QString SupplyForm::keep(const QString& shelf, Counter& counter) {
  return shelf == QLatin1String("reagents") ? keep_lot(counter) : keep_check(counter);
}

QString SupplyForm::keep_lot(Counter& counter) {
  ReagentLot lot;
  lot.lot = lot_.value("lot").toString().trimmed().toStdString();
  if (lot.lot.empty()) return say(QT_TRANSLATE_NOOP("supplies", "Not kept: the lot's number is missing."));
  const std::string analyte = lot_.value("lot_analyte").toString().toStdString();
  if (analyte.empty()) return say(QT_TRANSLATE_NOOP("supplies", "Not kept: say which reading it is for."));
  lot.analyte = analyte;
  const auto offset = counter.now().offset;
  for (const auto& [key, into] :
       {std::pair{"lot_expires", &ReagentLot::expires}, std::pair{"lot_opened", &ReagentLot::opened}}) {
    const QString text = lot_.value(key).toString().trimmed();
    lot.*into = end_of_day(text, offset);
    if (!text.isEmpty() && !(lot.*into))
      return say(QT_TRANSLATE_NOOP("supplies", "Not kept: “%1” is not a day; expected 2027-03-31."))
          .arg(text);
  }
  const QString warmest = lot_.value("lot_warmest").toString().trimmed().replace(',', '.');
  bool sound = true;
  if (!warmest.isEmpty()) lot.warmest_c = warmest.toDouble(&sound);
  if (!sound) return say(QT_TRANSLATE_NOOP("supplies", "Not kept: “%1” is not a temperature.")).arg(warmest);
  if (const QString tests = lot_.value("lot_tests").toString().trimmed(); !tests.isEmpty()) {
    lot.tests = tests.toInt(&sound);
    if (!sound || *lot.tests < 1)
      return say(QT_TRANSLATE_NOOP("supplies", "Not kept: “%1” is not a number of tests.")).arg(tests);
  }
  lot.beside_chlorine = lot_.value("lot_beside") == QLatin1String("yes");
  lot.gone = lot_.value("lot_gone") == QLatin1String("yes");
  if (const auto kept = counter.keep_lot(lot); !kept)
    return say(QT_TRANSLATE_NOOP("supplies", "Not kept: %1")).arg(q(kept.error()));
  lot_ = {{"lot_beside", "no"}, {"lot_gone", "no"}};
  return say(QT_TRANSLATE_NOOP("supplies", "Lot %1 is kept. Store it cool, dry and away from chlorine."))
      .arg(q(lot.lot));
}

QString SupplyForm::keep_check(Counter& counter) {
  InstrumentCheck check;
  check.instrument = check_.value("check_instrument").toString().trimmed().toStdString();
  if (check.instrument.empty())
    return say(QT_TRANSLATE_NOOP("supplies", "Not kept: name the instrument, as its readings do."));
  const std::string analyte = check_.value("check_analyte").toString().toStdString();
  if (!analyte.empty()) check.analyte = analyte;
  check.at = counter.now();
  check.passed = check_.value("check_passed") == QLatin1String("yes");
  if (const auto kept = counter.add_check(check); !kept)
    return say(QT_TRANSLATE_NOOP("supplies", "Not kept: %1")).arg(q(kept.error()));
  check_["check_passed"] = "yes";
  return check.passed
             ? say(QT_TRANSLATE_NOOP("supplies", "The check of %1 is kept.")).arg(q(check.instrument))
             : say(QT_TRANSLATE_NOOP(
                       "supplies",
                       "The failed check of %1 is kept: what it reads counts for nothing until a "
                       "later check is right."))
                   .arg(q(check.instrument));
}

QList<QVariantMap> lot_rows(const Counter& counter) {
  const Supplies& supplies = counter.supplies();
  QList<QVariantMap> rows;
  for (const ReagentLot& lot : supplies.lots) {
    if (lot.gone) continue;
    QStringList parts;
    if (lot.opened) parts.append(say(QT_TRANSLATE_NOOP("supplies", "opened %1")).arg(day_text(lot.opened)));
    if (lot.expires)
      parts.append(say(QT_TRANSLATE_NOOP("supplies", "good until %1")).arg(day_text(lot.expires)));
    rows.append({{"name", q(lot.lot)},
                 {"detail", (QStringList{lot.analyte ? name_of_analyte(lot.analyte) : QString()} + parts)
                                .join(QStringLiteral(", "))},
                 {"number", standing_of(lot, supplies, counter.now())}});
  }
  return rows;
}

QList<QVariantMap> check_rows(const Counter& counter) {
  QList<QVariantMap> rows;
  for (const InstrumentCheck* check : last_checks(counter.written_supplies())) {
    const bool overdue = days_since(check->at, counter.now()) > counter.written_supplies().check_every_days;
    rows.append({{"name", q(check->instrument)},
                 {"detail", name_of_analyte(check->analyte) + QStringLiteral(", ") +
                                when_words(counter.now(), check->at)},
                 {"number", !check->passed ? say(QT_TRANSLATE_NOOP("supplies", "failed: not believed"))
                            : overdue      ? say(QT_TRANSLATE_NOOP("supplies", "a check is due"))
                                           : say(QT_TRANSLATE_NOOP("supplies", "right"))}});
  }
  return rows;
}

}  // namespace brimline
