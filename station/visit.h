// SPDX-License-Identifier: GPL-3.0-or-later
// A visit: whose bottle, which vessel, what was read, and the plan as it was told.
// Its JSON form is `brimline-visit/1` (station/visit_json.h).
#pragma once

#include <optional>
#include <string>

#include "analysis/panel/bottle.h"
#include "analysis/panel/vessel.h"
#include "analysis/treatment/plan.h"

namespace brimline {

enum class Units { us, metric };

struct Customer {
  std::string id;
  std::optional<std::string> name, phone, street, email;
  std::optional<std::string> language;  // of the sheet: en, es, fr
  std::optional<Units> units;
  friend bool operator==(const Customer&, const Customer&) = default;
};

struct Visit {
  std::string id;
  Bottle bottle;
  Vessel vessel;
  std::optional<Customer> customer;
  std::optional<Instant> home_at;  // when the customer gets home: the timetable starts here
  std::optional<Plan> plan_as_told;
  friend bool operator==(const Visit&, const Visit&) = default;
};

}  // namespace brimline
