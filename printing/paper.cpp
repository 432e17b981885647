// SPDX-License-Identifier: GPL-3.0-or-later
#include "printing/paper.h"

namespace brimline {

std::optional<Paper> paper_named(std::string_view name) {
  if (name == "letter") return Paper::letter;
  if (name == "a4") return Paper::a4;
  if (name == "roll80") return Paper::roll80;
  return std::nullopt;
}

// Letter 8.5 x 11 in (ANSI/ASME Y14.1) and A4 210 x 297 mm (ISO 216); both from memory.
PaperSize size_of(Paper paper) {
  switch (paper) {
    case Paper::letter:
      return {215.9, 279.4};
    case Paper::a4:
      return {210, 297};
    case Paper::roll80:
      return {80, 0};
  }
  return {};
}

}  // namespace brimline
