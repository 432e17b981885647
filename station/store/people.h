// SPDX-License-Identifier: GPL-3.0-or-later
// Rows of customers and vessels; called inside a transaction.
#pragma once

#include <functional>
#include <optional>
#include <string>
#include <vector>

#include <nlohmann/json.hpp>

#include "station/store/connection.h"
#include "station/visit.h"

namespace brimline {

// What becomes of a row that is there already.
enum class Merge {
  replace,  // it is as told now, what is absent included
  fill,     // what is told replaces, what is absent stays
  leave     // it stays
};

void put_customer(Connection& connection, const Customer& customer, Merge merge);
// The card as its form tells it; a form that is none is refused.
void put_card(Connection& connection, const nlohmann::ordered_json& form);
std::optional<Customer> card_of(Connection& connection, const std::string& id);
// No customer named: the row keeps the one it has.
void put_vessel(Connection& connection, const Vessel& vessel, const std::optional<std::string>& customer_id,
                Merge merge);

// Whose water a visit was, as its form tells it; null where it does not.
struct OwnerForm {
  nlohmann::ordered_json customer, vessel;
};
// The rows of that: only what it says otherwise than its `earlier` form did, so that
// another counter's edit stays; latest: the visit is the last word (asked only where it matters), an older
// one only fills rows that are not there.
void put_owner_of(Connection& connection, const Visit& visit, const OwnerForm& told, const Visit* earlier,
                  const std::function<bool()>& latest_of_customer,
                  const std::function<bool()>& latest_of_vessel);

// "COLUMN IN (...)" with what it is compared with: on a server one statement for any number of ids, which it
// then plans once.
std::string among(const Connection& connection, const std::string& column,
                  const std::vector<std::string>& ids, QVariantList& values);
// PostgreSQL's form of an array of texts.
QVariant text_array(const std::vector<std::string>& texts);

// Values of a row of customer_columns(); a row that cannot be read fails the transaction.
Customer customer_of(Connection& connection, const QVariantList& row);
struct OwnVessel {
  std::string customer;
  Vessel vessel;
};
std::vector<OwnVessel> vessels_of_customers(Connection& connection, const std::vector<std::string>& ids);
std::vector<Vessel> vessels_of_customer(Connection& connection, const std::string& customer_id);

}  // namespace brimline
