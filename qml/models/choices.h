// SPDX-License-Identifier: GPL-3.0-or-later
// The words a clerk chooses from, and the question each list answers: rows, one list a fact.
#pragma once

#include <QString>
#include <QVariantList>

#include "analysis/panel/analyte.h"

namespace brimline {

// {key, word} a choice; empty for a fact that is typed or not known.
QVariantList choices_for(const QString& fact);
// The word of one choice; empty where the key is not of that fact.
QString word_for(const QString& fact, const QString& key);
// "Sanitized with"; empty for a fact with no question of its own.
QString question_for(const QString& fact);
// The options in the order of their words, as the screen's language sorts them; the first `kept` stay in
// front.
QVariantList by_word(QVariantList options, qsizetype kept = 0);
// An analyte's unit in the language of the screen; empty where it has none.
QString unit_on_screen(const AnalyteKind& kind);

}  // namespace brimline
