// SPDX-License-Identifier: GPL-3.0-or-later
// A wire: bytes in, bytes out, opened and lost. A serial port, or a recorded log played again.
#pragma once

#include <QByteArray>
#include <QObject>
#include <QString>

#include <optional>

namespace brimline {

enum class OpenFault {
  absent,
  busy,
  refused
};  // not there; another program has it; no right, no serial line

class Wire : public QObject {
  Q_OBJECT

 public:
  using QObject::QObject;
  // Nothing when open. To be called again after a fault or a loss.
  [[nodiscard]] virtual std::optional<OpenFault> open() = 0;
  virtual void close() = 0;
  virtual void send(const QByteArray& bytes) = 0;

 signals:
  void received(const QByteArray& bytes);
  void lost();      // the port is gone; it is closed already
  void finished();  // a recording is at its end; a serial port never is
};

}  // namespace brimline
