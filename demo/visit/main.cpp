// SPDX-License-Identifier: GPL-3.0-or-later
// brimline-demo: a whole visit on the invented shop with no screen, for `demo/run --headless`.
#include <QCommandLineParser>
#include <QGuiApplication>

#include <iostream>

#include "demo/visit/headless_visit.h"

int main(int argc, char** argv) {
  if (qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM")) qputenv("QT_QPA_PLATFORM", "offscreen");
  QGuiApplication application(argc, argv);
  QCommandLineParser parser;
  parser.setApplicationDescription("A whole visit on the invented shop, with no screen.");
  parser.addHelpOption();
  parser.addOptions({{"bottle", "Bottle file of demo/bottles.", "file"},
                     {"earlier", "Earlier visits, one a line.", "file"},
                     {"work", "Folder for the database, the port and the PDF.", "folder"},
                     {"unread", "Only writes the bottle's visit, nothing read yet, and ends."}});
  parser.process(application);
  const auto path = [&](const char* name) { return std::filesystem::path(parser.value(name).toStdString()); };
  if (parser.isSet("unread")) return brimline::demo::write_unread(path("bottle"), std::cout, std::cerr);
  for (const char* needed : {"bottle", "earlier", "work"})
    if (!parser.isSet(needed)) {
      std::cerr << "brimline-demo: --" << needed << " is missing; expected --bottle, --earlier and --work\n";
      return 2;
    }
  const auto programs = std::filesystem::path(QCoreApplication::applicationDirPath().toStdString());
  return brimline::demo::run_headless(
      {path("bottle"), path("earlier"), path("work"), programs / "brimline-photometer"}, std::cout,
      std::cerr);
}
