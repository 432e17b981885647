// SPDX-License-Identifier: GPL-3.0-or-later
// One instrument on one wire: keeps the wire open, feeds its session, tells what happens.
#pragma once

#include <QElapsedTimer>
#include <QObject>
#include <QTimer>

#include <functional>
#include <memory>

#include "devices/happening.h"
#include "devices/session.h"
#include "devices/wire.h"
#include "devices/wire_log.h"

namespace brimline {

class Instrument : public QObject {
  Q_OBJECT

 public:
  // `now` gives the wall clock for what happens; the wire is owned.
  Instrument(Profile profile, std::unique_ptr<Wire> wire, std::function<Instant()> now,
             QObject* parent = nullptr);

  void record(WireRecorder recorder) { recorder_ = std::move(recorder); }
  void start();
  bool is_open() const { return open_; }
  const Profile& profile() const { return profile_; }

 signals:
  void happened(const brimline::Happening& happening);
  void finished();  // a played recording is at its end

 private:
  void try_open();
  void on_received(const QByteArray& bytes);
  void on_lost();
  void on_wake();
  void tell(Said said);
  void tell_one(std::variant<InstrumentReading, Trouble, BackAgain> what);
  void log(WireEvent event, std::string_view bytes = {});
  void schedule();
  Millis elapsed() const { return Millis(elapsed_.elapsed()); }

  Profile profile_;
  std::unique_ptr<Wire> wire_;
  std::function<Instant()> now_;
  Session session_;
  std::optional<WireRecorder> recorder_;
  QElapsedTimer elapsed_;
  QTimer wake_, retry_;
  bool open_ = false;
  std::optional<OpenFault> told_fault_;  // of the wait that goes on; nothing: none was told
  bool lost_ = false;                    // the port was open, or awaited, and is not there
};

}  // namespace brimline
