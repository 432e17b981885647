// SPDX-License-Identifier: GPL-3.0-or-later
// The lists of the back room as rows: name, detail, number.
#pragma once

#include <QList>
#include <QVariantMap>

namespace brimline {

QList<QVariantMap> instrument_rows(const QString& profile);  // its methods, their ranges
QList<QVariantMap> method_rows();                            // how each reading may be taken
QVariantList profile_choices();
QVariantList
code_choices();  // target sets of public codes, and none                              // {key, word}

}  // namespace brimline
