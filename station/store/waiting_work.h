// SPDX-License-Identifier: GPL-3.0-or-later
// A counter's journal (station/journal): work that it has done and the shared store has not got yet, and what
// it knows of that store.
#pragma once

#include <optional>
#include <string>

#include "station/store/store.h"

namespace brimline {

struct WaitingWork {
  std::string id;       // its own, so that it is done once
  std::string kind;     // station/journal/work.h
  std::string subject;  // the visit or customer it is on
  std::string content;  // JSON, as the kind says
  Signature by;
  std::optional<std::string> refusal;  // why the shared store would not take it
};

Stored<void> queue_work(Store& store, const WaitingWork& work);
Stored<std::vector<WaitingWork>> waiting_work(Store& store,
                                              int most = 1000);  // in its order, the refused too
Stored<void> drop_work(Store& store, const std::string& id);
Stored<void> refuse_work(Store& store, const std::string& id, const std::optional<std::string>& why);

// As the shared store has it, unless work on it waits here; whether anything was put.
Stored<bool> mirror(Store& store, const Visit& visit, bool finished);
Stored<bool> mirror(Store& store, const OvernightTest& test);
Stored<bool> mirror(Store& store, const OrphanReading& orphan, bool waits);

}  // namespace brimline
