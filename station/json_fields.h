// SPDX-License-Identifier: GPL-3.0-or-later
// Strict reading of JSON that people wrote: each fault names the line of the value it is about.
// Unknown and repeated keys, wrong types and numbers out of bounds are faults, never defaults.
//
//   auto root = JsonFields::parse(text, "visit.json");
//   visit.id = root->text("id");
//   if (auto vessel = root->object_if("vessel")) ...
//   const std::vector<Fault> faults = root->finish();   // of the whole document
#pragma once

#include <limits>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include <nlohmann/json_fwd.hpp>
#include <tl/expected.hpp>

#include "analysis/fields.h"
#include "analysis/instant.h"
#include "station/visit_names.h"

namespace brimline {

// What a number may be; `expected` is how a fault says it.
struct Bounds {
  double low = -std::numeric_limits<double>::infinity();
  double high = std::numeric_limits<double>::infinity();
  const char* expected = "a number";
  bool above_low = false;  // `low` itself is out of bounds
};
inline constexpr Bounds kAnyNumber{};
inline constexpr Bounds kNotNegative{0, std::numeric_limits<double>::infinity(), "a number of 0 or more"};
inline constexpr Bounds kPositive{0, std::numeric_limits<double>::infinity(), "a number above 0", true};

// One object of a document; copies share the document and its faults.
class JsonFields {
 public:
  // `first_line` is the line of the file that `text` begins on. Syntax faults are returned here;
  // `expected` says what the file should hold, e.g. "a visit".
  static tl::expected<JsonFields, std::vector<Fault>> parse(std::string_view text, std::string_view file,
                                                            int first_line, std::string_view expected);
  // The same of a form in memory, as if of its text: a number that is none is null. The form stays until all
  // is read.
  static tl::expected<JsonFields, std::vector<Fault>> of(const nlohmann::ordered_json& form,
                                                         std::string_view file, std::string_view expected);

  // From here inwards null counts as absent; elsewhere null is a fault.
  void null_is_absent() { null_is_absent_ = true; }

  // Required: missing or wrong is a fault, and an empty value is returned.
  std::string text(std::string_view key);  // never empty
  std::string id(std::string_view key);    // the same, on one line
  double number(std::string_view key, const Bounds& bounds = kAnyNumber);
  int whole(std::string_view key, int low, int high);
  bool flag(std::string_view key);

  // Absent is nothing; wrong is a fault and nothing.
  std::optional<std::string> text_if(std::string_view key);
  std::optional<double> number_if(std::string_view key, const Bounds& bounds = kAnyNumber);
  std::optional<int> whole_if(std::string_view key, int low, int high);
  std::optional<bool> flag_if(std::string_view key);
  std::optional<Instant> instant_if(std::string_view key);
  std::optional<JsonFields> object_if(std::string_view key);
  std::optional<std::vector<JsonFields>> objects_if(std::string_view key);
  std::vector<std::string> texts_if(std::string_view key);
  // A list in which each item is a number or null.
  std::optional<std::vector<std::optional<double>>> numbers_if(std::string_view key);

  template <class E>
  std::optional<E> choice_if(std::string_view key) {
    const auto name = view_if(key);
    if (!name) return std::nullopt;
    const auto value = named<E>(*name);
    if (!value) fault(key, "unknown `" + std::string(key) + "` \"" + std::string(*name) + "\"", choices<E>());
    return value;
  }
  template <class E>
  E choice(std::string_view key) {
    if (!has(key)) missing(key);
    return choice_if<E>(key).value_or(E{});
  }

  // Null counts as not there only after null_is_absent().
  bool has(std::string_view key) const;
  std::vector<std::string> keys() const;
  bool empty() const;
  // Notes a fault at the value of `key`, or at its `item`th item.
  void fault(std::string_view key, std::string what, std::string expected, std::optional<size_t> item = {});

  // All faults of the document so far in the order of lines, those of keys nobody asked for included.
  std::vector<Fault> finish() const;

 private:
  struct Node;
  struct Document;
  struct Builder;
  static tl::expected<JsonFields, std::vector<Fault>> root_of(std::shared_ptr<Document> document, bool read,
                                                              std::string_view expected);
  JsonFields(std::shared_ptr<Document> document, const Node* node, bool null_is_absent);
  const Node* find(std::string_view key);
  std::optional<std::string_view> view_if(std::string_view key);  // as text_if; the document's own
  void missing(std::string_view key);
  template <class Convert>
  auto convert_if(std::string_view key, std::string_view expected, Convert convert);

  std::shared_ptr<Document> document_;
  const Node* node_;
  bool null_is_absent_ = false;
};

}  // namespace brimline
