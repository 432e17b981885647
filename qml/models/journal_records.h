// SPDX-License-Identifier: GPL-3.0-or-later
// The kiosk's records on a store that all counters share: kept here at once, carried there, and brought back
// (station/journal). What the counter asks of people and of vessels' past it asks there first, for a moment
// only.
#pragma once

#include "qml/models/store_records.h"
#include "station/journal/courier.h"
#include "station/journal/journaled_store.h"

namespace brimline {

class JournalRecords : public StoreRecords {
 public:
  // `own`: the counter's own store, at `own_url`.
  JournalRecords(Store& own, const std::string& own_url, std::string shared_url, JournaledStore::NewId new_id,
                 std::function<void()> changed, std::function<void()> state_changed);

  Kept begin(const Visit& visit) override;
  Kept update(const Visit& visit) override;
  Kept add_reading(const std::string& visit, const Reading& reading) override;
  Kept tell(const std::string& visit, const Plan& plan) override;
  Kept begin_overnight(const OvernightTest& test) override;
  Kept change_overnight(const std::string& visit, const std::function<void(OvernightTest&)>& edit) override;
  Kept keep_orphan(const OrphanReading& orphan) override;
  Kept settle_orphan(const std::string& id, const std::optional<std::string>& visit,
                     const Reading& as) override;
  Kept correct(const std::string& visit, const std::vector<Reading>& readings,
               const std::string& reason) override;
  tl::expected<std::optional<Customer>, std::string> edit_customer(const Customer& seen,
                                                                   const Customer& now) override;
  Kept keep_lot(const ReagentLot& lot) override;
  Kept add_check(const InstrumentCheck& check) override;
  Kept add_standard(const CheckStandard& standard) override;
  Kept add_measurement(const CheckMeasurement& measurement) override;
  Kept add_clearance(const Clearance& clearance) override;
  Kept add_curve(const LotCurve& curve) override;
  Kept keep_staff(const StaffMember& member) override;
  Kept erase_customer(const std::string& id, const std::string& reason) override;
  std::vector<LookAlike> look_alikes(const std::string& customer) override;
  Kept join_customers(const std::string& kept, const std::string& gone) override;
  Kept take_apart(const std::string& gone) override;
  Kept tell_apart(const std::string& one, const std::string& other) override;
  std::optional<Customer> customer(const std::string& id) override;
  std::optional<Visit> visit(const std::string& id) override;
  std::vector<Visit> visits_of_vessel(const std::string& vessel) override;
  std::vector<FoundCustomer> customers(const std::string& text) override;
  std::vector<Vessel> vessels_of(const std::string& customer) override;
  std::vector<AuditRow> audit_trail(int most, std::int64_t before) override;
  std::pair<std::int64_t, std::int64_t> contents() override;
  std::string next_bottle() override;
  std::string shared_place() const override { return shared_url_; }
  std::string away() override;
  std::vector<WaitingWork> refused() override;
  Kept settle_refused(const std::string& id, bool ours) override;

 private:
  Kept write(WaitingWork work);
  // On the shared store, while the counter waits for it; refused where it is away.
  Kept there(const std::function<Stored<void>(Store&)>& work);

  std::string shared_url_;
  JournaledStore::NewId new_id_;
  Courier courier_;
  JournaledStore journal_;
};

}  // namespace brimline
