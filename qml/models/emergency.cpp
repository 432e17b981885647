// SPDX-License-Identifier: GPL-3.0-or-later
#include "qml/models/emergency.h"

#include <QCoreApplication>
#include <QStringList>
#include <QVariantMap>

namespace brimline {
namespace {

// Rinsing: "at least 15 minutes", Arizona Poison and Drug Information Center. No container is sniffed:
// Illinois Poison Center. Vomiting is not induced; symptoms can come hours later; leaving upwind and
// touching nothing: common first-aid practice, from memory.
struct CardLine {
  const char* title;
  const char* line;
};

constexpr const char* kFumes = QT_TRANSLATE_NOOP("emergency", "Fumes breathed in");
constexpr const char* kSplash = QT_TRANSLATE_NOOP("emergency", "Splash in the eyes or on the skin");
constexpr const char* kSwallowed = QT_TRANSLATE_NOOP("emergency", "Swallowed");
constexpr const char* kMixed = QT_TRANSLATE_NOOP("emergency", "Chemicals mixed, wet or fuming");

constexpr CardLine kLines[] = {
    {kFumes, QT_TRANSLATE_NOOP("emergency", "Get them into fresh air, and keep others out.")},
    {kFumes, QT_TRANSLATE_NOOP("emergency", "Trouble breathing: call the emergency number at once.")},
    {kFumes, QT_TRANSLATE_NOOP("emergency",
                               "It can get worse hours later: call the poison line even if they feel well.")},
    {kSplash, QT_TRANSLATE_NOOP("emergency", "Rinse with running water at once, for at least 15 minutes.")},
    {kSplash,
     QT_TRANSLATE_NOOP("emergency", "Take out contact lenses; take off what the chemical has touched.")},
    {kSplash,
     QT_TRANSLATE_NOOP("emergency",
                       "Dry powder: brush it off the skin before you rinse. Then call the poison line.")},
    {kSwallowed, QT_TRANSLATE_NOOP("emergency", "Do not make them vomit.")},
    {kSwallowed, QT_TRANSLATE_NOOP("emergency", "Call the poison line with the label in your hand.")},
    {kSwallowed,
     QT_TRANSLATE_NOOP("emergency", "Unconscious, or trouble breathing: call the emergency number.")},
    {kMixed, QT_TRANSLATE_NOOP("emergency", "Leave at once, upwind. Keep everyone out.")},
    {kMixed, QT_TRANSLATE_NOOP("emergency", "Call the emergency number from outside.")},
    {kMixed,
     QT_TRANSLATE_NOOP("emergency",
                       "Do not go back to air the room. Add no water. Move nothing. Sniff at nothing.")},
};

QString say(const char* text) {
  return QCoreApplication::translate("emergency", text);
}

}  // namespace

QVariantList emergency_cards() {
  QVariantList cards;
  for (const char* title : {kFumes, kSplash, kSwallowed, kMixed}) {
    QStringList lines;
    for (const CardLine& row : kLines)
      if (row.title == title) lines.append(say(row.line));
    cards.append(QVariantMap{{"title", say(title)}, {"lines", lines}});
  }
  return cards;
}

QVariantList emergency_numbers(const ShopDetails& shop) {
  QVariantList out;
  for (const EmergencyNumber& entry : shop.emergency)
    out.append(QVariantMap{{"name", QCoreApplication::translate("sheet", entry.label.c_str())},
                           {"number", QString::fromStdString(entry.number)}});
  if (out.isEmpty())
    out.append(
        QVariantMap{{"name", say(QT_TRANSLATE_NOOP("emergency", "No number is set: Back room, The shop"))},
                    {"number", say(QT_TRANSLATE_NOOP("emergency", "Your local emergency number"))}});
  return out;
}

}  // namespace brimline
