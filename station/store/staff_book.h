// SPDX-License-Identifier: GPL-3.0-or-later
// Staff in the store, and the tries at their PINs.
#pragma once

#include "station/staff/staff.h"
#include "station/store/store.h"

namespace brimline {

// A try at a PIN: how long to wait first, or the hash it is to be laid beside.
struct PinTry {
  std::int64_t wait_s = 0;
  std::string hash;
};

Stored<std::vector<StaffMember>> staff(Store& store);
// One keeper must stay. A new PIN forgets the wrong tries.
Stored<void> keep_staff(Store& store, const StaffMember& member);

// A try counts as wrong from its beginning, so that nothing is gained by breaking it off. The moment is that
// of the store's signature.
Stored<PinTry> begin_pin_try(Store& store, const std::string& id);
Stored<void> end_pin_try(Store& store, const std::string& id, bool right);

}  // namespace brimline
