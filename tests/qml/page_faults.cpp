// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/qml/page_faults.h"

#include <QAccessible>

#include <functional>
#include <map>

#include "tests/qml/contrast.h"

namespace brimline::test {
namespace {

constexpr qreal kTouch = 48;   // px, the project's least
constexpr qreal kSlack = 1.5;  // px of rounding

void each_visible(QQuickItem* item, const std::function<void(QQuickItem*)>& see) {
  if (!item->isVisible() || item->opacity() == 0) return;
  see(item);
  for (QQuickItem* child : item->childItems()) each_visible(child, see);
}

bool is_text(const QQuickItem* item) {
  return item->inherits("QQuickText") && !item->property("text").toString().trimmed().isEmpty();
}

struct Words {
  QQuickItem* item;
  QString text;
  QRectF where;    // of the letters, in the window
  QRectF visible;  // what the flickables around leave of it
  bool scrolls = false;
};

// Where the letters stand: the item may be wider and higher than they are.
QRectF letters(QQuickItem* item) {
  const qreal width = item->property("contentWidth").toReal(),
              height = item->property("contentHeight").toReal();
  const qreal left = item->property("leftPadding").toReal(), right = item->property("rightPadding").toReal();
  const qreal top = item->property("topPadding").toReal(), bottom = item->property("bottomPadding").toReal();
  const int across = item->property("effectiveHorizontalAlignment").toInt();
  const int down = item->property("verticalAlignment").toInt();
  qreal x = left, y = top;
  if (across == Qt::AlignRight) x = item->width() - right - width;
  if (across == Qt::AlignHCenter) x = left + (item->width() - left - right - width) / 2;
  if (down == Qt::AlignBottom) y = item->height() - bottom - height;
  if (down == Qt::AlignVCenter) y = top + (item->height() - top - bottom - height) / 2;
  return item->mapRectToScene({x, y, width, height});
}

Words words_of(QQuickItem* item, QQuickWindow* window) {
  Words out{item, item->property("text").toString(), letters(item), {}, false};
  out.visible = out.where;
  for (QQuickItem* above = item->parentItem(); above; above = above->parentItem()) {
    if (!above->clip()) continue;
    out.scrolls = out.scrolls || above->inherits("QQuickFlickable");
    out.visible &= above->mapRectToScene({0, 0, above->width(), above->height()});
  }
  out.visible &= QRectF(0, 0, window->width(), window->height());
  return out;
}

QList<Words> all_words(QQuickWindow* window) {
  QList<Words> out;
  each_visible(topmost(window), [&](QQuickItem* item) {
    if (is_text(item)) out.append(words_of(item, window));
  });
  return out;
}

QString short_of(const QString& text) {
  return "“" + (text.size() > 60 ? text.left(57) + "…" : text) + "”";
}

QString size_of(const QRectF& r) {
  return QStringLiteral("%1,%2 %3x%4").arg(r.x()).arg(r.y()).arg(r.width()).arg(r.height());
}

}  // namespace

QQuickItem* topmost(QQuickWindow* window) {
  QQuickItem* top = window->contentItem();
  for (QQuickItem* child : window->contentItem()->childItems())
    if (child->inherits("QQuickOverlay") && child->isVisible() && !child->childItems().isEmpty()) top = child;
  return top;
}

QList<QQuickItem*> controls_of(QQuickWindow* window) {
  QList<QQuickItem*> out;
  each_visible(topmost(window), [&](QQuickItem* item) {
    for (const char* kind : {"QQuickAbstractButton", "QQuickTextField", "QQuickTextArea", "QQuickSlider"})
      if (item->inherits(kind)) out.append(item);
  });
  return out;
}

QStringList text_faults(QQuickWindow* window) {
  QStringList out;
  const QList<Words> all = all_words(window);
  for (const Words& words : all) {
    if (words.item->property("truncated").toBool()) out.append("cut off: " + short_of(words.text));
    const qreal room = words.item->width() - words.item->property("leftPadding").toReal() -
                       words.item->property("rightPadding").toReal();
    if (words.item->property("contentWidth").toReal() > room + kSlack)
      out.append(QStringLiteral("wider than its place by %1 px: %2")
                     .arg(words.item->property("contentWidth").toReal() - room)
                     .arg(short_of(words.text)));
    const QQuickItem* around = words.item->parentItem();
    const QRectF holder = around->mapRectToScene({0, 0, around->width(), around->height()});
    if (words.where.left() < holder.left() - kSlack || words.where.right() > holder.right() + kSlack)
      out.append("sticks out of what holds it: " + short_of(words.text) + " " + size_of(words.where));
    const QRectF hidden = words.where;
    const bool sideways = words.visible.width() < hidden.width() - kSlack && words.visible.height() > 0;
    const bool upright = words.visible.height() < hidden.height() - kSlack;
    if (sideways || (upright && !words.scrolls))
      out.append("not all in sight: " + short_of(words.text) + " " + size_of(hidden));
  }
  for (qsizetype i = 0; i < all.size(); ++i)
    for (qsizetype j = i + 1; j < all.size(); ++j) {
      const QRectF both = all[i].visible & all[j].visible;
      if (both.width() > 2 && both.height() > 3)
        out.append("on each other: " + short_of(all[i].text) + " and " + short_of(all[j].text) + " " +
                   size_of(both));
    }
  return out;
}

QStringList contrast_faults(QQuickWindow* window, const QImage& picture, double least) {
  QStringList out;
  for (const Words& words : all_words(window)) {
    const QRect area = words.visible.toAlignedRect() & picture.rect();
    std::map<QRgb, int> seen;
    for (int y = area.top(); y <= area.bottom(); ++y)
      for (int x = area.left(); x <= area.right(); ++x) ++seen[picture.pixel(x, y)];
    if (seen.empty()) continue;
    const auto most = std::max_element(seen.begin(), seen.end(),
                                       [](const auto& a, const auto& b) { return a.second < b.second; });
    const QColor ground = QColor::fromRgb(most->first), ink = words.item->property("color").value<QColor>();
    if (const double ratio = contrast_ratio(ink, ground); ratio < least)
      out.append(QStringLiteral("%1:1, %2 on %3: %4")
                     .arg(ratio, 0, 'f', 2)
                     .arg(ink.name(), ground.name(), short_of(words.text)));
  }
  return out;
}

QStringList unnamed(QQuickWindow* window) {
  QStringList out;
  for (QQuickItem* item : controls_of(window)) {
    QAccessibleInterface* seen = QAccessible::queryAccessibleInterface(item);
    const QString what = QString::fromLatin1(item->metaObject()->className()) + " " + item->objectName();
    if (!seen || !seen->isValid())
      out.append("not there for a screen reader: " + what);
    else if (seen->text(QAccessible::Name).trimmed().isEmpty())
      out.append("no name: " + what);
    else if (seen->role() == QAccessible::NoRole || seen->role() == QAccessible::Client)
      out.append("no role: " + what);
  }
  return out;
}

QStringList too_small(QQuickWindow* window) {
  QStringList out;
  for (QQuickItem* item : controls_of(window))
    if (item->width() < kTouch || item->height() < kTouch)
      out.append(QStringLiteral("%1 %2x%3").arg(item->objectName()).arg(item->width()).arg(item->height()));
  return out;
}

}  // namespace brimline::test
