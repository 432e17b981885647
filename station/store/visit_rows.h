// SPDX-License-Identifier: GPL-3.0-or-later
// A visit as rows of the store, inside a transaction: written, and read back.
#pragma once

#include <optional>
#include <string>

#include <nlohmann/json.hpp>

#include "station/store/connection.h"
#include "station/store/people.h"
#include "station/visit.h"

namespace brimline {

// The JSON form of a visit in the parts that are its rows.
struct VisitForm {
  explicit VisitForm(const Visit& visit);
  // It reads back as the visit: a number that is none, or a name with no spelling, would not.
  bool comes_back = false;
  std::string circumstances;  // without what stands in rows of its own
  OwnerForm owner;
  nlohmann::ordered_json readings;
  std::optional<std::string> plan;
};

struct VisitState {
  int revision = 0;
  bool finished = false;
};

bool comes_back(const Visit& visit);
// Of one that does not.
StoreError cannot_be_kept(const Visit& visit);

// When the visit was, as far as is known, in seconds of UTC since 1970.
std::optional<std::int64_t> moment_of(const Visit& visit);

std::optional<VisitState> state_of(Connection& c, const std::string& id);
// Nothing where there is none; the transaction fails where it cannot be read.
std::optional<Visit> load(Connection& c, const std::string& id);

// Readings from `position` on.
void add_rows(Connection& c, const std::string& visit_id, size_t position,
              const nlohmann::ordered_json& readings);
void put_plan(Connection& c, const std::string& visit_id, const std::string& plan);
void put_due(Connection& c, const Visit& visit);  // again, after its plan
// The row of the visit itself, new or in place of the earlier.
void put_circumstances(Connection& c, const Visit& visit, const Visit* earlier, int revision, bool finished,
                       const VisitForm& form);
// `earlier`: what stands there, whose rows go first.
void put_whole(Connection& c, const Visit& visit, const VisitForm& form, const Visit* earlier, int revision,
               bool finished, bool there);

}  // namespace brimline
