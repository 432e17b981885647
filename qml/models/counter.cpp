// SPDX-License-Identifier: GPL-3.0-or-later
#include "qml/models/counter.h"

#include <algorithm>

#include "station/quality/supplies_of.h"

namespace brimline {

std::optional<int> first_reading_of(const Bottle& bottle, const AnalyteId& analyte) {
  for (size_t i = 0; i < bottle.readings.size(); ++i)
    if (bottle.readings[i].analyte == analyte && !bottle.readings[i].repeat_of) return static_cast<int>(i);
  return std::nullopt;
}

Counter::Counter(Records& records, Now now, NewId new_id, QObject* parent)
    : QObject(parent), records_(records), now_(std::move(now)), new_id_(std::move(new_id)) {
  waiting_ = records_.waiting();
  orphans_ = records_.orphans();
  readSupplies();
  refreshOvernights();
}

Records::Kept Counter::refreshSupplies(Records::Kept kept) {
  if (!kept) return kept;
  readSupplies();
  emit changed();
  return kept;
}

void Counter::readSupplies() {
  written_ = records_.supplies();
  quality_ = records_.quality();
  supplies_ = with_charts(written_, quality_, now_());
}

Records::Kept Counter::add_standard(const CheckStandard& standard) {
  return refreshSupplies(records_.add_standard(standard));
}

Records::Kept Counter::add_measurement(const CheckMeasurement& measurement) {
  return refreshSupplies(records_.add_measurement(measurement));
}

Records::Kept Counter::add_clearance(const Clearance& clearance) {
  return refreshSupplies(records_.add_clearance(clearance));
}

Records::Kept Counter::add_curve(const LotCurve& curve) {
  return refreshSupplies(records_.add_curve(curve));
}

Records::Kept Counter::keep_lot(const ReagentLot& lot) {
  return refreshSupplies(records_.keep_lot(lot));
}

Records::Kept Counter::add_check(const InstrumentCheck& check) {
  return refreshSupplies(records_.add_check(check));
}

// A photometer's reading rests on the lot in use, where its instrument named none.
Reading Counter::with_lot(Reading reading) const {
  const ReagentLot* lot = lot_in_use(supplies_, reading.analyte);
  if (!reading.lot && lot && reading.method == Method::photometer) reading.lot = lot->lot;
  return reading;
}

const OvernightTest* Counter::overnight() const {
  for (const Overnight& overnight : overnights_)
    if (visit_ && overnight.test.visit == visit_->id) return &overnight.test;
  return nullptr;
}

void Counter::refreshOvernights() {
  overnights_.clear();
  for (OvernightTest& test : records_.overnights())
    if (auto visit = records_.visit(test.visit)) overnights_.push_back({std::move(test), std::move(*visit)});
}

void Counter::refresh() {
  earlier_.clear();
  if (visit_ && !visit_->vessel.id.empty())
    for (Visit& other : records_.visits_of_vessel(visit_->vessel.id)) {
      if (other.id == visit_->id) break;
      earlier_.push_back(std::move(other));
    }
  waiting_ = records_.waiting();
  refreshOvernights();
  emit waitingChanged();
  emit changed();
}

Records::Kept Counter::settle(Visit next, Records::Kept kept) {
  if (!kept) return kept;
  visit_ = std::move(next);
  refresh();
  return kept;
}

void Counter::speak(std::string_view language) {
  words_ = Words(language);
  emit changed();
  emit waitingChanged();
}

Records::Kept Counter::begin(const std::string& bottle) {
  Visit visit;
  visit.id = new_id_("V");
  visit.bottle.code = bottle.empty() ? records_.next_bottle() : bottle;
  visit.bottle.taken_at = now_();
  visit.bottle.occasion = Occasion::routine;
  return settle(visit, records_.begin(visit));
}

Records::Kept Counter::open(const std::string& visit_id) {
  std::optional<Visit> found = records_.visit(visit_id);
  if (!found) return tl::unexpected(tr("This visit is not in the records.").toStdString());
  visit_ = std::move(found);
  refresh();
  return {};
}

Records::Kept Counter::change(const std::function<void(Visit&)>& edit) {
  if (!visit_) return tl::unexpected(tr("There is no bottle on the counter.").toStdString());
  Visit next = *visit_;
  edit(next);
  if (next == *visit_) return {};
  return settle(next, records_.update(next));
}

// A bottle is tested from its first reading on.
Records::Kept Counter::begin_testing(Visit& visit) {
  if (visit.bottle.tested_at) return {};
  visit.bottle.tested_at = now_();
  return records_.update(visit);
}

Records::Kept Counter::add_reading(const Reading& reading) {
  if (!visit_) return tl::unexpected(tr("There is no bottle on the counter.").toStdString());
  Visit next = *visit_;
  Reading added = with_lot(reading);
  added.repeat_of = first_reading_of(next.bottle, reading.analyte);
  if (auto kept = begin_testing(next); !kept) return kept;
  next.bottle.readings.push_back(added);
  if (auto kept = records_.add_reading(next.id, added); !kept) return kept;
  emit readingKept(QString::fromStdString(next.id), QString::fromStdString(added.analyte), added.value);
  return settle(next, {});
}

Records::Kept Counter::take_back_reading() {
  if (!visit_ || visit_->bottle.readings.empty())
    return tl::unexpected(tr("There is no reading to take back.").toStdString());
  Visit next = *visit_;
  next.bottle.readings.pop_back();
  return settle(next, records_.correct(next.id, next.bottle.readings, tr("taken back").toStdString()));
}

void Counter::sign_as(std::function<std::string()> who) {
  records_.sign_as([this, who = std::move(who)] {
    std::string name = who();
    return Signature{name.empty() ? "counter" : std::move(name), now_()};
  });
}

void Counter::reload() {
  if (visit_)
    if (auto found = records_.visit(visit_->id)) visit_ = std::move(*found);
  orphans_ = records_.orphans();
  readSupplies();
  refresh();
  emit orphansChanged();
}

std::optional<Records::Kept> Counter::add_reading_to(const std::string& bottle, const Reading& reading) {
  const auto found =
      std::find_if(waiting_.begin(), waiting_.end(), [&](const Visit& v) { return v.bottle.code == bottle; });
  if (found == waiting_.end()) return std::nullopt;
  Visit next = *found;
  Reading added = with_lot(reading);
  added.repeat_of = first_reading_of(next.bottle, reading.analyte);
  next.bottle.readings.push_back(added);
  auto kept = records_.add_reading(next.id, added);
  if (kept) {
    emit readingKept(QString::fromStdString(next.id), QString::fromStdString(added.analyte), added.value);
    // Not read anew: that would cost every reading of every bottle that waits.
    *found = std::move(next);
    emit waitingChanged();
  }
  return kept;
}

Records::Kept Counter::keep_orphan(const std::optional<std::string>& sample, const Reading& reading) {
  auto kept = records_.keep_orphan({new_id_("R"), now_(), sample, with_lot(reading)});
  if (kept) {
    orphans_ = records_.orphans();
    emit orphansChanged();
  }
  return kept;
}

Records::Kept Counter::settle_orphan(bool into_bottle) {
  if (orphans_.empty() || (into_bottle && !visit_))
    return tl::unexpected(tr("There is no bottle on the counter.").toStdString());
  const OrphanReading orphan = orphans_.front();
  Reading as = orphan.reading;
  std::optional<std::string> visit;
  Visit next;
  if (into_bottle) {
    next = *visit_;
    visit = next.id;
    as.repeat_of = first_reading_of(next.bottle, as.analyte);
    if (auto kept = begin_testing(next); !kept) return kept;
    next.bottle.readings.push_back(as);
  }
  auto kept = records_.settle_orphan(orphan.id, visit, as);
  orphans_ = records_.orphans();  // another counter may have settled it
  emit orphansChanged();
  if (!kept || !into_bottle) return kept;
  emit readingKept(QString::fromStdString(next.id), QString::fromStdString(as.analyte), as.value);
  return settle(next, {});
}

Records::Kept Counter::tell(const Plan& plan) {
  if (!visit_) return tl::unexpected(tr("There is no bottle on the counter.").toStdString());
  Visit next = *visit_;
  next.plan_as_told = plan;
  auto kept = records_.tell(next.id, plan);
  const OvernightTest* test = overnight();
  if (kept && test && test->stage == OvernightStage::result)
    kept = records_.change_overnight(next.id, [](OvernightTest& t) { t.stage = OvernightStage::closed; });
  return settle(next, kept);
}

Records::Kept Counter::begin_overnight(DemandReach reach) {
  if (!visit_) return tl::unexpected(tr("There is no bottle on the counter.").toStdString());
  OvernightTest test;
  test.visit = visit_->id;
  test.reach = reach;
  return settle(*visit_, records_.begin_overnight(test));
}

Records::Kept Counter::change_overnight(const std::string& visit,
                                        const std::function<void(OvernightTest&)>& edit) {
  auto kept = records_.change_overnight(visit, edit);
  if (!kept) return kept;
  refreshOvernights();
  emit waitingChanged();
  return kept;
}

}  // namespace brimline
