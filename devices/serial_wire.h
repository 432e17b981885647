// SPDX-License-Identifier: GPL-3.0-or-later
// A wire that is a serial port, or a pseudo-terminal.
#pragma once

#include <QSerialPort>

#include "devices/profile.h"
#include "devices/wire.h"

namespace brimline {

class SerialWire : public Wire {
  Q_OBJECT

 public:
  // `path`: a device ("/dev/ttyUSB0", "COM3") or any path that leads to one; followed anew at each open.
  SerialWire(const QString& path, const SerialSettings& settings, QObject* parent = nullptr);

  std::optional<OpenFault> open() override;
  void close() override;
  void send(const QByteArray& bytes) override;

 private:
  void on_error(QSerialPort::SerialPortError error);

  QString path_;
  QSerialPort port_;
};

}  // namespace brimline
