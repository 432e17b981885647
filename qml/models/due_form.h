// SPDX-License-Identifier: GPL-3.0-or-later
// Whose water is due for a test: the list, a letter to one of them, an entry for their calendar.
#pragma once

#include <QObject>

#include "qml/models/back_form.h"
#include "qml/models/back_paper.h"
#include "qml/models/beside.h"
#include "qml/models/counter.h"
#include "qml/models/settings.h"
#include "station/reminder/due.h"

namespace brimline {

class DueForm : public QObject, public BackForm {
  Q_OBJECT

 public:
  // `out_dir`: where calendar files go.
  DueForm(Counter& counter, Settings& settings, Services services, QString out_dir,
          QObject* parent = nullptr);

  QList<QVariantMap> fields() override;
  QList<QVariantMap> rows() override;
  bool set(const QString& key, const QString& text) override;
  QString act() override;
  QString act_word() const override;
  void shown() override;
  void left() override;
  bool reads() const override { return beside_.busy(); }

 signals:
  void said(const QString& sentence);
  void moved();  // the list is there

 private:
  const DueVisit* chosen() const;
  void look();
  QString print(const DueVisit& due);
  QString write_entry(const DueVisit& due) const;

  Counter& counter_;
  Settings& settings_;
  BackPaper paper_;
  QString out_dir_;
  QString span_ = QStringLiteral("overdue"), one_, act_ = QStringLiteral("letter");
  std::vector<DueVisit> due_;
  bool unread_ = false;  // the records could not be read
  Beside beside_;
};

}  // namespace brimline
