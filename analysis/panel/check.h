// SPDX-License-Identifier: GPL-3.0-or-later
// Which readings can be believed: rules over one bottle, its vessel and the bottles before it.
#pragma once

#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "analysis/panel/bottle.h"
#include "analysis/panel/names.h"
#include "analysis/panel/statement.h"
#include "analysis/panel/supplies.h"
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
  Statement statement;
  std::string text() const { return statement.text(); }  // in English
};

// All that fire, in the table's order. `earlier`: bottles of the same vessel, oldest first.
// `now`: the counter's clock; absent: not compared with. `supplies`: reagents and instrument checks on
// record.
std::vector<Check> check_bottle(const Bottle& bottle, const Vessel& vessel,
                                std::span<const Bottle> earlier = {},
                                std::optional<Instant> now = std::nullopt, const Supplies& supplies = {});

// Ids of every check there is, in the table's order.
std::vector<std::string_view> check_ids();

}  // namespace brimline
