// SPDX-License-Identifier: GPL-3.0-or-later
// Blocks of a table answered by one thread or several, written in their order.
#include <condition_variable>
#include <deque>
#include <iostream>
#include <memory>
#include <mutex>
#include <thread>

#include "station/batch/commands.h"
#include "station/batch/table.h"
#include "station/batch/table_files.h"

namespace brimline::batch {
namespace {

int complain(const std::string& text) {
  std::cerr << text << "\n";
  return kBadInput;
}

std::string at_line(const std::string& file, size_t line, const std::string& what) {
  return file + ":" + std::to_string(line) + ": " + what;
}

// Lines up to and with the header; what follows it in its block is left in `rest`.
struct Opening {
  std::string header;
  std::string rest;
  size_t lines = 0;
};

tl::expected<Opening, std::string> read_opening(BlockReader& reader) {
  Opening opening;
  while (reader.next(opening.rest)) {
    std::string_view rest = opening.rest;
    if (opening.lines == 0 && rest.starts_with("\xEF\xBB\xBF")) rest.remove_prefix(3);
    while (!rest.empty()) {
      const size_t end = std::min(rest.find('\n'), rest.size());
      std::string_view line = rest.substr(0, end);
      rest.remove_prefix(std::min(end + 1, rest.size()));
      ++opening.lines;
      if (!line.empty() && line.back() == '\r') line.remove_suffix(1);
      if (line.empty() || line.front() == '#') continue;
      opening.header = line;
      opening.rest = std::string(rest);
      return opening;
    }
  }
  if (reader.error()) return tl::unexpected(*reader.error());
  return tl::unexpected(
      at_line(reader.name(), opening.lines + 1, "nothing there; expected a header of column names"));
}

// One block on its way through.
struct Work {
  std::string in;
  BlockAnswer answer;
  bool done = false;
};

// Workers take blocks in their order; the caller takes the answers in the same order.
class Crew {
 public:
  Crew(const Table& table, const Header& header, int threads) {
    for (int i = 0; i < threads; ++i) threads_.emplace_back([this, &table, &header] { work(table, header); });
  }
  ~Crew() {
    {
      const std::lock_guard lock(mutex_);
      stopped_ = true;
    }
    to_do_changed_.notify_all();
    for (std::thread& t : threads_) t.join();
  }

  void give(std::shared_ptr<Work> work) {
    {
      const std::lock_guard lock(mutex_);
      to_do_.push_back(std::move(work));
    }
    to_do_changed_.notify_one();
  }
  void wait_for(const Work& work) {
    std::unique_lock lock(mutex_);
    done_changed_.wait(lock, [&] { return work.done; });
  }

 private:
  void work(const Table& table, const Header& header) {
    std::unique_lock lock(mutex_);
    for (;;) {
      to_do_changed_.wait(lock, [&] { return stopped_ || !to_do_.empty(); });
      if (stopped_) return;
      const std::shared_ptr<Work> mine = std::move(to_do_.front());
      to_do_.pop_front();
      lock.unlock();
      answer_block(table, header, mine->in, mine->answer);
      lock.lock();
      mine->done = true;
      done_changed_.notify_one();
    }
  }

  std::mutex mutex_;
  std::condition_variable to_do_changed_, done_changed_;
  std::deque<std::shared_ptr<Work>> to_do_;
  bool stopped_ = false;
  std::vector<std::thread> threads_;
};

// Writes answers and keeps count of the lines before them.
class Answers {
 public:
  Answers(OutputFile& out, std::string file, size_t lines)
      : out_(out), file_(std::move(file)), lines_(lines) {}

  // False once there is nothing more to do; error() then says why.
  bool take(const BlockAnswer& answer) {
    lines_ += answer.lines;
    const auto written = out_.write(answer.out);
    if (!written) {
      error_ = written.error();
    } else if (answer.fault) {
      error_ = at_line(file_, lines_, *answer.fault);
    }
    return !error_;
  }
  const std::optional<std::string>& error() const { return error_; }

 private:
  OutputFile& out_;
  std::string file_;
  size_t lines_;
  std::optional<std::string> error_;
};

void run_alone(const Table& table, const Header& header, std::string block, BlockReader& reader,
               Answers& answers) {
  BlockAnswer answer;
  do {
    answer_block(table, header, block, answer);
    if (!answers.take(answer)) return;
  } while (reader.next(block));
}

void run_crew(const Table& table, const Header& header, int threads, std::string first, BlockReader& reader,
              Answers& answers) {
  Crew crew(table, header, threads);
  std::deque<std::shared_ptr<Work>> under_way;
  std::vector<std::shared_ptr<Work>> spare;
  auto give = [&](std::string& block) {
    if (spare.empty()) spare.push_back(std::make_shared<Work>());
    std::shared_ptr<Work> work = std::move(spare.back());
    spare.pop_back();
    work->in.swap(block);
    work->done = false;
    under_way.push_back(work);
    crew.give(std::move(work));
  };
  auto take = [&] {
    crew.wait_for(*under_way.front());
    const bool more = answers.take(under_way.front()->answer);
    spare.push_back(std::move(under_way.front()));
    under_way.pop_front();
    return more;
  };
  give(first);
  const size_t most = static_cast<size_t>(threads) + 2;
  std::string block;
  for (;;) {
    // Answers go out before waiting for more questions, for whoever asks the next by the last one's answer.
    while (!under_way.empty() && (under_way.size() >= most || !reader.ready()))
      if (!take()) return;
    if (!reader.next(block)) break;
    give(block);
  }
  while (!under_way.empty())
    if (!take()) return;
}

}  // namespace

int run_table(const Table& table, const TableFiles& files) {
  auto reader = BlockReader::open(files.in);
  if (!reader) return complain(reader.error());
  auto opening = read_opening(*reader);
  if (!opening) return complain(opening.error());
  const auto header = read_header(opening->header, table.columns);
  if (!header) return complain(at_line(reader->name(), opening->lines, header.error()));
  auto out = OutputFile::open(files.out);
  if (!out) return complain(out.error());
  if (const auto written = out->write(table.header(*header)); !written) return complain(written.error());
  Answers answers(*out, reader->name(), opening->lines);
  if (files.threads == 1) {
    run_alone(table, *header, std::move(opening->rest), *reader, answers);
  } else {
    run_crew(table, *header, files.threads, std::move(opening->rest), *reader, answers);
  }
  if (answers.error()) return complain(*answers.error());
  if (reader->error()) return complain(*reader->error());
  if (const auto kept = out->commit(); !kept) return complain(kept.error());
  return kDone;
}

}  // namespace brimline::batch
