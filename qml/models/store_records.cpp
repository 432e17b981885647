// SPDX-License-Identifier: GPL-3.0-or-later
#include "qml/models/store_records.h"

#include "station/bottle_label.h"

namespace brimline {
namespace {

template <class T>
Records::Kept told(const Stored<T>& stored) {
  if (stored) return {};
  return tl::unexpected(stored.error().text);
}

template <class T>
T or_empty(Stored<T> stored) {
  return stored ? std::move(*stored) : T();
}

}  // namespace

Records::Kept StoreRecords::begin(const Visit& visit) {
  return told(store_.begin_visit(visit));
}

// A visit already told is no longer in progress: it is kept whole, as a new revision.
Records::Kept StoreRecords::update(const Visit& visit) {
  if (visit.plan_as_told) return told(store_.keep(visit));
  return told(store_.update_visit(visit));
}

Records::Kept StoreRecords::add_reading(const std::string& id, const Reading& reading) {
  std::optional<Visit> visit = this->visit(id);
  if (!visit || !visit->plan_as_told) return told(store_.add_reading(id, reading));
  visit->bottle.readings.push_back(reading);
  return told(store_.keep(*visit));
}

Records::Kept StoreRecords::tell(const std::string& id, const Plan& plan) {
  std::optional<Visit> visit = this->visit(id);
  if (visit && visit->plan_as_told) {
    visit->plan_as_told = plan;
    return told(store_.keep(*visit));
  }
  if (auto stored = store_.tell_plan(id, plan); !stored) return told(stored);
  return told(store_.finish(id));
}

Records::Kept StoreRecords::begin_overnight(const OvernightTest& test) {
  return told(store_.begin_overnight(test));
}

Records::Kept StoreRecords::change_overnight(const std::string& visit,
                                             const std::function<void(OvernightTest&)>& edit) {
  return told(store_.change_overnight(visit, edit));
}

std::vector<OvernightTest> StoreRecords::overnights() {
  return or_empty(store_.open_overnights());
}

Records::Kept StoreRecords::keep_orphan(const OrphanReading& orphan) {
  return told(store_.keep_orphan(orphan));
}

std::vector<OrphanReading> StoreRecords::orphans() {
  return or_empty(store_.orphans());
}

Records::Kept StoreRecords::settle_orphan(const std::string& id, const std::optional<std::string>& visit,
                                          const Reading& as) {
  return told(store_.settle_orphan(id, visit, as));
}

Supplies StoreRecords::supplies() {
  return or_empty(store_.supplies());
}

Records::Kept StoreRecords::keep_lot(const ReagentLot& lot) {
  return told(store_.keep_lot(lot));
}

Records::Kept StoreRecords::add_check(const InstrumentCheck& check) {
  return told(store_.add_check(check));
}

QualityBook StoreRecords::quality() {
  return or_empty(store_.quality_book());
}
Records::Kept StoreRecords::add_standard(const CheckStandard& standard) {
  return told(store_.add_standard(standard));
}
Records::Kept StoreRecords::add_measurement(const CheckMeasurement& measurement) {
  return told(store_.add_measurement(measurement));
}
Records::Kept StoreRecords::add_clearance(const Clearance& clearance) {
  return told(store_.add_clearance(clearance));
}
Records::Kept StoreRecords::add_curve(const LotCurve& curve) {
  return told(store_.add_curve(curve));
}

std::vector<Visit> StoreRecords::waiting() {
  return or_empty(store_.open_bottles());
}
std::optional<Visit> StoreRecords::visit(const std::string& id) {
  return or_empty(store_.visit(id));
}

std::vector<Visit> StoreRecords::visits_of_vessel(const std::string& vessel) {
  return or_empty(store_.visits_of_vessel(vessel));
}

std::vector<Vessel> StoreRecords::vessels_of(const std::string& customer) {
  return or_empty(store_.vessels_of(customer));
}

std::vector<FoundCustomer> StoreRecords::customers(const std::string& text) {
  std::vector<FoundCustomer> out;
  for (Found& found : or_empty(store_.customers_matching(text)))
    out.push_back({std::move(found.customer), std::move(found.vessels), found.last_visit});
  return out;
}

std::string StoreRecords::next_bottle() {
  return bottle_label(store_.next_bottle_number().value_or(1));
}

Records::Kept StoreRecords::correct(const std::string& visit, const std::vector<Reading>& readings,
                                    const std::string& reason) {
  return told(store_.correct_readings(visit, readings, reason));
}

tl::expected<std::optional<Customer>, std::string> StoreRecords::edit_customer(const Customer& seen,
                                                                               const Customer& now) {
  auto edited = store_.edit_customer(seen, now);
  if (!edited) return tl::unexpected(edited.error().text);
  return std::move(*edited);
}

Records::Kept StoreRecords::erase_customer(const std::string& id, const std::string& reason) {
  return told(store_.erase_customer(id, reason));
}

std::vector<LookAlike> StoreRecords::look_alikes(const std::string& customer) {
  return or_empty(brimline::look_alikes(store_, customer));
}

Records::Kept StoreRecords::join_customers(const std::string& kept, const std::string& gone) {
  return told(brimline::join_customers(store_, kept, gone));
}

Records::Kept StoreRecords::take_apart(const std::string& gone) {
  return told(brimline::take_apart(store_, gone));
}

Records::Kept StoreRecords::tell_apart(const std::string& one, const std::string& other) {
  return told(brimline::tell_apart(store_, one, other));
}

std::optional<Customer> StoreRecords::customer(const std::string& id) {
  return or_empty(store_.customer(id));
}

std::vector<std::string> StoreRecords::people_unseen_since(const Instant& day) {
  return or_empty(store_.customers_unseen_since(day));
}

std::vector<StaffMember> StoreRecords::staff() {
  return or_empty(brimline::staff(store_));
}

Records::Kept StoreRecords::keep_staff(const StaffMember& member) {
  return told(brimline::keep_staff(store_, member));
}

tl::expected<PinTry, std::string> StoreRecords::begin_pin_try(const std::string& id) {
  auto begun = brimline::begin_pin_try(store_, id);
  if (!begun) return tl::unexpected(begun.error().text);
  return std::move(*begun);
}

Records::Kept StoreRecords::end_pin_try(const std::string& id, bool right) {
  return told(brimline::end_pin_try(store_, id, right));
}

std::vector<AuditRow> StoreRecords::audit_trail(int most, std::int64_t before) {
  return or_empty(store_.audit_trail(most, before));
}

Records::Kept StoreRecords::note(const AuditNote& note) {
  return told(store_.note(note));
}

std::pair<std::int64_t, std::int64_t> StoreRecords::contents() {
  const auto count = [&](const char* sql) -> std::int64_t {
    const auto rows =
        store_.connection().transact(Access::read, [&] { return store_.connection().run(sql); });
    return rows && !rows->empty() ? (*rows)[0][0].toLongLong() : 0;
  };
  return {count("SELECT COUNT(*) FROM visits"), count("SELECT COUNT(*) FROM customers")};
}

}  // namespace brimline
