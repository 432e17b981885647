// SPDX-License-Identifier: GPL-3.0-or-later
// The words a clerk chooses from, and the question each list answers: rows, one list a fact.
#pragma once

#include <QString>
#include <QVariantList>

namespace brimline {

// {key, word} a choice; empty for a fact that is typed or not known.
QVariantList choices_for(const QString& fact);
// The word of one choice; empty where the key is not of that fact.
QString word_for(const QString& fact, const QString& key);
// "Sanitized with"; empty for a fact with no question of its own.
QString question_for(const QString& fact);

}  // namespace brimline
