// SPDX-License-Identifier: GPL-3.0-or-later
// What the model makes of a bottle, in its vessel: each result with the error that the readings' errors give
// it.
#pragma once

#include <nlohmann/json.hpp>

#include "analysis/treatment/situation.h"

namespace brimline::batch {

// {"background","notes":[...],"refused","vessel_temperature_c","results":{name:{"value","sd"}}}, names and
// units as the columns of `water`; null where pH or alkalinity is not known. Results that hang on a reading
// that was not taken are absent, and a saturation pH that does not exist is null.
nlohmann::ordered_json water_to_json(const Situation& situation);

}  // namespace brimline::batch
