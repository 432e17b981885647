// SPDX-License-Identifier: GPL-3.0-or-later
#include "qml/models/facts.h"

#include <QCoreApplication>

#include <algorithm>
#include <functional>

#include "analysis/panel/names.h"
#include "qml/models/typed_measure.h"
#include "qml/models/typed_number.h"

namespace brimline {
namespace {

QString text_of(std::string_view text) {
  return QString::fromUtf8(text.data(), static_cast<int>(text.size()));
}
QString say(const char* text) {
  return QCoreApplication::translate("facts", text);
}

struct FactRow {
  const char* fact;
  std::function<QVariant(const Visit&, Units)> get;  // invalid: not known
  std::function<std::optional<QString>(Visit&, const QString&, Units)> set;
};

// A fact that is one word of an enumeration of the contract.
template <class E, class Member>
FactRow word_fact(const char* fact, Member member) {
  return {fact,
          [member](const Visit& visit, Units) -> QVariant {
            const std::optional<E>& value = member(visit);
            return value ? QVariant(text_of(name_of(*value))) : QVariant();
          },
          [member](Visit& visit, const QString& key, Units) -> std::optional<QString> {
            std::optional<E>& value = member(visit);
            const std::optional<E> chosen = named<E>(key.toStdString());
            if (!chosen) return say(QT_TRANSLATE_NOOP("facts", "This word is not known."));
            value = value == chosen ? std::nullopt : chosen;
            return std::nullopt;
          }};
}

// A typed quantity; `to` and `from` convert to and from the customer's unit.
template <class Q, class Member>
FactRow typed_fact(const char* fact, Member member, double low, double high, Q (*from)(double, Units),
                   double (*to)(Q, Units), int decimals) {
  return {fact,
          [=](const Visit& visit, Units usual) -> QVariant {
            const std::optional<Q>& value = member(visit);
            if (!value) return {};
            QString text = QString::number(to(*value, units_of(visit, usual)), 'f', decimals);
            if (text.contains('.')) {
              while (text.endsWith('0')) text.chop(1);
              if (text.endsWith('.')) text.chop(1);
            }
            return with_own_mark(text);
          },
          [=](Visit& visit, const QString& text, Units usual) -> std::optional<QString> {
            bool sound = true;
            const Units units = units_of(visit, usual);
            const std::optional<double> number =
                typed_number(units == Units::us ? without_thousands(text) : text, sound);
            std::optional<Q> next;
            if (sound && number) next = from(*number, units);
            const auto end = [&](double base) {
              return with_own_mark(QString::number(to(Q::of(base), units), 'g', 4));
            };
            if (!sound || (next && (next->base() < low || next->base() > high)))
              return say(QT_TRANSLATE_NOOP("facts",
                                           "“%1” cannot be right here; expected a number from %2 to %3."))
                  .arg(text, end(low), end(high));
            member(visit) = next;
            return std::nullopt;
          }};
}

Volume volume_from(double number, Units units) {
  return units == Units::us ? Volume::us_gallons(number) : Volume::cubic_metres(number);
}
double volume_to(Volume v, Units units) {
  return units == Units::us ? v.us_gallons() : v.cubic_metres();
}
Temperature temperature_from(double number, Units units) {
  return units == Units::us ? Temperature::fahrenheit(number) : Temperature::celsius(number);
}
double temperature_to(Temperature t, Units units) {
  return units == Units::us ? t.fahrenheit() : t.celsius();
}

FactRow flag_fact() {
  return {"in_ground",
          [](const Visit& visit, Units) -> QVariant {
            if (!visit.vessel.in_ground) return {};
            return *visit.vessel.in_ground ? QStringLiteral("yes") : QStringLiteral("no");
          },
          [](Visit& visit, const QString& key, Units) -> std::optional<QString> {
            const bool chosen = key == QLatin1String("yes");
            std::optional<bool>& value = visit.vessel.in_ground;
            value = value == chosen ? std::nullopt : std::optional<bool>(chosen);
            return std::nullopt;
          }};
}

FactRow signs_fact() {
  return {"signs",
          [](const Visit& visit, Units) -> QVariant {
            QVariantList keys;
            for (Sign sign : visit.bottle.signs) keys.append(text_of(name_of(sign)));
            return keys;
          },
          [](Visit& visit, const QString& key, Units) -> std::optional<QString> {
            const std::optional<Sign> sign = named<Sign>(key.toStdString());
            if (!sign) return say(QT_TRANSLATE_NOOP("facts", "This word is not known."));
            auto& signs = visit.bottle.signs;
            const auto found = std::find(signs.begin(), signs.end(), *sign);
            if (found == signs.end())
              signs.push_back(*sign);
            else
              signs.erase(found);
            return std::nullopt;
          }};
}

FactRow volume_sd_fact() {
  return {"volume_how",
          [](const Visit& visit, Units) -> QVariant {
            const auto& sd = visit.vessel.volume_relative_sd;
            return sd ? QVariant(QString::number(*sd)) : QVariant();
          },
          [](Visit& visit, const QString& key, Units) -> std::optional<QString> {
            visit.vessel.volume_relative_sd = key.toDouble();
            return std::nullopt;
          }};
}

const std::vector<FactRow>& rows() {
  static const std::vector<FactRow> all = {
      word_fact<VesselKind>(
          "kind", [](auto& v) -> auto& { return v.vessel.kind; }),
      word_fact<VesselUse>(
          "use", [](auto& v) -> auto& { return v.vessel.use; }),
      word_fact<Sanitizer>(
          "sanitizer", [](auto& v) -> auto& { return v.vessel.sanitizer; }),
      word_fact<Surface>(
          "surface", [](auto& v) -> auto& { return v.vessel.surface; }),
      word_fact<Place>(
          "place", [](auto& v) -> auto& { return v.vessel.place; }),
      word_fact<SampledAt>(
          "sampled_at", [](auto& v) -> auto& { return v.bottle.sampled_at; }),
      word_fact<Occasion>(
          "occasion", [](auto& v) -> auto& { return v.bottle.occasion; }),
      word_fact<Incident>(
          "incident", [](auto& v) -> auto& { return v.bottle.incident; }),
      flag_fact(),
      signs_fact(),
      volume_sd_fact(),
      typed_fact<Volume>(
          "volume", [](auto& v) -> auto& { return v.vessel.volume; }, 0.05, 5000, volume_from, volume_to, 1),
      typed_fact<Temperature>(
          "water_temperature", [](auto& v) -> auto& { return v.vessel.water_temperature; }, -2, 60,
          temperature_from, temperature_to, 1),
      typed_fact<Temperature>(
          "sample_temperature", [](auto& v) -> auto& { return v.bottle.sample_temperature; }, 0, 60,
          temperature_from, temperature_to, 1),
  };
  return all;
}

}  // namespace

Units units_of(const Visit& visit, Units usual) {
  return visit.customer ? visit.customer->units.value_or(usual) : usual;
}

QVariantMap facts_of(const Visit& visit, Units usual) {
  QVariantMap out;
  for (const FactRow& row : rows())
    if (const QVariant value = row.get(visit, usual); value.isValid()) out.insert(row.fact, value);
  if (!visit.vessel.id.empty()) out.insert("vessel", QString::fromStdString(visit.vessel.id));
  return out;
}

std::optional<QString> set_fact(Visit& visit, const QString& fact, const QString& text, Units usual) {
  for (const FactRow& row : rows())
    if (fact == QLatin1String(row.fact)) return row.set(visit, text, usual);
  return say(QT_TRANSLATE_NOOP("facts", "This fact is not known."));
}

QString typed_question(const Visit& visit, const QString& fact, Units usual) {
  const bool us = units_of(visit, usual) == Units::us;
  if (fact == QLatin1String("volume"))
    return us ? say(QT_TRANSLATE_NOOP("facts", "Volume, US gallons"))
              : say(QT_TRANSLATE_NOOP("facts", "Volume, m³"));
  if (fact == QLatin1String("water_temperature"))
    return us ? say(QT_TRANSLATE_NOOP("facts", "Its water, °F"))
              : say(QT_TRANSLATE_NOOP("facts", "Its water, °C"));
  if (fact == QLatin1String("sample_temperature"))
    return us ? say(QT_TRANSLATE_NOOP("facts", "The bottle when read, °F"))
              : say(QT_TRANSLATE_NOOP("facts", "The bottle when read, °C"));
  return {};
}

}  // namespace brimline
