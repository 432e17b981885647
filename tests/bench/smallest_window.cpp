// SPDX-License-Identifier: GPL-3.0-or-later
// The smallest Qt Quick window: what the kiosk's first frame is measured against. Says when its first frame
// is there, and ends.
#include <QGuiApplication>
#include <QQmlApplicationEngine>
#include <QQuickWindow>

#include <cstdio>

int main(int argc, char** argv) {
  QGuiApplication app(argc, argv);
  QQmlApplicationEngine engine;
  engine.loadData("import QtQuick\nWindow { visible: true; width: 1280; height: 800; Text { text: '1' } }");
  auto* window =
      engine.rootObjects().isEmpty() ? nullptr : qobject_cast<QQuickWindow*>(engine.rootObjects().front());
  if (!window) return 1;
  QObject::connect(
      window, &QQuickWindow::frameSwapped, &app,
      [] {
        std::printf("frame\n");
        std::fflush(stdout);
        QCoreApplication::quit();
      },
      Qt::QueuedConnection);
  return QGuiApplication::exec();
}
