// SPDX-License-Identifier: GPL-3.0-or-later
// tables: everything in the records as CSV, a file for each kind of thing.
#include <iostream>

#include "station/batch/store_input.h"
#include "station/records/tables_out.h"

namespace brimline::batch {

int tables_command(const Arguments& arguments) {
  const auto parsed = parse(arguments, {"--database", "--out"}, {"--replace"});
  if (!parsed) return bad_usage("tables", parsed.error());
  const auto out = parsed->value("--out");
  if (!out || out->empty() || !parsed->positional.empty())
    return bad_usage("tables", "expected --database URL and --out FOLDER");
  const Tables existing = parsed->has("--replace") ? Tables::replace : Tables::keep_existing;
  return with_store("tables", *parsed, Opening::existing, [&](Store& store) {
    const auto rows = write_tables(store, *out, existing);
    if (!rows) return store_failed("tables", rows.error());
    std::cout << "file,rows\r\n";
    for (const std::string& name : table_files()) std::cout << name << "," << rows->at(name) << "\r\n";
    std::cout.flush();
    return std::cout ? kDone : bad_usage("tables", "standard output is closed");
  });
}

}  // namespace brimline::batch
