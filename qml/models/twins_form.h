// SPDX-License-Identifier: GPL-3.0-or-later
// All cards that look alike: looked through beside the screen, then joined or told apart one pair after
// another.
#pragma once

#include <QObject>
#include <QThreadPool>

#include <atomic>

#include "qml/models/back_form.h"
#include "qml/models/counter.h"

namespace brimline {

class TwinsForm : public QObject, public BackForm {
  Q_OBJECT

 public:
  explicit TwinsForm(Counter& counter, QObject* parent = nullptr);
  ~TwinsForm() override;

  QList<QVariantMap> fields() override;
  QList<QVariantMap> rows() override;
  bool set(const QString& key, const QString& text) override;
  QString act() override;
  QString act_word() const override;
  void shown() override;

 signals:
  void said(const QString& sentence);

 private:
  QString look();
  QString settle();

  Counter& counter_;
  std::vector<LookAlike> found_;
  bool looked_ = false, busy_ = false;
  QString act_ = QStringLiteral("first");
  std::string gone_;  // joined last, and it can be taken apart
  std::atomic<bool> stop_ = false;
  QThreadPool pool_;  // one thread
};

}  // namespace brimline
