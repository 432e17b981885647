// SPDX-License-Identifier: GPL-3.0-or-later
// The Back room's form for the shelf: one product at a time, as its label says it, until it is kept.
#pragma once

#include <QString>
#include <QVariantMap>

#include <string>

#include "station/shelf/shop_shelf.h"
#include "station/wording/words.h"

namespace brimline {

class ProductForm {
 public:
  // `folder`: of the shop's own product files.
  explicit ProductForm(std::string folder) : folder_(std::move(folder)) {}

  QList<QVariantMap> fields() const;  // {key, label, value, options}
  QList<QVariantMap> rows() const;    // {name, detail, number}: what is on the shelf
  // True where the fields are to be shown anew: another product was chosen, or a choice was made.
  bool set(const QString& key, const QString& text);
  // A product whose barcode was scanned; false: none has it.
  bool show_barcode(const QString& code);
  // Shows what stands in the file now.
  void again() { set("product", form_.value("product").toString()); }
  // What is said once it is kept, or why it is not.
  QString keep(const Words& words);

 private:
  void show(const Product& product);

  std::string folder_;
  QVariantMap form_{{"product_strength", "weight"}, {"product_liquid", "no"}, {"product_there", "yes"}};
};

}  // namespace brimline
