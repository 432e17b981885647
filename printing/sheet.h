// SPDX-License-Identifier: GPL-3.0-or-later
// The take-home sheet as words: everything the paper says, nothing about where it stands.
//
//   const Sheet sheet = make_sheet(visit, earlier, shop, words, options);
//   write_pdf(sheet, "sheet.pdf", Paper::letter);
#pragma once

#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "station/visit.h"
#include "station/wording/shop_details.h"
#include "station/wording/words.h"

namespace brimline {

// The word-sized picture inside a sentence: a thin rule over the method's range, the target as a
// bracket, this reading as a filled mark as wide as its uncertainty, last visit's as a hollow one.
struct Waterline {
  double low = 0, high = 1;  // the method's range, in the analyte's unit
  Target target;
  double value = 0;
  double half_width = 0;       // one standard deviation; 0 where it is not known
  std::optional<double> last;  // last visit's reading
  friend bool operator==(const Waterline&, const Waterline&) = default;
};

using Piece = std::variant<std::string, Waterline>;
using Sentence = std::vector<Piece>;

// The sentence without its pictures.
std::string plain(const Sentence& sentence);

struct Labelled {
  std::string label, value;
};

// A box to tick; a step with portions has one a portion, each with its time.
struct Tick {
  std::string label;  // empty where the step has one box only
};

struct SheetStep {
  std::string day;    // "Sunday 14 June" where this step is the first of its day; else empty
  std::string when;   // "tonight 20:00"; without home_at "first", "4 hours later"
  std::string clock;  // how `when` ends, "20:00"; empty without home_at
  int order = 1;
  std::string text;    // exactly the plan's
  std::string amount;  // one portion, as the customer measures it; empty where nothing is added
  std::vector<Tick> ticks;
  std::vector<std::string> cautions;
  std::string cautions_as;  // "the same as in step 3", where these are word for word those of an earlier step
};

// A row of the table of readings; a cell with nothing to say is empty. Figures are in `unit`.
struct SheetRow {
  std::string name, unit, value, spread, target, expected, last, fill;
  std::string standing;  // "low", "high", "at the edge" of the target; empty inside it, or where it has none
};

// One reading over the visits of the vessel, oldest first; the last point is this bottle.
struct Chart {
  struct Point {
    std::string date;  // "14 Jun"; empty where the visit has no time
    double value = 0;  // in the analyte's unit
    double days = 0;   // since the first point
  };
  std::string name, unit;
  Target target;
  std::string low, high;  // the target's ends as words; empty where there is none
  std::vector<Point> points;
};

// Titles and fixed labels, in the sheet's language.
struct SheetTitles {
  std::string sheet, findings, before, steps, caution, still_open, watch, come_back, readings, charts,
      last_plan, trouble, page;
  std::string scan;                  // beneath the QR
  std::vector<std::string> columns;  // name, value, target, expected, last, fill
};

struct Sheet {
  std::string language;
  SheetTitles titles;
  ShopDetails shop;
  std::vector<Labelled> who;           // whose water, which bottle, when
  std::string question, answer;        // "May we swim?", "No – not before tomorrow 08:00, after step 3."
  std::vector<std::string> because;    // what keeps people out, "pH is 8.20; it should be at most 7.80."
  std::optional<std::string> why_not;  // printed large; no doses then
  std::vector<Sentence> findings;
  std::string waterline_key;        // how to read the small picture; empty where there is none
  std::vector<std::string> before;  // label and local code first, then the plan's cautions
  std::vector<SheetStep> steps;
  std::vector<std::string> still_open;  // what stands outside its target at the end, why, and what comes next
  std::vector<std::string> watch;
  std::string come_back;
  std::vector<SheetRow> rows;
  std::string rows_note;
  std::vector<std::string> last_plan;  // whether last visit's plan worked, a finding each
  std::vector<Chart> charts;
  std::vector<std::string> trouble;  // when something goes wrong, and storing
  std::string code;                  // opaque, for the QR (station/wording/visit_code.h)
  std::string footer;                // on every page, beside the page number
};

struct SheetOptions {
  // Targets by analyte for readings that have no finding; empty: those of the plan's own regime.
  std::map<AnalyteId, Target> targets;
  // Visits of the vessel before this one, oldest first, for the charts.
  std::vector<Visit> history;
};

// The visit with its plan as told; with no plan the sheet has the readings alone. `earlier` is the
// visit before of the same vessel, or null.
Sheet make_sheet(const Visit& visit, const Visit* earlier, const ShopDetails& shop, const Words& words,
                 const SheetOptions& options = {});

}  // namespace brimline
