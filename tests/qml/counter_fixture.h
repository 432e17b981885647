// SPDX-License-Identifier: GPL-3.0-or-later
// A counter in a folder of its own: store, settings, window; the emulated photometer beside it.
#pragma once

#include <QGuiApplication>
#include <QProcess>
#include <QTemporaryDir>

#include <gtest/gtest.h>

#include "qml/kiosk.h"
#include "tests/qml/hand.h"

namespace brimline::test {

class CounterTest : public testing::Test {
 protected:
  static void SetUpTestSuite();

  QString path(const QString& name) const { return folder_.filePath(name); }
  // At 09:00 of that day, the instrument on `port` (empty: none).
  void open_counter(const std::string& clock, const QString& port = {}, QSize size = {1280, 800});
  void close_counter();
  // The emulated photometer measures demo/bottles/plaster_pool.toml, fast; the path of its port.
  QString start_photometer();
  void TearDown() override;

  QTemporaryDir folder_;
  bool first_start_ = false;  // the counter is opened for the first time
  QProcess photometer_;
  std::unique_ptr<Kiosk> kiosk_;
  std::unique_ptr<Hand> hand_;
};

}  // namespace brimline::test
