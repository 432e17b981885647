// SPDX-License-Identifier: GPL-3.0-or-later
// The customers' records: visits, their readings and the plans as told, in SQLite or PostgreSQL.
// Values go in and come out; what a function has returned for is on disk. Every change is whole or
// not at all, and a full disk loses nothing that was there.
//
//   auto store = Store::open("sqlite:shop.db");
//   store->begin_visit(visit);
//   store->add_reading(visit.id, reading);     // before the screen says so
//   store->tell_plan(visit.id, plan);          // before paper is touched
//   store->finish(visit.id);
#pragma once

#include <cstdint>
#include <functional>
#include <map>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "analysis/panel/supplies.h"
#include "station/orphan_reading.h"
#include "station/overnight/overnight_test.h"
#include "station/quality/quality_book.h"
#include "station/reminder/due.h"
#include "station/store/audit.h"
#include "station/store/connection.h"
#include "station/store/schema.h"
#include "station/store/store_error.h"
#include "station/visit.h"

namespace brimline {

enum class Kept { kept, same, revised };

// A customer found by what was typed.
struct Found {
  Customer customer;
  std::vector<Vessel> vessels;
  std::optional<Instant> last_visit;
};

class Store {
 public:
  // `url`: sqlite:FILE (made with its schema unless `existing`) or postgresql://USER@HOST:PORT/NAME.
  // An older store is brought up to date, a newer one refused and left as it is.
  static Stored<Store> open(const std::string& url, Opening opening = Opening::make);
  static Stored<Store> open(const std::string& url, Opening opening, const std::vector<SchemaStep>& steps);
  ~Store();
  Store(Store&&) noexcept;
  Store& operator=(Store&&) noexcept;

  // A whole visit, finished. The same content again changes nothing; other content under the same id
  // is a new revision, the earlier one going to the audit trail.
  Stored<Kept> keep(const Visit& visit);
  Stored<std::optional<Visit>> visit(const std::string& id);
  Stored<std::vector<Visit>> visits_of_vessel(const std::string& vessel_id);  // oldest first
  Stored<std::vector<std::string>> visit_ids();                               // all, oldest first
  Stored<std::vector<Visit>> earlier_revisions(const std::string& id);        // audit trail, oldest first

  // Bottles in progress: begun and not finished, oldest first.
  Stored<std::vector<Visit>> open_bottles();
  Stored<void> begin_visit(const Visit& visit);   // its id must be new
  Stored<void> update_visit(const Visit& visit);  // circumstances of one in progress; readings and plan stay
  Stored<void> add_reading(const std::string& visit_id, const Reading& reading);
  Stored<void> tell_plan(const std::string& visit_id, const Plan& plan);
  Stored<void> finish(const std::string& visit_id);
  // The readings of a visit put right: all of them as they should be. Who did it stands in the audit trail.
  Stored<void> correct_readings(const std::string& visit_id, const std::vector<Reading>& readings,
                                const std::string& reason);

  // Who signs what is written from now on; unset: the program, by the machine's clock.
  void sign_as(std::function<Signature()> sign) { sign_ = std::move(sign); }
  Signature signature() const;
  Stored<void> note(const AuditNote& note);
  // The newest first; `before` that number, 0 for all; of one subject where it is named.
  Stored<std::vector<AuditRow>> audit_trail(int most, std::int64_t before = 0,
                                            const std::string& subject = {});
  // The work of that id, whole and once, however often it is asked for.
  Stored<void> once(const std::string& id, const std::function<Stored<void>()>& work);

  // Overnight tests: a visit has one at a time, its last counts. `begin_overnight` gives it its number;
  // `edit` is handed the test as it is stored now, so that two counters lose nothing of each other's. One
  // that has a later after it keeps its stage: it is not begun again.
  Stored<OvernightTest> begin_overnight(const OvernightTest& test);
  Stored<OvernightTest> change_overnight(const std::string& visit_id,
                                         const std::function<void(OvernightTest&)>& edit,
                                         std::optional<int> number = {});
  Stored<std::optional<OvernightTest>> overnight(const std::string& visit_id);
  Stored<std::vector<OvernightTest>> open_overnights();

  // Readings without a bottle. Settling one puts it into the visit, or aside where there is none named, in
  // one transaction; one that is settled already is refused, so that it counts once.
  Stored<void> keep_orphan(const OrphanReading& orphan);
  Stored<std::vector<OrphanReading>> orphans();  // not settled, as they came
  Stored<void> settle_orphan(const std::string& id, const std::optional<std::string>& visit_id,
                             const Reading& as);

  // Every lot and check written down, also of lots that are gone. A lot of the same number is replaced; a
  // check stays for ever.
  Stored<Supplies> supplies();
  Stored<void> keep_lot(const ReagentLot& lot);
  Stored<void> add_check(const InstrumentCheck& check);

  // Control charts: standards, and for ever what was measured with them, cleared and calibrated. Who clears
  // and why may not be empty.
  Stored<QualityBook> quality_book();
  Stored<void> add_standard(const CheckStandard& standard);
  Stored<void> add_measurement(const CheckMeasurement& measurement);
  Stored<void> add_clearance(const Clearance& clearance);
  Stored<void> add_curve(const LotCurve& curve);

  Stored<void> save_customer(const Customer& customer);
  Stored<void> save_vessel(const Vessel& vessel, const std::string& customer_id);
  Stored<std::optional<Customer>> customer(const std::string& id);
  // At most 20: by a bottle's label, by words that begin with those of `text` (whole ones first), then by
  // words that hold them; case and accents folded.
  Stored<std::vector<Found>> customers_matching(const std::string& text);
  Stored<std::vector<Vessel>> vessels_of(const std::string& customer_id);
  // The card edited from what was `seen`. Where another counter changed the same field meanwhile nothing is
  // stored, and the card as it stands is returned.
  Stored<std::optional<Customer>> edit_customer(const Customer& seen, const Customer& now);
  // Name, telephone, street and email go, from every visit and revision too; the visits stay.
  Stored<void> erase_customer(const std::string& id, const std::string& reason);
  Stored<std::vector<std::string>> customers_unseen_since(const Instant& day);  // with a name still
  Stored<std::vector<std::string>> erased_customers();
  // Vessels whose next bottle is due from then until then, the longest overdue first; of those with a name.
  Stored<std::vector<DueVisit>> due_visits(const Instant& from, const Instant& until, int most);
  // Finished ones, oldest first; the same vessel's before this; readings that name a lot, by the lot.
  Stored<std::vector<std::string>> visit_ids_between(const Instant& from, const Instant& until);
  Stored<std::optional<Visit>> visit_before(const Visit& visit);
  Stored<std::map<std::string, std::int64_t>> readings_by_lot(const Instant& until);
  Stored<std::int64_t> next_bottle_number();  // one that no other counter gets

  Stored<std::optional<std::string>> setting(const std::string& name);
  Stored<void> set_setting(const std::string& name, const std::string& value);

  // Rows of each table; what is wrong with the store, one line each, none where it is sound.
  Stored<std::map<std::string, std::int64_t>> counts();
  Stored<std::vector<std::string>> faults();

  Connection& connection() { return *connection_; }

 private:
  explicit Store(std::unique_ptr<Connection> connection);
  void write_note(const AuditNote& note);  // inside a transaction
  std::unique_ptr<Connection> connection_;
  std::function<Signature()> sign_;
};

}  // namespace brimline
