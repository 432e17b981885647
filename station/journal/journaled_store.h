// SPDX-License-Identifier: GPL-3.0-or-later
// A counter's own store in front of the shared one: what is written is durable here at once, whether or not
// the server can be reached, and is carried there after, exactly once (courier.h).
#pragma once

#include <functional>
#include <string>

#include "station/journal/work.h"

namespace brimline {

class JournaledStore {
 public:
  using NewId = std::function<std::string()>;

  // `own`: outlives this. `wake`: is called when there is work to be carried.
  JournaledStore(Store& own, NewId new_id, std::function<void()> wake)
      : own_(own), new_id_(std::move(new_id)), wake_(std::move(wake)) {}

  // Done here and queued for the shared store, in one transaction.
  Stored<void> write(WaitingWork work);
  Store& own() { return own_; }

  // What the shared store would not take: both changed the same, or a rule of it was broken. Ours is carried
  // again and wins; or theirs stands and ours is forgotten.
  Stored<std::vector<WaitingWork>> refused();
  Stored<void> insist(const std::string& id);
  Stored<void> give_way(const std::string& id);

 private:
  Store& own_;
  NewId new_id_;
  std::function<void()> wake_;
};

}  // namespace brimline
