// SPDX-License-Identifier: GPL-3.0-or-later
// What the shop knows of one customer: handed out as a file, or forgotten. And how long people are
// remembered.
#pragma once

#include "qml/models/back_form.h"
#include "qml/models/counter.h"
#include "qml/models/settings.h"

namespace brimline {

class PeopleForm : public BackForm {
 public:
  // `out_dir`: where a customer's file goes.
  PeopleForm(Counter& counter, Settings& settings, QString out_dir)
      : counter_(counter), settings_(settings), out_dir_(std::move(out_dir)) {}
  QList<QVariantMap> fields() override;
  QList<QVariantMap> rows() override;
  bool set(const QString& key, const QString& text) override;
  QString act() override;
  QString act_word() const override;
  void shown() override { form_.clear(); }

 private:
  QString hand_out(const std::string& id);

  Counter& counter_;
  Settings& settings_;
  QString out_dir_;
  QVariantMap form_;
};

}  // namespace brimline
