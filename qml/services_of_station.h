// SPDX-License-Identifier: GPL-3.0-or-later
// The kiosk's services done by the station and the printing room.
#pragma once

#include <QString>

#include "qml/models/services.h"

namespace brimline {

// PDFs go to `out_dir`, which is made where it is not there; the till's codes stand in the settings file.
Services services_of_station(const QString& out_dir, const QString& settings_file);

}  // namespace brimline
