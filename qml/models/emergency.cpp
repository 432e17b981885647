// SPDX-License-Identifier: GPL-3.0-or-later
#include "qml/models/emergency.h"

#include <QStringList>
#include <QVariantMap>

namespace brimline {

QVariantList emergency_cards(const EmergencyCard& card) {
  QVariantList cards;
  for (const EmergencyCard::Part& part : card.parts) {
    QStringList lines;
    for (const std::string& line : part.lines) lines.append(QString::fromStdString(line));
    cards.append(QVariantMap{{"title", QString::fromStdString(part.title)}, {"lines", lines}});
  }
  return cards;
}

QVariantList emergency_numbers(const EmergencyCard& card) {
  QVariantList out;
  for (const EmergencyNumber& call : card.numbers)
    out.append(QVariantMap{{"name", QString::fromStdString(call.label)},
                           {"number", QString::fromStdString(call.number)}});
  return out;
}

}  // namespace brimline
