// SPDX-License-Identifier: GPL-3.0-or-later
// The lists of the back room as rows: name, detail, number.
#pragma once

#include <QList>
#include <QVariantMap>

#include "analysis/panel/analyte.h"
#include "qml/models/settings.h"

namespace brimline {

QList<QVariantMap> instrument_rows(const QString& profile,
                                   const QString& folder);  // its methods, their ranges
// "photometer, spread 0.05 and 2 %; from memory"
QString method_words(const AnalyteKind& kind, const MethodKind& method);
QList<QVariantMap> method_rows();                     // how each reading may be taken
QVariantList profile_choices(const QString& folder);  // built in, and the shop's own
// Which instrument, its port and its profile: {key, label, value, options}.
QList<QVariantMap> instrument_fields(const Settings& settings, int line, const QString& folder);
QVariantList
code_choices();  // target sets of public codes, and none                              // {key, word}

}  // namespace brimline
