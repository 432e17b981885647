// SPDX-License-Identifier: GPL-3.0-or-later
#include "demo/photometer/desk.h"

#include <algorithm>
#include <iostream>
#include <utility>

namespace brimline::demo {
namespace {

constexpr auto kLook = std::chrono::milliseconds(20);     // whether somebody listens, or asked
constexpr auto kLinger = std::chrono::milliseconds(700);  // for the listener to read what was sent last
constexpr auto kNever = Steady::time_point::max();
constexpr double kRestartSeconds = 2;

void say(const std::string& line) {
  std::cout << line << std::endl;
}

}  // namespace

PhotometerDesk::PhotometerDesk(Options options, Profile profile, BottleFile bottle)
    : options_(std::move(options)),
      profile_(std::move(profile)),
      photometer_(profile_, std::move(bottle), options_.seed),
      line_(options_.link, profile_.serial, options_.speed),
      talker_(talker_for(profile_)),
      next_faults_(options_.next.begin(), options_.next.end()),
      rounds_left_(options_.rounds),
      working_(options_.rounds > 0) {}

Steady::duration PhotometerDesk::scaled(double seconds) const {
  return std::chrono::duration_cast<Steady::duration>(
      std::chrono::duration<double>(seconds / options_.speed));
}

FaultKind PhotometerDesk::next_fault() {
  if (silent_) return FaultKind::silent;
  if (!line_.has_listener()) return FaultKind::lost;
  if (next_faults_.empty()) return photometer_.chance_fault(options_.rates);
  const FaultKind fault = next_faults_.front();
  next_faults_.pop_front();
  return fault;
}

void PhotometerDesk::start_round(Steady::time_point now) {
  std::vector<AnalyteId> without;
  const auto rows = photometer_.methods(without);
  for (const AnalyteId& id : without) std::cerr << "the profile has no method for " << id << "\n";
  const bool at_work = !to_measure_.empty();
  working_ = true;
  to_measure_.insert(to_measure_.end(), rows.begin(), rows.end());
  if (!at_work) next_reading_ = now + scaled(options_.pause_s);
}

void PhotometerDesk::send_next(Steady::time_point now) {
  const MethodRow* row = to_measure_.front();
  to_measure_.pop_front();
  act(photometer_.measure(*row, next_fault()), now);
  next_reading_ = std::max(next_reading_, now) + scaled(options_.pause_s);
}

void PhotometerDesk::act(const Sending& sending, Steady::time_point now) {
  talker_->put(sending.row, sending.reading);
  on_next_frame_ = sending.fault;
  turn_talk({}, now);
  say("sent " + sending.truth);
  if (sending.fault == FaultKind::silent) silent_ = true;
  if (sending.fault == FaultKind::unplug) unplug(now + scaled(options_.replug_s));
  if (sending.fault == FaultKind::reset) {
    talker_->restart(std::chrono::duration_cast<Millis>(now - began_));
    next_idle_ = now + scaled(kRestartSeconds);
    next_reading_ = next_idle_ + scaled(options_.pause_s);
  }
}

// The reading's fault meets the first frame that carries it.
void PhotometerDesk::turn_talk(const std::string& heard, Steady::time_point now) {
  for (const std::string& frame : talker_->turn(heard, std::chrono::duration_cast<Millis>(now - began_))) {
    const bool carries = frame.size() > 1;  // no call, no farewell
    const FaultKind fault = carries ? std::exchange(on_next_frame_, FaultKind::none) : FaultKind::none;
    if (!silent_) line_.queue(photometer_.on_the_line(frame, fault, talker_->shape()), now);
  }
}

void PhotometerDesk::unplug(Steady::time_point back_at) {
  line_.unplug();
  replug_at_ = back_at;
  say("unplugged");
}

void PhotometerDesk::turn_plug(Steady::time_point now) {
  if (!replug_at_ || now < *replug_at_ || !line_.plug()) return;
  replug_at_.reset();
  say("ready " + options_.link);
}

// Idle lines stand between readings, never inside one.
void PhotometerDesk::turn_idle(Steady::time_point now) {
  if (silent_ || !line_.is_idle() || now < next_idle_ || !line_.has_listener()) return;
  const std::string idle = photometer_.idle_line();
  const double every = profile_.silence ? std::chrono::duration<double>(*profile_.silence).count() / 3 : 3600;
  next_idle_ = now + std::chrono::duration_cast<Steady::duration>(std::chrono::duration<double>(every));
  line_.queue(idle, now);
}

void PhotometerDesk::turn_readings(Steady::time_point now) {
  if (to_measure_.empty() && rounds_left_ > 0 && line_.has_listener()) {
    --rounds_left_;
    start_round(now);
  }
  if (to_measure_.empty() || now < next_reading_ || !line_.is_idle() || replug_at_) return;
  send_next(now);
}

void PhotometerDesk::turn(Steady::time_point now) {
  turn_plug(now);
  turn_talk(line_.turn(now), now);
  turn_readings(now);
  turn_idle(now);
  turn_end(now);
}

void PhotometerDesk::turn_end(Steady::time_point now) {
  const bool at_work = !to_measure_.empty() || rounds_left_ > 0 || replug_at_ || !line_.is_idle() ||
                       (talker_->waiting() > 0 && !silent_ && line_.has_listener());
  if (working_ && !at_work) {
    working_ = false;
    end_at_ = now + kLinger;
    say("done");
  }
  over_ = over_ || (options_.once && !working_ && now >= end_at_);
}

std::chrono::nanoseconds PhotometerDesk::until_due(Steady::time_point now) const {
  Steady::time_point due = now + kLook;
  if (!to_measure_.empty() && line_.is_idle() && next_reading_ > now) due = std::min(due, next_reading_);
  return std::min<std::chrono::nanoseconds>(due - now, line_.until_due(now));
}

void PhotometerDesk::command(const std::string& line, Steady::time_point now) {
  const size_t space = line.find(' ');
  const std::string word = line.substr(0, space);
  const std::string rest = space == std::string::npos ? "" : line.substr(space + 1);
  if (word == "quit") {
    over_ = true;
  } else if (word == "measure") {
    start_round(now);
  } else if (word == "unplug") {
    unplug(kNever);
  } else if (word == "replug") {
    replug_at_ = now;
  } else if (word == "bottle") {
    auto bottle = read_bottle_file(rest);
    if (!bottle) return say("error " + bottle.error().front().text());
    to_measure_.clear();
    photometer_.insert(std::move(*bottle));
  } else if (const auto fault = word == "fault" ? fault_named(rest) : std::nullopt) {
    if (*fault == FaultKind::none) {
      silent_ = false;
      next_faults_.clear();
      photometer_.unstick();
    } else if (*fault == FaultKind::silent) {
      silent_ = true;
    } else {
      next_faults_.push_back(*fault);
    }
  } else {
    return say("error: " + line +
               " is no command; expected bottle FILE, measure, fault KIND, unplug, replug or quit");
  }
  say("ok " + line);
}

}  // namespace brimline::demo
