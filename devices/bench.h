// SPDX-License-Identifier: GPL-3.0-or-later
// The bench of instruments: each listened to on its own line, all telling in one place.
//
//   Bench bench([] { return machine_now(); });
//   connect(&bench, &Bench::happened, ...);
//   bench.listen(*load_profile("bench_lines"), "/dev/ttyUSB0");
#pragma once

#include <QObject>
#include <QString>

#include <functional>
#include <memory>
#include <vector>

#include "devices/instrument.h"

namespace brimline {

class Bench : public QObject {
  Q_OBJECT

 public:
  explicit Bench(std::function<Instant()> now, QObject* parent = nullptr);

  // Listens at once and for good: a line that is lost is looked for until stop().
  Instrument& listen(Profile profile, const QString& port);
  // The same over any wire, a recording for example.
  Instrument& listen(Profile profile, std::unique_ptr<Wire> wire);
  // The same, every byte recorded.
  Instrument& listen(Profile profile, std::unique_ptr<Wire> wire, WireRecorder recorder);
  void stop(Instrument& instrument);
  const std::vector<std::unique_ptr<Instrument>>& instruments() const { return instruments_; }

 signals:
  void happened(const brimline::Happening& happening);

 private:
  Instrument& add(Profile profile, std::unique_ptr<Wire> wire);

  std::function<Instant()> now_;
  std::vector<std::unique_ptr<Instrument>> instruments_;
};

}  // namespace brimline
