// SPDX-License-Identifier: GPL-3.0-or-later
// The numbers behind a plan: each dose and each prediction, what it was worked out from, and its error.
#pragma once

#include <QVariantList>

#include "station/visit.h"
#include "station/wording/words.h"

namespace brimline {

// {name, number, detail}, in the order of the steps; then the water at the plan's end, and the proof.
QVariantList plan_number_rows(const Words& words, const Visit& visit, const Plan& plan);

}  // namespace brimline
