// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/long/store_faults.h"

#include <sys/mount.h>
#include <sys/resource.h>
#include <sys/wait.h>
#include <unistd.h>

#include <csignal>
#include <cstdio>
#include <fstream>
#include <functional>
#include <iterator>
#include <random>
#include <sstream>
#include <vector>

#include <poll.h>

#include "tests/long/store_work.h"
#include "tests/support/postgresql_server.h"

namespace brimline::tests {

namespace fs = std::filesystem;

namespace {

// A child at random work, and what it has said so far.
class Child {
 public:
  Child(const std::string& url, unsigned seed, const std::string& round,
        const std::function<void()>& first = {}) {
    int ends[2];
    if (::pipe(ends) != 0) std::abort();
    child_ = ::fork();
    if (child_ == 0) {
      ::close(ends[0]);
      if (first) first();
      work_at_random(url, seed, round, ends[1]);
      ::_exit(0);
    }
    ::close(ends[1]);
    from_ = ends[0];
  }
  ~Child() { ::close(from_); }
  Child(const Child&) = delete;
  Child& operator=(const Child&) = delete;

  // Listens for so long, or until the child has ended by itself.
  void listen(std::chrono::microseconds time) {
    const auto end = std::chrono::steady_clock::now() + time;
    for (;;) {
      const auto left = end - std::chrono::steady_clock::now();
      const auto ms = std::chrono::duration_cast<std::chrono::milliseconds>(left).count();
      if (ms < 0 || !hear(static_cast<int>(ms))) return;
    }
  }
  // Listens until it has answered for so many visits, at most ten seconds.
  void hear_of(size_t visits) {
    for (int i = 0; i < 1000 && ledger_.size() < visits; ++i) listen(std::chrono::milliseconds(10));
  }
  void kill() { ::kill(child_, SIGKILL); }
  // Hears the rest; the child has ended after it.
  void end() {
    while (hear(-1)) {
    }
    ::waitpid(child_, nullptr, 0);
  }
  const Ledger& ledger() const { return ledger_; }
  const std::vector<std::string>& refusals() const { return refusals_; }

 private:
  bool hear(int ms) {
    pollfd one{from_, POLLIN, 0};
    if (::poll(&one, 1, ms) <= 0) return false;
    char buffer[8192];
    const ssize_t got = ::read(from_, buffer, sizeof buffer);
    if (got <= 0) return false;
    text_.append(buffer, static_cast<size_t>(got));
    for (size_t end; (end = text_.find('\n')) != std::string::npos; text_.erase(0, end + 1)) {
      const std::string refused = take_answer(text_.substr(0, end), ledger_);
      if (!refused.empty()) refusals_.push_back(refused);
    }
    return true;
  }
  pid_t child_ = -1;
  int from_ = -1;
  std::string text_;
  Ledger ledger_;
  std::vector<std::string> refusals_;
};

bool one_sentence(const std::string& text) {
  return text.size() > 10 && text.find('\n') == std::string::npos && text.find("SQL") == std::string::npos;
}

void count_sentence(FaultTally& tally, const std::string& text) {
  ++(one_sentence(text) ? tally.said : tally.unsaid);
  tally.sentence = text;
}

// Opens what is left and holds it against the ledger.
void judge(FaultTally& tally, const std::string& url, const Ledger& ledger, bool must_say) {
  auto store = Store::open(url);
  if (!store) {
    for (const auto& [id, answered] : ledger) tally.lost += answered.readings + 1;
    ++tally.unsound;
    tally.sentence = store.error().text;
    return;
  }
  if (must_say) count_sentence(tally, store->connection().recovery().value_or(""));
  const Losses losses = losses_of(*store, ledger);
  tally.confirmed += losses.confirmed;
  tally.lost += losses.lost;
  const auto faults = store->faults();
  if (!faults || !faults->empty()) ++tally.unsound;
}

std::string sqlite_in(const fs::path& folder) {
  return "sqlite:" + (folder / "shop.db").string();
}

std::uintmax_t size_of(const fs::path& file) {
  std::error_code none;
  const auto size = fs::file_size(file, none);
  return none ? 0 : size;
}

fs::path fresh(const fs::path& folder, const std::string& name) {
  fs::remove_all(folder / name);
  fs::create_directories(folder / name);
  return folder / name;
}

}  // namespace

FaultTally kill_programs(const fs::path& folder, int runs, unsigned seed) {
  FaultTally tally{.kind = "program killed (SQLite)"};
  std::mt19937 random(seed);
  fs::path place;
  Ledger all;
  for (int run = 0; run < runs; ++run, ++tally.runs) {
    if (run % 20 == 0) {
      place = fresh(folder, "killed");
      all.clear();
    }
    Child child(sqlite_in(place), static_cast<unsigned>(random()), "r" + std::to_string(run));
    // Once in four times while the store is opened or made, otherwise at work.
    if (random() % 4 != 0) child.hear_of(1 + random() % 3);
    child.listen(std::chrono::microseconds(random() % 50000));
    child.kill();
    child.end();
    for (const auto& [id, answered] : child.ledger()) all[id] = answered;
    const bool unfinished = size_of(place / "shop.db-wal") > 0;
    tally.faults += unfinished;
    // Now and then everything since the file was new; otherwise this run's.
    judge(tally, sqlite_in(place), run % 20 == 19 ? all : child.ledger(), unfinished);
  }
  return tally;
}

FaultTally fill_disks(const fs::path& folder, int runs, unsigned seed) {
  FaultTally tally{.kind = "disk full"};
  std::mt19937 random(seed);
  for (int run = 0; run < runs; ++run, ++tally.runs) {
    const fs::path place = fresh(folder, "small");
    const unsigned room = 400 + static_cast<unsigned>(random() % 900);
    const bool mounted =
        ::mount("tmpfs", place.c_str(), "tmpfs", 0, ("size=" + std::to_string(room) + "k").c_str()) == 0;
    // No right to mount: no file may grow beyond half of it.
    const auto narrow = [&] {
      const rlimit limit{room * 512ul, room * 512ul};
      ::signal(SIGXFSZ, SIG_IGN);
      if (!mounted) ::setrlimit(RLIMIT_FSIZE, &limit);
    };
    Child child(sqlite_in(place), static_cast<unsigned>(random()), "r", narrow);
    child.end();
    tally.faults += !child.refusals().empty();
    for (const std::string& refusal : child.refusals()) count_sentence(tally, refusal);
    if (mounted) ::mount("tmpfs", place.c_str(), "tmpfs", MS_REMOUNT, "size=16m");
    judge(tally, sqlite_in(place), child.ledger(), false);
    if (mounted) ::umount(place.c_str());
  }
  return tally;
}

namespace {

unsigned big_endian(const std::string& bytes, size_t at) {
  unsigned out = 0;
  for (size_t i = 0; i < 4; ++i) out = out << 8 | static_cast<unsigned char>(bytes.at(at + i));
  return out;
}

// Where the last confirmed transaction ends in a write-ahead log (sqlite.org/walformat.html: a header of
// 32 bytes, then frames of 24 bytes and a page; bytes 4-7 of a commit frame are not zero, bytes 8-15 are
// the header's salt for as long as the frame belongs to this log).
size_t end_of_confirmed(const std::string& log) {
  if (log.size() < 32) return 0;
  const size_t frame = 24 + big_endian(log, 8);
  size_t end = 32;
  for (size_t at = 32; at + frame <= log.size(); at += frame) {
    if (log.compare(at + 8, 8, log, 16, 8) != 0) break;
    if (big_endian(log, at + 4) != 0) end = at + frame;
  }
  return end;
}

// What a power cut may leave after the last byte that the disk had answered for.
std::string torn(const std::string& log, std::mt19937& random) {
  const size_t end = end_of_confirmed(log);
  if (end <= 32) return log;  // nothing is confirmed yet
  const size_t frame = 24 + big_endian(log, 8);
  std::string tail = log.substr(end);
  const auto noise = [&](size_t size) {
    std::string out(size, '\0');
    for (char& c : out) c = static_cast<char>(random());
    return out;
  };
  switch (random() % 5) {
    case 0:  // the file ends there, or inside the frame after
      tail = noise(random() % frame);
      break;
    case 1:  // frames of nothing
      tail = noise((1 + random() % 5) * frame);
      break;
    case 2:  // frames of this log once more, commit marks and salts included
      tail = log.substr(32, (end - 32) / frame / 2 * frame);
      break;
    case 3:  // a frame with the right salt and a commit mark whose page was not written
      tail = log.substr(end - frame, 24) + std::string(frame - 24, '\0');
      break;
    default:  // the unfinished change, garbled
      tail = tail.empty() ? noise(frame) : tail;
      for (int i = 0; i < 20; ++i) tail[random() % tail.size()] = static_cast<char>(random());
  }
  return log.substr(0, end) + tail;
}

}  // namespace

FaultTally tear_logs(const fs::path& folder, int runs, unsigned seed) {
  FaultTally tally{.kind = "log torn (SQLite)"};
  std::mt19937 random(seed);
  for (int run = 0; run < runs; ++run, ++tally.runs) {
    const fs::path place = fresh(folder, "torn");
    const fs::path log = place / "shop.db-wal";
    Child child(sqlite_in(place), static_cast<unsigned>(random()), "r");
    child.hear_of(1 + random() % 5);
    child.listen(std::chrono::microseconds(random() % 100000));
    child.kill();
    child.end();
    std::ifstream in(log, std::ios::binary);
    const std::string before{std::istreambuf_iterator<char>(in), {}};
    in.close();
    const std::string after = torn(before, random);
    tally.faults += after != before;
    std::ofstream(log, std::ios::binary | std::ios::trunc) << after;
    fs::remove(place / "shop.db-shm");  // memory only: a power cut takes it
    judge(tally, sqlite_in(place), child.ledger(), !after.empty());
  }
  return tally;
}

FaultTally kill_servers(const fs::path& folder, int runs, unsigned seed) {
  FaultTally tally{.kind = "server killed (PostgreSQL)"};
  std::mt19937 random(seed);
  fs::permissions(folder, fs::perms::all);  // the server runs as its own user
  testing::PostgresqlServer server(fresh(folder, "server"));
  std::string url;
  Ledger all;
  for (int run = 0; run < runs && server.running(); ++run, ++tally.runs) {
    if (run % 10 == 0) {
      const std::string name = "shop" + std::to_string(run);
      if (!server.make(name)) break;
      url = server.url(name);
      all.clear();
      if (!Store::open(url)) break;
    }
    Child child(url, static_cast<unsigned>(random()), "r" + std::to_string(run));
    child.hear_of(1 + random() % 3);
    child.listen(std::chrono::microseconds(random() % 200000));
    server.kill_all();
    child.end();
    tally.faults += !child.refusals().empty();
    if (!child.refusals().empty()) count_sentence(tally, child.refusals().front());
    for (const auto& [id, answered] : child.ledger()) all[id] = answered;
    if (!server.start()) break;
    judge(tally, url, run % 10 == 9 ? all : child.ledger(), false);
  }
  return tally;
}

std::string table_head() {
  char line[200];
  std::snprintf(line, sizeof line, "%-27s %6s %7s %10s %6s %8s %6s %7s\n", "fault", "runs", "met",
                "confirmed", "lost", "unsound", "said", "unsaid");
  return line;
}

std::string table_line(const FaultTally& tally) {
  char line[200];
  std::snprintf(line, sizeof line, "%-27s %6d %7d %10lld %6lld %8d %6d %7d\n", tally.kind.c_str(), tally.runs,
                tally.faults, static_cast<long long>(tally.confirmed), static_cast<long long>(tally.lost),
                tally.unsound, tally.said, tally.unsaid);
  return line + ("  \"" + tally.sentence + "\"\n");
}

}  // namespace brimline::tests
