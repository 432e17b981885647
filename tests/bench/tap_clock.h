// SPDX-License-Identifier: GPL-3.0-or-later
// How long the kiosk's window takes to answer a tap: from the event to the first frame handed over that shows
// what the tap is for.
#pragma once

#include <QElapsedTimer>
#include <QQuickWindow>
#include <QTimer>

#include <functional>
#include <map>
#include <string>
#include <vector>

#include "tests/qml/hand.h"

namespace brimline::test {

struct TapAnswer {
  std::string what;  // was tapped
  double wall_ms = 0;
  double processor_ms = 0;  // of it, the window's own thread at work
};

class TapClock : public QObject {
 public:
  using Shown = std::function<bool()>;
  // What a button does as soon as a finger is on it: no tap of its own.
  static constexpr const char* kHeldKind = "finger down, held in sight";

  explicit TapClock(QQuickWindow* window);

  // A finger's tap on the item of that name: how long until it shows that it is held, and from lifting it
  // until `shown` holds in a frame. False, and a fault, where the tap cannot be made or goes unanswered.
  bool tap(const std::string& kind, const QString& name, const Shown& shown);
  // The same for a key, that writes `text` or is Return.
  bool letter(const std::string& kind, const QString& text, const Shown& shown);
  bool enter(const std::string& kind, const Shown& shown);
  // Lets the window live on.
  static void rest(int milliseconds);
  // Within an event loop, as a counter's whole life is: what an event outside of any gives up to be deleted
  // later stays for as long as one outside of it waits.
  static void within(const std::function<void()>& work);
  // Until it holds; the time it took, under that name, is no tap's. A fault where it does not.
  bool wait(const std::string& kind, const Shown& done);

  // What the window says where a tap went wrong.
  void fault(const std::string& said) { faults_.push_back(said); }

  Hand& hand() { return hand_; }
  // Something has gone so wrong that what comes after it says nothing more.
  bool lost() const { return faults_.size() >= kFaults; }
  int asked() const { return asked_; }
  int made() const { return made_; }
  const std::map<std::string, std::vector<TapAnswer>>& answers() const { return answers_; }
  const std::map<std::string, std::vector<double>>& waits() const { return waits_; }  // ms
  const std::vector<double>& frames() const { return frames_; }  // ms, laid out and drawn
  const std::vector<double>& gaps() const { return gaps_; }      // ms that the event loop came late
  const std::vector<std::string>& faults() const { return faults_; }

 private:
  static constexpr size_t kFaults = 10;
  bool answered(const std::string& kind, const std::string& what, const std::function<void()>& send,
                const Shown& shown);

  QQuickWindow* window_;
  Hand hand_;
  int asked_ = 0, made_ = 0;
  std::map<std::string, std::vector<TapAnswer>> answers_;
  std::map<std::string, std::vector<double>> waits_;
  std::vector<double> frames_, gaps_;
  std::vector<std::string> faults_;
  QElapsedTimer frame_, tick_;
  QTimer ticks_;
};

}  // namespace brimline::test
