// SPDX-License-Identifier: GPL-3.0-or-later
// A wire that plays a recorded log again, at the pace it was recorded or as fast as it goes.
#pragma once

#include <QTimer>

#include "devices/wire.h"
#include "devices/wire_log.h"

namespace brimline {

class ReplayWire : public Wire {
  Q_OBJECT

 public:
  // `pace`: 1 as recorded, 2 twice as fast.
  explicit ReplayWire(std::vector<WireEntry> entries, double pace = 1, QObject* parent = nullptr);

  std::optional<OpenFault> open() override;  // absent from a recorded `closed` to the next `opened`
  void close() override;
  void send(const QByteArray& bytes) override;  // goes nowhere: the answers are in the recording

 private:
  void play();
  void schedule();

  std::vector<WireEntry> entries_;
  double pace_;
  size_t next_ = 0;
  bool open_ = false, absent_ = false;
  Millis now_{0};
  QTimer timer_;
};

}  // namespace brimline
