// SPDX-License-Identifier: GPL-3.0-or-later
// What the kiosk asks of the store, in the words of the counter. Every writing call has committed
// when it returns: what it answers may be shown as kept.
#pragma once

#include <functional>
#include <optional>
#include <string>
#include <vector>

#include <tl/expected.hpp>

#include "analysis/panel/supplies.h"
#include "station/orphan_reading.h"
#include "station/overnight/overnight_test.h"
#include "station/quality/quality_book.h"
#include "station/store/joining.h"
#include "station/store/staff_book.h"
#include "station/store/waiting_work.h"
#include "station/visit.h"

namespace brimline {

struct FoundCustomer {
  Customer customer;
  std::vector<Vessel> vessels;
  std::optional<Instant> last_visit;
};

class Records {
 public:
  using Kept = tl::expected<void, std::string>;  // the error is a sentence for the clerk

  virtual ~Records() = default;
  virtual Kept begin(const Visit& visit) = 0;
  virtual Kept update(const Visit& visit) = 0;  // circumstances only
  virtual Kept add_reading(const std::string& visit, const Reading& reading) = 0;
  virtual Kept tell(const std::string& visit, const Plan& plan) = 0;  // and the bottle waits no longer
  // Overnight tests: one a visit at a time. `edit` is handed the test as it is in the records.
  virtual Kept begin_overnight(const OvernightTest& test) = 0;
  virtual Kept change_overnight(const std::string& visit,
                                const std::function<void(OvernightTest&)>& edit) = 0;
  virtual std::vector<OvernightTest> overnights() = 0;  // not told yet
  // Readings that belong to no bottle; settled into a visit, or aside where none is named.
  virtual Kept keep_orphan(const OrphanReading& orphan) = 0;
  virtual std::vector<OrphanReading> orphans() = 0;  // not settled, oldest first
  virtual Kept settle_orphan(const std::string& id, const std::optional<std::string>& visit,
                             const Reading& as) = 0;
  virtual Supplies supplies() = 0;
  virtual Kept keep_lot(const ReagentLot& lot) = 0;
  virtual Kept add_check(const InstrumentCheck& check) = 0;
  virtual QualityBook quality() = 0;  // control charts
  virtual Kept add_standard(const CheckStandard& standard) = 0;
  virtual Kept add_measurement(const CheckMeasurement& measurement) = 0;
  virtual Kept add_clearance(const Clearance& clearance) = 0;
  virtual Kept add_curve(const LotCurve& curve) = 0;
  // The readings of a visit put right, with the reason; what they were stays in the audit trail.
  virtual Kept correct(const std::string& visit, const std::vector<Reading>& readings,
                       const std::string& reason) = 0;
  // A card edited from what was seen. The card as another counter left it, where both changed the same field:
  // nothing is kept then.
  virtual tl::expected<std::optional<Customer>, std::string> edit_customer(const Customer& seen,
                                                                           const Customer& now) = 0;
  virtual Kept erase_customer(const std::string& id, const std::string& reason) = 0;
  // Cards that may be the same person's; two made one, taken apart again, told apart for good.
  virtual std::vector<LookAlike> look_alikes(const std::string& customer) = 0;
  virtual Kept join_customers(const std::string& kept, const std::string& gone) = 0;
  virtual Kept take_apart(const std::string& gone) = 0;
  virtual Kept tell_apart(const std::string& one, const std::string& other) = 0;
  virtual std::optional<Customer> customer(const std::string& id) = 0;
  virtual std::vector<std::string> people_unseen_since(const Instant& day) = 0;
  virtual std::vector<StaffMember> staff() = 0;
  virtual Kept keep_staff(const StaffMember& member) = 0;
  virtual tl::expected<PinTry, std::string> begin_pin_try(const std::string& id) = 0;
  virtual Kept end_pin_try(const std::string& id, bool right) = 0;
  virtual std::vector<AuditRow> audit_trail(int most, std::int64_t before) = 0;  // the newest first
  virtual Kept note(const AuditNote& note) = 0;
  virtual void sign_as(std::function<Signature()> sign) = 0;
  virtual std::pair<std::int64_t, std::int64_t> contents() = 0;  // visits, customers
  virtual std::vector<Visit> waiting() = 0;                      // no plan told yet, oldest first
  virtual std::optional<Visit> visit(const std::string& id) = 0;
  virtual std::vector<Visit> visits_of_vessel(const std::string& vessel) = 0;  // oldest first
  virtual std::vector<FoundCustomer> customers(const std::string& text) = 0;   // best first
  virtual std::vector<Vessel> vessels_of(const std::string& customer) = 0;
  virtual std::string next_bottle() = 0;  // a label nobody has
  virtual std::string place() const = 0;  // where the records are, as a database address
  virtual std::string shared_place() const { return place(); }  // those of all counters
  // Where the records are away: what is said of it, else empty. And work of ours that others' work stands
  // against.
  virtual std::string away() { return {}; }
  virtual std::vector<WaitingWork> refused() { return {}; }
  virtual Kept settle_refused(const std::string&, bool /*ours*/) { return {}; }
};

}  // namespace brimline
