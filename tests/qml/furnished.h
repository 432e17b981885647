// SPDX-License-Identifier: GPL-3.0-or-later
// A counter with something on it: the invented shop, a bottle that has been read, its earlier visits.
#pragma once

#include <QFile>

#include "station/visit_json.h"
#include "tests/qml/counter_fixture.h"

namespace brimline::test {

class FurnishedCounter : public CounterTest {
 protected:
  // Opens the counter in that language, with nothing moving; no bottle is on it, but `visit_` waits.
  void open_furnished(const QString& language) {
    QFile::copy(BRIMLINE_SOURCE_DIR "/demo/shop/settings.ini", path("shop.ini"));
    auto store = Store::open(("sqlite:" + path("counter.db")).toStdString());
    ASSERT_TRUE(store);
    QFile earlier(BRIMLINE_SOURCE_DIR "/demo/shop/earlier_visits.jsonl");
    ASSERT_TRUE(earlier.open(QIODevice::ReadOnly));
    while (!earlier.atEnd()) {
      const auto visit = read_visit(earlier.readLine().toStdString(), "earlier");
      ASSERT_TRUE(visit && store->keep(*visit));
    }
    QFile bottle(BRIMLINE_SOURCE_DIR "/demo/visits/plaster_pool.json");
    ASSERT_TRUE(bottle.open(QIODevice::ReadOnly));
    const auto visit = read_visit(bottle.readAll().toStdString(), "bottle");
    ASSERT_TRUE(visit && store->begin_visit(*visit));
    visit_ = visit->id;
    open_counter("2026-06-14T11:45:00-05:00");
    speak(language);
  }
  void speak(const QString& language) {
    kiosk_->desk().back()->setShelf("screen");
    kiosk_->desk().back()->setValue("motion", "off");
    kiosk_->desk().back()->setValue("language", language);
    kiosk_->desk().back()->apply();
    ASSERT_TRUE(Hand::wait_for([&] {
      return kiosk_->counter().words().language() == language.toStdString() && kiosk_->window() &&
             kiosk_->window()->isExposed();
    }));
    hand_ = std::make_unique<Hand>(kiosk_->window());
  }

  std::string visit_;
};

}  // namespace brimline::test
