// SPDX-License-Identifier: GPL-3.0-or-later
// Whether two customers' cards may be one person's.
#pragma once

#include <cstddef>
#include <string>
#include <vector>

#include "station/visit.h"

namespace brimline {

// Digits of a number without its country and region.
inline constexpr size_t kPhoneDigits = 7;

// What two cards have in common, the strongest first. Common practice, no source.
enum class Likeness {
  phone,  // the last seven digits or more
  email,
  name_and_street,  // all words of both
  street,           // and a word of the name: a household, perhaps
  name              // two words or more, and nothing else on the cards speaks against it
};

std::vector<Likeness> likeness(const Customer& one, const Customer& other);

// What cards that are alike share at least one of: to find them among many without laying each beside each.
std::vector<std::string> likeness_keys(const Customer& card);

}  // namespace brimline
