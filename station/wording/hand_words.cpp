// SPDX-License-Identifier: GPL-3.0-or-later
#include "station/wording/hand_words.h"

namespace brimline {

std::string hand_change_line(const Words& words, const HandChange& change) {
  const std::string step = std::to_string(change.step);
  const std::string what =
      change.what == "leave_out"
          ? words.say("hand", phrase("hand", "Step %1 is left out: %2."), {step, change.before})
          : words.say("hand", phrase("hand", "Step %1: %2 instead of %3."),
                      {step, change.after, change.before});
  return what + " " + words.say("hand", phrase("hand", "Changed by %1: %2"), {change.staff, change.reason});
}

}  // namespace brimline
