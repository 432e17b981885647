// SPDX-License-Identifier: GPL-3.0-or-later
// Everything in the records as tables: customers.csv, vessels.csv, visits.csv, readings.csv, steps.csv. Each
// begins with its columns; units stand in the columns' names or in a column `unit`. RFC 4180, UTF-8.
#pragma once

#include <map>
#include <string>
#include <vector>

#include "station/records/progress.h"
#include "station/store/store.h"

namespace brimline {

enum class Tables { keep_existing, replace };

// The names of the files, in their order.
const std::vector<std::string>& table_files();
// Those of them that are in `folder` already.
std::vector<std::string> tables_there(const std::string& folder);

// Writes all five into `folder`, made where it is missing, as the records stand at one moment; the rows of
// each file. Files that are there are replaced only where that is said; nothing appears where it fails or is
// stopped. Files are readable by their owner alone (0600): they hold people's addresses.
Stored<std::map<std::string, std::int64_t>> write_tables(Store& store, const std::string& folder,
                                                         Tables existing, const Progress& progress = {});

}  // namespace brimline
