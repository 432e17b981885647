// SPDX-License-Identifier: GPL-3.0-or-later
#include "devices/serial_wire.h"

#include <QDir>
#include <QFileInfo>

namespace brimline {
namespace {

QString absolute(const QString& path) {
  if (path.contains('/')) return QDir::cleanPath(QFileInfo(path).absoluteFilePath());
  return QFileInfo::exists(path) ? QFileInfo(path).absoluteFilePath() : path;
}

QSerialPort::Parity parity_of(Parity parity) {
  switch (parity) {
    case Parity::even:
      return QSerialPort::EvenParity;
    case Parity::odd:
      return QSerialPort::OddParity;
    case Parity::none:
      break;
  }
  return QSerialPort::NoParity;
}

}  // namespace

SerialWire::SerialWire(const QString& path, const SerialSettings& settings, QObject* parent)
    : Wire(parent), path_(absolute(path)) {
  // Parity and data bits are set before the port is opened: some drivers ignore them later.
  port_.setBaudRate(settings.baud);
  port_.setDataBits(settings.data_bits == 7 ? QSerialPort::Data7 : QSerialPort::Data8);
  port_.setParity(parity_of(settings.parity));
  port_.setStopBits(settings.stop_bits == 2 ? QSerialPort::TwoStop : QSerialPort::OneStop);
  port_.setFlowControl(QSerialPort::NoFlowControl);
  connect(&port_, &QSerialPort::readyRead, this, [this] { emit received(port_.readAll()); });
  connect(&port_, &QSerialPort::errorOccurred, this, &SerialWire::on_error);
}

std::optional<OpenFault> SerialWire::open() {
  if (path_.contains('/') && !QFileInfo::exists(path_)) return OpenFault::absent;
  port_.setPortName(path_);
  if (port_.open(QIODevice::ReadWrite)) return std::nullopt;
  const auto error = port_.error();
  port_.clearError();
  if (error == QSerialPort::DeviceNotFoundError) return OpenFault::absent;
  return error == QSerialPort::PermissionError ? OpenFault::busy : OpenFault::refused;
}

void SerialWire::close() {
  if (port_.isOpen()) port_.close();
}

void SerialWire::send(const QByteArray& bytes) {
  if (port_.isOpen()) port_.write(bytes);
}

// An unplugged port reports ReadError tens of thousands of times a second until it is closed: the
// first one closes it. While opening, open() tells its own fault.
void SerialWire::on_error(QSerialPort::SerialPortError error) {
  if (error == QSerialPort::NoError || error == QSerialPort::TimeoutError || !port_.isOpen()) return;
  port_.close();
  emit lost();
}

}  // namespace brimline
