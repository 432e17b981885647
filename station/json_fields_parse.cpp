// SPDX-License-Identifier: GPL-3.0-or-later
#include <QUtf8StringView>
#include <algorithm>
#include <cmath>

#include <nlohmann/json.hpp>

#include "station/json_fields_tree.h"

namespace brimline {

namespace {
constexpr size_t kFewMembers = 24;                    // are compared each with each
constexpr size_t kUnknown = static_cast<size_t>(-1);  // as the parser says it
constexpr size_t kDeepest = 32;                       // a visit with its plan nests 8 deep

// Characters for the parser, counting the lines it has taken.
struct Counted {
  using difference_type = std::ptrdiff_t;
  using value_type = char;
  using pointer = const char*;
  using reference = const char&;
  using iterator_category = std::forward_iterator_tag;

  const char* at = nullptr;
  int* line = nullptr;   // of the last character taken
  char* last = nullptr;  // that character
  reference operator*() const { return *at; }
  Counted& operator++() {
    // A line break belongs to the line it ends: it counts when the next character is taken.
    if (*last == '\n') ++*line;
    *last = *at++;
    return *this;
  }
  Counted operator++(int) {
    Counted old = *this;
    ++*this;
    return old;
  }
  friend bool operator==(const Counted& a, const Counted& b) { return a.at == b.at; }
};
}  // namespace

std::string ticked(std::string_view key) {
  return "`" + std::string(key) + "`";
}

std::string one_line(std::string text) {
  constexpr size_t kLongest = 200;
  if (text.size() > kLongest) {
    size_t end = kLongest;
    while (end > 0 && (static_cast<unsigned char>(text[end]) & 0xc0) == 0x80)
      --end;  // whole UTF-8 characters
    text = text.substr(0, end) + "...";
  }
  for (char& c : text)
    if (static_cast<unsigned char>(c) < 0x20 || c == 0x7f) c = ' ';
  return text;
}

// Builds the tree from the parser's events; nlohmann's own tree keeps neither lines nor repeated keys.
struct JsonFields::Builder : nlohmann::json_sax<nlohmann::json> {
  Document& document;
  int line;
  char last = ' ';
  std::vector<Node*> open;
  bool root_seen = false;

  Builder(Document& d, int first_line) : document(d), line(first_line) {}

  void note(std::string what, std::string expected) {
    document.faults.push_back({document.file, line, one_line(std::move(what)), std::move(expected)});
  }
  // Where the value stands that is told now.
  Node& place(Node::Kind kind) {
    Node& node = open.empty()                            ? document.root
                 : open.back()->kind == Node::Kind::list ? open.back()->items.emplace_back()
                                                         : open.back()->members.back().value;
    node.kind = kind;
    node.line = line;
    return node;
  }
  bool number(double value) {
    place(Node::Kind::number).number = value;
    return true;
  }
  bool begin(Node::Kind kind) {
    if (open.size() >= kDeepest) {
      note("lists and objects nested too deep", "at most " + std::to_string(kDeepest) + " inside each other");
      return false;
    }
    open.push_back(&place(kind));
    return true;
  }

  bool null() override {
    place(Node::Kind::null);
    return true;
  }
  bool boolean(bool value) override {
    place(Node::Kind::flag).flag = value;
    return true;
  }
  bool number_integer(std::int64_t value) override { return number(static_cast<double>(value)); }
  bool number_unsigned(std::uint64_t value) override { return number(static_cast<double>(value)); }
  bool number_float(double value, const std::string&) override { return number(value); }
  bool string(std::string& value) override { return text(document.keep(std::move(value))); }
  bool text(std::string_view value) {
    if (value.find('\0') != std::string_view::npos) note("text holds a null character", "text without it");
    place(Node::Kind::text).text = value;
    return true;
  }
  bool binary(nlohmann::json::binary_t&) override { return false; }
  // How many there will be is known of a form in memory, not of a text.
  bool start_object(std::size_t count) override {
    if (!begin(Node::Kind::object)) return false;
    if (count != kUnknown) open.back()->members.reserve(count);
    return true;
  }
  bool start_array(std::size_t count) override {
    if (!begin(Node::Kind::list)) return false;
    if (count != kUnknown) open.back()->items.reserve(count);
    return true;
  }
  bool key(std::string& value) override { return member(document.keep(std::move(value))); }
  bool member(std::string_view name) {
    Node::Member& made = open.back()->members.emplace_back();
    made.key = name;
    made.line = line;
    return true;
  }
  bool end_array() override {
    open.pop_back();
    return true;
  }
  bool end_object() override {
    const auto& members = open.back()->members;
    bool twice = false;
    for (size_t i = 1; i < members.size() && members.size() <= kFewMembers && !twice; ++i)
      for (size_t j = 0; j < i; ++j) twice = twice || members[i].key == members[j].key;
    if (!twice && members.size() <= kFewMembers) {
      open.pop_back();
      return true;
    }
    std::vector<const Node::Member*> sorted;
    sorted.reserve(open.back()->members.size());
    for (const auto& member : open.back()->members) sorted.push_back(&member);
    std::stable_sort(sorted.begin(), sorted.end(), [](auto* a, auto* b) { return a->key < b->key; });
    for (size_t i = 1; i < sorted.size(); ++i)
      if (sorted[i]->key == sorted[i - 1]->key)
        document.faults.push_back({document.file, sorted[i]->line,
                                   one_line(ticked(sorted[i]->key) + " is there twice"), "each key once"});
    open.pop_back();
    return true;
  }
  bool parse_error(std::size_t, const std::string&, const nlohmann::detail::exception& error) override {
    const std::string text = error.what();
    const auto column = text.find("column ");
    const auto colon = column == std::string::npos ? column : text.find(": ", column);
    const auto bracket = text.find("] ");
    const auto start = colon != std::string::npos     ? colon + 2
                       : bracket != std::string::npos ? bracket + 2
                                                      : 0;
    note("not JSON: " + text.substr(start), "JSON");
    return false;
  }
};

namespace {

// The events that a parser has of the form's text, in its order; false where the hearer wants no more.
template <class Hearer>
bool tell(const nlohmann::ordered_json& form, Hearer& hearer) {
  using Kind = nlohmann::ordered_json::value_t;
  switch (form.type()) {
    case Kind::object:
      if (!hearer.start_object(form.size())) return false;
      for (const auto& [key, value] : form.template get_ref<const nlohmann::ordered_json::object_t&>()) {
        if (!hearer.member(key) || !tell(value, hearer)) return false;
      }
      return hearer.end_object();
    case Kind::array:
      if (!hearer.start_array(form.size())) return false;
      for (const auto& item : form)
        if (!tell(item, hearer)) return false;
      return hearer.end_array();
    case Kind::string: {
      const std::string_view text = form.template get_ref<const std::string&>();
      if (!QUtf8StringView(text.data(), static_cast<qsizetype>(text.size())).isValidUtf8()) {
        hearer.note("text that is not UTF-8", "UTF-8");
        return false;
      }
      return hearer.text(text);
    }
    case Kind::boolean:
      return hearer.boolean(form.template get<bool>());
    case Kind::number_integer:
    case Kind::number_unsigned:
    case Kind::number_float: {
      const auto number = form.template get<double>();
      return std::isfinite(number) ? hearer.number(number) : hearer.null();
    }
    default:
      return hearer.null();
  }
}

}  // namespace

tl::expected<JsonFields, std::vector<Fault>> JsonFields::root_of(std::shared_ptr<Document> document,
                                                                 bool read, std::string_view expected) {
  if (!read) return tl::unexpected(document->faults);
  if (document->root.kind != Node::Kind::object)
    return tl::unexpected(std::vector{Fault{document->file, document->root.line,
                                            std::string("the file holds ") + document->root.kind_name(),
                                            std::string(expected)}});
  const Node* root = &document->root;
  return JsonFields(std::move(document), root, false);
}

tl::expected<JsonFields, std::vector<Fault>> JsonFields::parse(std::string_view text, std::string_view file,
                                                               int first_line, std::string_view expected) {
  auto document = std::make_shared<Document>();
  document->file = file;
  if (text.find_first_not_of(" \t\r\n") == std::string_view::npos)
    return tl::unexpected(
        std::vector{Fault{document->file, first_line, "nothing is there", std::string(expected)}});
  Builder builder(*document, first_line);
  const Counted begin{text.data(), &builder.line, &builder.last};
  const Counted end{text.data() + text.size(), &builder.line, &builder.last};
  const bool read = nlohmann::json::sax_parse(begin, end, &builder);
  return root_of(std::move(document), read, expected);
}

tl::expected<JsonFields, std::vector<Fault>> JsonFields::of(const nlohmann::ordered_json& form,
                                                            std::string_view file,
                                                            std::string_view expected) {
  auto document = std::make_shared<Document>();
  document->file = file;
  Builder builder(*document, 1);
  const bool read = tell(form, builder);
  return root_of(std::move(document), read, expected);
}

}  // namespace brimline
