// SPDX-License-Identifier: GPL-3.0-or-later
// A value to bind without a copy of it: a text stays where it is until its statement has run.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <variant>

#include <QVariant>

namespace brimline {

// Of a type, so that a server knows what it is asked to compare or store.
struct SqlNull {
  QMetaType::Type type = QMetaType::QString;
};

using SqlValue = std::variant<SqlNull, std::int64_t, double, std::string_view>;

inline SqlValue sql_value(const std::optional<std::int64_t>& whole) {
  return whole ? SqlValue(*whole) : SqlNull{QMetaType::LongLong};
}

// As QtSql binds it.
inline QVariant variant_of(const SqlValue& value) {
  struct Form {
    QVariant operator()(const SqlNull& null) const { return QVariant(QMetaType(null.type)); }
    QVariant operator()(std::int64_t whole) const { return QVariant::fromValue(qlonglong{whole}); }
    QVariant operator()(double number) const { return number; }
    QVariant operator()(std::string_view text) const {
      return QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size()));
    }
  };
  return std::visit(Form{}, value);
}

}  // namespace brimline
