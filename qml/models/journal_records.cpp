// SPDX-License-Identifier: GPL-3.0-or-later
#include "qml/models/journal_records.h"

#include <QCoreApplication>

#include "station/bottle_label.h"

namespace brimline {
namespace {

using std::chrono::milliseconds;

constexpr milliseconds kMoment{300};     // a question while somebody types
constexpr milliseconds kPatience{3000};  // something that cannot wait in the journal

template <class T>
Records::Kept told(const Stored<T>& stored) {
  if (stored) return {};
  return tl::unexpected(stored.error().text);
}

std::string say(const char* text) {
  return QCoreApplication::translate("journal", text).toStdString();
}

}  // namespace

JournalRecords::JournalRecords(Store& own, const std::string& own_url, std::string shared_url,
                               JournaledStore::NewId new_id, std::function<void()> changed,
                               std::function<void()> state_changed)
    : StoreRecords(own, own_url),
      shared_url_(std::move(shared_url)),
      new_id_(std::move(new_id)),
      courier_({shared_url_, own_url, std::move(changed), std::move(state_changed)}),
      journal_(own, new_id_, [this] { courier_.wake(); }) {}

Records::Kept JournalRecords::write(WaitingWork work) {
  return told(journal_.write(std::move(work)));
}

Records::Kept JournalRecords::there(const std::function<Stored<void>(Store&)>& work) {
  Signature by = store().signature();
  const auto done = courier_.ask<std::string>(
      [work, by](Store& shared) -> Stored<std::string> {
        shared.sign_as([by] { return by; });
        const auto stored = work(shared);
        return stored ? std::string() : stored.error().text;
      },
      kPatience);
  if (!done)
    return tl::unexpected(
        say(QT_TRANSLATE_NOOP("journal", "the shared records cannot be reached; try again later")));
  if (!done->empty()) return tl::unexpected(*done);
  courier_.wake();
  return {};
}

Records::Kept JournalRecords::begin(const Visit& visit) {
  return write(work::begin(visit));
}

Records::Kept JournalRecords::update(const Visit& visit) {
  const auto before = store().visit(visit.id);
  if (!before || !*before) return StoreRecords::update(visit);
  return write(work::update(**before, visit));
}

Records::Kept JournalRecords::add_reading(const std::string& visit, const Reading& reading) {
  return write(work::reading(visit, reading));
}

Records::Kept JournalRecords::tell(const std::string& visit, const Plan& plan) {
  return write(work::tell(visit, plan));
}

Records::Kept JournalRecords::begin_overnight(const OvernightTest& test) {
  return write(work::overnight(std::nullopt, test));
}

Records::Kept JournalRecords::change_overnight(const std::string& visit,
                                               const std::function<void(OvernightTest&)>& edit) {
  const auto before = store().overnight(visit);
  if (!before || !*before)
    return tl::unexpected(say(QT_TRANSLATE_NOOP("journal", "there is no overnight test of this bottle")));
  OvernightTest after = **before;
  edit(after);
  if (after == **before) return {};
  return write(work::overnight(**before, after));
}

Records::Kept JournalRecords::keep_orphan(const OrphanReading& orphan) {
  return write(work::orphan(orphan));
}

Records::Kept JournalRecords::settle_orphan(const std::string& id, const std::optional<std::string>& visit,
                                            const Reading& as) {
  return write(work::settle(id, visit, as));
}

Records::Kept JournalRecords::correct(const std::string& visit, const std::vector<Reading>& readings,
                                      const std::string& reason) {
  const auto before = store().visit(visit);
  if (!before || !*before) return StoreRecords::correct(visit, readings, reason);
  return write(work::correct(visit, (*before)->bottle.readings, readings, reason));
}

// The other counters' edit, where there is one, is met when this one is carried: then it is a choice.
tl::expected<std::optional<Customer>, std::string> JournalRecords::edit_customer(const Customer& seen,
                                                                                 const Customer& now) {
  if (const auto kept = write(work::customer(seen, now)); !kept) return tl::unexpected(kept.error());
  return std::optional<Customer>();
}

Records::Kept JournalRecords::keep_lot(const ReagentLot& lot) {
  auto kept = there([lot](Store& shared) { return shared.keep_lot(lot); });
  return kept ? StoreRecords::keep_lot(lot) : kept;
}
Records::Kept JournalRecords::add_check(const InstrumentCheck& check) {
  return there([check](Store& shared) { return shared.add_check(check); });
}
Records::Kept JournalRecords::add_standard(const CheckStandard& standard) {
  return there([standard](Store& shared) { return shared.add_standard(standard); });
}
Records::Kept JournalRecords::add_measurement(const CheckMeasurement& measurement) {
  return there([measurement](Store& shared) { return shared.add_measurement(measurement); });
}
Records::Kept JournalRecords::add_clearance(const Clearance& clearance) {
  return there([clearance](Store& shared) { return shared.add_clearance(clearance); });
}
Records::Kept JournalRecords::add_curve(const LotCurve& curve) {
  return there([curve](Store& shared) { return shared.add_curve(curve); });
}

Records::Kept JournalRecords::keep_staff(const StaffMember& member) {
  auto kept = there([member](Store& shared) { return brimline::keep_staff(shared, member); });
  return kept ? StoreRecords::keep_staff(member) : kept;
}

Records::Kept JournalRecords::erase_customer(const std::string& id, const std::string& reason) {
  auto kept = there([id, reason](Store& shared) { return shared.erase_customer(id, reason); });
  if (kept && store().customer(id).value_or(std::nullopt)) return StoreRecords::erase_customer(id, reason);
  return kept;
}

std::vector<LookAlike> JournalRecords::look_alikes(const std::string& customer) {
  auto found = courier_.ask<std::vector<LookAlike>>(
      [customer](Store& shared) { return brimline::look_alikes(shared, customer); }, kMoment);
  return found ? std::move(*found) : std::vector<LookAlike>();
}

// Joined in the shared records only; what is known here follows with the next of what others did.
Records::Kept JournalRecords::join_customers(const std::string& kept, const std::string& gone) {
  return there([kept, gone](Store& shared) { return brimline::join_customers(shared, kept, gone); });
}
Records::Kept JournalRecords::take_apart(const std::string& gone) {
  return there([gone](Store& shared) { return brimline::take_apart(shared, gone); });
}
Records::Kept JournalRecords::tell_apart(const std::string& one, const std::string& other) {
  return there([one, other](Store& shared) { return brimline::tell_apart(shared, one, other); });
}

std::optional<Customer> JournalRecords::customer(const std::string& id) {
  auto found =
      courier_.ask<std::optional<Customer>>([id](Store& shared) { return shared.customer(id); }, kMoment);
  return found ? std::move(*found) : StoreRecords::customer(id);
}

std::optional<Visit> JournalRecords::visit(const std::string& id) {
  if (auto own = StoreRecords::visit(id)) return own;
  const auto found =
      courier_.ask<std::optional<Visit>>([id](Store& shared) { return shared.visit(id); }, kMoment);
  if (!found || !*found) return std::nullopt;
  (void)mirror(store(), **found, (*found)->plan_as_told.has_value());
  return *found;
}

std::vector<Visit> JournalRecords::visits_of_vessel(const std::string& vessel) {
  const auto found = courier_.ask<std::vector<Visit>>(
      [vessel](Store& shared) { return shared.visits_of_vessel(vessel); }, kMoment);
  std::vector<Visit> own = StoreRecords::visits_of_vessel(vessel);
  if (!found) return own;
  // What was done here last is not everywhere yet.
  std::vector<Visit> out = *found;
  for (Visit& one : out)
    for (const Visit& mine : own)
      if (mine.id == one.id) one = mine;
  for (const Visit& mine : own)
    if (std::none_of(out.begin(), out.end(), [&](const Visit& one) { return one.id == mine.id; }))
      out.push_back(mine);
  for (const Visit& one : *found)
    if (std::none_of(own.begin(), own.end(), [&](const Visit& mine) { return mine.id == one.id; }))
      (void)mirror(store(), one, one.plan_as_told.has_value());  // for when the server is away
  return out;
}

std::vector<FoundCustomer> JournalRecords::customers(const std::string& text) {
  const auto found = courier_.ask<std::vector<Found>>(
      [text](Store& shared) { return shared.customers_matching(text); }, kMoment);
  if (!found) return StoreRecords::customers(text);
  std::vector<FoundCustomer> out;
  for (const Found& one : *found) out.push_back({one.customer, one.vessels, one.last_visit});
  for (FoundCustomer& mine : StoreRecords::customers(text))
    if (std::none_of(out.begin(), out.end(),
                     [&](const auto& one) { return one.customer.id == mine.customer.id; }))
      out.push_back(std::move(mine));
  return out;
}

std::vector<Vessel> JournalRecords::vessels_of(const std::string& customer) {
  auto found = courier_.ask<std::vector<Vessel>>(
      [customer](Store& shared) { return shared.vessels_of(customer); }, kMoment);
  std::vector<Vessel> own = StoreRecords::vessels_of(customer);
  if (!found) return own;
  for (Vessel& mine : own)
    if (std::none_of(found->begin(), found->end(), [&](const Vessel& one) { return one.id == mine.id; }))
      found->push_back(std::move(mine));
  return std::move(*found);
}

std::vector<AuditRow> JournalRecords::audit_trail(int most, std::int64_t before) {
  auto found = courier_.ask<std::vector<AuditRow>>(
      [most, before](Store& shared) { return shared.audit_trail(most, before); }, kMoment);
  return found ? std::move(*found) : StoreRecords::audit_trail(most, before);
}

std::pair<std::int64_t, std::int64_t> JournalRecords::contents() {
  const auto found = courier_.ask<std::pair<std::int64_t, std::int64_t>>(
      [](Store& shared) -> Stored<std::pair<std::int64_t, std::int64_t>> {
        return StoreRecords(shared, {}).contents();
      },
      kPatience);
  return found ? *found : StoreRecords::contents();
}

// A number that no other counter gets; while the server is away letters of this counter's own.
std::string JournalRecords::next_bottle() {
  const auto number =
      courier_.ask<std::int64_t>([](Store& shared) { return shared.next_bottle_number(); }, kMoment);
  if (number) return bottle_label(*number);
  const std::string id = new_id_();
  return "B-" + id.substr(id.size() > 5 ? id.size() - 5 : 0);
}

std::string JournalRecords::away() {
  const CourierState state = courier_.state();
  if (!state.away) return {};
  return QCoreApplication::translate(
             "journal",
             "The shared records cannot be reached. Work goes on here and is joined later: %1 pieces wait.")
      .arg(state.waiting)
      .toStdString();
}

std::vector<WaitingWork> JournalRecords::refused() {
  auto held = journal_.refused();
  return held ? std::move(*held) : std::vector<WaitingWork>();
}

Records::Kept JournalRecords::settle_refused(const std::string& id, bool ours) {
  return told(ours ? journal_.insist(id) : journal_.give_way(id));
}

}  // namespace brimline
