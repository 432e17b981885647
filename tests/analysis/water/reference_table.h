// SPDX-License-Identifier: GPL-3.0-or-later
// A table of tests/data/reference: comment lines skipped, columns by name, an empty cell is nothing.
#pragma once

#include <map>
#include <optional>
#include <string>
#include <vector>

#include "analysis/water/water.h"

namespace brimline::reference {

class Row {
 public:
  explicit Row(std::map<std::string, std::string> cells) : cells_(std::move(cells)) {}
  const std::string& text(const std::string& column) const { return cells_.at(column); }
  std::optional<double> number(const std::string& column) const;  // nothing if empty or no such column
  double need(const std::string& column) const { return number(column).value(); }

 private:
  std::map<std::string, std::string> cells_;
};

// Every row of tests/data/reference/NAME.
std::vector<Row> rows(const std::string& name);

// Readings of a row whose columns have `prefix` before their names ("start_").
WaterReadings readings(const Row& row, const std::string& prefix = "");

// Largest deviation seen, and where.
struct Worst {
  double value = 0;
  std::string id;
  int count = 0;
  void see(double deviation, const std::string& row);
};
// Prints one line of the worst-error table.
void report(const char* table, const char* what, const Worst& worst, double bound);

}  // namespace brimline::reference
