// SPDX-License-Identifier: GPL-3.0-or-later
// Inside of the checks: what a check looks at, how it speaks, and the tables of the check_*.cpp files.
#pragma once

#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "analysis/panel/analyte.h"
#include "analysis/panel/check.h"
#include "analysis/panel/panel.h"

namespace brimline {

// What a check may look at. `panel` holds the values as read, chlorine not turned into bromine.
struct Look {
  const Bottle& bottle;
  const Vessel& vessel;
  std::span<const Bottle> earlier;
  std::optional<Instant> now;
  const Supplies& supplies;
  CheckedPanel panel;

  const CheckedValue* value(std::string_view analyte) const { return panel.find(analyte); }
  // Read and inside the range of its method.
  std::optional<Measured> inside(std::string_view analyte) const;
  bool uses(Sanitizer sanitizer) const { return vessel.sanitizer == sanitizer; }
  bool shows(Sign sign) const;
  // Added at most `days` before the bottle was taken; days not told count as recent.
  bool added(std::string_view chemical, double days) const;
  // Hours from filling to testing; absent where a time is missing or they contradict.
  std::optional<double> age_h() const;
};

// Collects what one check says.
class Remarks {
 public:
  Remarks(std::string_view id, std::vector<Check>& out) : id_(id), out_(out) {}
  void say(Verdict verdict, std::vector<AnalyteId> analytes, const char* pattern,
           std::vector<StatementTerm> terms = {}) {
    out_.push_back(
        {std::string(id_), std::move(analytes), verdict, Statement{"check", pattern, std::move(terms)}});
  }

 private:
  std::string_view id_;
  std::vector<Check>& out_;
};

struct CheckRow {
  std::string_view id;
  void (*run)(const Look&, Remarks&);
};

// One table a file, one idea a file.
std::span<const CheckRow> range_checks();       // the end of a method's range, dilution
std::span<const CheckRow> repeat_checks();      // repeats and second methods
std::span<const CheckRow> sample_checks();      // age, warmth and story of the bottle
std::span<const CheckRow> chlorine_checks();    // free, total, bleaching, what reads as chlorine
std::span<const CheckRow> sanitizer_checks();   // bromine, biguanide, peroxide
std::span<const CheckRow> balance_checks();     // pH and alkalinity
std::span<const CheckRow> stabilizer_checks();  // cyanuric acid
std::span<const CheckRow> mineral_checks();     // hardness, salt, dissolved solids, metals, nutrients
std::span<const CheckRow> history_checks();     // against the bottles before
std::span<const CheckRow> vessel_checks();      // whose water it is to judge
std::span<const CheckRow> supply_checks();      // reagents and instruments

}  // namespace brimline
