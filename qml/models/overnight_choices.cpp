// SPDX-License-Identifier: GPL-3.0-or-later
#include "qml/models/overnight_choices.h"

#include <QCoreApplication>

#include "qml/models/choices.h"
#include "station/shelf/shelf.h"
#include "station/wording/overnight_words.h"

namespace brimline {
namespace {

constexpr double kSamples[] = {100, 150, 200, 250};  // mL
constexpr int kDilutions[] = {1, 5, 10, 20};
constexpr double kWarmths[] = {18, 20, 22, 24, 26};  // degrees Celsius
constexpr double kTrades[] = {50, 100, 125, 150};    // g/L Cl2: 5, 10, 12.5 and 15 % trade

QString say(const char* text) {
  return QCoreApplication::translate("overnight", text);
}

QVariantMap option(const QString& key, const QString& word) {
  return {{"key", key}, {"word", word}};
}

QString key_of(double value) {
  return QString::number(value);
}

// Liquid chlorine of the shelf by its trade percent, and any other strength a label may say.
QVariantList bleach_options() {
  QVariantList out;
  for (const double grams : kTrades)
    out.append(option(key_of(grams), say(QT_TRANSLATE_NOOP("overnight", "%1 % trade")).arg(grams / 10)));
  return out;
}

std::string product_of(double grams) {
  for (const Product& product : built_in_shelf().products)
    if (product.substance == "sodium_hypochlorite" && product.assay.strength == Strength::trade &&
        product.assay.percent * 10 == grams)
      return product.id;
  return {};
}

}  // namespace

QVariantList overnight_options(const Words& words, const QString& fact) {
  QVariantList out;
  if (fact == QLatin1String("reach"))
    for (const auto& row : names<DemandReach>())
      out.append(option(QString::fromUtf8(row.name.data(), static_cast<int>(row.name.size())),
                        QString::fromStdString(reach_words(words, row.value))));
  if (fact == QLatin1String("sample_ml"))
    for (const double ml : kSamples)
      out.append(option(key_of(ml), say(QT_TRANSLATE_NOOP("overnight", "%1 mL")).arg(ml)));
  if (fact == QLatin1String("warmth"))
    for (const double celsius : kWarmths)
      out.append(option(key_of(celsius), say(QT_TRANSLATE_NOOP("overnight", "%1 °C")).arg(celsius)));
  if (fact == QLatin1String("dilution"))
    for (const int parts : kDilutions)
      out.append(option(key_of(parts), parts == 1 ? say(QT_TRANSLATE_NOOP("overnight", "Undiluted"))
                                                  : QStringLiteral("1 + %1").arg(parts - 1)));
  if (fact == QLatin1String("bleach")) return bleach_options();
  if (fact == QLatin1String("clip")) return choices_for(fact);
  return out;
}

QVariantMap overnight_choices(const OvernightTest& test) {
  QVariantMap out{{"reach", QString::fromStdString(std::string(name_of(test.reach)))},
                  {"sample_ml", key_of(test.sample_ml)}};
  if (test.bleach) out["bleach"] = key_of(test.bleach->available_g_l);
  if (test.temperature) out["warmth"] = key_of(test.temperature->celsius());
  return out;
}

void set_overnight_choice(OvernightTest& test, const QString& fact, const QString& key) {
  if (fact == QLatin1String("reach") && !test.started_at)
    if (const auto reach = named<DemandReach>(key.toStdString())) test.reach = *reach;
  bool sound = false;
  const double number = key.toDouble(&sound);
  if (!sound) return;
  if (fact == QLatin1String("sample_ml") && !test.started_at) test.sample_ml = number;
  if (fact == QLatin1String("bleach") && !test.started_at) {
    test.bleach = Bleach{product_of(number), number};
    test.check_mg_l.reset();  // another stock is to be checked anew
  }
  if (fact == QLatin1String("warmth")) test.temperature = Temperature::celsius(number);
}

}  // namespace brimline
