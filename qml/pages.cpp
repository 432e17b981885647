// SPDX-License-Identifier: GPL-3.0-or-later
#include "qml/pages.h"

#include <QCoreApplication>
#include <QElapsedTimer>
#include <QQuickItem>

namespace brimline {
namespace {

constexpr qint64 kRest = 250;       // ms, longer than anything moves
constexpr int kFrames = 4;          // a layout in a layout in a layout, and one more
constexpr qint64 kDrawn = 2000;     // ms, the longest they are waited for
constexpr qint64 kPlanned = 20000;  // ms, the longest a plan is waited for

// Lets the window and the worker threads come to rest.
void settle(Kiosk& kiosk) {
  QElapsedTimer spent;
  spent.start();
  const PlanDesk& plan = *kiosk.desk().plan();
  const bool planned = kiosk.counter().open() && !kiosk.counter().visit().bottle.readings.empty();
  const qint64 rest = kiosk.desk().motion() ? kRest : kRest / 5;
  const auto wait = [&](const auto& goes_on) {
    do QCoreApplication::processEvents(QEventLoop::AllEvents, 10);
    while (spent.elapsed() < kPlanned && goes_on());
  };
  wait([&] {
    return (planned && !plan.ready()) || kiosk.desk().hand()->busy() || kiosk.desk().back()->reads();
  });
  const qint64 still = spent.elapsed() + rest;
  wait([&] { return spent.elapsed() < still; });
  // A layout settles as it is drawn, which on a busy machine is later than that.
  int frames = 0;
  QQuickWindow* window = kiosk.window();
  const auto drawn = QObject::connect(window, &QQuickWindow::frameSwapped, window, [&] {
    ++frames;
    window->update();
  });
  window->update();
  const qint64 latest = spent.elapsed() + kDrawn;
  wait([&] { return frames < kFrames && spent.elapsed() < latest; });
  QObject::disconnect(drawn);
}

}  // namespace

void each_page(Kiosk& kiosk, const std::function<void(const QString& name)>& see) {
  Desk& desk = kiosk.desk();
  const auto rest_and_see = [&](const QString& name) {
    settle(kiosk);
    see(name);
  };
  for (int place = 0; place < desk.places()->count(); ++place) {
    desk.setPlace(place);
    if (place != Desk::BackRoom) rest_and_see(desk.places()->row(place).value("key").toString());
  }
  for (const QVariant& shelf : desk.back()->shelves()) {
    const QString key = shelf.toMap().value("key").toString();
    desk.back()->setShelf(key);
    rest_and_see("back_" + key);
  }
  desk.setPlace(Desk::Bottle);
  const auto click = [&](const char* name) {
    auto* button = kiosk.window()->findChild<QObject*>(name);
    return button && QMetaObject::invokeMethod(button, "clicked");
  };
  if (!desk.ticket()->customer().isEmpty() && click("edit_customer")) {
    rest_and_see("card");
    click("drop_customer");
  }
  // The volume by its shape, worked out, and by the meter, with a fault at its place.
  const auto volume_page = [&](const QString& name, const QString& way, const QStringList& texts) {
    VolumeForm& form = *desk.ticket()->volume();
    form.setWay(way);
    form.setBottom("two_parts");
    const QVariantList asked = form.asked();
    const auto settle_texts = [&] {
      for (int i = 0; i < asked.size() && i < texts.size(); ++i)
        form.settle(asked[i].toMap().value("key").toString(), texts[i]);
    };
    settle_texts();
    form.setShown(true);
    settle_texts();  // so that faults are told
    settle(kiosk);
    if (auto* left = kiosk.window()->findChild<QQuickItem*>("bottle_left"))
      left->setProperty("contentY", left->property("contentHeight").toReal() - left->height());
    rest_and_see(name);
    form.setShown(false);
  };
  if (!desk.ticket()->customer().isEmpty()) {
    volume_page("volume", "rounded_ends", {"10.5", "5", "1.2", "2.1", "4"});
    volume_page("volume_meter", "meter", {"135000", "120000"});
  }
  const auto behind = [&](Desk::Place place, const char* page, const QString& name) {
    desk.setPlace(place);
    auto* numbers = kiosk.window()->findChild<QObject*>(page);
    if (!numbers) return;
    numbers->setProperty("behind", true);
    rest_and_see(name);
    numbers->setProperty("behind", false);
  };
  behind(Desk::ThenNow, "then_page", "then_numbers");
  behind(Desk::Findings, "findings_page", "numbers");
  behind(Desk::TakeHome, "take_home_page", "dose_numbers");
  desk.setPlace(Desk::TakeHome);
  desk.hand()->open(1);
  if (desk.hand()->step() > 0) {
    desk.hand()->setShare(0.75);
    rest_and_see("hand");
    desk.hand()->close();
  }
  desk.setPlace(Desk::Bench);
  desk.overnight()->setShown(true);
  if (desk.overnight()->shown()) rest_and_see("overnight");
  desk.overnight()->setShown(false);
  desk.firstStart()->begin();
  for (int page = 1; desk.firstStart()->shown(); ++page) {
    rest_and_see("first_start_" + QString::number(page));
    if (desk.firstStart()->last())
      desk.firstStart()->leave();
    else
      desk.firstStart()->next();
  }
  kiosk.window()->setProperty("lockShown", true);
  rest_and_see("lock");
  kiosk.window()->setProperty("lockShown", false);
  QMetaObject::invokeMethod(kiosk.window(), "openEmergency");
  rest_and_see("emergency");
  QMetaObject::invokeMethod(kiosk.window(), "closeEmergency");
}

}  // namespace brimline
