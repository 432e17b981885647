// SPDX-License-Identifier: GPL-3.0-or-later
// Values as a TOML file writes them; what fields.h reads back.
#pragma once

#include <string>
#include <string_view>

namespace brimline {

// A basic string, in its quotes (TOML 1.0.0, "String"); a control character becomes a blank.
std::string toml_string(std::string_view text);
// As few digits as tell the number, with a point whatever the machine's language.
std::string toml_number(double value);

}  // namespace brimline
