// SPDX-License-Identifier: GPL-3.0-or-later
#include "station/store/row.h"

#include <algorithm>

#include <nlohmann/json.hpp>

#include "station/visit_json.h"

namespace brimline {

using nlohmann::ordered_json;
using Kind = Column::Kind;

std::span<const Column> customer_columns() {
  static constexpr Column columns[] = {
      {"id", Kind::text},    {"name", Kind::text},     {"phone", Kind::text}, {"street", Kind::text},
      {"email", Kind::text}, {"language", Kind::text}, {"units", Kind::text}};
  return columns;
}

std::span<const Column> vessel_columns() {
  static constexpr Column columns[] = {{"id", Kind::text},
                                       {"kind", Kind::text},
                                       {"use", Kind::text},
                                       {"place", Kind::text},
                                       {"in_ground", Kind::flag},
                                       {"surface", Kind::text},
                                       {"plaster_age_days", Kind::number},
                                       {"volume_m3", Kind::number},
                                       {"volume_relative_sd", Kind::number},
                                       {"learnt_volume_m3", Kind::number},
                                       {"learnt_until", Kind::text},
                                       {"volume_before_m3", Kind::number},
                                       {"volume_before_relative_sd", Kind::number},
                                       {"sanitizer", Kind::text},
                                       {"previous_sanitizer", Kind::text},
                                       {"water_temperature_c", Kind::number},
                                       {"turnover_h", Kind::number}};
  return columns;
}

std::span<const Column> reading_columns() {
  static constexpr Column columns[] = {
      {"analyte", Kind::text},    {"value", Kind::number},    {"method", Kind::text},
      {"dilution", Kind::number}, {"clipped", Kind::text},    {"repeat_of", Kind::whole},
      {"sd", Kind::number},       {"instrument", Kind::text}, {"lot", Kind::text}};
  return columns;
}

// nlohmann's own way makes a string of the name first.
const ordered_json* member_of(const ordered_json& object, std::string_view name) {
  if (!object.is_object()) return nullptr;
  for (const auto& [key, value] : object.get_ref<const ordered_json::object_t&>())
    if (key == name) return &value;
  return nullptr;
}

std::string column_list(std::span<const Column> columns) {
  std::string out;
  for (const Column& column : columns)
    out.append(out.empty() ? "\"" : ", \"").append(column.name).append("\"");
  return out;
}

std::string marks(size_t count) {
  std::string out = "?";
  for (size_t i = 1; i < count; ++i) out += ", ?";
  return out;
}

namespace {
SqlValue value_of(const ordered_json* member, Kind kind) {
  switch (kind) {
    case Kind::text:
      return member ? SqlValue(std::string_view(member->get_ref<const std::string&>())) : SqlNull{};
    case Kind::number:
      return member ? SqlValue(member->get<double>()) : SqlNull{QMetaType::Double};
    case Kind::whole:
      return member ? SqlValue(std::int64_t{member->get<int>()}) : SqlNull{QMetaType::Int};
    case Kind::flag:
      return member ? SqlValue(std::int64_t{member->get<bool>()}) : SqlNull{QMetaType::Int};
  }
  return SqlNull{};
}
}  // namespace

void add_values(std::vector<SqlValue>& to, const ordered_json& object, std::span<const Column> columns) {
  for (const Column& column : columns) to.push_back(value_of(member_of(object, column.name), column.kind));
}

QVariantList to_row(const ordered_json& object, std::span<const Column> columns) {
  QVariantList out;
  for (const Column& column : columns)
    out.push_back(variant_of(value_of(member_of(object, column.name), column.kind)));
  return out;
}

namespace {
bool says(const QVariant& value, Kind kind, const ordered_json& member) {
  if (value.isNull()) return false;
  switch (kind) {
    case Kind::text:
      return value.toString().toUtf8() == QByteArrayView(member.get_ref<const std::string&>());
    case Kind::number:
      return value.toDouble() == member.get<double>();
    case Kind::whole:
      return value.toInt() == member.get<int>();
    case Kind::flag:
      return (value.toInt() != 0) == member.get<bool>();
  }
  return false;
}
}  // namespace

bool says_all(const QVariantList& row, std::span<const Column> columns, const ordered_json& form) {
  const auto& members = form.get_ref<const ordered_json::object_t&>();
  return std::all_of(members.begin(), members.end(), [&](const auto& member) {
    const auto column =
        std::find_if(columns.begin(), columns.end(), [&](const Column& c) { return member.first == c.name; });
    return column != columns.end() && says(row[column - columns.begin()], column->kind, member.second);
  });
}

ordered_json from_row(const QVariantList& row, std::span<const Column> columns, qsizetype first) {
  ordered_json out = ordered_json::object();
  for (const Column& column : columns) {
    const QVariant& value = row[first++];
    if (value.isNull()) continue;
    switch (column.kind) {
      case Kind::text:
        out[column.name] = value.toString().toStdString();
        break;
      case Kind::number:
        out[column.name] = number_to_json(value.toDouble());
        break;
      case Kind::whole:
        out[column.name] = value.toInt();
        break;
      case Kind::flag:
        out[column.name] = value.toInt() != 0;
        break;
    }
  }
  return out;
}

}  // namespace brimline
