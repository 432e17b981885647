// SPDX-License-Identifier: GPL-3.0-or-later
// What the checks and the demand test say, in the reader's language.
#pragma once

#include <string>

#include "analysis/panel/check.h"
#include "analysis/panel/demand.h"
#include "station/wording/words.h"

namespace brimline {

std::string statement_text(const Words& words, const Statement& statement);
std::string check_text(const Words& words, const Check& check);
std::string demand_text(const Words& words, const DemandResult& result);

}  // namespace brimline
