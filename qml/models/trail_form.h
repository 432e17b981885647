// SPDX-License-Identifier: GPL-3.0-or-later
// The audit trail in the Back room: who changed what, the newest first.
#pragma once

#include "qml/models/back_form.h"
#include "qml/models/counter.h"

namespace brimline {

class TrailForm : public BackForm {
 public:
  explicit TrailForm(Counter& counter) : counter_(counter) {}
  QList<QVariantMap> fields() override { return {}; }
  QList<QVariantMap> rows() override;
  bool set(const QString&, const QString&) override { return false; }
  QString act() override;  // on to the older ones
  QString act_word() const override;
  void shown() override { before_ = 0; }

 private:
  Counter& counter_;
  std::int64_t before_ = 0, oldest_ = 0;  // numbers in the trail
};

}  // namespace brimline
