// SPDX-License-Identifier: GPL-3.0-or-later
#include "qml/models/product_form.h"

#include <QCoreApplication>
#include <QVariantList>

#include "qml/models/choices.h"
#include "qml/models/form_field.h"
#include "qml/models/typed_number.h"
#include "station/wording/fault_words.h"

namespace brimline {
namespace {

QString q(const std::string& text) {
  return QString::fromStdString(text);
}
QString say(const char* text) {
  return QCoreApplication::translate("products", text);
}

QVariantMap choice(const QString& key, const QString& word) {
  return {{"key", key}, {"word", word}};
}

QVariantList yes_no() {
  return {choice("yes", say(QT_TRANSLATE_NOOP("products", "Yes"))),
          choice("no", say(QT_TRANSLATE_NOOP("products", "No")))};
}

QVariantList strengths() {
  return {choice("weight", say(QT_TRANSLATE_NOOP("products", "Percent by weight"))),
          choice("trade", say(QT_TRANSLATE_NOOP("products", "Trade percent of chlorine"))),
          choice("available_chlorine", say(QT_TRANSLATE_NOOP("products", "Percent available chlorine")))};
}

QString substance_words(const Substance& substance) {
  return QCoreApplication::translate("substance", substance.name.c_str());
}

QVariantList chemicals() {
  QVariantList out;
  for (const Substance& substance : substances())
    if (substance.id != "copper_sulfate") out.append(choice(q(substance.id), substance_words(substance)));
  return by_word(out);
}

QString number(double value) {
  return QString::number(value, 'g', 8);
}

QString list(const std::vector<double>& values) {
  QStringList out;
  for (const double value : values) out.append(number(value));
  return out.join(QStringLiteral("; "));
}

Shelf shelf_of(const std::string& folder) {
  return shop_shelf(folder).value_or(built_in_shelf());
}

const char* name_of(Strength strength) {
  return strength == Strength::trade                ? "trade"
         : strength == Strength::available_chlorine ? "available_chlorine"
                                                    : "weight";
}

QVariantMap blank_form() {
  return {{"product_strength", "weight"},
          {"product_liquid", "no"},
          {"product_tablets", "no"},
          {"product_there", "yes"}};
}

}  // namespace

void ProductForm::show(const Product& p) {
  QStringList cautions;
  for (const std::string& line : p.cautions) cautions.append(q(line));
  form_ = {{"product", q(p.id)},
           {"product_name", q(p.name)},
           {"product_chemical", q(p.substance)},
           {"product_percent", number(p.assay.percent)},
           {"product_strength", QString::fromLatin1(name_of(p.assay.strength))},
           {"product_liquid", p.liquid ? "yes" : "no"},
           {"product_tablets", p.tablets ? "yes" : "no"},
           {"product_density", p.density ? number(*p.density) : QString()},
           {"product_label_dose", p.label_dose ? number(*p.label_dose) : QString()},
           {"product_price", number(p.price)},
           {"product_packs", list(p.packs)},
           {"product_barcode", q(p.barcode.value_or(""))},
           {"product_cautions", cautions.join(QStringLiteral("; "))},
           {"product_source", q(p.source)},
           {"product_there", "yes"}};
}

QList<QVariantMap> ProductForm::fields() const {
  QVariantList products{choice("", say(QT_TRANSLATE_NOOP("products", "A new one")))};
  for (const Product& product : shelf_of(folder_).products)
    products.append(choice(q(product.id), QCoreApplication::translate("product", product.name.c_str())));
  const auto field = [&](const char* key, const char* label, QVariantList options = {}) {
    return form_field(key, say(label), form_.value(QString::fromLatin1(key)).toString(), std::move(options));
  };
  return {field("product", QT_TRANSLATE_NOOP("products", "Which product"), by_word(products, 1)),
          field("product_name", QT_TRANSLATE_NOOP("products", "Name, as on the shelf")),
          field("product_barcode", QT_TRANSLATE_NOOP("products", "Barcode; it may be scanned")),
          field("product_chemical", QT_TRANSLATE_NOOP("products", "What it holds"), chemicals()),
          field("product_percent", QT_TRANSLATE_NOOP("products", "Percent on the label")),
          field("product_density", QT_TRANSLATE_NOOP("products", "Density, kg/L; empty: from its strength")),
          field("product_strength", QT_TRANSLATE_NOOP("products", "The percent means"), strengths()),
          field("product_liquid", QT_TRANSLATE_NOOP("products", "It is poured, not weighed"), yes_no()),
          field("product_tablets", QT_TRANSLATE_NOOP("products", "It is tablets, given whole"), yes_no()),
          field("product_price", QT_TRANSLATE_NOOP("products", "Price of a litre or kilogram")),
          field("product_packs", QT_TRANSLATE_NOOP("products", "Packs, L or kg, with ; between")),
          field("product_label_dose", QT_TRANSLATE_NOOP("products", "Label’s dose, mL or g a m³")),
          field("product_cautions", QT_TRANSLATE_NOOP("products", "Label’s own cautions, with ; between")),
          field("product_there", QT_TRANSLATE_NOOP("products", "On the shelf"), yes_no())};
}

QList<QVariantMap> ProductForm::rows() const {
  QList<QVariantMap> out;
  for (const Product& product : shelf_of(folder_).products) {
    const Substance* of = find_substance(product.substance);
    QStringList parts{of ? substance_words(*of) : q(product.substance)};
    if (!product.packs.empty()) parts.append(list(product.packs) + (product.liquid ? " L" : " kg"));
    if (product.barcode) parts.append(q(*product.barcode));
    out.append({{"name", QCoreApplication::translate("product", product.name.c_str())},
                {"detail", parts.join(QStringLiteral(", "))},
                {"number", say(QT_TRANSLATE_NOOP("products", "%1 %")).arg(number(product.assay.percent))}});
  }
  return out;
}

bool ProductForm::set(const QString& key, const QString& text) {
  if (key == QLatin1String("product")) {
    const Shelf shelf = shelf_of(folder_);
    if (const Product* product = shelf.find(text.toStdString()))
      show(*product);
    else
      form_ = blank_form();
    return true;
  }
  form_[key] = text;
  return key == QLatin1String("product_chemical") || key == QLatin1String("product_strength") ||
         key == QLatin1String("product_liquid") || key == QLatin1String("product_tablets") ||
         key == QLatin1String("product_there");
}

bool ProductForm::show_barcode(const QString& code) {
  for (const Product& product : shelf_of(folder_).products)
    if (product.barcode && q(*product.barcode) == code.trimmed()) {
      show(product);
      return true;
    }
  return false;
}

QString ProductForm::keep(const Words& words) {
  const auto text = [&](const char* key) {
    return form_.value(QString::fromLatin1(key)).toString().trimmed();
  };
  Product p;
  p.id = text("product").toStdString();
  p.name = text("product_name").toStdString();
  if (text("product_there") == QLatin1String("no")) {
    const auto removed = remove_product(folder_, p.id);
    if (!removed)
      return say(QT_TRANSLATE_NOOP("products", "Not kept: %1"))
          .arg(q(fault_words(words, removed.error().front())));
    form_ = blank_form();
    return say(QT_TRANSLATE_NOOP("products", "%1 is off the shelf: no plan names it.")).arg(q(p.name));
  }
  if (p.name.empty()) return say(QT_TRANSLATE_NOOP("products", "Not kept: the product’s name is missing."));
  p.substance = text("product_chemical").toStdString();
  if (p.substance.empty()) return say(QT_TRANSLATE_NOOP("products", "Not kept: say what it holds."));
  if (p.id.empty()) p.id = new_product_id(shelf_of(folder_), p.name);
  bool sound = true;
  p.assay.percent = typed_number(text("product_percent"), sound).value_or(100);
  p.density = typed_number(text("product_density"), sound);
  p.label_dose = typed_number(text("product_label_dose"), sound);
  const auto price = typed_number(text("product_price"), sound);
  for (const QString& pack : text("product_packs").split(';', Qt::SkipEmptyParts))
    if (const auto size = typed_number(pack, sound)) p.packs.push_back(*size);
  if (!sound || !price)
    return say(QT_TRANSLATE_NOOP(
        "products", "Not kept: percent, density, price and packs are numbers; a price is needed."));
  p.price = *price;
  const QString strength = text("product_strength");
  p.assay.strength = strength == QLatin1String("trade")                ? Strength::trade
                     : strength == QLatin1String("available_chlorine") ? Strength::available_chlorine
                                                                       : Strength::weight;
  p.liquid = text("product_liquid") == QLatin1String("yes");
  p.tablets = text("product_tablets") == QLatin1String("yes");
  if (!text("product_barcode").isEmpty()) p.barcode = text("product_barcode").toStdString();
  for (const QString& line : text("product_cautions").split(';', Qt::SkipEmptyParts))
    p.cautions.push_back(line.trimmed().toStdString());
  p.source = text("product_source").isEmpty() ? "the product's label" : text("product_source").toStdString();
  if (const auto kept = keep_product(folder_, p); !kept)
    return say(QT_TRANSLATE_NOOP("products", "Not kept: %1"))
        .arg(q(fault_words(words, kept.error().front())));
  show(p);
  return say(QT_TRANSLATE_NOOP("products", "%1 is kept. The next plan knows it.")).arg(q(p.name));
}

}  // namespace brimline
