// SPDX-License-Identifier: GPL-3.0-or-later
// What the shop sets itself, a field each, on the pages of the Back room that it stands on.
#pragma once

#include <QList>
#include <QVariantMap>

#include "qml/models/settings.h"

namespace brimline {

// Of the page `shelf`, as SettingsForm.qml draws them.
QList<QVariantMap> settings_fields(const QString& shelf, const Settings& settings);
// True where the fields are to be shown anew: it was a choice.
bool set_field(const QString& key, const QString& text, Settings& settings);

}  // namespace brimline
