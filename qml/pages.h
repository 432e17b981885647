// SPDX-License-Identifier: GPL-3.0-or-later
// Every page of the counter, one after the other: for pictures of them, and for what is measured on them.
#pragma once

#include <QString>

#include <functional>

#include "qml/kiosk.h"

namespace brimline {

// Brings up every place, every shelf of the Back room and what opens over them, lets each come to rest, and
// calls `see` with its name. What the bottle on the counter does not offer is left out.
void each_page(Kiosk& kiosk, const std::function<void(const QString& name)>& see);

}  // namespace brimline
