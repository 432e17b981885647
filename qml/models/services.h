// SPDX-License-Identifier: GPL-3.0-or-later
// What the desks have done for them off the screen's thread: pure functions of values, put together in main.
#pragma once

#include <functional>
#include <map>
#include <optional>
#include <string>
#include <vector>

#include <tl/expected.hpp>

#include "analysis/panel/supplies.h"
#include "analysis/treatment/hand.h"
#include "printing/paper.h"
#include "printing/queue.h"
#include "station/compare/compare.h"
#include "station/overnight/overnight_test.h"
#include "station/shelf/shelf.h"
#include "station/visit.h"
#include "station/week/week.h"
#include "station/wording/shop_details.h"

namespace brimline {

enum class PaperKind { sheet, shelf_list, staff_copy, bottle_label, emergency_card, reminder, week };

struct SheetJob {
  PaperKind kind = PaperKind::sheet;
  Visit visit;                 // with its plan as told
  std::vector<Visit> earlier;  // the visits before, of the same vessel, oldest first
  ShopDetails shop;
  std::string language;               // of the paper: en, es, fr
  std::string staff_language = "en";  // of what is said of the printing
  Paper paper = Paper::letter;
  bool large = false;
  bool print = false;   // to the printer as well as to a file
  std::string printer;  // queue; empty: the machine's usual one
  Instant now;          // of a reminder
  std::optional<OwnersWeek> week;
};

// What was put out: a sentence that says where, and the job to be watched where one was sent.
struct PaperOut {
  std::string text;
  std::optional<PrintJob> job;
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
  // The same plan as staff changed it, proven again; the error is the refusal in words.
  std::function<tl::expected<Plan, std::string>(
      const Visit& visit, const std::vector<Visit>& earlier, const std::string& language,
      const ShopDetails& shop, std::optional<Instant> overnight_due, const Supplies& supplies,
      const std::vector<HandOrder>& orders)>
      change;
  std::function<Shelf()> shelf;  // the products that may be planned with
  // Visits of one vessel, oldest first, two or more.
  std::function<Comparison(const std::vector<Visit>& visits, const std::string& language)> compare;
  std::function<tl::expected<PaperOut, std::string>(const SheetJob& job)> sheet;
  // What the shop wants of each analyte in the visit's vessel, in the analyte's unit; it hangs on what of
  // cyanuric acid (mg/L) and pH was read last, maybe in another visit.
  std::function<std::map<AnalyteId, Target>(const Visit& visit, std::optional<double> cyanuric_acid,
                                            std::optional<double> ph)>
      targets;
  // What the print service says of a job now, in the language; and taking one back.
  std::function<JobReport(const PrintJob& job, const std::string& language)> report;
  std::function<bool(const PrintJob& job)> take_back;
  // The labels of an overnight test; where they went, as a sentence.
  std::function<tl::expected<std::string, std::string>(const LabelJob& job)> labels;
};

}  // namespace brimline
