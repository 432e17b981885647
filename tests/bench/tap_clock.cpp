// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/bench/tap_clock.h"

#include <QEventLoop>
#include <QPointer>

#include <algorithm>
#include <ctime>

namespace brimline::test {
namespace {

constexpr int kHeld = 40;         // ms that a finger stays on the glass
constexpr int kPause = 60;        // ms between two taps
constexpr int kPatience = 5000;   // ms until a tap counts as not answered
constexpr int kLongWait = 20000;  // ms
constexpr double kTick = 10;      // ms

double processor_ms() {
  timespec now{};
  ::clock_gettime(CLOCK_THREAD_CPUTIME_ID, &now);
  return 1e3 * static_cast<double>(now.tv_sec) + 1e-6 * static_cast<double>(now.tv_nsec);
}

double elapsed_ms(const QElapsedTimer& timer) {
  return 1e-6 * static_cast<double>(timer.nsecsElapsed());
}

}  // namespace

TapClock::TapClock(QQuickWindow* window) : window_(window), hand_(window) {
  connect(window_, &QQuickWindow::afterAnimating, this, [this] { frame_.start(); });
  connect(window_, &QQuickWindow::frameSwapped, this, [this] {
    if (frame_.isValid()) frames_.push_back(elapsed_ms(frame_));
    frame_.invalidate();
  });
  ticks_.setTimerType(Qt::PreciseTimer);
  connect(&ticks_, &QTimer::timeout, this, [this] {
    gaps_.push_back(std::max(0.0, elapsed_ms(tick_) - kTick));
    tick_.restart();
  });
  tick_.start();
  ticks_.start(static_cast<int>(kTick));
}

void TapClock::rest(int milliseconds) {
  QEventLoop loop;
  QTimer::singleShot(milliseconds, &loop, &QEventLoop::quit);
  loop.exec();
}

void TapClock::within(const std::function<void()>& work) {
  QEventLoop loop;
  QTimer::singleShot(0, &loop, [&] {
    work();
    loop.quit();
  });
  loop.exec();
}

bool TapClock::answered(const std::string& kind, const std::string& what, const std::function<void()>& send,
                        const Shown& shown) {
  if (shown()) {
    faults_.push_back(kind + ", " + what + ": shown before it was asked for");
    within(send);
    return false;
  }
  QEventLoop loop;
  bool there = false;
  TapAnswer answer;
  QElapsedTimer clock;
  double processor = 0;
  const auto swapped = connect(window_, &QQuickWindow::frameSwapped, &loop, [&] {
    if (there || !clock.isValid() || !shown()) return;
    answer = {what, elapsed_ms(clock), processor_ms() - processor};
    there = true;
    loop.quit();
  });
  QTimer::singleShot(kPatience, &loop, &QEventLoop::quit);
  QTimer::singleShot(0, &loop, [&] {
    clock.start();
    processor = processor_ms();
    send();
  });
  loop.exec();
  disconnect(swapped);
  if (there)
    answers_[kind].push_back(answer);
  else
    faults_.push_back(kind + ", " + what + ": not answered");
  return there;
}

bool TapClock::tap(const std::string& kind, const QString& name, const Shown& shown) {
  if (lost()) return false;
  ++asked_;
  rest(kPause);
  std::optional<QPoint> at;
  within([&] { at = hand_.reach(name); });
  if (!at) {
    faults_.push_back(kind + ", " + name.toStdString() + ": cannot be touched");
    return false;
  }
  // A field, unlike a button, shows nothing until it has the keyboard.
  const QPointer<QQuickItem> item = hand_.find(name);
  if (item->property("down").isValid())
    answered(
        kHeldKind, name.toStdString(), [&] { hand_.put_down(*at); },
        [item] { return item && item->property("down").toBool(); });
  else
    within([&] { hand_.put_down(*at); });
  rest(kHeld);
  if (!answered(
          kind, name.toStdString(), [&] { hand_.lift(*at); }, shown))
    return false;
  ++made_;
  return true;
}

bool TapClock::letter(const std::string& kind, const QString& text, const Shown& shown) {
  if (lost()) return false;
  ++asked_;
  rest(kPause);
  if (!answered(
          kind, text.toStdString(), [&] { hand_.type(text); }, shown))
    return false;
  ++made_;
  return true;
}

bool TapClock::enter(const std::string& kind, const Shown& shown) {
  if (lost()) return false;
  ++asked_;
  rest(kPause);
  if (!answered(
          kind, "Return", [&] { hand_.key(Qt::Key_Return); }, shown))
    return false;
  ++made_;
  return true;
}

bool TapClock::wait(const std::string& kind, const Shown& done) {
  if (lost()) return false;
  QElapsedTimer clock;
  clock.start();
  while (!done() && clock.elapsed() < kLongWait) rest(5);
  if (!done()) {
    faults_.push_back(kind + ": did not come");
    return false;
  }
  waits_[kind].push_back(elapsed_ms(clock));
  return true;
}

}  // namespace brimline::test
