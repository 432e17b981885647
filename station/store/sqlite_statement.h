// SPDX-License-Identifier: GPL-3.0-or-later
// A prepared statement of SQLite, by its own calls: by QtSql a statement of a few values takes longer to bind
// and to describe than to carry out. Other statements may run on the same handle by QtSql.
#pragma once

#include <memory>
#include <span>
#include <string>
#include <vector>

#include <QByteArray>
#include <QSqlError>
#include <QVariantList>

#include "station/store/sql_value.h"

struct sqlite3;
struct sqlite3_stmt;

namespace brimline {

class SqliteStatement {
 public:
  // Null where it cannot be prepared; `wrong` says why.
  static std::unique_ptr<SqliteStatement> prepare(sqlite3* database, const std::string& sql,
                                                  QSqlError& wrong);
  ~SqliteStatement();
  SqliteStatement(const SqliteStatement&) = delete;
  SqliteStatement& operator=(const SqliteStatement&) = delete;

  // All rows of its answer, NULL as an invalid value; nothing, and `wrong`, where it fails. As many values as
  // it has marks.
  std::vector<QVariantList> run(const QVariantList& values, QSqlError& wrong);
  std::vector<QVariantList> run(std::span<const SqlValue> values, QSqlError& wrong);

 private:
  explicit SqliteStatement(sqlite3_stmt* statement) : statement_(statement) {}
  int bind(int place, const QVariant& value);
  int bind(int place, const SqlValue& value);
  template <class Values>
  std::vector<QVariantList> run_with(const Values& values, QSqlError& wrong);
  QVariant value_of(int column) const;

  sqlite3_stmt* statement_;
  std::vector<QByteArray> bytes_;  // bound until the statement has run
};

}  // namespace brimline
