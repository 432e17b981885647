// SPDX-License-Identifier: GPL-3.0-or-later
// Data files compiled into the program: each folder of them is a function
// `brimline::embedded::NAME()` made by .cmake/embed_text.cmake.
#pragma once

#include <span>
#include <string_view>

namespace brimline::embedded {

struct Text {
  std::string_view name;  // path from the folder that embeds it, e.g. "readings/ph.toml"
  std::string_view text;
};

}  // namespace brimline::embedded
