// SPDX-License-Identifier: GPL-3.0-or-later
#include "station/records/import_people.h"

#include <QCryptographicHash>

#include <algorithm>

#include <nlohmann/json.hpp>

#include "station/records/amounts.h"
#include "station/records/moments.h"
#include "station/store/fold.h"
#include "station/store/joining.h"
#include "station/store/people.h"
#include "station/store/row.h"
#include "station/visit_json.h"
#include "station/visit_names.h"

namespace brimline {
namespace {

std::string digits_of(const std::optional<std::string>& phone) {
  std::string out;
  for (const char c : phone.value_or(""))
    if (c >= '0' && c <= '9') out += c;
  return out;
}

bool has_control(const std::string& text) {
  return std::any_of(text.begin(), text.end(), [](unsigned char c) { return c < 0x20 || c == 0x7f; });
}

// An address written in lines.
std::optional<std::string> on_one_line(std::optional<std::string> text) {
  if (!text) return text;
  std::string out;
  for (const char c : *text) {
    if (c == '\r') continue;
    out += c == '\n' ? std::string(", ") : std::string(1, c);
  }
  return out;
}

Customer customer_on(ImportTable& row) {
  Customer out;
  out.id = row.text("id").value_or("");
  out.name = row.text("name");
  if (!out.name) {
    const std::string first = row.text("first_name").value_or(""), last = row.text("last_name").value_or("");
    if (!first.empty() || !last.empty()) out.name = first + (first.empty() || last.empty() ? "" : " ") + last;
  }
  out.phone = row.text("phone");
  out.street = on_one_line(row.text("street"));
  out.email = row.text("email");
  out.language = row.text("language");
  for (const char* column : {"name", "first_name", "last_name", "phone", "email"})
    if (has_control(row.text(column).value_or(""))) row.fault(column, "text on one line");
  if (has_control(out.street.value_or(""))) row.fault("street", "text");
  if (out.language && *out.language != "en" && *out.language != "es" && *out.language != "fr")
    row.fault("language", "en, es or fr");
  out.units = row.choice<Units>("units");
  return out;
}

std::string id_of(const Customer& said) {
  if (!said.id.empty()) return said.id;
  return stable_id("C", {folded_name(said.name.value_or("")), digits_of(said.phone),
                         folded_name(said.street.value_or("")), folded_name(said.email.value_or(""))});
}

std::optional<Volume> volume_on(ImportTable& row) {
  if (const auto value = row.number("volume_m3")) return Volume::cubic_metres(*value);
  const auto value = row.number("volume");
  if (!value) return std::nullopt;
  const auto volume = volume_in(*value, row.text("volume_unit").value_or(""));
  if (!volume) row.fault("volume_unit", "m3, L, gal (US) or gal_imp");
  return volume;
}

// All of it or none: the volume and until when; what stood before may be missing.
std::optional<LearntVolume> learnt_on(ImportTable& row) {
  const auto volume = row.number("learnt_volume_m3");
  const auto until = row.text("learnt_until");
  const auto before = row.number("volume_before_m3");
  const auto before_sd = row.number("volume_before_relative_sd");
  if (!volume && !until && !before && !before_sd) return std::nullopt;
  const auto moment = moment_from(until.value_or(""));
  if (!moment) row.fault("learnt_until", "the moment until which the volume was learnt, ISO 8601");
  if (!volume) row.fault("learnt_volume_m3", "the volume that was learnt");
  if (!moment || !volume) return std::nullopt;
  LearntVolume out{Volume::cubic_metres(*volume), moment->at, std::nullopt, before_sd};
  if (before) out.before = Volume::cubic_metres(*before);
  return out;
}

Vessel vessel_on(ImportTable& row) {
  Vessel out;
  out.id = row.text("vessel_id").value_or("");
  out.kind = row.choice<VesselKind>("kind");
  out.use = row.choice<VesselUse>("use");
  out.place = row.choice<Place>("place");
  out.in_ground = row.flag("in_ground");
  out.surface = row.choice<Surface>("surface");
  out.plaster_age_days = row.number("plaster_age_days");
  out.volume = volume_on(row);
  out.volume_relative_sd = row.number("volume_relative_sd");
  out.learnt_volume = learnt_on(row);
  out.sanitizer = row.choice<Sanitizer>("sanitizer");
  out.previous_sanitizer = row.choice<Sanitizer>("previous_sanitizer");
  if (const auto t = row.number("water_temperature_c")) out.water_temperature = Temperature::celsius(*t);
  out.turnover_h = row.number("turnover_h");
  return out;
}

// What cannot be kept of a form as it reads back, said at the row.
template <class Read>
void judge(ImportTable& row, const nlohmann::ordered_json& form, Read read) {
  const auto again = read(form, "row");
  if (again) return;
  for (const Fault& fault : again.error()) row.fault(row.at_line(fault.what, fault.expected));
}

// Takes `more` where `into` has nothing; true where it gained. Another value is left and told.
bool fill(std::optional<std::string>& into, const std::optional<std::string>& more, bool& differs) {
  if (!more) return false;
  if (into) {
    differs = differs || *into != *more;
    return false;
  }
  into = more;
  return true;
}

}  // namespace

std::string stable_id(const char* prefix, const std::vector<std::string>& parts) {
  QCryptographicHash hash(QCryptographicHash::Sha256);
  for (const std::string& part : parts) {
    hash.addData(QByteArray::fromStdString(part));
    hash.addData(QByteArrayView("\x1f", 1));
  }
  return std::string(prefix) + "-" + hash.result().left(8).toHex().toUpper().toStdString();
}

std::string folded_name(const std::string& name) {
  std::string out;
  for (const std::string& word : folded_words(name)) out += (out.empty() ? "" : " ") + word;
  return out;
}

std::span<const ImportColumn> ImportPeople::columns() {
  static const std::vector<ImportColumn> columns = {{"id", {"customer_id", "customer_number", "customer"}},
                                                    {"name", {"customer_name", "full_name"}},
                                                    {"first_name", {"given_name"}},
                                                    {"last_name", {"family_name", "surname"}},
                                                    {"phone", {"telephone", "phone_number", "tel", "mobile"}},
                                                    {"street", {"address", "street_address"}},
                                                    {"email", {"e_mail", "mail"}},
                                                    {"language", {}},
                                                    {"units", {}},
                                                    {"vessel_id", {}},
                                                    {"kind", {"vessel", "vessel_kind"}},
                                                    {"use", {}},
                                                    {"place", {}},
                                                    {"in_ground", {}},
                                                    {"surface", {"finish"}},
                                                    {"plaster_age_days", {}},
                                                    {"volume", {}},
                                                    {"volume_unit", {"volume_units"}},
                                                    {"volume_m3", {}},
                                                    {"volume_relative_sd", {}},
                                                    {"learnt_volume_m3", {}},
                                                    {"learnt_until", {}},
                                                    {"volume_before_m3", {}},
                                                    {"volume_before_relative_sd", {}},
                                                    {"sanitizer", {"sanitiser"}},
                                                    {"previous_sanitizer", {"previous_sanitiser"}},
                                                    {"water_temperature_c", {"temperature_c"}},
                                                    {"turnover_h", {}}};
  return columns;
}

Stored<void> ImportPeople::begin() {
  const auto erased = store_.erased_customers();
  if (!erased) return tl::unexpected(erased.error());
  erased_.insert(erased->begin(), erased->end());
  return {};
}

ImportPeople::Card* ImportPeople::find(const std::string& id) {
  if (looked_for_.insert(id).second && !cards_.contains(id))
    if (auto stored = or_trouble(store_.customer(id)); stored && *stored)
      cards_[id] = {std::move(**stored), false, true, false};
  const auto found = cards_.find(id);
  return found == cards_.end() ? nullptr : &found->second;
}

ImportPeople::OwnedVessel* ImportPeople::find_vessel(const std::string& id) {
  if (const auto found = vessels_.find(id); found != vessels_.end()) return &found->second;
  const auto owner = or_trouble(store_.connection().transact(Access::read, [&] {
    const Rows rows =
        store_.connection().ask("SELECT customer_id FROM vessels WHERE id = ?", {Connection::value(id)});
    return rows.empty() ? std::string() : Connection::text(rows[0][0]);
  }));
  if (!owner || owner->empty()) return nullptr;
  vessels_of(*owner);
  const auto found = vessels_.find(id);
  return found == vessels_.end() ? nullptr : &found->second;
}

std::vector<std::string> ImportPeople::vessels_of(const std::string& customer) {
  if (vessels_known_.insert(customer).second)
    if (const auto stored = or_trouble(store_.vessels_of(customer)))
      for (const Vessel& vessel : *stored) {
        vessels_.try_emplace(vessel.id, OwnedVessel{vessel, customer, false});
        by_customer_[customer].insert(vessel.id);
      }
  const auto& ids = by_customer_[customer];
  return {ids.begin(), ids.end()};
}

const Customer* ImportPeople::card(const std::string& id) {
  const Card* found = find(id);
  return found ? &found->customer : nullptr;
}

Vessel ImportPeople::vessel(const std::string& id) {
  const OwnedVessel* found = find_vessel(id);
  Vessel out;
  out.id = id;
  return found ? found->vessel : out;
}

void ImportPeople::read(ImportTable& table, Import& out) {
  Customer said = customer_on(table);
  const bool given = !said.id.empty();
  said.id = or_trouble(standing_customer(store_, id_of(said))).value_or(id_of(said));
  if (!said.name && !(given && find(said.id)))
    table.fault("name", "a name, or the id of a customer that is known");
  judge(table, customer_to_json(said), customer_from);
  Vessel vessel = vessel_on(table);
  if (vessel != Vessel{}) {
    if (vessel.id.empty())
      vessel.id = stable_id("W", {said.id, std::string(vessel.kind ? name_of(*vessel.kind) : "")});
    judge(table, vessel_to_json(vessel), vessel_from);
    const OwnedVessel* there = find_vessel(vessel.id);
    if (there && there->customer != said.id)
      table.fault(table.at_line("vessel " + vessel.id + " is another customer's", "an id of its own"));
  }
  if (table.spoilt()) return;
  if (erased(said.id)) {
    out.notes.add(table.at_line("customer " + said.id + " was erased and is left out", "a customer"));
    return;
  }
  take_card(table, said, out);
  if (!vessel.id.empty()) take_vessel(table, vessel, said.id, out);
}

void ImportPeople::take_card(ImportTable& row, const Customer& said, Import& out) {
  Card* card = find(said.id);
  if (!card) {
    cards_[said.id] = {said, true, false, false};
    order_.push_back(said.id);
    by_name_[folded_name(said.name.value_or(""))].insert(said.id);
    return;
  }
  if (!card->from_file) order_.push_back(said.id);
  card->from_file = true;
  bool differs = false, gained = false;
  Customer& is = card->customer;
  for (const auto field :
       {&Customer::name, &Customer::phone, &Customer::street, &Customer::email, &Customer::language})
    gained = fill(is.*field, said.*field, differs) || gained;
  if (said.units && !is.units) {
    is.units = said.units;
    gained = true;
  }
  card->gained = card->gained || gained;
  by_name_[folded_name(is.name.value_or(""))].insert(said.id);
  if (differs)
    out.notes.add(row.at_line("customer " + said.id + " is written otherwise in the records or above",
                              "the same; what is there stays"));
}

void ImportPeople::take_vessel(ImportTable& row, const Vessel& said, const std::string& customer,
                               Import& out) {
  vessels_of(customer);
  const OwnedVessel* there = find_vessel(said.id);
  if (!there) {
    vessels_[said.id] = {said, customer, true};
    by_customer_[customer].insert(said.id);
    vessel_order_.push_back(said.id);
    return;
  }
  if (!there->from_file) {
    vessels_[said.id].from_file = true;
    ++out.counts.vessels.there;
  }
  if (there->vessel != said)
    out.notes.add(row.at_line("vessel " + said.id + " is written otherwise in the records or above",
                              "the same, or a `vessel_id` for each; what is there stays"));
}

Stored<void> ImportPeople::settle(Import& out) {
  for (const std::string& id : order_) {
    const Card& card = cards_[id];
    ++(card.stored ? out.counts.customers.there : out.counts.customers.fresh);
    if (!card.stored || card.gained) out.customers.push_back(card.customer);
  }
  for (const std::string& id : vessel_order_) {
    const OwnedVessel& vessel = vessels_[id];
    ++out.counts.vessels.fresh;
    out.vessels.push_back({vessel.vessel, vessel.customer});
  }
  if (trouble_) return tl::unexpected(*trouble_);
  return {};
}

// The one customer of that name, and telephone where it is said.
std::optional<std::string> ImportPeople::customer_named(ImportTable& row, const std::string& name) {
  const std::string folded = folded_name(name), phone = digits_of(row.text("phone"));
  if (looked_for_.insert("name " + folded).second)
    if (const auto found = or_trouble(store_.customers_matching(name)))
      for (const Found& one : *found) {
        if (folded_name(one.customer.name.value_or("")) != folded) continue;
        cards_.try_emplace(one.customer.id, Card{one.customer, false, true, false});
        by_name_[folded].insert(one.customer.id);
      }
  std::vector<std::string> fitting;
  for (const std::string& id : by_name_[folded])
    if (phone.empty() || digits_of(cards_[id].customer.phone) == phone) fitting.push_back(id);
  if (fitting.size() == 1) return fitting[0];
  row.fault("name", fitting.empty() ? "the name of a customer that is known, or `customer_id`"
                                    : "one of several customers of that name: `phone` or `customer_id`");
  return std::nullopt;
}

std::optional<ImportPeople::Owner> ImportPeople::owner_of(ImportTable& row) {
  Owner out{row.text("customer_id").value_or(""), row.text("vessel_id").value_or("")};
  if (!out.customer.empty())
    out.customer = or_trouble(standing_customer(store_, out.customer)).value_or(out.customer);
  const OwnedVessel* known = out.vessel.empty() ? nullptr : find_vessel(out.vessel);
  const auto name = row.text("name");
  if (out.customer.empty() && !name && known) out.customer = known->customer;
  if (out.customer.empty()) {
    if (!name) {
      row.fault("customer_id", "a customer, a name, or a vessel that is known");
      return std::nullopt;
    }
    const auto id = customer_named(row, *name);
    if (!id) return std::nullopt;
    out.customer = *id;
  } else if (!find(out.customer)) {
    row.fault("customer_id", "the id of a customer that is known");
    return std::nullopt;
  }
  if (known && known->customer != out.customer) {
    row.fault("vessel_id", "a vessel of this customer");
    return std::nullopt;
  }
  if (!out.vessel.empty()) return out;
  const auto vessels = vessels_of(out.customer);
  if (vessels.size() > 1) {
    row.fault("vessel_id", "one of the customer's " + std::to_string(vessels.size()) + " vessels");
    return std::nullopt;
  }
  out.vessel = vessels.empty() ? stable_id("W", {out.customer, ""}) : vessels[0];
  return out;
}

}  // namespace brimline
