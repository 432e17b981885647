// SPDX-License-Identifier: GPL-3.0-or-later
// Customers, their vessels and earlier readings out of tables made elsewhere. First everything is looked
// through and nothing kept; then, if the clerk says so, it is kept, and the same tables again keep nothing
// twice.
//
//   auto import = look_through(store, {{"customers.csv"}, {"readings.csv"}});
//   if (import->faults.count() == 0) keep_import(store, *import);
//
// Columns, in any order and case (README.md, "Tables"). Customers: id, name, phone, street, email, language,
// units; the vessel on the same line: vessel_id, kind, use, place, in_ground, surface, volume, volume_unit,
// sanitizer, water_temperature_c ... Readings: customer_id or name and phone, vessel_id, taken_at, and either
// analyte, value, unit (one reading a line) or a column for each analyte (one bottle a line).
#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include "station/records/import_table.h"
#include "station/records/progress.h"
#include "station/store/store.h"

namespace brimline {

struct ImportFiles {
  std::vector<std::string> customers, readings;  // paths
};

struct ImportCount {
  std::int64_t fresh = 0;  // not in the records yet
  std::int64_t there = 0;  // in the records already: they stay as they are, what they lack is filled in
  friend bool operator==(const ImportCount&, const ImportCount&) = default;
};

struct ImportCounts {
  ImportCount customers, vessels, visits, readings;
  friend bool operator==(const ImportCounts&, const ImportCounts&) = default;
};

struct ImportedVessel {
  Vessel vessel;
  std::string customer;
};

struct Import {
  std::vector<Customer> customers;  // new ones, and those whose card gains something
  std::vector<ImportedVessel> vessels;
  std::vector<Visit> visits;
  ImportCounts counts;
  ImportRemarks faults;  // lines that cannot be taken; the rest can
  ImportRemarks notes;   // what is left as it is in the records, columns left out
};

// Looks the files through against the records and changes nothing. An id that a line does not give is made of
// what it says, so it is the same every time. The error: the records cannot be read, or it was stopped.
Stored<Import> look_through(Store& store, const ImportFiles& files, const Progress& progress = {});

// Keeps what was found sound, some hundred at a time so that counters go on; what came into the records
// meanwhile is passed over. Stopped, what was kept stays, and the same again goes on from there.
Stored<ImportCounts> keep_import(Store& store, const Import& import, const ImportFiles& files,
                                 const Progress& progress = {});

}  // namespace brimline
