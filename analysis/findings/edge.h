// SPDX-License-Identifier: GPL-3.0-or-later
// Whether a value is outside its target, or only seems so within its own error.
//
// A value is below or above only where it is so by more than 1.645 of its standard deviations: at most one
// value in twenty that conforms is then called outside (guarded rejection, JCGM 106:2012, 8.3.3; from
// memory). One that is outside by less is at the edge: to be read again, and no reason for a dose.
#pragma once

#include "analysis/findings/finding.h"
#include "analysis/panel/uncertainty.h"

namespace brimline {

inline constexpr double kSureSds = 1.645;  // 95 %, one-sided, of a normal error

enum class Standing { inside, low_edge, high_edge, below, above };

// `measured` and `target` in the same unit; an absent side of the target is open.
Standing standing(const Measured& measured, const Target& target);
bool at_edge(const Measured& measured, const Target& target);

}  // namespace brimline
