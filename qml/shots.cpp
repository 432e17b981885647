// SPDX-License-Identifier: GPL-3.0-or-later
#include "qml/shots.h"

#include <QDir>
#include <QImage>

#include "qml/pages.h"

namespace brimline {

bool make_shots(Kiosk& kiosk, const QString& folder) {
  if (!QDir().mkpath(folder)) return false;
  bool written = true;
  int number = 0;
  each_page(kiosk, [&](const QString& name) {
    const QString file =
        QStringLiteral("%1/%2_%3.png").arg(folder).arg(++number, 2, 10, QChar('0')).arg(name);
    written = kiosk.window()->grabWindow().save(file) && written;
  });
  return written;
}

}  // namespace brimline
