// SPDX-License-Identifier: GPL-3.0-or-later
// The kiosk's records in the station's store.
#pragma once

#include "qml/models/records.h"
#include "station/store/store.h"

namespace brimline {

class StoreRecords : public Records {
 public:
  StoreRecords(Store& store, std::string url) : store_(store), url_(std::move(url)) {}

  Kept begin(const Visit& visit) override;
  Kept update(const Visit& visit) override;
  Kept add_reading(const std::string& visit, const Reading& reading) override;
  Kept tell(const std::string& visit, const Plan& plan) override;
  Kept begin_overnight(const OvernightTest& test) override;
  Kept change_overnight(const std::string& visit, const std::function<void(OvernightTest&)>& edit) override;
  std::vector<OvernightTest> overnights() override;
  Kept keep_orphan(const OrphanReading& orphan) override;
  std::vector<OrphanReading> orphans() override;
  Kept settle_orphan(const std::string& id, const std::optional<std::string>& visit,
                     const Reading& as) override;
  Supplies supplies() override;
  Kept keep_lot(const ReagentLot& lot) override;
  Kept add_check(const InstrumentCheck& check) override;
  QualityBook quality() override;
  Kept add_standard(const CheckStandard& standard) override;
  Kept add_measurement(const CheckMeasurement& measurement) override;
  Kept add_clearance(const Clearance& clearance) override;
  Kept add_curve(const LotCurve& curve) override;
  Kept correct(const std::string& visit, const std::vector<Reading>& readings,
               const std::string& reason) override;
  tl::expected<std::optional<Customer>, std::string> edit_customer(const Customer& seen,
                                                                   const Customer& now) override;
  Kept erase_customer(const std::string& id, const std::string& reason) override;
  std::vector<LookAlike> look_alikes(const std::string& customer) override;
  Kept join_customers(const std::string& kept, const std::string& gone) override;
  Kept take_apart(const std::string& gone) override;
  Kept tell_apart(const std::string& one, const std::string& other) override;
  std::optional<Customer> customer(const std::string& id) override;
  std::vector<std::string> people_unseen_since(const Instant& day) override;
  std::vector<StaffMember> staff() override;
  Kept keep_staff(const StaffMember& member) override;
  tl::expected<PinTry, std::string> begin_pin_try(const std::string& id) override;
  Kept end_pin_try(const std::string& id, bool right) override;
  std::vector<AuditRow> audit_trail(int most, std::int64_t before) override;
  Kept note(const AuditNote& note) override;
  void sign_as(std::function<Signature()> sign) override { store_.sign_as(std::move(sign)); }
  std::pair<std::int64_t, std::int64_t> contents() override;
  std::vector<Visit> waiting() override;
  std::optional<Visit> visit(const std::string& id) override;
  std::vector<Visit> visits_of_vessel(const std::string& vessel) override;
  std::vector<FoundCustomer> customers(const std::string& text) override;
  std::vector<Vessel> vessels_of(const std::string& customer) override;
  std::string next_bottle() override;
  std::string place() const override { return url_; }

 protected:
  Store& store() { return store_; }

 private:
  Store& store_;
  std::string url_;
};

}  // namespace brimline
