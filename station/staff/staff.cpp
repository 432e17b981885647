// SPDX-License-Identifier: GPL-3.0-or-later
#include "station/staff/staff.h"

#include <sodium.h>

#include <algorithm>
#include <array>

namespace brimline {

namespace {

// Argon2id with 19 MiB, two passes: the least that the OWASP password storage cheat sheet asks for (from
// memory). A PIN of few digits is guessed by whoever has the file and time, whatever the hash: the file's
// mode and the disk guard it, the hash delays.
constexpr size_t kMemory = size_t{19} * 1024 * 1024;
constexpr unsigned long long kPasses = 2;

constexpr int kFree = 2;                // wrong PINs without a wait
constexpr std::int64_t kFirstWait = 5;  // seconds
constexpr std::int64_t kLongest = 900;

bool ready() {
  static const bool done = sodium_init() >= 0;
  return done;
}

bool steps_by(std::string_view digits, int step) {
  for (size_t i = 1; i < digits.size(); ++i)
    if (digits[i] - digits[i - 1] != step) return false;
  return true;
}

}  // namespace

std::optional<PinFault> pin_fault(std::string_view pin) {
  if (!std::all_of(pin.begin(), pin.end(), [](char c) { return c >= '0' && c <= '9'; }))
    return PinFault::not_digits;
  if (pin.size() < 4) return PinFault::too_short;
  if (pin.size() > 12) return PinFault::too_long;
  for (const int step : {0, 1, -1})
    if (steps_by(pin, step)) return PinFault::too_plain;
  return std::nullopt;
}

std::optional<std::string> hash_of_pin(std::string_view pin) {
  std::array<char, crypto_pwhash_STRBYTES> out{};
  if (!ready() || crypto_pwhash_str(out.data(), pin.data(), pin.size(), kPasses, kMemory) != 0)
    return std::nullopt;
  return std::string(out.data());
}

bool is_pin_of(std::string_view pin, const std::string& hash) {
  return ready() && hash.size() < crypto_pwhash_STRBYTES &&
         crypto_pwhash_str_verify(hash.c_str(), pin.data(), pin.size()) == 0;
}

std::int64_t wait_after(int failures) {
  if (failures <= kFree) return 0;
  std::int64_t wait = kFirstWait;
  for (int i = kFree + 1; i < failures && wait < kLongest; ++i) wait *= 2;
  return std::min(wait, kLongest);
}

std::int64_t seconds_to_wait(const StaffMember& member, std::int64_t now_s) {
  if (!member.wait_until_s || *member.wait_until_s <= now_s) return 0;
  return std::min(*member.wait_until_s - now_s, kLongest);
}

}  // namespace brimline
