// SPDX-License-Identifier: GPL-3.0-or-later
#include "station/batch/usage.h"

#include <algorithm>
#include <iostream>

namespace brimline::batch {

std::optional<std::string> Parsed::value(std::string_view flag) const {
  const auto found = values.find(flag);
  if (found == values.end() || found->second.empty()) return std::nullopt;
  return found->second.back();
}

bool Parsed::has(std::string_view flag) const {
  return values.contains(flag);
}

tl::expected<Parsed, std::string> parse(const Arguments& arguments,
                                        std::initializer_list<std::string_view> with_value,
                                        std::initializer_list<std::string_view> without_value) {
  Parsed out;
  const auto among = [](std::initializer_list<std::string_view> names, std::string_view name) {
    return std::find(names.begin(), names.end(), name) != names.end();
  };
  for (size_t i = 0; i < arguments.size(); ++i) {
    const std::string& word = arguments[i];
    if (!word.starts_with("--")) {
      out.positional.push_back(word);
    } else if (among(without_value, word)) {
      out.values[word];
    } else if (among(with_value, word)) {
      if (i + 1 == arguments.size()) return tl::unexpected(word + " has no value; expected one after it");
      out.values[word].push_back(arguments[++i]);
    } else {
      return tl::unexpected("unknown option " + word);
    }
  }
  return out;
}

tl::expected<std::string, std::string> language_in(const Parsed& parsed, const std::string& otherwise) {
  const std::string language = parsed.value("--language").value_or(otherwise);
  if (language != "en" && language != "es" && language != "fr")
    return tl::unexpected("--language is " + language + "; expected en, es or fr");
  return language;
}

int bad_usage(std::string_view command, std::string_view text) {
  std::cerr << "brimline-batch " << command << ": " << text << "\n";
  return kBadInput;
}

}  // namespace brimline::batch
