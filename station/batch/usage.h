// SPDX-License-Identifier: GPL-3.0-or-later
// Reading of the command line: flags that take a value, flags that do not, and the rest.
#pragma once

#include <initializer_list>
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include <tl/expected.hpp>

#include "station/batch/commands.h"

namespace brimline::batch {

struct Parsed {
  std::vector<std::string> positional;
  std::map<std::string, std::vector<std::string>, std::less<>> values;  // "--out" -> each value given
  std::optional<std::string> value(std::string_view flag) const;        // the last given
  bool has(std::string_view flag) const;
};

// `with_value` and `without_value` name the flags; an unknown flag or a missing value is the error text.
tl::expected<Parsed, std::string> parse(const Arguments& arguments,
                                        std::initializer_list<std::string_view> with_value,
                                        std::initializer_list<std::string_view> without_value = {});

// What `--language` names, `otherwise` where it is not given.
tl::expected<std::string, std::string> language_in(const Parsed& parsed, const std::string& otherwise);

// Prints `brimline-batch COMMAND: text` on standard error and returns kBadInput.
int bad_usage(std::string_view command, std::string_view text);

}  // namespace brimline::batch
