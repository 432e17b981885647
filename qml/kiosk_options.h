// SPDX-License-Identifier: GPL-3.0-or-later
// The command line of the kiosk.
#pragma once

#include <QSize>
#include <QString>
#include <QStringList>

#include <optional>

#include <tl/expected.hpp>

#include "analysis/instant.h"

namespace brimline {

struct KioskOptions {
  QString database;       // sqlite:FILE or postgresql://...
  QString settings;       // the shop's INI file
  QString port, profile;  // empty: those of the settings
  QString out_dir;        // where PDFs go
  bool windowed = false;
  QSize size{1280, 800};
  std::optional<Instant> clock;  // what the clock shows at start; absent: the machine's
  QString shots;                 // a folder for pictures of every place; empty: none are made
  QString visit;                 // a brimline-visit/1 file put on the counter at start
  bool first_start = false;      // asks what a new counter needs to know
  bool trace = false;  // lines on standard output: "frame" at the first one, each reading once it is durable
  bool screen_keyboard = false;
  QString language;  // of the screen: en, es or fr; empty: as the settings say
  QString theme;     // light, dark or contrast; empty: as the settings say
};

// The error is one line for standard error. Nothing where only help or the version was asked for,
// which is then printed.
tl::expected<std::optional<KioskOptions>, QString> kiosk_options(const QStringList& arguments);

}  // namespace brimline
