// SPDX-License-Identifier: GPL-3.0-or-later
// brimline: the counter on a screen.
#include <QFont>
#include <QGuiApplication>

#include <cstdio>

#include "qml/kiosk.h"
#include "qml/own_fonts.h"
#include "qml/shots.h"

int main(int argc, char** argv) {
  QStringList arguments;
  for (int i = 0; i < argc; ++i) arguments.append(QString::fromLocal8Bit(argv[i]));
  const auto options = brimline::kiosk_options(arguments);
  if (!options) {
    std::fprintf(stderr, "brimline: %s\n", qPrintable(options.error()));
    return 2;
  }
  if (!*options) return 0;
  if ((*options)->screen_keyboard) qputenv("QT_IM_MODULE", "qtvirtualkeyboard");
  if (!(*options)->shots.isEmpty()) {
    qputenv("QT_QPA_PLATFORM", "offscreen");
    qputenv("QT_QUICK_BACKEND", "software");
  }
  brimline::use_own_fonts();
  QGuiApplication app(argc, argv);
  QGuiApplication::setApplicationName("brimline");
  QGuiApplication::setFont(QFont("Noto Sans"));
  qputenv("QT_QUICK_CONTROLS_STYLE", "Basic");
  auto kiosk = brimline::Kiosk::start(**options);
  if (!kiosk) {
    std::fprintf(stderr, "brimline: %s\n", kiosk.error().c_str());
    return 2;
  }
  if (!(*options)->shots.isEmpty()) return brimline::make_shots(**kiosk, (*options)->shots) ? 0 : 1;
  while (true) {
    const int code = QGuiApplication::exec();
    if (!(*kiosk)->to_reopen()) return code;
    kiosk = brimline::Kiosk::restored(std::move(*kiosk));
    if (!kiosk) {
      std::fprintf(stderr, "brimline: %s\n", kiosk.error().c_str());
      return 2;
    }
  }
}
