// SPDX-License-Identifier: GPL-3.0-or-later
// The Back room's form for targets: one row of the shop's own copy at a time, until it is kept.
#pragma once

#include <QString>
#include <QVariantMap>

#include <string>

#include "station/wording/words.h"

namespace brimline {

class TargetForm {
 public:
  // `file`: of the shop's own copy (station/plan/shop_targets.h).
  explicit TargetForm(std::string file) : file_(std::move(file)) {}

  QList<QVariantMap> fields() const;  // {key, label, value, options}
  QList<QVariantMap> rows() const;    // {name, detail, number}: every target, and who says so
  // True where the fields are to be shown anew.
  bool set(const QString& key, const QString& text);
  // Shows what stands in the file now.
  void again() { set("target_row", form_.value("target_row").toString()); }
  // What is said once it is kept, or why it is not.
  QString keep(const Words& words);

 private:
  void show(size_t row);

  std::string file_;
  QVariantMap form_;
};

}  // namespace brimline
