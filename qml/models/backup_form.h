// SPDX-License-Identifier: GPL-3.0-or-later
// Backups in the Back room: where they go, making one now, looking into one and bringing it back.
#pragma once

#include <QObject>

#include "qml/models/back_form.h"
#include "qml/models/back_pool.h"
#include "qml/models/counter.h"
#include "qml/models/settings.h"

namespace brimline {

class BackupForm : public QObject, public BackForm {
  Q_OBJECT

 public:
  BackupForm(Counter& counter, Settings& settings, QObject* parent = nullptr);
  ~BackupForm() override;

  QList<QVariantMap> fields() override;
  QList<QVariantMap> rows() override;
  bool set(const QString& key, const QString& text) override;
  QString act() override;
  QString act_word() const override;
  void shown() override { chosen_.clear(); }

  // Makes today's, where none is made yet and none is being made.
  void make_if_due();
  QString folder() const;  // of the settings, else beside the records

 signals:
  void said(const QString& sentence);
  void restoring(
      const QString& file);  // the counter is to close its records, bring the backup back, and open again

 private:
  void make();

  Counter& counter_;
  Settings& settings_;
  QString chosen_;  // a backup to be looked into; empty: none
  bool busy_ = false;
  BackPool pool_;
};

}  // namespace brimline
