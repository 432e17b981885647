// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace brimline {

// Marks a sentence for lupdate (-tr-function-alias QT_TRANSLATE_NOOP+=phrase); gives the text back.
constexpr const char* phrase(const char* /*context*/, const char* text) {
  return text;
}

}  // namespace brimline
