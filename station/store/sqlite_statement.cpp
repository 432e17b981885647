// SPDX-License-Identifier: GPL-3.0-or-later
#include "station/store/sqlite_statement.h"

#include <sqlite3.h>

#include <QString>

namespace brimline {
namespace {

QSqlError error_of(sqlite3* database, int code) {
  return {{}, QString::fromUtf8(sqlite3_errmsg(database)), QSqlError::StatementError, QString::number(code)};
}

}  // namespace

std::unique_ptr<SqliteStatement> SqliteStatement::prepare(sqlite3* database, const std::string& sql,
                                                          QSqlError& wrong) {
  sqlite3_stmt* statement = nullptr;
  const int code =
      sqlite3_prepare_v3(database, sql.c_str(), -1, SQLITE_PREPARE_PERSISTENT, &statement, nullptr);
  if (code == SQLITE_OK && statement) return std::unique_ptr<SqliteStatement>(new SqliteStatement(statement));
  wrong = error_of(database, code);
  return nullptr;
}

SqliteStatement::~SqliteStatement() {
  sqlite3_finalize(statement_);
}

int SqliteStatement::bind(int place, const QVariant& value) {
  if (value.isNull()) return sqlite3_bind_null(statement_, place);
  switch (value.metaType().id()) {
    case QMetaType::Bool:
    case QMetaType::Int:
    case QMetaType::UInt:
    case QMetaType::LongLong:
    case QMetaType::ULongLong:
      return sqlite3_bind_int64(statement_, place, value.toLongLong());
    case QMetaType::Double:
      return sqlite3_bind_double(statement_, place, value.toDouble());
    case QMetaType::QByteArray:
      bytes_.push_back(value.toByteArray());
      return sqlite3_bind_blob64(statement_, place, bytes_.back().constData(),
                                 static_cast<sqlite3_uint64>(bytes_.back().size()), SQLITE_STATIC);
    default:
      if (value.toString().isNull()) return sqlite3_bind_null(statement_, place);  // as QtSql does
      bytes_.push_back(value.toString().toUtf8());
      return sqlite3_bind_text64(statement_, place, bytes_.back().constData(),
                                 static_cast<sqlite3_uint64>(bytes_.back().size()), SQLITE_STATIC,
                                 SQLITE_UTF8);
  }
}

QVariant SqliteStatement::value_of(int column) const {
  switch (sqlite3_column_type(statement_, column)) {
    case SQLITE_INTEGER:
      return QVariant::fromValue(qlonglong{sqlite3_column_int64(statement_, column)});
    case SQLITE_FLOAT:
      return sqlite3_column_double(statement_, column);
    case SQLITE_NULL:
      return {};
    case SQLITE_BLOB:
      return QByteArray(static_cast<const char*>(sqlite3_column_blob(statement_, column)),
                        sqlite3_column_bytes(statement_, column));
    default:
      return QString::fromUtf8(reinterpret_cast<const char*>(sqlite3_column_text(statement_, column)),
                               sqlite3_column_bytes(statement_, column));
  }
}

int SqliteStatement::bind(int place, const SqlValue& value) {
  struct Bind {
    sqlite3_stmt* statement;
    int place;
    int operator()(const SqlNull&) const { return sqlite3_bind_null(statement, place); }
    int operator()(std::int64_t whole) const { return sqlite3_bind_int64(statement, place, whole); }
    int operator()(double number) const { return sqlite3_bind_double(statement, place, number); }
    int operator()(std::string_view text) const {
      return sqlite3_bind_text64(statement, place, text.data(), text.size(), SQLITE_STATIC, SQLITE_UTF8);
    }
  };
  return std::visit(Bind{statement_, place}, value);
}

std::vector<QVariantList> SqliteStatement::run(const QVariantList& values, QSqlError& wrong) {
  bytes_.clear();
  bytes_.reserve(static_cast<size_t>(values.size()));
  return run_with(values, wrong);
}

std::vector<QVariantList> SqliteStatement::run(std::span<const SqlValue> values, QSqlError& wrong) {
  return run_with(values, wrong);
}

template <class Values>
std::vector<QVariantList> SqliteStatement::run_with(const Values& values, QSqlError& wrong) {
  std::vector<QVariantList> rows;
  const auto count = static_cast<int>(values.size());
  int code = count == sqlite3_bind_parameter_count(statement_) ? SQLITE_OK : SQLITE_MISUSE;
  for (int i = 0; i < count && code == SQLITE_OK; ++i) code = bind(i + 1, values[i]);
  if (code == SQLITE_OK) {
    const int columns = sqlite3_column_count(statement_);
    while ((code = sqlite3_step(statement_)) == SQLITE_ROW) {
      QVariantList row;
      row.reserve(columns);
      for (int i = 0; i < columns; ++i) row.push_back(value_of(i));
      rows.push_back(std::move(row));
    }
  }
  if (code != SQLITE_DONE) {
    wrong = error_of(sqlite3_db_handle(statement_), code);
    rows.clear();
  }
  sqlite3_reset(statement_);
  sqlite3_clear_bindings(statement_);  // the texts go with the values
  return rows;
}

}  // namespace brimline
