// SPDX-License-Identifier: GPL-3.0-or-later
// A hand at the counter: touches things by name, or reaches them by the keyboard alone.
#pragma once

#include <QPointingDevice>
#include <QQuickItem>
#include <QQuickWindow>
#include <QString>

#include <functional>
#include <optional>

namespace brimline::test {

class Hand {
 public:
  explicit Hand(QQuickWindow* window);

  // The visible item of that object name; null: there is none.
  QQuickItem* find(const QString& name) const;
  // What a text item of that name shows; empty where it is not there.
  QString text_of(const QString& name) const;

  // The middle of the item, scrolled into view first. Nothing where it cannot be touched: absent, disabled,
  // or under 48 px in either direction.
  std::optional<QPoint> reach(const QString& name);
  void put_down(QPoint at);
  void lift(QPoint at);
  // A finger's tap in the middle of the item; false where it cannot be reached.
  bool touch(const QString& name);
  // Tab until the item has the keyboard; false after 400 steps.
  bool tab_to(const QString& name);
  bool press(const QString& name);  // tab to it, then Return
  void key(Qt::Key key, Qt::KeyboardModifiers modifiers = Qt::NoModifier);
  void type(const QString& text);

  // Lets the event loop run until `done` holds; false after the given time.
  static bool wait_for(const std::function<bool()>& done, int milliseconds = 60000);

 private:
  void bring_into_view(QQuickItem* item) const;

  QQuickWindow* window_;
  QPointingDevice* finger_;
};

// Every visible button-like item that is under 48 px high or wide, by name: none should be.
QStringList small_targets(QQuickWindow* window);

}  // namespace brimline::test
