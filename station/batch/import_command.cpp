// SPDX-License-Identifier: GPL-3.0-or-later
// import: customers and earlier readings from tables; with --dry-run nothing is kept.
#include <iostream>

#include <QFile>
#include <QTemporaryDir>

#include "station/batch/store_input.h"
#include "station/records/import.h"

namespace brimline::batch {

namespace {

constexpr std::string_view kSqlite = "sqlite:";

void print(const ImportCounts& counts) {
  std::cout << "what,new,there\r\n";
  const auto row = [](const char* what, const ImportCount& count) {
    std::cout << what << "," << count.fresh << "," << count.there << "\r\n";
  };
  row("customers", counts.customers);
  row("vessels", counts.vessels);
  row("visits", counts.visits);
  row("readings", counts.readings);
  std::cout.flush();
}

void complain(const ImportRemarks& remarks, const char* before) {
  for (const Fault& fault : remarks.list()) std::cerr << before << fault.text() << "\n";
  if (remarks.count() > remarks.list().size())
    std::cerr << before << "and " << remarks.count() - remarks.list().size() << " more\n";
}

int import_into(Store& store, const ImportFiles& files, bool dry, bool skip) {
  const auto import = look_through(store, files);
  if (!import) return store_failed("import", import.error());
  complain(import->notes, "note: ");
  complain(import->faults, "");
  const bool sound = import->faults.count() == 0;
  if (!sound && !skip) {
    if (dry) print(import->counts);
    return kBadInput;
  }
  if (dry) {
    print(import->counts);
    return kDone;
  }
  auto kept = keep_import(store, *import, files);
  if (!kept) return store_failed("import", kept.error());
  // Those that were there from the first need no keeping.
  for (const auto of :
       {&ImportCounts::customers, &ImportCounts::vessels, &ImportCounts::visits, &ImportCounts::readings})
    ((*kept).*of).there = (import->counts.*of).there + (import->counts.*of).fresh - ((*kept).*of).fresh;
  print(*kept);
  return kDone;
}

}  // namespace

int import_command(const Arguments& arguments) {
  const auto parsed =
      parse(arguments, {"--database", "--customers", "--readings"}, {"--dry-run", "--skip-faulty"});
  if (!parsed) return bad_usage("import", parsed.error());
  ImportFiles files;
  if (parsed->has("--customers")) files.customers = parsed->values.at("--customers");
  if (parsed->has("--readings")) files.readings = parsed->values.at("--readings");
  if (!parsed->positional.empty() || (files.customers.empty() && files.readings.empty()))
    return bad_usage("import", "expected --database URL and --customers FILE or --readings FILE");
  const bool dry = parsed->has("--dry-run");
  // A file that is not there yet is an empty store; looking through makes none.
  const QTemporaryDir aside;
  Parsed job = *parsed;
  if (const auto url = parsed->value("--database");
      dry && url && url->starts_with(kSqlite) &&
      !QFile::exists(QString::fromStdString(url->substr(kSqlite.size()))))
    job.values["--database"] = {std::string(kSqlite) + aside.filePath("empty.db").toStdString()};
  return with_store("import", job, Opening::make, [&](Store& store) {
    return import_into(store, files, dry, parsed->has("--skip-faulty"));
  });
}

}  // namespace brimline::batch
