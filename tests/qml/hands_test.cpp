// SPDX-License-Identifier: GPL-3.0-or-later
// Everything by the keyboard: on every page Tab reaches every control that can be used, and the picture shows
// where it stands (WCAG 2.1, 2.1.1 and 2.4.7). F8 brings the emergency card from every place; Escape closes.
#include <QSet>

#include "qml/pages.h"
#include "tests/qml/furnished.h"
#include "tests/qml/page_faults.h"

namespace brimline::test {
namespace {

class ByKeyboard : public FurnishedCounter {
 protected:
  // The control that has the keyboard; null: none has.
  QQuickItem* at() const {
    const QList<QQuickItem*> controls = controls_of(kiosk_->window());
    for (QQuickItem* item = kiosk_->window()->activeFocusItem(); item; item = item->parentItem())
      if (controls.contains(item)) return item;
    return nullptr;
  }
  // What the window shows in and around the item.
  QImage around(QQuickItem* item) const {
    const QRect area =
        item->mapRectToScene({-6, -6, item->width() + 12, item->height() + 12}).toAlignedRect();
    return kiosk_->window()->grabWindow().copy(area);
  }
  static bool in_sight(QQuickItem* item, QQuickWindow* window) {
    QRectF seen = item->mapRectToScene({0, 0, item->width(), item->height()}) &
                  QRectF(0, 0, window->width(), window->height());
    for (QQuickItem* above = item->parentItem(); above; above = above->parentItem())
      if (above->clip()) seen &= above->mapRectToScene({0, 0, above->width(), above->height()});
    return seen.width() > 8 && seen.height() > 8;
  }
  static std::string name_of(const QQuickItem* item) {
    return item->objectName().toStdString() + " " + item->property("text").toString().toStdString();
  }
  void reach_all(const QString& page) {
    QSet<QQuickItem*> left;
    for (QQuickItem* item : controls_of(kiosk_->window()))
      if (item->isEnabled()) left.insert(item);
    const qsizetype all = left.size();
    for (qsizetype step = 0; step < 2 * all + 10 && !left.isEmpty(); ++step) {
      hand_->key(Qt::Key_Tab);
      QQuickItem* here = at();
      if (!here || !left.remove(here)) continue;
      EXPECT_TRUE(in_sight(here, kiosk_->window()))
          << page.toStdString() << ": out of sight with the keyboard on it: " << name_of(here);
      const QImage with = around(here);
      here->setFocus(false);
      const bool shown = with != around(here);
      EXPECT_TRUE(shown) << page.toStdString() << ": nothing shows that the keyboard is at " << name_of(here);
      here->forceActiveFocus(Qt::TabFocusReason);
      ++reached_;
    }
    for (QQuickItem* item : left)
      ADD_FAILURE() << page.toStdString() << ": Tab does not come to " << name_of(item);
  }
  int reached_ = 0;
};

TEST_F(ByKeyboard, EverythingIsReachedAndShown) {
  ASSERT_NO_FATAL_FAILURE(open_furnished("en"));
  ASSERT_TRUE(kiosk_->counter().open(visit_));
  each_page(*kiosk_, [&](const QString& page) { reach_all(page); });
  std::printf("%d controls reached by Tab\n", reached_);
  EXPECT_GT(reached_, 200);
}

TEST_F(ByKeyboard, TheEmergencyCardIsPrintedWithNoBottleOnTheCounter) {
  ASSERT_NO_FATAL_FAILURE(open_furnished("en"));
  ASSERT_FALSE(kiosk_->counter().open());
  ASSERT_TRUE(hand_->touch("emergency"));
  ASSERT_TRUE(Hand::wait_for([&] { return hand_->find("emergency_print") != nullptr; }, 2000));
  ASSERT_TRUE(hand_->touch("emergency_print"));
  // No printer stands here: the file is the paper, and that is said.
  ASSERT_TRUE(Hand::wait_for([&] { return QFile::exists(path("sheets/emergency.pdf")); }));
  ASSERT_TRUE(
      Hand::wait_for([&] { return hand_->text_of("emergency_says").contains("emergency.pdf"); }, 5000));
}

TEST_F(ByKeyboard, TheEmergencyCardIsOneKeyOrOneTouchAway) {
  ASSERT_NO_FATAL_FAILURE(open_furnished("en"));
  ASSERT_TRUE(kiosk_->counter().open(visit_));
  for (int place = Desk::Arrivals; place <= Desk::BackRoom; ++place) {
    kiosk_->desk().setPlace(place);
    hand_->key(Qt::Key_F8);
    ASSERT_TRUE(Hand::wait_for([&] { return hand_->find("emergency_close") != nullptr; }, 2000)) << place;
    hand_->key(Qt::Key_Escape);
    ASSERT_TRUE(Hand::wait_for([&] { return hand_->find("emergency_close") == nullptr; }, 2000)) << place;
    ASSERT_TRUE(hand_->touch("emergency")) << place;
    ASSERT_TRUE(Hand::wait_for([&] { return hand_->find("emergency_close") != nullptr; }, 2000)) << place;
    ASSERT_TRUE(hand_->touch("emergency_close"));
    ASSERT_TRUE(Hand::wait_for([&] { return hand_->find("emergency_close") == nullptr; }, 2000)) << place;
  }
}

}  // namespace
}  // namespace brimline::test
