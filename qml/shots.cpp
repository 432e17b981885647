// SPDX-License-Identifier: GPL-3.0-or-later
#include "qml/shots.h"

#include <QCoreApplication>
#include <QDir>
#include <QElapsedTimer>
#include <QImage>

namespace brimline {
namespace {

// Lets the window and the worker threads come to rest.
void settle(Kiosk& kiosk) {
  QElapsedTimer spent;
  spent.start();
  const PlanDesk& plan = *kiosk.desk().plan();
  const bool planned = kiosk.counter().open() && !kiosk.counter().visit().bottle.readings.empty();
  do QCoreApplication::processEvents(QEventLoop::AllEvents, 20);
  while (spent.elapsed() < 400 || (planned && !plan.ready() && spent.elapsed() < 20000));
}

}  // namespace

bool make_shots(Kiosk& kiosk, const QString& folder) {
  if (!QDir().mkpath(folder)) return false;
  bool written = true;
  int number = 0;
  const auto shoot = [&](const QString& name) {
    settle(kiosk);
    const QString file = QStringLiteral("%1/%2_%3.png").arg(folder).arg(++number).arg(name);
    written = kiosk.window()->grabWindow().save(file) && written;
  };
  for (int place = 0; place < kiosk.desk().places()->count(); ++place) {
    kiosk.desk().setPlace(place);
    shoot(kiosk.desk().places()->row(place).value("key").toString());
  }
  for (const QVariant& shelf : kiosk.desk().back()->shelves()) {
    const QString key = shelf.toMap().value("key").toString();
    kiosk.desk().back()->setShelf(key);
    shoot("back_" + key);
  }
  kiosk.desk().setPlace(Desk::TakeHome);
  kiosk.desk().hand()->open(1);
  if (kiosk.desk().hand()->step() > 0) {
    kiosk.desk().hand()->setShare(0.75);
    shoot("hand");
    kiosk.desk().hand()->close();
  }
  kiosk.desk().setPlace(Desk::Bench);
  kiosk.desk().overnight()->setShown(true);
  if (kiosk.desk().overnight()->shown()) shoot("overnight");
  QMetaObject::invokeMethod(kiosk.window(), "openEmergency");
  shoot("emergency");
  return written;
}

}  // namespace brimline
