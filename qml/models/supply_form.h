// SPDX-License-Identifier: GPL-3.0-or-later
// The Back room's forms for reagent lots and instrument checks: what is being written down, until it is kept.
#pragma once

#include <QString>
#include <QVariantMap>

#include "qml/models/counter.h"

namespace brimline {

class SupplyForm {
 public:
  // Whether the shelf is one of ours: "reagents" or "checks".
  static bool is_ours(const QString& shelf);

  // {key, label, value, options}
  QList<QVariantMap> fields(const QString& shelf) const;
  // A lot's number that is known brings what is known of it. True where the fields are to be shown anew.
  bool set(const QString& key, const QString& text, const Counter& counter);
  // What is said once it is kept, or why it is not.
  QString keep(const QString& shelf, Counter& counter);
  QString act_word(const QString& shelf) const;

 private:
  QString keep_lot(Counter& counter);
  QString keep_check(Counter& counter);

  QVariantMap lot_{{"lot_beside", "no"}, {"lot_gone", "no"}};
  QVariantMap check_{{"check_passed", "yes"}};
};

// {name, detail, number}: every lot that is not gone, and what to do about it.
QList<QVariantMap> lot_rows(const Counter& counter);
// The last check of every instrument and channel, and when the next is due.
QList<QVariantMap> check_rows(const Counter& counter);

}  // namespace brimline
