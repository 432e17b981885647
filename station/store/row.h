// SPDX-License-Identifier: GPL-3.0-or-later
// A row of a table as the JSON object whose fields its columns are named after.
#pragma once

#include <span>
#include <string>
#include <string_view>
#include <vector>

#include <QVariantList>
#include <nlohmann/json_fwd.hpp>

#include "station/store/sql_value.h"

namespace brimline {

struct Column {
  enum class Kind { text, number, whole, flag };
  const char* name;
  Kind kind;
};

std::span<const Column> customer_columns();
std::span<const Column> vessel_columns();
std::span<const Column> reading_columns();

// The object's member of that name; null: it has none.
const nlohmann::ordered_json* member_of(const nlohmann::ordered_json& object, std::string_view name);
// `"id", "name", ...`
std::string column_list(std::span<const Column> columns);
// `?, ?, ...`
std::string marks(size_t count);
// The object's values in the order of `columns`, NULL where it has none.
QVariantList to_row(const nlohmann::ordered_json& object, std::span<const Column> columns);
// The same as values that stay in the object.
void add_values(std::vector<SqlValue>& to, const nlohmann::ordered_json& object,
                std::span<const Column> columns);
// Whether the row, from its first value on, says all that the form says.
bool says_all(const QVariantList& row, std::span<const Column> columns, const nlohmann::ordered_json& form);
// The object of a row that starts at `first`; NULL is left out.
nlohmann::ordered_json from_row(const QVariantList& row, std::span<const Column> columns,
                                qsizetype first = 0);

}  // namespace brimline
