// SPDX-License-Identifier: GPL-3.0-or-later
// What the desks have done for them off the screen's thread: pure functions of values, put together in main.
#pragma once

#include <functional>
#include <string>
#include <vector>

#include <tl/expected.hpp>

#include "analysis/panel/supplies.h"
#include "printing/paper.h"
#include "station/compare/compare.h"
#include "station/overnight/overnight_test.h"
#include "station/visit.h"
#include "station/wording/shop_details.h"

namespace brimline {

struct SheetJob {
  Visit visit;                 // with its plan as told
  std::vector<Visit> earlier;  // the visits before, of the same vessel, oldest first
  ShopDetails shop;
  std::string language;  // en, es, fr
  Paper paper = Paper::letter;
  bool large = false;
  bool print = false;   // to the printer as well as to a file
  std::string printer;  // queue; empty: the machine's usual one
};

struct LabelJob {
  OvernightTest test;
  Visit visit;
  Instant now;
  Paper paper = Paper::letter;
  bool print = false;   // to the printer as well as to a file
  std::string printer;  // queue; empty: the machine's usual one
};

struct Services {
  // `overnight_due`: the bottle's overnight test is read then. `earlier`: of the same vessel, oldest first.
  // `language` of the plan's sentences.
  std::function<tl::expected<Plan, std::string>(
      const Visit& visit, const std::vector<Visit>& earlier, const std::string& language,
      const ShopDetails& shop, std::optional<Instant> overnight_due, const Supplies& supplies)>
      plan;
  // Visits of one vessel, oldest first, two or more.
  std::function<Comparison(const std::vector<Visit>& visits, const std::string& language)> compare;
  // Where the sheet went, as a sentence.
  std::function<tl::expected<std::string, std::string>(const SheetJob& job)> sheet;
  // The labels of an overnight test; where they went, as a sentence.
  std::function<tl::expected<std::string, std::string>(const LabelJob& job)> labels;
};

}  // namespace brimline
