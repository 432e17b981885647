// SPDX-License-Identifier: GPL-3.0-or-later
#include "station/journal/journaled_store.h"

#include <algorithm>

namespace brimline {

Stored<void> JournaledStore::write(WaitingWork work) {
  work.id = new_id_();
  work.by = own_.signature();
  auto done = own_.connection().transact(Access::write, [&] {
    if (auto here = do_work(own_, work); !here) return own_.connection().fail(here.error());
    if (auto queued = queue_work(own_, work); !queued) own_.connection().fail(queued.error());
  });
  if (done) wake_();
  return done;
}

Stored<std::vector<WaitingWork>> JournaledStore::refused() {
  auto all = waiting_work(own_);
  if (all) std::erase_if(*all, [](const WaitingWork& work) { return !work.refusal; });
  return all;
}

Stored<void> JournaledStore::insist(const std::string& id) {
  const auto all = waiting_work(own_);
  if (!all) return tl::unexpected(all.error());
  const auto found = std::find_if(all->begin(), all->end(), [&](const auto& work) { return work.id == id; });
  if (found == all->end()) return {};
  const WaitingWork again = work::insisted(*found);
  auto done = own_.connection().transact(Access::write, [&] {
    (void)drop_work(own_, id);
    (void)queue_work(own_, again);
  });
  if (done) wake_();
  return done;
}

Stored<void> JournaledStore::give_way(const std::string& id) {
  const auto done = drop_work(own_, id);
  if (done) wake_();
  return done;
}

}  // namespace brimline
