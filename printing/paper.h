// SPDX-License-Identifier: GPL-3.0-or-later
// Paper the sheet can be laid out for.
#pragma once

#include <optional>
#include <string_view>

namespace brimline {

enum class Paper { letter, a4, roll80 };

// "letter", "a4" or "roll80"; nothing for any other word.
std::optional<Paper> paper_named(std::string_view name);

// Width and height in millimetres; the roll's height is 0: as long as the sheet is.
struct PaperSize {
  double width_mm = 0, height_mm = 0;
};
PaperSize size_of(Paper paper);

}  // namespace brimline
