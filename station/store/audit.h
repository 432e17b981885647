// SPDX-License-Identifier: GPL-3.0-or-later
// The audit trail: who changed what, from what, why. It grows and is never rewritten.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include <nlohmann/json_fwd.hpp>

#include "analysis/instant.h"

namespace brimline {

// Who does what is done now, and when that is.
struct Signature {
  std::string who;  // a member of staff, or the program itself
  Instant at;
};

// What is written down of one change. Names and addresses of customers never are.
struct AuditNote {
  std::string what;     // "visit", "reading", "customer", "vessel", "staff", "settings", "backup", ...
  std::string subject;  // the id it happened to
  std::optional<std::string> field, before, after, reason;
  friend bool operator==(const AuditNote&, const AuditNote&) = default;
};

// "reading A-1 ph: 7.9 -> 7.2 (reason)": for logs and tests.
std::string in_one_line(const AuditNote& note);

struct AuditRow {
  std::int64_t number = 0;  // from 1, without gaps
  Signature by;
  AuditNote note;
};

// What differs between two forms of a visit, one note a field or reading; a person's name, telephone, street
// and email are named as changed without their values. Fields that were absent before are no change unless
// `filled`.
std::vector<AuditNote> differences(const nlohmann::ordered_json& before, const nlohmann::ordered_json& after,
                                   const std::string& subject, bool filled);

}  // namespace brimline
