// SPDX-License-Identifier: GPL-3.0-or-later
// All cards that look alike: looked through beside the screen, then joined or told apart one pair after
// another.
#pragma once

#include <QObject>

#include "qml/models/back_form.h"
#include "qml/models/beside.h"
#include "qml/models/counter.h"

namespace brimline {

class TwinsForm : public QObject, public BackForm {
  Q_OBJECT

 public:
  explicit TwinsForm(Counter& counter, QObject* parent = nullptr);

  QList<QVariantMap> fields() override;
  QList<QVariantMap> rows() override;
  bool set(const QString& key, const QString& text) override;
  QString act() override;
  QString act_word() const override;
  void shown() override;
  void left() override;
  bool reads() const override { return beside_.busy(); }

 signals:
  void moved();

 private:
  void look();
  QString settle();

  Counter& counter_;
  std::vector<LookAlike> found_;
  bool looked_ = false;
  QString unread_;  // why nothing could be looked at
  QString act_ = QStringLiteral("first");
  std::string gone_;  // joined last, and it can be taken apart
  Beside beside_;
};

}  // namespace brimline
