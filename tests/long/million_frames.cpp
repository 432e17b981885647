// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/long/million_frames.h"

#include <algorithm>
#include <chrono>
#include <cmath>
#include <cstdio>
#include <stdexcept>
#include <unordered_map>

#include <fcntl.h>
#include <poll.h>
#include <stdlib.h>
#include <termios.h>
#include <unistd.h>

#include "demo/photometer/talker.h"
#include "devices/session.h"

namespace brimline::tests {
namespace {

using demo::FaultKind;

constexpr double kShare = 0.01;  // of frames that meet a fault
constexpr FaultKind kKinds[] = {FaultKind::garbled,      FaultKind::noise,      FaultKind::lost,
                                FaultKind::lost_byte,    FaultKind::doubled,    FaultKind::doubled_byte,
                                FaultKind::bad_checksum, FaultKind::half_frame, FaultKind::wrong_rate,
                                FaultKind::unplug,       FaultKind::stuck,      FaultKind::reset,
                                FaultKind::clock_jump,   FaultKind::flood};
constexpr size_t kMostTogether = 12;  // readings that wait when a session begins
constexpr size_t kPiece = 2048;       // a pseudo-terminal holds 4096 bytes

// Both ends of a pseudo-terminal, without a terminal's manners.
class PtyPair {
 public:
  PtyPair() { plug(); }
  ~PtyPair() { unplug(); }
  PtyPair(const PtyPair&) = delete;
  PtyPair& operator=(const PtyPair&) = delete;

  void replug() {
    unplug();
    plug();
  }
  std::string to_counter(std::string_view bytes) const { return carry(master_, slave_, bytes); }
  std::string to_instrument(std::string_view bytes) const { return carry(slave_, master_, bytes); }

 private:
  void plug() {
    master_ = ::posix_openpt(O_RDWR | O_NOCTTY | O_CLOEXEC);
    if (master_ < 0 || ::grantpt(master_) != 0 || ::unlockpt(master_) != 0)
      throw std::runtime_error("no pseudo-terminal");
    slave_ = ::open(::ptsname(master_), O_RDWR | O_NOCTTY | O_CLOEXEC);
    termios settings{};
    if (slave_ < 0 || ::tcgetattr(slave_, &settings) != 0) throw std::runtime_error("no pseudo-terminal");
    ::cfmakeraw(&settings);
    ::tcsetattr(slave_, TCSANOW, &settings);
  }
  void unplug() const {
    ::close(slave_);
    ::close(master_);
  }
  static std::string carry(int from, int to, std::string_view bytes) {
    std::string out;
    if (::write(from, bytes.data(), bytes.size()) != static_cast<ssize_t>(bytes.size()))
      throw std::runtime_error("the pseudo-terminal takes no more");
    char piece[kPiece];
    while (out.size() < bytes.size()) {
      const auto count = ::read(to, piece, sizeof piece);
      if (count <= 0) throw std::runtime_error("the pseudo-terminal gives nothing");
      out.append(piece, static_cast<size_t>(count));
    }
    return out;
  }
  int master_ = -1, slave_ = -1;
};

struct Made {
  const MethodRow* row;
  LineReading reading;
  int told = 0;
};

class Run {
 public:
  Run(const Profile& profile, std::int64_t frames, unsigned seed)
      : profile_(profile),
        frames_(frames),
        random_(seed),
        talker_(demo::talker_for(profile)),
        session_(profile) {
    tally_.instrument = profile.id;
  }

  FrameTally run() {
    const auto began = std::chrono::steady_clock::now();
    answer(session_.opened(at_));
    while (tally_.frames < frames_ || talker_->waiting() > 0) turn();
    drain();
    for (const auto& [sample, made] : made_) tally_.lost += made.told == 0;
    tally_.readings = static_cast<std::int64_t>(made_.size());
    tally_.seconds = std::chrono::duration<double>(std::chrono::steady_clock::now() - began).count();
    return tally_;
  }

 private:
  double chance() { return std::uniform_real_distribution<double>(0, 1)(random_); }
  size_t below(size_t end) { return std::uniform_int_distribution<size_t>(0, end - 1)(random_); }

  void turn() {
    if (talker_->waiting() == 0 && tally_.frames < frames_)
      for (size_t left = profile_.protocol == "lis" ? 1 + below(kMostTogether) : 1; left > 0; --left)
        measure();
    at_ += Millis(1);
    const std::string heard = std::exchange(heard_, {});
    const auto frames = talker_->turn(heard, at_);
    for (const std::string& frame : frames) send(frame);
    if (frames.empty() && heard_.empty()) wait();
  }

  // What is still to come: the last answers and timers.
  void drain() {
    for (int i = 0; i < 100; ++i) {
      for (const std::string& frame : talker_->turn(std::exchange(heard_, {}), at_)) send(frame);
      wait();
    }
  }

  // The next moment at which either end has something to do.
  void wait() {
    const auto instrument = talker_->wake(), counter = session_.wake();
    if (!instrument && !counter) {
      at_ += Millis(100);
      return;
    }
    Millis next = instrument.value_or(*(counter ? counter : instrument));
    if (counter) next = std::min(next, *counter);
    at_ = std::max(at_ + Millis(1), next);
    answer(session_.waited(at_));
  }

  void measure() {
    const MethodRow& row = profile_.methods[below(profile_.methods.size())];
    char sample[16];
    (void)std::snprintf(sample, sizeof sample, "B-%07zu", made_.size());
    const double steps = std::pow(10.0, row.decimals);
    const double value = std::round((row.low + chance() * (row.high - row.low)) * steps) / steps;
    Made made{&row, {serial(), sample, std::clamp(value, row.low, row.high), std::nullopt}, 0};
    talker_->put(row, made.reading);
    last_ = made_.emplace(sample, made).first->first;
    if (made_.size() > 1 && chance() < kShare / std::size(kKinds) &&
        profile_.protocol != "modbus_rtu") {  // sent again
      const Made& old = made_.at(before_);
      talker_->put(*old.row, old.reading);
      ++tally_.faults[FaultKind::stuck].met;
    }
    before_ = last_;
  }

  // Seconds of the instrument's clock; a number where it has none makes no difference.
  std::string serial() {
    char out[24];
    const long long at = clock_++;
    (void)std::snprintf(out, sizeof out, "2026%010lld", at);
    return out;
  }

  void send(const std::string& frame) {
    ++tally_.frames;
    FaultKind kind = FaultKind::none;
    if (chance() < kShare) kind = kKinds[below(std::size(kKinds))];
    if (kind == FaultKind::none || kind == FaultKind::stuck) return arrive(frame);
    latest_ = kind;
    ++tally_.faults[kind].met;
    if (kind == FaultKind::clock_jump) {
      clock_ -= 3600;
      return arrive(frame);
    }
    if (kind == FaultKind::unplug) {
      arrive(frame.substr(0, below(frame.size() + 1)));
      line_.replug();
      heard_.clear();
      at_ += Millis(2000);
      answer(session_.opened(at_));
    } else {
      arrive(demo::damaged(frame, kind, talker_->shape(), random_));
    }
    if (kind == FaultKind::reset) {
      talker_->restart(at_);
      heard_.clear();
    }
    send_again(kind);
  }

  // Where nobody answers, whoever measured sees that nothing came and presses the key once more; after a
  // reset of one that is asked, that the reading is gone.
  void send_again(FaultKind kind) {
    const bool line = profile_.protocol == "ascii_lines";
    const bool registers = profile_.protocol == "modbus_rtu" && kind == FaultKind::reset;
    if (line) at_ += Millis(2000);
    Made& made = made_.at(last_);
    if ((line || registers) && made.told == 0) talker_->put(*made.row, made.reading);
  }

  void arrive(std::string_view bytes) {
    while (!bytes.empty()) {
      const std::string_view piece = bytes.substr(0, std::min(bytes.size(), 1 + below(kPiece)));
      at_ += Millis(1);
      answer(session_.received(line_.to_counter(piece), at_));
      bytes.remove_prefix(piece.size());
    }
  }

  void answer(const Said& said) {
    for (const auto& one : said.told) {
      if (const auto* reading = std::get_if<InstrumentReading>(&one))
        judge(*reading);
      else
        ++tally_.troubles;
    }
    if (!said.answer.empty()) heard_ += line_.to_instrument(said.answer);
  }

  void judge(const InstrumentReading& reading) {
    const auto found = made_.find(reading.sample.value_or(""));
    const bool right = found != made_.end() && found->second.row->analyte == reading.analyte &&
                       !reading.clipped &&
                       std::abs(reading.value - found->second.reading.value * found->second.row->factor) <=
                           1e-6 * std::max(1.0, std::abs(reading.value));
    if (!right) {
      ++tally_.wrong;
      ++tally_.faults[latest_].wrong;
      return;
    }
    if (++found->second.told == 1) {
      ++tally_.told;
      return;
    }
    ++tally_.doubled;
    ++tally_.faults[latest_].doubled;
  }

  const Profile& profile_;
  const std::int64_t frames_;
  std::mt19937_64 random_;
  std::unique_ptr<demo::Talker> talker_;
  Session session_;
  PtyPair line_;
  FrameTally tally_;
  Millis at_{0};
  std::string heard_;  // by the instrument, not yet taken
  std::unordered_map<std::string, Made> made_;
  std::string last_, before_;
  long long clock_ = 614080000;
  FaultKind latest_ = FaultKind::none;
};

std::string cell(std::int64_t value, int width) {
  char out[32];
  (void)std::snprintf(out, sizeof out, "%*lld", width, static_cast<long long>(value));
  return out;
}

std::string padded(std::string text, size_t width) {
  text.resize(std::max(text.size(), width), ' ');
  return text;
}

}  // namespace

FrameTally send_frames(const std::string& profile, std::int64_t frames, unsigned seed) {
  const auto read = load_profile(profile);
  if (!read) throw std::runtime_error(read.error().front().text());
  return Run(*read, frames, seed).run();
}

std::string frames_table(const std::vector<FrameTally>& tallies) {
  std::string out =
      padded("instrument", 16) + "    frames  readings      told  lost  wrong  doubled  troubles  seconds\n";
  for (const FrameTally& t : tallies)
    out += padded(t.instrument, 16) + cell(t.frames, 10) + cell(t.readings, 10) + cell(t.told, 10) +
           cell(t.lost, 6) + cell(t.wrong, 7) + cell(t.doubled, 9) + cell(t.troubles, 10) +
           cell(std::llround(t.seconds), 9) + "\n";
  out += "\n" + padded("fault: met/wrong/doubled", 26);
  for (const FrameTally& t : tallies) out += padded(t.instrument, 18);
  out += "\n";
  for (const FaultKind kind : kKinds) {
    out += padded(std::string(demo::name_of(kind)), 26);
    for (const FrameTally& t : tallies) {
      const auto found = t.faults.find(kind);
      const FrameFault f = found == t.faults.end() ? FrameFault{} : found->second;
      out +=
          padded(std::to_string(f.met) + "/" + std::to_string(f.wrong) + "/" + std::to_string(f.doubled), 18);
    }
    out += "\n";
  }
  return out;
}

}  // namespace brimline::tests
