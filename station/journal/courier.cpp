// SPDX-License-Identifier: GPL-3.0-or-later
#include "station/journal/courier.h"

#include <algorithm>

#include "station/journal/pull.h"
#include "station/journal/work.h"

namespace brimline {

using std::chrono::milliseconds;
using std::chrono::steady_clock;

namespace {
constexpr milliseconds kBooksPace{10000};
constexpr milliseconds kRetry{1000};  // before the server is tried again
constexpr int kMostAtOnce = 25;       // pieces of work in one transaction

bool is_away(const StoreError& wrong) {
  return wrong.trouble == StoreTrouble::unreachable || wrong.trouble == StoreTrouble::full ||
         wrong.trouble == StoreTrouble::busy;
}

}  // namespace

Courier::Courier(Setup setup) : setup_(std::move(setup)), thread_([this] { run(); }) {}

Courier::~Courier() {
  {
    const std::lock_guard lock(mutex_);
    stop_ = true;
  }
  woken_.notify_all();
  thread_.join();
}

void Courier::wake() {
  {
    const std::lock_guard lock(mutex_);
    work_ = true;
  }
  woken_.notify_all();
}

CourierState Courier::state() const {
  const std::lock_guard lock(mutex_);
  return state_;
}

bool Courier::carried_within(milliseconds time) {
  wake();
  std::unique_lock lock(mutex_);
  settled_.wait_for(lock, time,
                    [this] { return !work_ && !state_.away && state_.waiting == state_.refused; });
  return state_.waiting == 0 && !work_;
}

void Courier::tell_state() {
  const auto waiting = waiting_work(*own_, 100000);
  CourierState now;
  {
    const std::lock_guard lock(mutex_);
    now = state_;
  }
  const CourierState before = now;
  if (waiting) {
    now.waiting = static_cast<int>(waiting->size());
    now.refused = 0;
    for (const WaitingWork& work : *waiting) now.refused += work.refusal ? 1 : 0;
  }
  {
    const std::lock_guard lock(mutex_);
    state_.waiting = now.waiting;
    state_.refused = now.refused;
  }
  settled_.notify_all();
  if (!(now == before) && setup_.state_changed) setup_.state_changed();
}

void Courier::set_away(const StoreError& wrong) {
  shared_.reset();
  bool told = false;
  {
    const std::lock_guard lock(mutex_);
    told = !state_.away || state_.why != wrong.text;
    state_.away = true;
    state_.why = wrong.text;
  }
  next_try_ = steady_clock::now() + kRetry;
  if (told && setup_.state_changed) setup_.state_changed();
}

bool Courier::reach() {
  if (shared_) return true;
  if (steady_clock::now() < next_try_) return false;
  auto store = Store::open(setup_.shared, Opening::existing);
  if (!store) {
    set_away(store.error());
    return false;
  }
  shared_ = std::make_unique<Store>(std::move(*store));
  bool told = false;
  {
    const std::lock_guard lock(mutex_);
    told = state_.away;
    state_.away = false;
    state_.why.clear();
  }
  next_look_ = next_books_ = {};
  if (told && setup_.state_changed) setup_.state_changed();
  return true;
}

void Courier::answer() {
  std::deque<std::function<void(Store*)>> questions;
  {
    const std::lock_guard lock(mutex_);
    questions.swap(questions_);
  }
  if (questions.empty()) return;
  reach();
  for (const auto& question : questions) question(shared_.get());
}

// In order; work on what was refused waits behind the refusal, so that nothing overtakes.
void Courier::carry() {
  const auto waiting = waiting_work(*own_, kMostAtOnce);
  if (!waiting || waiting->empty()) return;
  std::vector<WaitingWork> free;
  std::vector<std::string> held;
  for (const WaitingWork& work : *waiting) {
    if (work.refusal) held.push_back(work.subject);
    if (std::find(held.begin(), held.end(), work.subject) == held.end()) free.push_back(work);
  }
  if (free.empty() || !reach()) return;
  // All in one transaction, which is one wait for the server's disk; one by one where something is refused.
  const auto all = shared_->connection().transact(Access::write, [&] {
    for (const WaitingWork& work : free)
      if (const auto done = carry_one(work); !done) return shared_->connection().fail(done.error());
  });
  if (all)
    forget(free);
  else if (is_away(all.error()))
    return set_away(all.error());
  else
    one_by_one(free);
  if (static_cast<int>(waiting->size()) == kMostAtOnce) wake();
}

Stored<void> Courier::carry_one(const WaitingWork& work) {
  shared_->sign_as([by = work.by] { return by; });
  return shared_->once(work.id, [&] { return do_work(*shared_, work); });
}

// It is in the shared store by its id: were this lost, it would be carried again and found done.
void Courier::forget(const std::vector<WaitingWork>& carried) {
  (void)own_->connection().transact(Access::write, [&] {
    for (const WaitingWork& work : carried) (void)drop_work(*own_, work.id);
  });
}

void Courier::one_by_one(const std::vector<WaitingWork>& free) {
  std::vector<std::string> held;
  for (const WaitingWork& work : free) {
    if (std::find(held.begin(), held.end(), work.subject) != held.end()) continue;
    const auto done = carry_one(work);
    if (done) {
      forget({work});
    } else if (is_away(done.error())) {
      return set_away(done.error());
    } else {
      (void)refuse_work(*own_, work.id, done.error().text);
      held.push_back(work.subject);
    }
  }
}

void Courier::look() {
  const auto now = steady_clock::now();
  if (!reach()) return;
  bool changed = false;
  const auto pull = [&](steady_clock::time_point& next, milliseconds pace, auto how) {
    if (!shared_ || now < next) return;
    const auto pulled = how(*shared_, *own_);
    if (!pulled && pulled.error().trouble == StoreTrouble::unreachable) return set_away(pulled.error());
    next = now + pace;
    changed = changed || (pulled && *pulled);
  };
  pull(next_books_, kBooksPace, pull_books);
  pull(next_look_, setup_.pace, pull_bottles);
  if (changed && setup_.changed) setup_.changed();
}

void Courier::run() {
  auto own = Store::open(setup_.own);
  if (!own) {
    const std::lock_guard lock(mutex_);
    state_.away = true;
    state_.why = own.error().text;
    return;
  }
  own_ = std::make_unique<Store>(std::move(*own));
  while (true) {
    {
      std::unique_lock lock(mutex_);
      woken_.wait_for(lock, setup_.pace, [this] { return stop_ || work_; });
      if (stop_) break;
      work_ = false;
    }
    answer();
    carry();
    look();
    tell_state();
  }
  answer();
  shared_.reset();
  own_.reset();
}

}  // namespace brimline
