// SPDX-License-Identifier: GPL-3.0-or-later
// Pictures of every place, for looking at and for the manual.
#pragma once

#include <QString>

#include "qml/kiosk.h"

namespace brimline {

// Writes 01_arrivals.png, 02_bottle.png and so on into `folder`; false where one cannot be written.
bool make_shots(Kiosk& kiosk, const QString& folder);

}  // namespace brimline
