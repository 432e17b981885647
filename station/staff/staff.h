// SPDX-License-Identifier: GPL-3.0-or-later
// Staff of the shop and their PINs. A PIN is kept only as Argon2id's hash; wrong ones make everybody wait
// longer.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

#include <tl/expected.hpp>

namespace brimline {

// A keeper may change what the shop is set to, restore, export, erase, and clear a stopped instrument.
enum class StaffRole { clerk, keeper };

struct StaffMember {
  std::string id, name;
  StaffRole role = StaffRole::clerk;
  std::string pin_hash;                      // Argon2id's text form, RFC 9106
  bool gone = false;                         // works here no longer: old records still name them
  int failures = 0;                          // wrong PINs in a row
  std::optional<std::int64_t> wait_until_s;  // no PIN is looked at before, seconds of UTC since 1970
  friend bool operator==(const StaffMember&, const StaffMember&) = default;
};

enum class PinFault { too_short, too_long, not_digits, too_plain };

// 4 to 12 digits, not all the same and not counting up or down (common practice, no source).
std::optional<PinFault> pin_fault(std::string_view pin);

// Takes about a tenth of a second and 19 MiB: not for the screen's thread. Nothing where there is no memory.
std::optional<std::string> hash_of_pin(std::string_view pin);
bool is_pin_of(std::string_view pin, const std::string& hash);

// Seconds to wait after so many wrong PINs in a row: none for two, then 5, 10, 20 ... at most 15 minutes.
std::int64_t wait_after(int failures);

// How long this member must wait still, at `now_s`; never more than the longest wait, whatever a clock that
// was put back says.
std::int64_t seconds_to_wait(const StaffMember& member, std::int64_t now_s);

}  // namespace brimline
