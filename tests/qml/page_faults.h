// SPDX-License-Identifier: GPL-3.0-or-later
// What can be wrong with a page, measured on the window that shows it. Each fault is a line that names the
// words or the item.
#pragma once

#include <QImage>
#include <QQuickItem>
#include <QQuickWindow>
#include <QStringList>

namespace brimline::test {

// What is on top: the page, or what lies over it.
QQuickItem* topmost(QQuickWindow* window);
// Visible buttons, fields and sliders of it.
QList<QQuickItem*> controls_of(QQuickWindow* window);

// Words cut off, running out of their place or the window, or lying on other words.
QStringList text_faults(QQuickWindow* window);
// Words under `least`:1 against the colour that most of their ground has in the picture.
QStringList contrast_faults(QQuickWindow* window, const QImage& picture, double least);
// Controls that a screen reader finds with no name, or with no role that says what they do.
QStringList unnamed(QQuickWindow* window);
// Controls under 48 px in either direction.
QStringList too_small(QQuickWindow* window);

}  // namespace brimline::test
