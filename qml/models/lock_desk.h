// SPDX-License-Identifier: GPL-3.0-or-later
// Who is at the counter. With no staff written down the counter is open to all; with staff it opens to a PIN,
// and closes when nobody has touched it for a while. Readings come in all the same.
#pragma once

#include <qqmlintegration.h>
#include <QObject>
#include <QTimer>
#include <QVariantList>

#include "qml/models/back_pool.h"
#include "qml/models/counter.h"
#include "qml/models/settings.h"

namespace brimline {

class LockDesk : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("the desk has it")
  Q_PROPERTY(bool locked READ locked NOTIFY changed)
  Q_PROPERTY(bool staffed READ staffed NOTIFY changed)
  Q_PROPERTY(QString who READ who NOTIFY changed)             // empty: nobody has said
  Q_PROPERTY(QVariantList people READ people NOTIFY changed)  // {key, word}
  Q_PROPERTY(QString chosen READ chosen NOTIFY changed)
  Q_PROPERTY(int typed READ typed NOTIFY changed)  // digits so far
  Q_PROPERTY(QString says READ says NOTIFY changed)
  Q_PROPERTY(bool busy READ busy NOTIFY changed)

 public:
  LockDesk(Counter& counter, const Settings& settings, QObject* parent = nullptr);
  ~LockDesk() override;

  bool locked() const { return locked_; }
  bool staffed() const { return !people_.isEmpty(); }
  QString who() const;
  bool keeper() const;  // may change what the shop is set to
  QVariantList people() const { return people_; }
  QString chosen() const { return chosen_; }
  int typed() const { return static_cast<int>(pin_.size()); }
  QString says() const { return says_; }
  bool busy() const { return busy_; }

  Q_INVOKABLE void choose(const QString& id);
  Q_INVOKABLE void press(const QString& key);  // a digit, or "back"
  Q_INVOKABLE void enter();
  Q_INVOKABLE void lock();
  void refresh();  // staff, or the minutes of rest, may have changed

  // Whatever is touched or typed counts as somebody being there.
  bool eventFilter(QObject* watched, QEvent* event) override;

 signals:
  void changed();

 private:
  void tried(const std::string& id, bool right);
  void say(const QString& sentence);
  void rest();

  Counter& counter_;
  const Settings& settings_;
  std::vector<StaffMember> staff_;
  QVariantList people_;
  std::optional<StaffMember> here_;
  QString chosen_, pin_, says_;
  bool locked_ = false, busy_ = false, known_ = false;
  QTimer idle_;
  BackPool pool_;
};

}  // namespace brimline
