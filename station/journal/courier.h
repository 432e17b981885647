// SPDX-License-Identifier: GPL-3.0-or-later
// Carries a counter's work to the shared store on a thread of its own, goes on when the server is away, and
// brings back what other counters did.
#pragma once

#include <chrono>
#include <condition_variable>
#include <deque>
#include <functional>
#include <future>
#include <memory>
#include <mutex>
#include <optional>
#include <string>
#include <thread>

#include "station/store/waiting_work.h"

namespace brimline {

struct CourierState {
  bool away = false;  // the shared store cannot be reached
  std::string why;    // in one sentence, while it is away
  int waiting = 0;    // pieces of work not carried yet
  int refused = 0;    // of these, those that wait for a word
  friend bool operator==(const CourierState&, const CourierState&) = default;
};

class Courier {
 public:
  struct Setup {
    std::string shared, own;               // database addresses
    std::function<void()> changed;         // from the courier's thread: another counter's work came in
    std::function<void()> state_changed;   // likewise
    std::chrono::milliseconds pace{1000};  // between looks at the shared store
  };
  explicit Courier(Setup setup);
  ~Courier();  // what waits stays in the journal
  Courier(const Courier&) = delete;
  Courier& operator=(const Courier&) = delete;

  void wake();
  CourierState state() const;
  // Asks the shared store; nothing where it is away or takes longer than `patience`.
  template <class Answer>
  std::optional<Answer> ask(std::function<Stored<Answer>(Store&)> question,
                            std::chrono::milliseconds patience = std::chrono::milliseconds(300)) {
    auto promise = std::make_shared<std::promise<std::optional<Answer>>>();
    auto answer = promise->get_future();
    {
      const std::lock_guard lock(mutex_);
      if (state_.away) return std::nullopt;
      questions_.push_back([promise, question = std::move(question)](Store* shared) {
        std::optional<Answer> out;
        if (shared)
          if (auto told = question(*shared)) out = std::move(*told);
        promise->set_value(std::move(out));
      });
    }
    wake();
    if (answer.wait_for(patience) != std::future_status::ready) return std::nullopt;
    return answer.get();
  }
  // Until nothing but what was refused waits, or the time is over; whether nothing waits.
  bool carried_within(std::chrono::milliseconds time);

 private:
  void run();
  bool reach();
  void answer();
  void carry();
  Stored<void> carry_one(const WaitingWork& work);
  void forget(const std::vector<WaitingWork>& carried);
  void one_by_one(const std::vector<WaitingWork>& free);
  void look();
  void set_away(const StoreError& wrong);
  void tell_state();

  Setup setup_;
  std::unique_ptr<Store> own_, shared_;
  mutable std::mutex mutex_;
  std::condition_variable woken_, settled_;
  std::deque<std::function<void(Store*)>> questions_;
  CourierState state_;
  bool work_ = true, stop_ = false;
  std::chrono::steady_clock::time_point next_look_{}, next_books_{}, next_try_{};
  std::thread thread_;
};

}  // namespace brimline
