// SPDX-License-Identifier: GPL-3.0-or-later
// brimline-gallery: every part of the screen in every state. With --shot FILE it is a picture and no window.
#include <QCommandLineParser>
#include <QGuiApplication>
#include <QImage>
#include <QQmlApplicationEngine>
#include <QQuickStyle>
#include <QQuickWindow>

#include <cstdio>

namespace {

// The whole of the page, as high as it is.
bool take_picture(QQuickWindow* window, const QString& file) {
  window->resize(1280, 2600);
  QCoreApplication::processEvents(QEventLoop::AllEvents, 200);
  return window->grabWindow().save(file);
}

}  // namespace

int main(int argc, char** argv) {
  for (int i = 1; i < argc; ++i)
    if (QByteArray(argv[i]).startsWith("--shot")) {
      qputenv("QT_QPA_PLATFORM", "offscreen");
      qputenv("QT_QUICK_BACKEND", "software");
    }
  QGuiApplication app(argc, argv);
  QQuickStyle::setStyle("Basic");
  QCommandLineParser parser;
  parser.setApplicationDescription("Every part of the counter's screen in every state.");
  parser.addHelpOption();
  parser.addOptions({{"theme", "light, dark or contrast.", "T", "light"},
                     {"shot", "Writes a picture of it to FILE, then ends.", "FILE"}});
  parser.process(app);
  const QString theme = parser.value("theme");
  if (!QStringList{"light", "dark", "contrast"}.contains(theme)) {
    std::fprintf(stderr, "brimline-gallery: --theme %s; expected light, dark or contrast\n",
                 qPrintable(theme));
    return 2;
  }
  QQmlApplicationEngine engine;
  engine.addImportPath("qrc:/qt/qml");
  engine.setInitialProperties({{"theme", theme}, {"width", 1280}, {"height", 800}, {"visible", true}});
  engine.load(QUrl("qrc:/qt/qml/Counter/Gallery.qml"));
  auto* window =
      engine.rootObjects().isEmpty() ? nullptr : qobject_cast<QQuickWindow*>(engine.rootObjects().first());
  if (!window) return 1;
  if (!parser.isSet("shot")) return QGuiApplication::exec();
  if (take_picture(window, parser.value("shot"))) return 0;
  std::fprintf(stderr, "brimline-gallery: %s cannot be written\n", qPrintable(parser.value("shot")));
  return 1;
}
