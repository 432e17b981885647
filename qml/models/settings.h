// SPDX-License-Identifier: GPL-3.0-or-later
// What a shop sets itself: its name and numbers, the instrument's line, the paper. An INI file.
#pragma once

#include <QString>

#include <vector>

#include "station/wording/shop_details.h"

namespace brimline {

struct InstrumentLine {
  QString port, profile;  // an empty port: nothing is listened to
  friend bool operator==(const InstrumentLine&, const InstrumentLine&) = default;
};
constexpr int kMostInstruments = 8;

struct Settings {
  ShopDetails shop;
  std::vector<InstrumentLine> lines{kMostInstruments};
  QString paper = QStringLiteral("letter");
  QString language = QStringLiteral("en");  // of the screen
  QString units = QStringLiteral("us");     // of a new customer: us or metric
  QString theme = QStringLiteral("light");  // light, dark or contrast
  bool motion = true;
  bool sounds = true;
  QString printer;          // queue's name; empty: the machine's usual one
  QString backup_folder;    // empty: beside the records
  int keep_months = 0;      // names and addresses, after the last bottle; 0: as long as they are not erased
  int idle_minutes = 10;    // before the counter asks for a PIN again; 0: never
  bool hide_names = false;  // on Arrivals, where customers see the screen
  QString code;             // target set for public water; empty: the shop's own targets
  friend bool operator==(const Settings&, const Settings&) = default;
};

// Missing keys keep their defaults; a missing file is all defaults.
Settings load_settings(const QString& file);
// False where the file cannot be written.
bool save_settings(const Settings& settings, const QString& file);

}  // namespace brimline
