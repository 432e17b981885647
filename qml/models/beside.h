// SPDX-License-Identifier: GPL-3.0-or-later
// The records of all counters read beside the screen: on a thread and a connection of their own, so that
// however many there are the counter goes on.
#pragma once

#include <QObject>

#include <atomic>
#include <functional>
#include <memory>

#include "qml/models/back_pool.h"
#include "qml/models/counter.h"
#include "station/records/progress.h"
#include "station/store/store.h"

namespace brimline {

class Beside : public QObject {
  Q_OBJECT

 public:
  explicit Beside(Counter& counter);
  ~Beside() override;  // stops what goes on, and waits for it

  // What went on before is stopped, and never shown. `show` is called on the screen's thread.
  template <class Answer>
  void begin(std::function<Stored<Answer>(Store&, const Progress&)> read,
             std::function<void(Stored<Answer>)> show) {
    run([read = std::move(read), show = std::move(show)](Stored<Store> store, const Progress& progress) {
      auto answer = std::make_shared<Stored<Answer>>(store ? read(*store, progress)
                                                           : Stored<Answer>(tl::unexpected(store.error())));
      return [show, answer] { show(std::move(*answer)); };
    });
  }
  void stop();
  bool busy() const { return busy_; }
  int percent() const { return percent_; }  // of what goes on

 signals:
  void moved();  // further on, shown, or stopped

 private:
  using Job = std::function<std::function<void()>(Stored<Store> store, const Progress& progress)>;
  void run(Job job);

  Counter& counter_;
  std::shared_ptr<std::atomic<bool>> stopped_;  // of the last job
  bool busy_ = false;
  int percent_ = 0;
  BackPool pool_;
};

}  // namespace brimline
