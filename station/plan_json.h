// SPDX-License-Identifier: GPL-3.0-or-later
// The JSON form of a plan, `brimline-plan/1`.
#pragma once

#include <nlohmann/json_fwd.hpp>

#include "analysis/treatment/plan.h"

namespace brimline {

class JsonFields;

// Null where a plan has no such thing; a vessel prediction that is missing is left out.
nlohmann::ordered_json plan_to_json(const Plan& plan);

// The plan in `from`; faults are noted there. Null counts as absent.
Plan read_plan(JsonFields& from);

}  // namespace brimline
