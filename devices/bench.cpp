// SPDX-License-Identifier: GPL-3.0-or-later
#include "devices/bench.h"

#include "devices/serial_wire.h"

namespace brimline {

Bench::Bench(std::function<Instant()> now, QObject* parent) : QObject(parent), now_(std::move(now)) {}

Instrument& Bench::add(Profile profile, std::unique_ptr<Wire> wire) {
  instruments_.push_back(std::make_unique<Instrument>(std::move(profile), std::move(wire), now_));
  Instrument& instrument = *instruments_.back();
  connect(&instrument, &Instrument::happened, this, &Bench::happened);
  return instrument;
}

Instrument& Bench::listen(Profile profile, const QString& port) {
  auto wire = std::make_unique<SerialWire>(port, profile.serial);
  return listen(std::move(profile), std::move(wire));
}

Instrument& Bench::listen(Profile profile, std::unique_ptr<Wire> wire) {
  Instrument& instrument = add(std::move(profile), std::move(wire));
  instrument.start();
  return instrument;
}

Instrument& Bench::listen(Profile profile, std::unique_ptr<Wire> wire, WireRecorder recorder) {
  Instrument& instrument = add(std::move(profile), std::move(wire));
  instrument.record(std::move(recorder));
  instrument.start();
  return instrument;
}

void Bench::stop(Instrument& instrument) {
  std::erase_if(instruments_, [&](const auto& one) { return one.get() == &instrument; });
}

}  // namespace brimline
