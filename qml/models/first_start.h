// SPDX-License-Identifier: GPL-3.0-or-later
// What a new counter is asked before its first bottle: the screen, the shop, the instrument, who may change
// all that. Each page is a shelf of the Back room, where all of it can be changed again.
#pragma once

#include <qqmlintegration.h>
#include <QObject>

#include "qml/models/back_desk.h"

namespace brimline {

class FirstStart : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("the desk has it")
  Q_PROPERTY(bool shown READ shown NOTIFY changed)
  Q_PROPERTY(bool last READ last NOTIFY changed)
  Q_PROPERTY(bool first READ first NOTIFY changed)
  Q_PROPERTY(QString title READ title NOTIFY changed)
  Q_PROPERTY(QString progress READ progress NOTIFY changed)

 public:
  explicit FirstStart(BackDesk& back, QObject* parent = nullptr);

  bool shown() const { return step_ >= 0; }
  bool first() const { return step_ == 0; }
  bool last() const;
  QString title() const;
  QString progress() const;

  Q_INVOKABLE void begin();
  Q_INVOKABLE void next();   // keeps the page, or says why it cannot; after the last the counter opens
  Q_INVOKABLE void back();   // nothing of this page is kept
  Q_INVOKABLE void leave();  // what was kept stays; the rest is in the Back room

 signals:
  void changed();

 private:
  void go(int step);

  BackDesk& back_;
  int step_ = -1;
};

}  // namespace brimline
