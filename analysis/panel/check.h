// SPDX-License-Identifier: GPL-3.0-or-later
// Which readings can be believed: rules over one bottle, its vessel and the bottles before it.
#pragma once

#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "analysis/panel/bottle.h"
#include "analysis/panel/names.h"
#include "analysis/panel/vessel.h"

namespace brimline {

// What the clerk should do, mildest first. Ordered: worse compares greater.
enum class Verdict { note, repeat, dilute, reject, fresh_sample };
template <>
std::span<const Named<Verdict>> names();

struct Check {
  std::string id;  // for ever
  std::vector<AnalyteId> analytes;
  Verdict verdict = Verdict::note;
  std::string pattern;              // English sentence with %1, %2 ...: the key of a translation
  std::vector<std::string> values;  // for %1, %2 ...
  std::string text() const;         // the English sentence
};

// All that fire, in the table's order. `earlier`: bottles of the same vessel, oldest first.
// `now`: the counter's clock; absent: not compared with.
std::vector<Check> check_bottle(const Bottle& bottle, const Vessel& vessel,
                                std::span<const Bottle> earlier = {},
                                std::optional<Instant> now = std::nullopt);

// Ids of every check there is, in the table's order.
std::vector<std::string_view> check_ids();

}  // namespace brimline
