// SPDX-License-Identifier: GPL-3.0-or-later
// The lists of the back room as rows: name, detail, number.
#pragma once

#include <QList>
#include <QVariantMap>

#include "analysis/panel/analyte.h"
#include "qml/models/settings.h"
#include "station/wording/words.h"

namespace brimline {

// Of the profile, by its key: methods and ranges; before them what of `folder` cannot be used.
QList<QVariantMap> instrument_rows(const QString& profile, const QString& folder, const Words& words);
// "photometer, spread 0.05 and 2 %; from memory"
QString method_words(const AnalyteKind& kind, const MethodKind& method);
QList<QVariantMap> method_rows();  // how each reading may be taken
// Which instrument, its port and its profile, built in or of `folder`.
QList<QVariantMap> instrument_fields(const Settings& settings, int line, const QString& folder);
QVariantList code_choices();  // {key, word}: none, and the target sets of public codes

}  // namespace brimline
