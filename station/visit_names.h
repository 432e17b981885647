// SPDX-License-Identifier: GPL-3.0-or-later
// The contract's spellings of a visit's and a plan's own words; used as those of
// analysis/panel/names.h.
#pragma once

#include "analysis/findings/finding.h"
#include "analysis/panel/names.h"
#include "analysis/treatment/plan.h"
#include "station/visit.h"

namespace brimline {

template <>
std::span<const Named<Units>> names();
template <>
std::span<const Named<Concern>> names();
template <>
std::span<const Named<Action>> names();

}  // namespace brimline
