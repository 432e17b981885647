// SPDX-License-Identifier: GPL-3.0-or-later
// Why a sheet did not come out.
#pragma once

#include <string>

namespace brimline {

struct PrintError {
  enum class Kind { cannot_draw, cannot_write, no_printer, refused };
  Kind kind = Kind::cannot_write;
  std::string text;  // one plain line, with the file or printer it concerns
};

}  // namespace brimline
