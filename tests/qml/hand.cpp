// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/qml/hand.h"

#include <QGuiApplication>
#include <QtTest/QTest>

namespace brimline::test {
namespace {

constexpr qreal kTouch = 48;  // px, the project's least

QQuickItem* find_in(QQuickItem* item, const QString& name) {
  if (item->objectName() == name && item->isVisible()) return item;
  for (QQuickItem* child : item->childItems())
    if (QQuickItem* found = find_in(child, name)) return found;
  return nullptr;
}

void each(QQuickItem* item, const std::function<void(QQuickItem*)>& see) {
  see(item);
  for (QQuickItem* child : item->childItems()) each(child, see);
}

bool is_button(const QQuickItem* item) {
  return item->inherits("QQuickAbstractButton");
}

}  // namespace

Hand::Hand(QQuickWindow* window) : window_(window), finger_(QTest::createTouchDevice()) {}

QQuickItem* Hand::find(const QString& name) const {
  return find_in(window_->contentItem(), name);
}

QString Hand::text_of(const QString& name) const {
  const QQuickItem* item = find(name);
  return item ? item->property("text").toString() : QString();
}

void Hand::bring_into_view(QQuickItem* item) const {
  for (QQuickItem* above = item->parentItem(); above; above = above->parentItem()) {
    if (!above->inherits("QQuickFlickable")) continue;
    auto* inside = above->property("contentItem").value<QQuickItem*>();
    const qreal y = item->mapToItem(inside, QPointF(0, item->height() / 2)).y();
    const qreal most = std::max(0.0, above->property("contentHeight").toReal() - above->height());
    above->setProperty("contentY", std::clamp(y - above->height() / 2, 0.0, most));
  }
  QCoreApplication::processEvents();
}

std::optional<QPoint> Hand::reach(const QString& name) {
  QQuickItem* item = find(name);
  if (!item || !item->isEnabled()) return std::nullopt;
  bring_into_view(item);
  if (is_button(item) && (item->width() < kTouch || item->height() < kTouch)) return std::nullopt;
  return item->mapToScene(QPointF(item->width() / 2, item->height() / 2)).toPoint();
}

void Hand::put_down(QPoint at) {
  QTest::touchEvent(window_, finger_).press(1, at, window_);
}

void Hand::lift(QPoint at) {
  QTest::touchEvent(window_, finger_).release(1, at, window_);
}

bool Hand::touch(const QString& name) {
  const auto at = reach(name);
  if (!at) return false;
  put_down(*at);
  QTest::qWait(5);
  lift(*at);
  QTest::qWait(5);
  return true;
}

bool Hand::tab_to(const QString& name) {
  for (int step = 0; step < 400; ++step) {
    for (const QQuickItem* at = window_->activeFocusItem(); at; at = at->parentItem())
      if (at->objectName() == name) return true;
    key(Qt::Key_Tab);
  }
  return false;
}

bool Hand::press(const QString& name) {
  if (!tab_to(name)) return false;
  key(Qt::Key_Return);
  return true;
}

void Hand::key(Qt::Key key, Qt::KeyboardModifiers modifiers) {
  QTest::keyClick(window_, key, modifiers);
}

void Hand::type(const QString& text) {
  for (QChar c : text) {
    QTest::sendKeyEvent(QTest::Click, window_, Qt::Key_unknown, c, Qt::NoModifier);
  }
}

bool Hand::wait_for(const std::function<bool()>& done, int milliseconds) {
  return QTest::qWaitFor([&] { return done(); }, milliseconds);
}

QStringList small_targets(QQuickWindow* window) {
  QStringList small;
  each(window->contentItem(), [&](QQuickItem* item) {
    if (is_button(item) && item->isVisible() && (item->width() < kTouch || item->height() < kTouch))
      small.append(QStringLiteral("%1 %2x%3").arg(item->objectName()).arg(item->width()).arg(item->height()));
  });
  return small;
}

}  // namespace brimline::test
