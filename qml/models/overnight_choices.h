// SPDX-License-Identifier: GPL-3.0-or-later
// What the clerk chooses of an overnight test: reach, sample, bleach, warmth. Rows, one list a fact.
#pragma once

#include <QVariantList>
#include <QVariantMap>

#include "station/overnight/overnight_test.h"
#include "station/wording/words.h"

namespace brimline {

QVariantList overnight_options(const Words& words, const QString& fact);  // {key, word}
QVariantMap overnight_choices(const OvernightTest& test);                 // fact -> key
void set_overnight_choice(OvernightTest& test, const QString& fact, const QString& key);

}  // namespace brimline
