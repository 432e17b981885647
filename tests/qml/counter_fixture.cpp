// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/qml/counter_fixture.h"

#include <QFile>
#include <QQuickStyle>

#include <memory>

namespace brimline::test {
namespace {

// Gone before the program's own end: Qt's libraries take their globals down in an order of their own. One for
// all suites: a second application would find the first one's touch screen.
std::unique_ptr<QGuiApplication> app;

class EndOfApplication : public testing::Environment {
  void TearDown() override { app.reset(); }
};
const testing::Environment* const end_of_application =
    testing::AddGlobalTestEnvironment(new EndOfApplication);

}  // namespace

void CounterTest::SetUpTestSuite() {
  if (app) return;
  static int argc = 1;
  static char name[] = "counter_test";
  static char* argv[] = {name, nullptr};
  qputenv("QT_QUICK_BACKEND", "software");
  app = std::make_unique<QGuiApplication>(argc, argv);
  QQuickStyle::setStyle("Basic");
}

void CounterTest::open_counter(const std::string& clock, const QString& port, QSize size) {
  KioskOptions options;
  options.database = "sqlite:" + path("counter.db");
  options.settings = path("shop.ini");
  options.out_dir = path("sheets");
  options.windowed = true;
  options.size = size;
  options.clock = Instant::parse(clock);
  options.port = port;
  options.profile = "bench_lines";
  options.first_start = first_start_;
  ASSERT_TRUE(options.clock);
  auto started = Kiosk::start(options);
  ASSERT_TRUE(started) << started.error();
  kiosk_ = std::move(*started);
  hand_ = std::make_unique<Hand>(kiosk_->window());
  ASSERT_TRUE(Hand::wait_for([&] { return kiosk_->window()->isExposed(); }));
}

void CounterTest::close_counter() {
  hand_.reset();
  kiosk_.reset();
}

QString CounterTest::start_photometer() {
  QString port = path("photometer");
  photometer_.start(
      BRIMLINE_BIN_DIR "/brimline-photometer",
      {"--bottle", BRIMLINE_SOURCE_DIR "/demo/bottles/plaster_pool.toml", "--profile", "bench_lines",
       "--link", port, "--speed", "50", "--pause", "1", "--rounds", "0", "--wait"});
  EXPECT_TRUE(photometer_.waitForStarted());
  EXPECT_TRUE(Hand::wait_for([&] { return QFile::exists(port); }))
      << photometer_.readAllStandardError().toStdString();
  return port;
}

void CounterTest::TearDown() {
  close_counter();
  if (photometer_.state() != QProcess::NotRunning) {
    photometer_.kill();
    photometer_.waitForFinished();
  }
}

}  // namespace brimline::test
