// SPDX-License-Identifier: GPL-3.0-or-later
// The desk: what the screens bind to. Each place has a desk of its own below; this one knows where we are.
#pragma once

#include <qqmlintegration.h>
#include <QElapsedTimer>
#include <QObject>
#include <QTimer>

#include "qml/models/absorbance_edge.h"
#include "qml/models/back_desk.h"
#include "qml/models/bench_desk.h"
#include "qml/models/chart_desk.h"
#include "qml/models/first_start.h"
#include "qml/models/hand_desk.h"
#include "qml/models/lock_desk.h"
#include "qml/models/overnight_desk.h"
#include "qml/models/plan_desk.h"
#include "qml/models/then_desk.h"
#include "qml/models/ticket.h"

namespace brimline {

class Desk : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("main has it")
  Q_PROPERTY(int place READ place WRITE setPlace NOTIFY placeChanged)
  Q_PROPERTY(QString shop READ shop NOTIFY shopChanged)
  Q_PROPERTY(QString clockLine READ clockLine NOTIFY clockChanged)
  Q_PROPERTY(QString theme READ theme NOTIFY shopChanged)
  Q_PROPERTY(bool motion READ motion NOTIFY shopChanged)
  Q_PROPERTY(bool screenKeyboard READ screenKeyboard CONSTANT)
  Q_PROPERTY(brimline::RowModel* places READ places CONSTANT)
  Q_PROPERTY(brimline::RowModel* arrivals READ arrivals CONSTANT)
  Q_PROPERTY(brimline::RowModel* overnights READ overnights CONSTANT)  // tests that go on
  Q_PROPERTY(QString scanning READ scanning NOTIFY scanningChanged)
  Q_PROPERTY(QString says READ says NOTIFY saysChanged)
  Q_PROPERTY(QVariantList emergencyCards READ emergencyCards NOTIFY shopChanged)
  Q_PROPERTY(QVariantList emergencyNumbers READ emergencyNumbers NOTIFY shopChanged)
  Q_PROPERTY(brimline::Ticket* ticket READ ticket CONSTANT)
  Q_PROPERTY(brimline::BenchDesk* bench READ bench CONSTANT)
  Q_PROPERTY(brimline::OvernightDesk* overnight READ overnight CONSTANT)
  Q_PROPERTY(brimline::PlanDesk* plan READ plan CONSTANT)
  Q_PROPERTY(brimline::HandDesk* hand READ hand CONSTANT)
  Q_PROPERTY(brimline::ThenDesk* then READ then CONSTANT)
  Q_PROPERTY(brimline::BackDesk* back READ back CONSTANT)
  Q_PROPERTY(brimline::FirstStart* firstStart READ firstStart CONSTANT)
  Q_PROPERTY(brimline::ChartDesk* charts READ charts CONSTANT)
  Q_PROPERTY(brimline::LockDesk* lock READ lock CONSTANT)
  Q_PROPERTY(QString away READ away NOTIFY recordsChanged)  // the shared records are; empty: they are not
  Q_PROPERTY(
      QString choiceAsked READ choiceAsked NOTIFY recordsChanged)  // ours or another counter's; empty: none

 public:
  struct Setup {
    Settings settings;
    QString settings_file;
    QString out_dir;  // where papers and files go
    Services services;
    bool screen_keyboard = false;
  };
  enum Place { Arrivals, Bottle, Bench, Findings, TakeHome, ThenNow, BackRoom };

  Desk(Counter& counter, Setup setup, QObject* parent = nullptr);

  int place() const { return place_; }
  void setPlace(int place);
  QString shop() const;
  QString clockLine() const;
  QString theme() const { return settings_.theme; }
  bool motion() const { return settings_.motion; }
  bool screenKeyboard() const { return screen_keyboard_; }
  RowModel* places() { return &places_; }
  RowModel* arrivals() { return &arrivals_; }
  RowModel* overnights() { return &overnights_; }
  QString scanning() const { return scanning_; }
  QString says() const { return says_; }
  QVariantList emergencyCards() const;
  QVariantList emergencyNumbers() const;
  Ticket* ticket() { return &ticket_; }
  BenchDesk* bench() { return &bench_; }
  OvernightDesk* overnight() { return &overnight_; }
  PlanDesk* plan() { return &plan_; }
  HandDesk* hand() { return &hand_; }
  ThenDesk* then() { return &then_; }
  BackDesk* back() { return &back_; }
  FirstStart* firstStart() { return &first_start_; }
  ChartDesk* charts() { return &charts_; }
  LockDesk* lock() { return &lock_; }
  QString away() const;
  QString choiceAsked() const;
  void refreshRecords();  // the records may have changed from outside, or be away
  const Settings& settings() const { return settings_; }
  void retell();  // everything said anew, after the language has changed

  void tell(const QString& sentence);  // on Arrivals
  Q_INVOKABLE void startBottle();
  Q_INVOKABLE void chooseOurs(bool ours);  // of what `choiceAsked` says
  Q_INVOKABLE void openVisit(const QString& id);
  Q_INVOKABLE void openOvernight(const QString& visit);  // the visit, at its overnight test
  // A label as read by the scanner: the bottle that waits under it, else a new one of that label.
  Q_INVOKABLE void scan(const QString& label);
  // A key that no field took: digits go to the pad at the bench, anything else is a label being scanned.
  Q_INVOKABLE bool typeKey(const QString& text, int key);

 public slots:
  // To the control chart or the overnight test that waits for it, else to the bench.
  void onHappened(const brimline::Happening& heard);

 signals:
  void placeChanged();
  void shopChanged();
  void clockChanged();
  void scanningChanged();
  void saysChanged();
  void recordsChanged();

 private:
  void keepHouse();  // once in a while: backups, and people nobody has seen for long
  void refreshArrivals();
  void refreshOvernights();
  void refreshPlaces();
  void settle(const Records::Kept& kept, int next);
  void setScanning(const QString& text);
  bool typeAtBench(const QString& text, int key);

  Counter& counter_;
  Settings settings_;
  RowModel places_, arrivals_, overnights_;
  LockDesk lock_;
  Ticket ticket_;
  BenchDesk bench_;
  OvernightDesk overnight_;
  PlanDesk plan_;
  HandDesk hand_;
  ThenDesk then_;
  BackDesk back_;
  FirstStart first_start_;
  ChartDesk charts_;
  AbsorbanceEdge absorbances_;
  QTimer clock_, house_;
  int place_ = Arrivals;
  bool screen_keyboard_;
  QString scanning_, says_;
  QElapsedTimer since_key_;  // of a label
  QTimer scan_ends_;
};

}  // namespace brimline
