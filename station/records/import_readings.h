// SPDX-License-Identifier: GPL-3.0-or-later
// The readings' table of an import: one reading a line, or a bottle a line with a column for each analyte.
#pragma once

#include <map>

#include "analysis/panel/analyte.h"
#include "station/records/import_people.h"
#include "station/records/moments.h"

namespace brimline {

class ImportReadings {
 public:
  ImportReadings(Store& store, ImportPeople& people) : store_(store), people_(people) {}

  // Which form the table has; columns of analytes count as known from here on.
  void begin(ImportTable& table, Import& out);
  void read(ImportTable& row, Import& out);
  // Which of the bottles read are new.
  Stored<void> settle(Import& out, const Progress& progress);

  static std::span<const ImportColumn> columns();

 private:
  struct AnalyteColumn {
    size_t index;
    const AnalyteKind* kind;
    std::string unit;                 // from its heading
    std::optional<size_t> unit_from;  // or from a column of its own
  };
  std::optional<Visit*> bottle_on(ImportTable& row);
  void add(ImportTable& row, Visit& visit, const AnalyteKind& kind, const std::string& value,
           const std::string& unit, Import& out);

  Store& store_;
  ImportPeople& people_;
  std::vector<AnalyteColumn> wide_;
  bool long_form_ = false;
  std::map<std::string, Visit> visits_;
  std::vector<std::string> order_;
  std::map<std::string, Fault> first_seen_;  // where each visit's first line stands
};

}  // namespace brimline
