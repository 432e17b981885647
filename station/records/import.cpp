// SPDX-License-Identifier: GPL-3.0-or-later
#include "station/records/import.h"

#include <filesystem>

#include "station/records/import_people.h"
#include "station/records/import_readings.h"

namespace brimline {
namespace {

constexpr size_t kPiece = 100;  // of what is kept in one transaction

StoreError stopped() {
  return {StoreTrouble::refused, "stopped"};
}

// Runs `take` on every row of every file; `from` to `to` is the share of the whole work.
template <class Take>
Stored<void> each_row(const std::vector<std::string>& files, std::span<const ImportColumn> columns,
                      Import& out, const Progress& progress, double from, double to, Take take) {
  for (size_t i = 0; i < files.size(); ++i) {
    auto table = ImportTable::open(files[i], columns);
    if (!table) {
      out.faults.add(table.error());
      continue;
    }
    take.begin(**table, out);
    for (int row = 0; (*table)->next(out.faults); ++row) {
      const double done = (static_cast<double>(i) + (*table)->share()) / static_cast<double>(files.size());
      if (row % 256 == 0 && !goes_on(progress, from + (to - from) * done)) return tl::unexpected(stopped());
      if (!(*table)->spoilt()) take.row(**table, out);
      if (take.trouble()) return tl::unexpected(*take.trouble());
    }
  }
  return {};
}

// A column that nobody knows is not used, and that is said once.
void note_extras(const ImportTable& table, Import& out) {
  for (const auto& extra : table.extras())
    out.notes.add(
        table.at_line("column `" + extra.name + "` is not known and is left out", "a known column"));
}

struct TakeCustomers {
  ImportPeople& people;
  static void begin(ImportTable& table, Import& out) { note_extras(table, out); }
  void row(ImportTable& table, Import& out) { people.read(table, out); }
  const std::optional<StoreError>& trouble() const { return people.trouble(); }
};

struct TakeReadings {
  ImportPeople& people;
  ImportReadings& readings;
  void begin(ImportTable& table, Import& out) {
    readings.begin(table, out);
    note_extras(table, out);
  }
  void row(ImportTable& table, Import& out) { readings.read(table, out); }
  const std::optional<StoreError>& trouble() const { return people.trouble(); }
};

// In pieces of a transaction each: counters go on between them.
template <class List, class Put>
Stored<void> in_pieces(Store& store, const List& list, const Progress& progress, double from, double to,
                       Put put) {
  for (size_t at = 0; at < list.size(); at += kPiece) {
    const double done = static_cast<double>(at) / static_cast<double>(list.size());
    if (!goes_on(progress, from + (to - from) * done)) return tl::unexpected(stopped());
    auto kept = store.connection().transact(Access::write, [&] {
      for (size_t i = at; i < std::min(at + kPiece, list.size()); ++i)
        if (auto done_one = put(list[i]); !done_one) return store.connection().fail(done_one.error());
    });
    if (!kept) return kept;
  }
  return {};
}

Stored<void> put_card(Store& store, const Customer& card, ImportCounts& counts) {
  const auto there = store.customer(card.id);
  if (!there) return tl::unexpected(there.error());
  ++(*there ? counts.customers.there : counts.customers.fresh);
  if (!*there) return store.save_customer(card);
  // What another counter wrote meanwhile stays.
  Customer filled = **there;
  for (const auto field :
       {&Customer::name, &Customer::phone, &Customer::street, &Customer::email, &Customer::language})
    if (!(filled.*field)) filled.*field = card.*field;
  if (!filled.units) filled.units = card.units;
  const auto edited = store.edit_customer(**there, filled);
  if (!edited) return tl::unexpected(edited.error());
  return {};
}

Stored<void> put_vessel_of(Store& store, const ImportedVessel& vessel, ImportCounts& counts) {
  const auto owned = store.vessels_of(vessel.customer);
  if (!owned) return tl::unexpected(owned.error());
  for (const Vessel& there : *owned)
    if (there.id == vessel.vessel.id) {
      ++counts.vessels.there;
      return {};
    }
  ++counts.vessels.fresh;
  return store.save_vessel(vessel.vessel, vessel.customer);
}

Stored<void> put_visit(Store& store, const Visit& visit, ImportCounts& counts) {
  const auto there = store.visit(visit.id);
  if (!there) return tl::unexpected(there.error());
  const auto readings = static_cast<std::int64_t>(
      visit.bottle.readings.size() + (visit.bottle.fill_water ? visit.bottle.fill_water->size() : 0));
  ++(*there ? counts.visits.there : counts.visits.fresh);
  (*there ? counts.readings.there : counts.readings.fresh) += readings;
  if (*there) return {};
  const auto kept = store.keep(visit);
  if (!kept) return tl::unexpected(kept.error());
  return {};
}

std::string names_of(const ImportFiles& files) {
  std::string out;
  for (const auto* list : {&files.customers, &files.readings})
    for (const std::string& file : *list)
      out += (out.empty() ? "" : ", ") + std::filesystem::path(file).filename().string();
  return out;
}

}  // namespace

Stored<Import> look_through(Store& store, const ImportFiles& files, const Progress& progress) {
  Import out;
  ImportPeople people(store);
  if (auto begun = people.begin(); !begun) return tl::unexpected(begun.error());
  const double half = files.readings.empty() ? 1 : files.customers.empty() ? 0 : 0.3;
  if (auto read =
          each_row(files.customers, ImportPeople::columns(), out, progress, 0, half, TakeCustomers{people});
      !read)
    return tl::unexpected(read.error());
  ImportReadings readings(store, people);
  if (auto read = each_row(files.readings, ImportReadings::columns(), out, progress, half, 0.9,
                           TakeReadings{people, readings});
      !read)
    return tl::unexpected(read.error());
  if (auto settled = people.settle(out); !settled) return tl::unexpected(settled.error());
  if (auto settled = readings.settle(out, progress); !settled) return tl::unexpected(settled.error());
  return out;
}

Stored<ImportCounts> keep_import(Store& store, const Import& import, const ImportFiles& files,
                                 const Progress& progress) {
  ImportCounts counts;
  auto kept = in_pieces(store, import.customers, progress, 0, 0.2,
                        [&](const Customer& card) { return put_card(store, card, counts); });
  if (kept)
    kept = in_pieces(store, import.vessels, progress, 0.2, 0.3,
                     [&](const ImportedVessel& vessel) { return put_vessel_of(store, vessel, counts); });
  if (kept)
    kept = in_pieces(store, import.visits, progress, 0.3, 1,
                     [&](const Visit& visit) { return put_visit(store, visit, counts); });
  const auto noted = store.note({"import", names_of(files), std::nullopt, std::nullopt,
                                 std::to_string(counts.customers.fresh) + " customers, " +
                                     std::to_string(counts.vessels.fresh) + " vessels, " +
                                     std::to_string(counts.visits.fresh) + " visits",
                                 std::nullopt});
  if (!kept) return tl::unexpected(kept.error());
  if (!noted) return tl::unexpected(noted.error());
  return counts;
}

}  // namespace brimline
