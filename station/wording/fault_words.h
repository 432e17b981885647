// SPDX-License-Identifier: GPL-3.0-or-later
// What is wrong at a line of a file, in the reader's language. Faults are made in English where they are
// found; the sentences that one is made of are known here.
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "analysis/fields.h"
#include "station/wording/words.h"

namespace brimline {

// "people.csv, line 3: `volume` is `13.208,6`; expected a number"; in English where a half of it is not known
// here.
std::string fault_words(const Words& words, const Fault& fault);

// One half of a fault, `what` or `expected`; nothing where no sentence of its form is known.
std::optional<std::string> fault_sentence(const Words& words, std::string_view english);

}  // namespace brimline
