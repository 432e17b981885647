// SPDX-License-Identifier: GPL-3.0-or-later
// The kiosk put together: store, instruments, desks and window, each handed what it needs.
#pragma once

#include <QQmlApplicationEngine>
#include <QQuickWindow>
#include <QTranslator>

#include <memory>
#include <string>

#include <tl/expected.hpp>

#include "devices/bench.h"
#include "qml/chime.h"
#include "qml/kiosk_options.h"
#include "qml/models/desk.h"
#include "qml/models/rescue_desk.h"
#include "qml/models/store_records.h"

namespace brimline {

class Kiosk {
 public:
  // The error is one line: which part could not be had, and why.
  static tl::expected<std::unique_ptr<Kiosk>, std::string> start(const KioskOptions& options);
  ~Kiosk();

  Desk& desk() { return *desk_; }
  Counter& counter() { return *counter_; }
  Bench& bench() { return *bench_; }
  QQuickWindow* window() const { return window_; }
  // A backup that is to be brought back once this kiosk has ended; empty: none.
  const QString& to_restore() const { return to_restore_; }
  bool to_reopen() const { return reopen_; }  // with that backup, or with empty records
  // Ends the kiosk, brings the backup back, and starts anew.
  static tl::expected<std::unique_ptr<Kiosk>, std::string> restored(std::unique_ptr<Kiosk> kiosk);

 private:
  explicit Kiosk(const KioskOptions& options);
  std::optional<StoreError> open_records();  // why they cannot be opened
  bool offer_rescue(const StoreError& why);  // whether there is anything to offer
  void fetch_pages();  // begins reading them, beside whatever is done until the window is shown
  void show_window(const QString& page, const Settings& look, QVariantMap properties);
  void close_window();
  std::string put_on_counter(const QString& file);
  void listen();
  void tell_instruments();  // at the bench, in the language of the screen
  void show();
  void speak();  // the language of the settings, on screen and in what the desks say

  KioskOptions options_;
  std::unique_ptr<Store> store_;
  std::unique_ptr<Records> records_;
  std::unique_ptr<Counter> counter_;
  std::unique_ptr<Bench> bench_;
  std::unique_ptr<Desk> desk_;
  Chime chime_;
  std::unique_ptr<QQmlApplicationEngine> engine_;
  bool unused_ = false;  // the engine has shown nothing yet
  QQuickWindow* window_ = nullptr;
  std::optional<std::vector<InstrumentLine>> listening_;  // nothing: not begun
  QString to_restore_;
  bool reopen_ = false;
  std::unique_ptr<RescueDesk> rescue_;
  QString spoken_;  // the language of the screen
  std::unique_ptr<QTranslator> translator_;
};

}  // namespace brimline
