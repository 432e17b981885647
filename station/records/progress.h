// SPDX-License-Identifier: GPL-3.0-or-later
// Long work tells how far it is, and is told whether to go on.
#pragma once

#include <functional>

namespace brimline {

// `share` of the work done, 0 to 1; false: stop. May be called from any thread; empty: nobody asks.
using Progress = std::function<bool(double share)>;

inline bool goes_on(const Progress& progress, double share) {
  return !progress || progress(share);
}

}  // namespace brimline
