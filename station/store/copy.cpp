// SPDX-License-Identifier: GPL-3.0-or-later
#include "station/store/copy.h"

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <algorithm>
#include <cerrno>
#include <cstdio>
#include <cstring>
#include <filesystem>

#include "station/store/tables.h"

namespace brimline {

namespace {

constexpr std::string_view kSqlite = "sqlite:";

StoreError refused(std::string text) {
  return {StoreTrouble::refused, std::move(text)};
}

StoreError file_error(const std::string& path) {
  return {errno == ENOSPC ? StoreTrouble::full : StoreTrouble::unreachable,
          path + ": " + std::strerror(errno)};
}

bool is_there(const std::string& path) {
  struct stat info {};
  return ::stat(path.c_str(), &info) == 0 && !(S_ISREG(info.st_mode) && info.st_size == 0);
}

std::string quoted(const std::string& text) {
  std::string out = "'";
  for (const char c : text) out.append(c == '\'' ? 2 : 1, c);
  return out + "'";
}

bool sync_path(const std::string& path) {
  const int file = ::open(path.c_str(), O_RDONLY | O_CLOEXEC);
  if (file < 0) return false;
  const bool done = ::fsync(file) == 0;
  ::close(file);
  return done;
}

// Gives `part` its name for good.
Stored<void> give_name(const std::string& part, const std::string& path) {
  const auto slash = path.rfind('/');
  const std::string folder = slash == std::string::npos ? "." : path.substr(0, slash + 1);
  if (sync_path(part) && std::rename(part.c_str(), path.c_str()) == 0 && sync_path(folder)) return {};
  return tl::unexpected(file_error(path));
}

// A new SQLite file beside `path` that goes away unless it is given its name.
class Part {
 public:
  explicit Part(const std::string& path) : path_(path + "." + std::to_string(::getpid()) + ".part") {
    std::remove(path_.c_str());
    const int file = ::open(path_.c_str(), O_CREAT | O_EXCL | O_WRONLY | O_CLOEXEC, 0600);
    made_ = file >= 0;
    if (made_) ::close(file);
  }
  ~Part() {
    for (const char* end : {"", "-wal", "-shm", "-journal"})
      if (made_) std::remove((path_ + end).c_str());
  }
  Part(const Part&) = delete;
  Part& operator=(const Part&) = delete;
  bool made() const { return made_; }
  const std::string& path() const { return path_; }
  std::string url() const { return std::string(kSqlite) + path_; }

 private:
  std::string path_;
  bool made_ = false;
};

// Opened, sound and with no visit less than `visits`; left as one file with no log beside it.
// For a pass over all of a store, which comes to no page twice: what searches remember would only fill
// memory.
class SmallCache {
 public:
  explicit SmallCache(Connection& connection) : connection_(connection) { connection_.remember(2048); }
  ~SmallCache() { connection_.remember(Connection::kRemembered); }
  SmallCache(const SmallCache&) = delete;
  SmallCache& operator=(const SmallCache&) = delete;

 private:
  Connection& connection_;
};

Stored<void> prove(const std::string& url, std::int64_t visits) {
  auto copy = Store::open(url, Opening::existing);
  if (!copy) return tl::unexpected(copy.error());
  const SmallCache small(copy->connection());
  const auto faults = copy->faults();
  const auto counts = copy->counts();
  if (!faults || !counts) return tl::unexpected(!faults ? faults.error() : counts.error());
  if (!faults->empty()) return tl::unexpected(StoreError{StoreTrouble::damaged, faults->front()});
  if (counts->at("visits") < visits)
    return tl::unexpected(refused("the copy holds fewer visits than the store"));
  copy->connection().run("PRAGMA journal_mode = DELETE");
  if (auto error = copy->connection().take_error()) return tl::unexpected(std::move(*error));
  return {};
}

Stored<void> vacuum_into(Connection& from, const std::string& path) {
  const SmallCache small(from);
  from.run("VACUUM INTO " + quoted(path));
  if (auto error = from.take_error()) return tl::unexpected(std::move(*error));
  return {};
}

// The first of NAME.replaced, NAME.replaced-2, ... that is free.
std::string free_name(const std::string& path) {
  std::string out = path + ".replaced";
  for (int n = 2; is_there(out); ++n) out = path + ".replaced-" + std::to_string(n);
  return out;
}

// Renames the SQLite store with the log that belongs to it. A store that another program has open is
// refused: leaving the log's mode needs it alone.
Stored<std::string> set_aside_file(const std::string& path) {
  if (auto store = Connection::open(std::string(kSqlite) + path, Opening::existing)) {
    (*store)->run("PRAGMA journal_mode = DELETE");
    const auto error = (*store)->take_error();
    if (error && error->trouble == StoreTrouble::busy) return tl::unexpected(*error);
  }
  const std::string aside = free_name(path);
  for (const char* end : {"-wal", "-shm"}) std::rename((path + end).c_str(), (aside + end).c_str());
  if (std::rename(path.c_str(), aside.c_str()) != 0) return tl::unexpected(file_error(path));
  return aside;
}

Stored<std::optional<std::string>> restore_file(const std::string& file, const std::string& path,
                                                Existing existing) {
  std::optional<std::string> aside;
  const bool there = is_there(path);
  if (there && existing == Existing::refuse)
    return tl::unexpected(refused("there is a store at " + path + " already"));
  auto from = Connection::open(std::string(kSqlite) + file, Opening::existing);
  if (!from) return tl::unexpected(from.error());
  if (auto known = check_version(**from); !known) return tl::unexpected(known.error());
  const Part part(path);
  if (!part.made()) return tl::unexpected(file_error(path));
  if (auto done = vacuum_into(**from, part.path()); !done) return tl::unexpected(done.error());
  if (auto sound = prove(part.url(), 0); !sound) return tl::unexpected(sound.error());
  if (there) {
    auto moved = set_aside_file(path);
    if (!moved) return tl::unexpected(moved.error());
    aside = std::move(*moved);
  }
  if (auto named = give_name(part.path(), path); !named) return tl::unexpected(named.error());
  return aside;
}

// The tables of the server's store, moved out of the way with their schema.
Stored<std::optional<std::string>> set_aside_schema(const std::string& url, Existing existing) {
  auto connection = Connection::open(url, Opening::existing);
  if (!connection) return tl::unexpected(connection.error());
  Connection& c = **connection;
  return c.transact(Access::write, [&]() -> std::optional<std::string> {
    const Rows here =
        c.run("SELECT current_schema(), COUNT(*) FROM pg_tables WHERE schemaname = current_schema()");
    if (here.empty() || here[0][1].toInt() == 0) return std::nullopt;
    if (existing == Existing::refuse) {
      c.fail(refused("there is a store in the database already"));
      return std::nullopt;
    }
    const std::string schema = Connection::text(here[0][0]);
    const Rows count = c.run("SELECT COUNT(*) FROM pg_namespace WHERE nspname LIKE 'replaced%'");
    const std::string aside = "replaced_" + std::to_string(count.empty() ? 1 : count[0][0].toInt() + 1);
    c.run("ALTER SCHEMA \"" + schema + "\" RENAME TO " + aside);
    c.run("CREATE SCHEMA \"" + schema + "\"");
    return aside;
  });
}

Stored<std::optional<std::string>> restore_to_server(const std::string& file, const std::string& url,
                                                     Existing existing) {
  // A copy is read, so that the backup itself stays as it is.
  const Part part((std::filesystem::temp_directory_path() / "brimline-restore").string());
  auto from = Connection::open(std::string(kSqlite) + file, Opening::existing);
  if (!from) return tl::unexpected(from.error());
  if (auto known = check_version(**from); !known) return tl::unexpected(known.error());
  if (auto done = vacuum_into(**from, part.path()); !done) return tl::unexpected(done.error());
  if (auto sound = prove(part.url(), 0); !sound) return tl::unexpected(sound.error());
  auto aside = set_aside_schema(url, existing);
  if (!aside) return aside;
  auto source = Store::open(part.url(), Opening::existing);
  auto target = Store::open(url);
  if (!source || !target) return tl::unexpected(!source ? source.error() : target.error());
  if (auto done = copy_store(*source, *target); !done) return tl::unexpected(done.error());
  return aside;
}

}  // namespace

Stored<void> copy_store(Store& from, Store& to) {
  const auto held = to.counts();
  if (!held) return tl::unexpected(held.error());
  for (const auto& [table, count] : *held)
    if (count != 0) return tl::unexpected(refused("the store to fill is not empty: it has rows in " + table));
  const auto copied = from.connection().transact(Access::read, [&] {
    return to.connection().transact(Access::write, [&] {
      for (const StoredTable& table : stored_tables()) {
        std::string marks = "?";
        for (int i = 1; i < table.count; ++i) marks += ", ?";
        const std::string put =
            std::string("INSERT INTO ") + table.name + " (" + table.columns + ") VALUES (" + marks + ")";
        from.connection().each(std::string("SELECT ") + table.columns + " FROM " + table.name,
                               [&](const QVariantList& row) { to.connection().tell(put, row); });
      }
    });
  });
  if (!copied) return tl::unexpected(copied.error());
  if (!*copied) return tl::unexpected(copied->error());
  const auto before = from.counts(), after = to.counts();
  if (!before || !after || *before != *after)
    return tl::unexpected(refused("the copy does not hold what the store held"));
  return {};
}

Stored<void> back_up(Store& from, const std::string& file) {
  struct stat info {};
  if (::stat(file.c_str(), &info) == 0 && !S_ISREG(info.st_mode))
    return tl::unexpected(refused(file + " is not a plain file"));
  const auto counts = from.counts();
  if (!counts) return tl::unexpected(counts.error());
  const Part part(file);
  if (!part.made()) return tl::unexpected(file_error(file));
  if (from.connection().engine() == Engine::sqlite) {
    if (auto done = vacuum_into(from.connection(), part.path()); !done) return done;
  } else {
    auto to = Store::open(part.url());
    if (!to) return tl::unexpected(to.error());
    if (auto done = copy_store(from, *to); !done) return done;
  }
  if (auto sound = prove(part.url(), counts->at("visits")); !sound) return sound;
  return give_name(part.path(), file);
}

Stored<std::optional<std::string>> set_aside(const std::string& url) {
  const std::string path = url.substr(std::min(url.size(), kSqlite.size()));
  if (!url.starts_with(kSqlite) || !is_there(path)) return std::optional<std::string>();
  auto aside = set_aside_file(path);
  if (!aside) return tl::unexpected(aside.error());
  return std::optional(std::move(*aside));
}

Stored<void> keep_before_step(Connection& from, int step) {
  const std::string path = from.file().toStdString() + ".before-step-" + std::to_string(step);
  if (is_there(path)) return {};
  const Part part(path);
  if (!part.made()) return tl::unexpected(file_error(path));
  if (auto done = vacuum_into(from, part.path()); !done) return done;
  return give_name(part.path(), path);
}

Stored<std::optional<std::string>> restore(const std::string& file, const std::string& url,
                                           Existing existing) {
  if (!url.starts_with(kSqlite)) return restore_to_server(file, url, existing);
  return restore_file(file, url.substr(kSqlite.size()), existing);
}

}  // namespace brimline
