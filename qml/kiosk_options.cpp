// SPDX-License-Identifier: GPL-3.0-or-later
#include "qml/kiosk_options.h"

#include <QCommandLineParser>
#include <QDir>
#include <QFileInfo>
#include <QStandardPaths>

#include <cstdio>

namespace brimline {
namespace {

QString in_folder(QStandardPaths::StandardLocation kind, const char* name) {
  return QStandardPaths::writableLocation(kind) + QStringLiteral("/brimline/") + QLatin1String(name);
}

void add_options(QCommandLineParser& parser) {
  parser.setApplicationDescription("The water-testing counter of a pool-and-spa shop.");
  parser.addOptions({
      {"database", "The records: sqlite:FILE or postgresql://USER@HOST:PORT/NAME.", "U"},
      {"settings", "The shop's settings, an INI file.", "FILE"},
      {"port", "The instrument's serial port.", "PATH"},
      {"profile", "The instrument's profile.", "NAME"},
      {"out-dir", "Where PDFs go.", "DIR"},
      {"windowed", "A window instead of the whole screen."},
      {"size", "The window's size, e.g. 1280x800.", "WxH"},
      {"clock", "What the clock shows at start, e.g. 2026-06-14T09:00:00-05:00.", "ISO"},
      {"visit", "A brimline-visit/1 file to put on the counter at start.", "FILE"},
      {"shots", "Makes a picture of every place in DIR, then ends.", "DIR"},
      {"language", "The language of the screen: en, es or fr.", "L"},
      {"theme", "The colours of the screen: light, dark or contrast.", "T"},
      {"trace", "Says on standard output what has been kept."},
      {"screen-keyboard", "Shows a keyboard on the screen where something is to be written."},
  });
}

std::optional<QSize> size_from(const QString& text) {
  const QStringList parts = text.split('x');
  if (parts.size() != 2) return std::nullopt;
  bool wide = false, high = false;
  const QSize size(parts[0].toInt(&wide), parts[1].toInt(&high));
  if (!wide || !high || size.width() < 320 || size.height() < 240) return std::nullopt;
  return size;
}

}  // namespace

tl::expected<std::optional<KioskOptions>, QString> kiosk_options(const QStringList& arguments) {
  QCommandLineParser parser;
  add_options(parser);
  const QCommandLineOption help = parser.addHelpOption();
  const QCommandLineOption version = parser.addVersionOption();
  if (!parser.parse(arguments)) return tl::unexpected(parser.errorText());
  if (parser.isSet(help)) {
    std::fputs(qPrintable(parser.helpText()), stdout);
    return std::nullopt;
  }
  if (parser.isSet(version)) {
    std::puts("brimline 0.1.0");
    return std::nullopt;
  }
  if (!parser.positionalArguments().isEmpty())
    return tl::unexpected("`" + parser.positionalArguments().first() + "` is not an option; expected --help");

  KioskOptions out;
  const auto value = [&](const char* name, const QString& otherwise) {
    return parser.isSet(name) ? parser.value(name) : otherwise;
  };
  out.database = value("database", "sqlite:" + in_folder(QStandardPaths::GenericDataLocation, "counter.db"));
  out.settings = value("settings", in_folder(QStandardPaths::GenericConfigLocation, "shop.ini"));
  out.out_dir = value("out-dir", in_folder(QStandardPaths::GenericDataLocation, "sheets"));
  out.port = parser.value("port");
  out.profile = parser.value("profile");
  out.shots = parser.value("shots");
  out.visit = parser.value("visit");
  out.windowed = parser.isSet("windowed") || parser.isSet("size");
  out.first_start = out.shots.isEmpty() && !QFileInfo::exists(out.settings);
  out.trace = parser.isSet("trace");
  out.screen_keyboard = parser.isSet("screen-keyboard");
  out.language = parser.value("language");
  if (!out.language.isEmpty() && !QStringList{"en", "es", "fr"}.contains(out.language))
    return tl::unexpected("--language " + out.language + "; expected en, es or fr");
  out.theme = parser.value("theme");
  if (!out.theme.isEmpty() && !QStringList{"light", "dark", "contrast"}.contains(out.theme))
    return tl::unexpected("--theme " + out.theme + "; expected light, dark or contrast");
  if (parser.isSet("size")) {
    const auto size = size_from(parser.value("size"));
    if (!size) return tl::unexpected("--size " + parser.value("size") + "; expected e.g. 1280x800");
    out.size = *size;
  }
  if (parser.isSet("clock")) {
    out.clock = Instant::parse(parser.value("clock").toStdString());
    if (!out.clock)
      return tl::unexpected("--clock " + parser.value("clock") + "; expected e.g. 2026-06-14T09:00:00-05:00");
  }
  return out;
}

}  // namespace brimline
