// SPDX-License-Identifier: GPL-3.0-or-later
#include "station/json_text.h"

#include <QUtf8StringView>
#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>

#include <nlohmann/json.hpp>

namespace brimline {

using nlohmann::ordered_json;

namespace {

// Nothing of it is escaped (RFC 8259, section 7).
bool is_plain(const std::string& text) {
  return std::none_of(text.begin(), text.end(),
                      [](unsigned char c) { return c < 0x20 || c == '"' || c == '\\'; }) &&
         QUtf8StringView(text.data(), static_cast<qsizetype>(text.size())).isValidUtf8();
}

class Writer {
 public:
  explicit Writer(std::string& out) : out_(out) {}

  void value(const ordered_json& form) {
    using Kind = ordered_json::value_t;
    switch (form.type()) {
      case Kind::object:
        return object(form.get_ref<const ordered_json::object_t&>());
      case Kind::array:
        return list(form.get_ref<const ordered_json::array_t&>());
      case Kind::string:
        return text(form.get_ref<const std::string&>());
      case Kind::number_integer:
        return number(form.get_ref<const ordered_json::number_integer_t&>());
      case Kind::number_unsigned:
        return number(form.get_ref<const ordered_json::number_unsigned_t&>());
      case Kind::number_float:
        return real(form.get_ref<const ordered_json::number_float_t&>());
      case Kind::boolean:
        out_ += form.get<bool>() ? "true" : "false";
        return;
      default:
        out_ += "null";
    }
  }

 private:
  void object(const ordered_json::object_t& members) {
    char before = '{';
    for (const auto& [key, member] : members) {
      out_ += before;
      before = ',';
      text(key);
      out_ += ':';
      value(member);
    }
    out_ += members.empty() ? "{}" : "}";
  }
  void list(const ordered_json::array_t& items) {
    char before = '[';
    for (const ordered_json& item : items) {
      out_ += before;
      before = ',';
      value(item);
    }
    out_ += items.empty() ? "[]" : "]";
  }
  void text(const std::string& said) {
    if (is_plain(said))
      out_.append(1, '"').append(said).append(1, '"');
    else
      out_ += ordered_json(said).dump(-1, ' ', false, ordered_json::error_handler_t::replace);
  }
  void real(double said) {
    if (!std::isfinite(said))
      out_ += "null";
    else if (said == 0 || (said == std::floor(said) && std::abs(said) < 1e15))
      out_ += ordered_json(said).dump();  // "7.0" and "-0.0", told from whole numbers
    else
      number(said);
  }
  template <class Number>
  void number(Number said) {
    std::array<char, 32> digits{};
    const auto end = std::to_chars(digits.data(), digits.data() + digits.size(), said).ptr;
    out_.append(digits.data(), end);
  }

  std::string& out_;
};

}  // namespace

std::string json_text(const ordered_json& form) {
  constexpr size_t kUsual = 4096;  // bytes
  std::string out;
  out.reserve(kUsual);
  Writer(out).value(form);
  return out;
}

}  // namespace brimline
