// SPDX-License-Identifier: GPL-3.0-or-later
// The records cannot be read: the newest sound backup is offered, or to begin with none. What is there is set
// aside either way, never written over.
#pragma once

#include <qqmlintegration.h>
#include <QObject>

namespace brimline {

class RescueDesk : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("the kiosk has it")
  Q_PROPERTY(QString why MEMBER why CONSTANT)
  Q_PROPERTY(QString backupLine MEMBER backup_line CONSTANT)  // empty: there is no sound one

 public:
  explicit RescueDesk(QObject* parent = nullptr) : QObject(parent) {}
  Q_INVOKABLE void bringBack() { emit chosen(backup); }
  Q_INVOKABLE void beginEmpty() { emit chosen(QString()); }

  QString why, backup_line, backup;

 signals:
  void chosen(const QString& backup);
};

}  // namespace brimline
