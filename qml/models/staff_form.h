// SPDX-License-Identifier: GPL-3.0-or-later
// The Back room's form for staff: a name, what they may, a PIN.
#pragma once

#include <QObject>

#include "qml/models/back_form.h"
#include "qml/models/back_pool.h"
#include "qml/models/lock_desk.h"

namespace brimline {

class StaffForm : public QObject, public BackForm {
  Q_OBJECT

 public:
  StaffForm(Counter& counter, LockDesk& lock, QObject* parent = nullptr);
  ~StaffForm() override;

  QList<QVariantMap> fields() override;
  QList<QVariantMap> rows() override;
  bool set(const QString& key, const QString& text) override;
  QString act() override;
  QString act_word() const override;
  bool blank() const;  // no name and no PIN is written

 signals:
  void said(const QString& sentence);
  void kept();  // once the PIN has been hashed

 private:
  void keep(StaffMember member, const std::optional<std::string>& hash);

  Counter& counter_;
  LockDesk& lock_;
  QVariantMap form_;
  BackPool pool_;
};

}  // namespace brimline
