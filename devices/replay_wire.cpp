// SPDX-License-Identifier: GPL-3.0-or-later
#include "devices/replay_wire.h"

#include <cmath>

namespace brimline {

ReplayWire::ReplayWire(std::vector<WireEntry> entries, double pace, QObject* parent)
    : Wire(parent), entries_(std::move(entries)), pace_(pace) {
  timer_.setSingleShot(true);
  connect(&timer_, &QTimer::timeout, this, &ReplayWire::play);
}

std::optional<OpenFault> ReplayWire::open() {
  if (absent_) return OpenFault::absent;
  open_ = true;
  if (!timer_.isActive()) schedule();
  return std::nullopt;
}

void ReplayWire::close() {
  open_ = false;
}

void ReplayWire::send(const QByteArray&) {}

void ReplayWire::schedule() {
  if (next_ == entries_.size()) {
    emit finished();
    return;
  }
  const Millis wait = entries_[next_].at - now_;
  timer_.start(static_cast<int>(std::lround(static_cast<double>(wait.count()) / pace_)));
}

void ReplayWire::play() {
  const WireEntry entry = entries_[next_++];
  now_ = entry.at;
  if (entry.event == WireEvent::opened) absent_ = false;
  if (entry.event == WireEvent::in && open_) emit received(QByteArray::fromStdString(entry.bytes));
  if (entry.event == WireEvent::closed) {
    absent_ = true;
    if (std::exchange(open_, false)) emit lost();
  }
  schedule();
}

}  // namespace brimline
