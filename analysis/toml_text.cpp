// SPDX-License-Identifier: GPL-3.0-or-later
#include "analysis/toml_text.h"

#include <sstream>

namespace brimline {

std::string toml_string(std::string_view text) {
  std::string out = "\"";
  for (const char c : text) {
    const auto code = static_cast<unsigned char>(c);
    if (c == '"' || c == '\\') out += '\\';
    if (code < 0x20 || code == 0x7f)
      out += ' ';
    else
      out += c;
  }
  return out + "\"";
}

std::string toml_number(double value) {
  std::ostringstream out;
  out.imbue(std::locale::classic());
  out.precision(12);
  out << value;
  return out.str();
}

}  // namespace brimline
