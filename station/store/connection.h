// SPDX-License-Identifier: GPL-3.0-or-later
// One connection to the database behind a store, SQLite or PostgreSQL. Statements run inside
// `transact`; the first that fails stops the rest and rolls everything back.
#pragma once

#include <functional>
#include <memory>
#include <optional>
#include <span>
#include <string>
#include <unordered_map>
#include <utility>
#include <vector>

#include <QSqlDatabase>
#include <QSqlQuery>
#include <QVariantList>

#include "station/store/recovery.h"
#include "station/store/sqlite_statement.h"
#include "station/store/store_error.h"

namespace brimline {

enum class Engine { sqlite, postgresql };
enum class Opening { make, existing };  // make: a SQLite file that is not there is made
enum class Access { read, write };

using Rows = std::vector<QVariantList>;

class Connection {
 public:
  // `url` is sqlite:FILE or postgresql://USER@HOST:PORT/NAME. A file that is made has mode 0600.
  static Stored<std::unique_ptr<Connection>> open(const std::string& url, Opening opening);
  // Before the first write: what is committed is on disk, and foreign keys hold.
  Stored<void> make_durable();
  ~Connection();
  Connection(const Connection&) = delete;
  Connection& operator=(const Connection&) = delete;

  // KiB of a SQLite file that are kept in memory, which a server decides by itself.
  void remember(int kib);
  static constexpr int kRemembered = 32768;  // the words of 200,000 customers

  Engine engine() const { return engine_; }
  const QString& file() const { return file_; }  // of SQLite
  // What the store went through before it was opened; absent: nothing out of the ordinary.
  const std::optional<std::string>& recovery() const { return recovery_; }

  // Runs `work` in a transaction and gives what it returns, or the first error of its statements. Inside
  // another's work it is part of that transaction, which its error ends.
  template <class Work>
  auto transact(Access access, Work work) -> Stored<decltype(work())> {
    if (auto error = begin(access)) return tl::unexpected(std::move(*error));
    if constexpr (std::is_void_v<decltype(work())>) {
      work();
      if (auto error = end()) return tl::unexpected(std::move(*error));
      return {};
    } else {
      auto out = work();
      if (auto error = end()) return tl::unexpected(std::move(*error));
      return out;
    }
  }

  // All rows of the answer; none once something has failed. `sql` is kept prepared.
  Rows ask(const std::string& sql, const QVariantList& values = {});
  void tell(const std::string& sql, const QVariantList& values = {}) { ask(sql, values); }
  // Of values that stay where they are until it has run.
  void put(const std::string& sql, std::span<const SqlValue> values);
  // One row after another, for answers too long to hold.
  void each(const std::string& sql, const std::function<void(const QVariantList&)>& row);
  // The same, unprepared: schema steps and pragmas.
  Rows run(const std::string& sql);

  bool failed() const { return error_.has_value(); }
  void fail(StoreError error);
  // The error of statements run outside `transact`, forgotten by asking.
  std::optional<StoreError> take_error() { return std::exchange(error_, std::nullopt); }

  // Values to bind and to read: absent is NULL.
  static QVariant value(const std::string& text) { return QString::fromStdString(text); }
  static QVariant value(const std::optional<std::string>& text);
  static std::string text(const QVariant& value) { return value.toString().toStdString(); }

 private:
  Connection(Engine engine, QString name);
  std::optional<StoreError> begin(Access access);
  std::optional<StoreError> end();
  StoreError error_of(const QSqlError& error) const;
  // `columns`: of each row.
  void each_row(QSqlQuery& query, int columns, const std::function<void(const QVariantList&)>& row);
  Rows rows_of(QSqlQuery& query, int columns);
  void find_handle();
  template <class Values>
  Rows ask_sqlite(const std::string& sql, const Values& values);

  Engine engine_;
  QString name_, file_;
  std::optional<OpenHere> here_;
  std::optional<std::string> recovery_;
  QSqlDatabase database_;
  struct Prepared {
    QSqlQuery query;
    int columns = -1;  // of its answer; not known before it has run
  };
  std::unordered_map<std::string, Prepared> prepared_;
  sqlite3* sqlite_ = nullptr;  // the database's own handle, where it is SQLite's and of the library we call
  std::unordered_map<std::string, std::unique_ptr<SqliteStatement>> of_sqlite_;
  std::optional<StoreError> error_;
  int depth_ = 0;  // of transactions within each other
};

}  // namespace brimline
