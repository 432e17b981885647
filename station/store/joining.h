// SPDX-License-Identifier: GPL-3.0-or-later
// Two cards of one person: found, made one, taken apart again.
#pragma once

#include <cstdint>
#include <functional>
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "station/store/likeness.h"
#include "station/store/store.h"

namespace brimline {

struct LookAlike {
  Customer card, other;
  std::vector<Likeness> by;  // at least one
};

struct JoinedCard {
  std::string id, into;
  friend bool operator==(const JoinedCard&, const JoinedCard&) = default;
};

// Cards that look like that one's and were not told apart, the most alike first.
Stored<std::vector<LookAlike>> look_alikes(Store& store, const std::string& customer_id);
// Of all customers, at most so many. `go_on` is asked now and then with the share done, 0 to 1; where it says
// no, nothing is found.
Stored<std::vector<LookAlike>> all_look_alikes(Store& store, size_t most,
                                               const std::function<bool(double)>& go_on);

// `gone` goes into `kept`, whose words stand; what is not written on it comes from the other. Vessels and
// visits go with it, and what is written under the id that is gone later comes to the card that is kept.
Stored<void> join_customers(Store& store, const std::string& kept, const std::string& gone);
// The cards as they were before; vessels and visits go back, and the visits of those vessels since.
Stored<void> take_apart(Store& store, const std::string& gone);
// Two people all the same: not offered again.
Stored<void> tell_apart(Store& store, const std::string& one, const std::string& other);

Stored<std::vector<JoinedCard>> joined_cards(Store& store);  // by id
// Under which id the customer's card stands: that one, where it was never joined.
Stored<std::string> standing_customer(Store& store, const std::string& id);

// Inside a transaction. The card that one went into, and on to the last; nothing where it stands itself.
std::optional<std::string> joined_into(Connection& connection, const std::string& id);
// All that went into it, through others too.
std::vector<std::string> gone_into(Connection& connection, const std::string& id);
// The visit under the id its customer's card stands under; nothing where it names that already.
std::optional<Visit> of_standing_customer(Connection& connection, const Visit& visit);

}  // namespace brimline
