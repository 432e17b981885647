// SPDX-License-Identifier: GPL-3.0-or-later
// The owner's week: shown, printed, written as a table.
#pragma once

#include <QObject>

#include "qml/models/back_form.h"
#include "qml/models/back_paper.h"
#include "qml/models/beside.h"
#include "qml/models/counter.h"
#include "qml/models/settings.h"
#include "station/week/week.h"

namespace brimline {

class WeekForm : public QObject, public BackForm {
  Q_OBJECT

 public:
  // `out_dir`: where tables go.
  WeekForm(Counter& counter, Settings& settings, Services services, QString out_dir,
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
  void moved();  // the counting is further on, or done

 private:
  void count();
  QString print();
  QString write_table() const;

  Counter& counter_;
  BackPaper paper_;
  QString out_dir_;
  QString which_ = QStringLiteral("0"), act_ = QStringLiteral("paper");
  std::optional<OwnersWeek> week_;
  QString unread_;  // why there is no week; empty: it is being counted, or nobody asked
  Beside beside_;
};

}  // namespace brimline
