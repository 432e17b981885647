// SPDX-License-Identifier: GPL-3.0-or-later
#include "station/store/connection.h"

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <atomic>
#include <cerrno>
#include <cstring>

#include <sqlite3.h>

#include <QSqlDriver>
#include <QSqlError>
#include <QSqlRecord>
#include <QUrl>
#include <QUrlQuery>

#include "station/store/recovery.h"

namespace brimline {

namespace {

constexpr std::string_view kSqlite = "sqlite:";
constexpr const char* kBusyMs = "10000";
// A server that does not answer is away: the counter is told within seconds, not minutes.
const QString kPatience = QStringLiteral("connect_timeout=3;tcp_user_timeout=8000");

StoreError error(StoreTrouble trouble, std::string text) {
  return {trouble, std::move(text)};
}

QString new_name() {
  static std::atomic<int> count{0};
  return QStringLiteral("store-%1").arg(++count);
}

std::string one_line(const QString& text) {
  return text.simplified().toStdString();
}

// Makes the file, readable by its owner alone, unless it is there; says why it cannot be a store.
std::optional<StoreError> prepare_file(const std::string& path, Opening opening) {
  struct stat info {};
  if (path.empty()) return error(StoreTrouble::unreachable, "no file is named; expected sqlite:FILE");
  if (::stat(path.c_str(), &info) == 0) {
    if (S_ISREG(info.st_mode)) return std::nullopt;
    return error(StoreTrouble::not_a_store, path + " is not a plain file");
  }
  if (errno != ENOENT) return error(StoreTrouble::unreachable, path + ": " + std::strerror(errno));
  if (opening == Opening::existing) return error(StoreTrouble::unreachable, "there is no store at " + path);
  const int file = ::open(path.c_str(), O_CREAT | O_EXCL | O_WRONLY | O_CLOEXEC, 0600);
  if (file < 0 && errno != EEXIST)
    return error(errno == ENOSPC ? StoreTrouble::full : StoreTrouble::unreachable,
                 path + " cannot be made: " + std::strerror(errno));
  if (file >= 0) ::close(file);
  return std::nullopt;
}

// Options of the connection may be named after a "?": only those that choose how to reach the server.
std::optional<QString> server_options(const QUrl& url) {
  QString out = kPatience;
  for (const auto& [key, value] : QUrlQuery(url).queryItems(QUrl::FullyDecoded)) {
    static const QStringList known = {"sslmode", "connect_timeout", "sslrootcert", "sslcert", "sslkey"};
    if (!known.contains(key) || value.contains(';') || value.contains(' ')) return std::nullopt;
    out += ";" + key + "=" + value;  // of two of one name the last counts
  }
  return out;
}

}  // namespace

Connection::Connection(Engine engine, QString name) : engine_(engine), name_(std::move(name)) {
  database_ = QSqlDatabase::addDatabase(engine == Engine::sqlite ? "QSQLITE" : "QPSQL", name_);
}

Connection::~Connection() {
  prepared_.clear();
  of_sqlite_.clear();
  database_.close();
  database_ = QSqlDatabase();
  QSqlDatabase::removeDatabase(name_);
}

Stored<std::unique_ptr<Connection>> Connection::open(const std::string& url, Opening opening) {
  const bool sqlite = url.starts_with(kSqlite);
  const QUrl server(QString::fromStdString(url));
  if (!sqlite && server.scheme() != "postgresql" && server.scheme() != "postgres")
    return tl::unexpected(error(StoreTrouble::unreachable,
                                "the database is named wrongly; expected sqlite:FILE or postgresql://..."));
  std::unique_ptr<Connection> out(new Connection(sqlite ? Engine::sqlite : Engine::postgresql, new_name()));
  QSqlDatabase& database = out->database_;
  if (!database.isValid())
    return tl::unexpected(error(StoreTrouble::unreachable, "the database driver is not installed"));
  if (sqlite) {
    const std::string path = url.substr(kSqlite.size());
    if (auto wrong = prepare_file(path, opening)) return tl::unexpected(std::move(*wrong));
    out->file_ = QString::fromStdString(path);
    out->recovery_ = out->here_.emplace(path).unfinished_work();
    database.setDatabaseName(out->file_);
    database.setConnectOptions(QStringLiteral("QSQLITE_BUSY_TIMEOUT=%1").arg(kBusyMs));
  } else {
    const auto options = server_options(server);
    if (!options)
      return tl::unexpected(error(StoreTrouble::unreachable, "the database's options are not known"));
    database.setHostName(server.host());
    database.setPort(server.port(5432));
    database.setDatabaseName(server.path().mid(1));
    database.setUserName(server.userName());
    database.setPassword(server.password());
    database.setConnectOptions(*options);
  }
  if (!database.open()) {
    StoreError wrong = out->error_of(database.lastError());
    wrong.trouble = StoreTrouble::unreachable;
    return tl::unexpected(std::move(wrong));
  }
  return out;
}

Stored<void> Connection::make_durable() {
  if (engine_ == Engine::sqlite) {
    for (const char* pragma :
         {"PRAGMA trusted_schema = OFF", "PRAGMA foreign_keys = ON", "PRAGMA journal_mode = WAL",
          "PRAGMA synchronous = FULL", "PRAGMA secure_delete = ON"})  // what is erased is overwritten
      run(pragma);
    remember(kRemembered);
    find_handle();
  } else {
    run("SET synchronous_commit TO on");
    run("SET jit TO off");             // answers of a few rows are not worth compiling for
    run("SET lock_timeout TO '10s'");  // another counter's turn to write, not for ever
  }
  if (auto wrong = take_error()) return tl::unexpected(std::move(*wrong));
  return {};
}

void Connection::remember(int kib) {
  if (engine_ == Engine::sqlite) run("PRAGMA cache_size = -" + std::to_string(kib));
}

void Connection::fail(StoreError wrong) {
  if (!error_) error_ = std::move(wrong);
}

std::optional<StoreError> Connection::begin(Access access) {
  if (depth_ > 0) {
    if (!error_) ++depth_;
    return error_;
  }
  error_.reset();
  if (engine_ == Engine::sqlite) {
    // A write transaction takes its lock at once: one begun by reading could not wait for another's.
    ask(access == Access::write ? "BEGIN IMMEDIATE" : "BEGIN");
  } else {
    run(access == Access::write ? "BEGIN" : "BEGIN ISOLATION LEVEL REPEATABLE READ READ ONLY");
    // Counters take turns to write; the number is this lock's own.
    if (access == Access::write) run("SELECT pg_advisory_xact_lock(19121)");
  }
  auto wrong = take_error();
  if (wrong && engine_ == Engine::postgresql && database_.isOpen()) QSqlQuery(database_).exec("ROLLBACK");
  if (!wrong) depth_ = 1;
  return wrong;
}

std::optional<StoreError> Connection::end() {
  if (--depth_ > 0) return error_;
  if (!error_) engine_ == Engine::sqlite ? ask("COMMIT") : run("COMMIT");
  if (!error_) return std::nullopt;
  // A full disk may have rolled back already; then this says so and changes nothing.
  if (database_.isOpen()) QSqlQuery(database_).exec("ROLLBACK");
  return take_error();
}

void Connection::each_row(QSqlQuery& query, int columns,
                          const std::function<void(const QVariantList&)>& row) {
  while (!error_ && query.next()) {
    QVariantList values;
    for (int i = 0; i < columns; ++i) values.push_back(query.isNull(i) ? QVariant() : query.value(i));
    row(values);
  }
  if (query.lastError().isValid()) fail(error_of(query.lastError()));
}

Rows Connection::rows_of(QSqlQuery& query, int columns) {
  Rows rows;
  each_row(query, columns, [&](const QVariantList& row) { rows.push_back(row); });
  return rows;
}

void Connection::each(const std::string& sql, const std::function<void(const QVariantList&)>& row) {
  if (error_) return;
  QSqlQuery query(database_);
  query.setForwardOnly(true);
  if (query.exec(QString::fromStdString(sql)))
    each_row(query, query.record().count(), row);
  else
    fail(error_of(query.lastError()));
}

template <class Values>
Rows Connection::ask_sqlite(const std::string& sql, const Values& values) {
  QSqlError wrong;
  auto found = of_sqlite_.find(sql);
  if (found == of_sqlite_.end()) {
    auto statement = SqliteStatement::prepare(sqlite_, sql, wrong);
    if (!statement) {
      fail(error_of(wrong));
      return {};
    }
    found = of_sqlite_.emplace(sql, std::move(statement)).first;
  }
  Rows rows = found->second->run(values, wrong);
  if (wrong.isValid()) fail(error_of(wrong));
  return rows;
}

void Connection::put(const std::string& sql, std::span<const SqlValue> values) {
  if (error_) return;
  if (sqlite_) {
    ask_sqlite(sql, values);
    return;
  }
  QVariantList variants;
  for (const SqlValue& value : values) variants.push_back(variant_of(value));
  ask(sql, variants);
}

Rows Connection::ask(const std::string& sql, const QVariantList& values) {
  if (error_) return {};
  if (sqlite_) return ask_sqlite(sql, values);
  auto found = prepared_.find(sql);
  if (found == prepared_.end()) {
    QSqlQuery query(database_);
    query.setForwardOnly(true);
    if (!query.prepare(QString::fromStdString(sql))) {
      fail(error_of(query.lastError()));
      return {};
    }
    found = prepared_.emplace(sql, Prepared{std::move(query)}).first;
  }
  auto& [query, columns] = found->second;
  for (int i = 0; i < values.size(); ++i) query.bindValue(i, values[i]);
  if (!query.exec()) fail(error_of(query.lastError()));
  // A record names every column, which takes longer than reading it: asked once a statement.
  if (!error_ && columns < 0) columns = query.record().count();
  Rows rows = error_ || columns == 0 ? Rows{} : rows_of(query, columns);
  query.finish();
  return rows;
}

// QtSql may have been built with a copy of SQLite of its own: its handle is none of ours then.
void Connection::find_handle() {
  const Rows of_driver = run("SELECT sqlite_source_id()");
  const QVariant handle = database_.driver()->handle();
  if (of_driver.size() == 1 && text(of_driver[0][0]) == sqlite3_sourceid() && handle.isValid() &&
      std::strcmp(handle.typeName(), "sqlite3*") == 0)
    sqlite_ = *static_cast<sqlite3* const*>(handle.constData());
}

Rows Connection::run(const std::string& sql) {
  if (error_) return {};
  QSqlQuery query(database_);
  query.setForwardOnly(true);
  if (!query.exec(QString::fromStdString(sql))) {
    fail(error_of(query.lastError()));
    return {};
  }
  return rows_of(query, query.record().count());
}

QVariant Connection::value(const std::optional<std::string>& text) {
  return text ? QVariant(QString::fromStdString(*text)) : QVariant(QMetaType::fromType<QString>());
}

// SQLite's result codes (sqlite.org/rescode.html) and PostgreSQL's SQLSTATE classes.
StoreError Connection::error_of(const QSqlError& wrong) const {
  const std::string said =
      one_line(wrong.databaseText().isEmpty() ? wrong.driverText() : wrong.databaseText());
  if (engine_ == Engine::sqlite) {
    const std::string where = file_.toStdString();
    switch (wrong.nativeErrorCode().toInt() & 0xff) {
      case 5:
      case 6:
        return error(StoreTrouble::busy, where + " is in use by another program");
      case 8:
        return error(StoreTrouble::unreachable, where + " may not be written");
      case 10:
        return error(StoreTrouble::full, "the disk cannot be read or written, or is full: " + said);
      case 11:
        return error(StoreTrouble::damaged, where + " is damaged: " + said);
      case 13:
        return error(StoreTrouble::full, "the disk is full; this was not stored");
      case 14:
        return error(StoreTrouble::unreachable, where + " cannot be opened");
      case 26:
        return error(StoreTrouble::not_a_store, where + " is not a Brimline store");
      default:
        return error(StoreTrouble::refused, said);
    }
  }
  const QString state = wrong.nativeErrorCode();
  if (state == "53100") return error(StoreTrouble::full, "the server's disk is full; this was not stored");
  if (state.startsWith("08") || state.startsWith("57") || state.isEmpty())
    return error(StoreTrouble::unreachable,  // its first line; those after guess at reasons
                 "the server cannot be reached: " + said.substr(0, said.find(" This probably means")));
  if (state == "40001" || state == "40P01" || state == "55P03")
    return error(StoreTrouble::busy, "another counter is writing: " + said);
  if (state == "XX001" || state == "XX002")
    return error(StoreTrouble::damaged, "the store is damaged: " + said);
  return error(StoreTrouble::refused, said);
}

}  // namespace brimline
