// SPDX-License-Identifier: GPL-3.0-or-later
#include "station/store/row.h"

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
// A typed NULL, so that the server knows what it is asked to compare or store.
QVariant null_of(Kind kind) {
  switch (kind) {
    case Kind::text:
      return QVariant(QMetaType::fromType<QString>());
    case Kind::number:
      return QVariant(QMetaType::fromType<double>());
    default:
      return QVariant(QMetaType::fromType<int>());
  }
}
}  // namespace

QVariantList to_row(const ordered_json& object, std::span<const Column> columns) {
  QVariantList out;
  for (const Column& column : columns) {
    const auto found = object.find(column.name);
    if (found == object.end())
      out.push_back(null_of(column.kind));
    else if (column.kind == Kind::text)
      out.push_back(QString::fromStdString(found->get<std::string>()));
    else if (column.kind == Kind::number)
      out.push_back(found->get<double>());
    else
      out.push_back(column.kind == Kind::flag ? int{found->get<bool>()} : found->get<int>());
  }
  return out;
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
