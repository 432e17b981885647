// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/analysis/water/reference_table.h"

#include <cmath>
#include <cstdio>
#include <fstream>
#include <sstream>

namespace brimline::reference {
namespace {

std::vector<std::string> cells_of(const std::string& line) {
  std::vector<std::string> cells;
  std::istringstream in(line);
  for (std::string cell; std::getline(in, cell, ',');) cells.push_back(cell);
  if (line.ends_with(',')) cells.emplace_back();
  return cells;
}

}  // namespace

std::optional<double> Row::number(const std::string& column) const {
  const auto found = cells_.find(column);
  if (found == cells_.end() || found->second.empty()) return std::nullopt;
  return std::stod(found->second);
}

std::vector<Row> rows(const std::string& name) {
  std::ifstream in(std::string(BRIMLINE_SOURCE_DIR) + "/tests/data/reference/" + name);
  std::vector<Row> out;
  std::vector<std::string> header;
  for (std::string line; std::getline(in, line);) {
    if (line.starts_with("#") || line.empty()) continue;
    const auto cells = cells_of(line);
    if (header.empty()) {
      header = cells;
      continue;
    }
    std::map<std::string, std::string> row;
    for (size_t i = 0; i < header.size() && i < cells.size(); ++i) row[header[i]] = cells[i];
    out.emplace_back(std::move(row));
  }
  return out;
}

WaterReadings readings(const Row& row, const std::string& prefix) {
  const auto reading = [&](const char* name) { return row.number(prefix + name); };
  WaterReadings r;
  r.temperature = Temperature::celsius(row.need("temperature_c"));
  r.ph = reading("ph").value();
  r.total_alkalinity = reading("total_alkalinity_mg_l_caco3").value();
  r.calcium_hardness = reading("calcium_hardness_mg_l_caco3");
  r.magnesium_hardness = reading("magnesium_hardness_mg_l_caco3");
  r.cyanuric_acid = reading("cyanuric_acid_mg_l");
  r.borate = reading("borate_mg_l_b");
  r.free_chlorine = reading("free_chlorine_mg_l_cl2");
  r.sulfate = reading("sulfate_mg_l");
  r.background_nacl = reading("background_nacl_mg_l");
  r.tds = reading("tds_mg_l");
  return r;
}

void Worst::see(double deviation, const std::string& row) {
  ++count;
  if (!(std::abs(deviation) > std::abs(value))) {
    if (!std::isnan(deviation)) return;
    deviation = INFINITY;
  }
  value = deviation;
  id = row;
}

void report(const char* table, const char* what, const Worst& worst, double bound) {
  std::printf("%-12s %-34s rows %4d  worst %+11.3g (%s)  bound %g\n", table, what, worst.count, worst.value,
              worst.id.c_str(), bound);
}

}  // namespace brimline::reference
