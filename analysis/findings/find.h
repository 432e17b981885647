// SPDX-License-Identifier: GPL-3.0-or-later
// What the water does, worst first: health, equipment, surface, clarity, comfort, upkeep, reading.
#pragma once

#include <vector>

#include "analysis/findings/finding.h"
#include "analysis/findings/targets.h"
#include "analysis/treatment/situation.h"

namespace brimline {

// Ranked from 1; `text` is left empty, the sentence of each id stands in station/wording.
std::vector<Finding> find_all(const Situation& s, const TargetSet& targets);

// Whether a finding of this id keeps everybody out of the water until a retest has shown it gone.
bool closes_water(std::string_view finding_id);

// What a reading of this vessel's sanitizer is called; nothing where none is named.
std::optional<AnalyteId> sanitizer_analyte(const Vessel& vessel);

bool has_finding(const std::vector<Finding>& findings, std::string_view id);

}  // namespace brimline
