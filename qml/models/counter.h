// SPDX-License-Identifier: GPL-3.0-or-later
// The bottle on the counter. Every change goes through `change`, and stands only once it is kept.
#pragma once

#include <QObject>

#include <functional>
#include <string_view>

#include "qml/models/records.h"
#include "station/wording/words.h"

namespace brimline {

// An overnight test that goes on, and whose it is.
struct Overnight {
  OvernightTest test;
  Visit visit;
};

class Counter : public QObject {
  Q_OBJECT

 public:
  using Now = std::function<Instant()>;
  using NewId = std::function<std::string(std::string_view prefix)>;

  Counter(Records& records, Now now, NewId new_id, QObject* parent = nullptr);

  Instant now() const { return now_(); }
  std::string new_id(std::string_view prefix) const { return new_id_(prefix); }
  Records& records() const { return records_; }

  // The clerk's own language; the customer's is the visit's.
  const Words& words() const { return words_; }
  void speak(std::string_view language);

  bool open() const { return visit_.has_value(); }
  const Visit& visit() const { return *visit_; }  // only while open
  // Visits of the same vessel before this one, oldest first.
  const std::vector<Visit>& earlier() const { return earlier_; }
  const std::vector<Visit>& waiting() const { return waiting_; }
  const std::vector<Overnight>& overnights() const { return overnights_; }
  // The overnight test of the bottle on the counter; null: none goes on.
  const OvernightTest* overnight() const;

  // Reagents and instrument checks: as the shop wrote them down, and with its control charts as they stand.
  const Supplies& written_supplies() const { return written_; }
  const Supplies& supplies() const { return supplies_; }
  const QualityBook& quality() const { return quality_; }
  Records::Kept add_standard(const CheckStandard& standard);
  Records::Kept add_measurement(const CheckMeasurement& measurement);
  Records::Kept add_clearance(const Clearance& clearance);
  Records::Kept add_curve(const LotCurve& curve);
  Records::Kept keep_lot(const ReagentLot& lot);
  Records::Kept add_check(const InstrumentCheck& check);

  Records::Kept begin(const std::string& bottle);  // an empty label gets the next free one
  Records::Kept open(const std::string& visit_id);
  Records::Kept change(const std::function<void(Visit&)>& edit);
  Records::Kept add_reading(const Reading& reading);
  // The last reading of the bottle is taken back; it stays in the audit trail.
  Records::Kept take_back_reading();
  // Who signs what is kept; empty: nobody has said.
  void sign_as(std::function<std::string()> who);
  void reload();  // the bottle and what waits, as the records have them now
  // For a bottle that waits but is not on the counter; nothing if there is none of that label.
  std::optional<Records::Kept> add_reading_to(const std::string& bottle, const Reading& reading);
  // Readings that came in and belong to no bottle that waits.
  const std::vector<OrphanReading>& orphans() const { return orphans_; }
  Records::Kept keep_orphan(const std::optional<std::string>& sample, const Reading& reading);
  // The oldest of them: into the bottle on the counter, or aside.
  Records::Kept settle_orphan(bool into_bottle);
  // The customer is told: the bottle waits no longer, and a result that is in goes with it.
  Records::Kept tell(const Plan& plan);
  Records::Kept begin_overnight(DemandReach reach);
  Records::Kept change_overnight(const std::string& visit, const std::function<void(OvernightTest&)>& edit);

 signals:
  void changed();  // the bottle on the counter, or which one it is
  void orphansChanged();
  void waitingChanged();  // the bottles that wait, and the overnight tests
  void readingKept(const QString& visit, const QString& analyte, double value);

 private:
  Records::Kept begin_testing(Visit& visit);
  Records::Kept settle(Visit next, Records::Kept kept);
  Records::Kept refreshSupplies(Records::Kept kept);
  Reading with_lot(Reading reading) const;
  void refreshOvernights();
  void refresh();

  Records& records_;
  Words words_;
  Now now_;
  NewId new_id_;
  std::optional<Visit> visit_;
  std::vector<Visit> earlier_, waiting_;
  std::vector<Overnight> overnights_;
  std::vector<OrphanReading> orphans_;
  void readSupplies();
  Supplies written_, supplies_;
  QualityBook quality_;
};

// The first reading of the analyte in the bottle, which a repeat names.
std::optional<int> first_reading_of(const Bottle& bottle, const AnalyteId& analyte);

}  // namespace brimline
