// SPDX-License-Identifier: GPL-3.0-or-later
// A thread for work that the window goes on beside.
#pragma once

#include <QThreadPool>

#include <functional>

namespace brimline {

// The thread it is called on gives way to all others from now on: its niceness is 10, which Linux keeps
// thread by thread. For a thread of one's own only, it cannot be taken back.
void give_way();

// One thread, whose works follow each other and give way to the window's own.
class BackPool {
 public:
  BackPool() { pool_.setMaxThreadCount(1); }

  void start(std::function<void()> work);
  // Drops what has not begun.
  void clear() { pool_.clear(); }
  void wait() { pool_.waitForDone(); }

 private:
  QThreadPool pool_;
};

}  // namespace brimline
