// SPDX-License-Identifier: GPL-3.0-or-later
// Where the numbers of Then and now come from.
#pragma once

#include <QVariantList>

#include "station/compare/compare.h"

namespace brimline {

// What was expected of each reading, then the share replaced, the volume and what is taken for evaporation:
// {name, number: "7.60 ± 0.25", detail}. `now` is the later visit.
QVariantList then_number_rows(const Words& words, const Comparison& comparison,
                              const std::optional<VolumeFound>& volume, const Visit& now);

}  // namespace brimline
