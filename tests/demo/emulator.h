// SPDX-License-Identifier: GPL-3.0-or-later
// The emulated photometer as a program beside a test, with its own account of what it sent.
#pragma once

#include <QCoreApplication>
#include <QElapsedTimer>
#include <QProcess>
#include <QTemporaryDir>
#include <QTimer>

#include <functional>

namespace brimline::demo {

// One application for all the tests of a program.
inline QCoreApplication& application() {
  static int argc = 1;
  static char name[] = "test";
  static char* argv[] = {name, nullptr};
  static QCoreApplication app(argc, argv);
  return app;
}

// Runs the event loop until `is_so`; false when it is not so within four minutes, which is no pass or
// fail by speed but an end to waiting.
inline bool wait_until(const std::function<bool()>& is_so) {
  QElapsedTimer timer;
  timer.start();
  QTimer tick;  // so that waiting for events ends
  tick.start(10);
  while (!is_so()) {
    if (timer.elapsed() > 240000) return false;
    QCoreApplication::processEvents(QEventLoop::WaitForMoreEvents);
  }
  return true;
}

class Emulator {
 public:
  explicit Emulator(const QStringList& more, const QString& profile = "bench_lines",
                    const QString& bottle = "plaster_pool") {
    application();
    QStringList words{"--bottle",  QString(BRIMLINE_SOURCE_DIR "/demo/bottles/%1.toml").arg(bottle),
                      "--profile", profile,
                      "--link",    link()};
    program_.setProcessChannelMode(QProcess::ForwardedErrorChannel);
    QObject::connect(&program_, &QProcess::readyReadStandardOutput, [this] { take_lines(); });
    program_.start(BRIMLINE_BIN_DIR "/brimline-photometer", words + more);
    wait_until([this] { return said("ready " + link()); });
  }
  ~Emulator() {
    program_.terminate();
    program_.waitForFinished();
  }
  QString link() const { return folder_.filePath("photometer"); }
  void command(const QString& line) { program_.write((line + "\n").toUtf8()); }
  bool said(const QString& line) const { return lines_.contains(line); }
  const QStringList& lines() const { return lines_; }
  int count(const QString& start) const {
    int out = 0;
    for (const QString& line : lines_) out += line.startsWith(start);
    return out;
  }

 private:
  void take_lines() {
    while (program_.canReadLine()) lines_ << QString::fromUtf8(program_.readLine()).trimmed();
  }
  QTemporaryDir folder_;
  QProcess program_;
  QStringList lines_;
};

}  // namespace brimline::demo
