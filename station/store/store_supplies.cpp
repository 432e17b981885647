// SPDX-License-Identifier: GPL-3.0-or-later
// Reagent lots and instrument checks: what stood behind the readings.
#include "station/store/store.h"

namespace brimline {

namespace {

QVariant text_or_null(const std::optional<Instant>& at) {
  return at ? Connection::value(at->text()) : QVariant();
}

// A time that was written by this store; a damaged one is said, not left out.
std::optional<Instant> time_of(Connection& c, const QVariant& value) {
  if (value.isNull()) return std::nullopt;
  const auto at = Instant::parse(Connection::text(value));
  if (!at) c.fail({StoreTrouble::damaged, "\"" + Connection::text(value) + "\" is not a time"});
  return at;
}

std::optional<std::string> text_of(const QVariant& value) {
  return value.isNull() ? std::nullopt : std::optional(Connection::text(value));
}

std::vector<ReagentLot> lots_of(Connection& c) {
  std::vector<ReagentLot> out;
  for (const QVariantList& row :
       c.ask("SELECT lot, expires, opened, warmest_c, beside_chlorine, analyte, gone, tests "
             "FROM reagent_lots ORDER BY lot")) {
    ReagentLot lot;
    lot.lot = Connection::text(row[0]);
    lot.expires = time_of(c, row[1]);
    lot.opened = time_of(c, row[2]);
    if (!row[3].isNull()) lot.warmest_c = row[3].toDouble();
    lot.beside_chlorine = row[4].toInt() != 0;
    lot.analyte = text_of(row[5]);
    lot.gone = row[6].toInt() != 0;
    if (!row[7].isNull()) lot.tests = row[7].toInt();
    out.push_back(std::move(lot));
  }
  return out;
}

std::vector<InstrumentCheck> checks_of(Connection& c) {
  std::vector<InstrumentCheck> out;
  for (const QVariantList& row :
       c.ask("SELECT instrument, analyte, at, passed FROM instrument_checks ORDER BY instrument, number")) {
    InstrumentCheck check{Connection::text(row[0]), text_of(row[1]), {}, row[3].toInt() != 0};
    check.at = time_of(c, row[2]).value_or(Instant{});
    out.push_back(std::move(check));
  }
  return out;
}

}  // namespace

Stored<Supplies> Store::supplies() {
  Connection& c = *connection_;
  return c.transact(Access::read, [&] {
    Supplies out;
    out.lots = lots_of(c);
    out.checks = checks_of(c);
    return out;
  });
}

Stored<void> Store::keep_lot(const ReagentLot& lot) {
  Connection& c = *connection_;
  return c.transact(Access::write, [&] {
    if (lot.lot.empty()) return c.fail({StoreTrouble::refused, "a reagent lot needs its number"});
    c.tell(
        "INSERT INTO reagent_lots (lot, analyte, expires, opened, warmest_c, beside_chlorine, gone, tests) "
        "VALUES (?, ?, ?, ?, ?, ?, ?, ?) ON CONFLICT (lot) DO UPDATE SET analyte = excluded.analyte, expires "
        "= "
        "excluded.expires, opened = excluded.opened, warmest_c = excluded.warmest_c, beside_chlorine = "
        "excluded.beside_chlorine, gone = excluded.gone, tests = excluded.tests",
        {Connection::value(lot.lot), Connection::value(lot.analyte), text_or_null(lot.expires),
         text_or_null(lot.opened), lot.warmest_c ? QVariant(*lot.warmest_c) : QVariant(),
         lot.beside_chlorine ? 1 : 0, lot.gone ? 1 : 0, lot.tests ? QVariant(*lot.tests) : QVariant()});
  });
}

Stored<void> Store::add_check(const InstrumentCheck& check) {
  Connection& c = *connection_;
  return c.transact(Access::write, [&] {
    if (check.instrument.empty())
      return c.fail({StoreTrouble::refused, "a check needs the name of its instrument"});
    c.tell(
        "INSERT INTO instrument_checks (instrument, number, analyte, at, passed) SELECT CAST(? AS TEXT), "
        "COALESCE(MAX(number), 0) + 1, CAST(? AS TEXT), CAST(? AS TEXT), CAST(? AS INTEGER) FROM "
        "instrument_checks WHERE instrument = ?",
        {Connection::value(check.instrument), Connection::value(check.analyte),
         Connection::value(check.at.text()), check.passed ? 1 : 0, Connection::value(check.instrument)});
  });
}

}  // namespace brimline
