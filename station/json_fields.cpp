// SPDX-License-Identifier: GPL-3.0-or-later
#include "station/json_fields.h"

#include <algorithm>
#include <cmath>

#include <nlohmann/json.hpp>

namespace brimline {

namespace {
constexpr size_t kFewMembers = 24;  // are compared each with each
constexpr size_t kDeepest = 32;     // a visit with its plan nests 8 deep

std::string ticked(std::string_view key) {
  return "`" + std::string(key) + "`";
}

// What a fault quotes, whatever the file held: no control characters, and not much longer than a line.
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

struct JsonFields::Node {
  enum class Kind { null, flag, number, text, list, object };
  struct Member;
  Kind kind = Kind::null;
  int line = 0;
  bool flag = false;
  double number = 0;
  std::string text;
  std::vector<Node> items;
  std::vector<Member> members;
  mutable bool opened = false;  // somebody reads this object

  const Member* member(std::string_view key) const;
  const char* kind_name() const {
    static constexpr const char* names[] = {"null", "true or false", "a number",
                                            "text", "a list",        "an object"};
    return names[static_cast<size_t>(kind)];
  }
};

struct JsonFields::Node::Member {
  std::string key;
  int line = 0;
  Node value;
  mutable bool asked = false;
};

const JsonFields::Node::Member* JsonFields::Node::member(std::string_view key) const {
  const auto found =
      std::find_if(members.begin(), members.end(), [&](const Member& m) { return m.key == key; });
  return found == members.end() ? nullptr : &*found;
}

struct JsonFields::Document {
  std::string file;
  Node root;
  std::vector<Fault> faults;
};

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
  Node* place(Node&& node) {
    node.line = line;
    if (open.empty()) return &(document.root = std::move(node));
    Node& parent = *open.back();
    if (parent.kind == Node::Kind::list) return &parent.items.emplace_back(std::move(node));
    return &(parent.members.back().value = std::move(node));
  }
  bool scalar(Node::Kind kind, auto set) {
    Node node;
    node.kind = kind;
    set(node);
    place(std::move(node));
    return true;
  }
  bool number(double value) {
    return scalar(Node::Kind::number, [&](Node& n) { n.number = value; });
  }
  bool begin(Node::Kind kind) {
    if (open.size() >= kDeepest) {
      note("lists and objects nested too deep", "at most " + std::to_string(kDeepest) + " inside each other");
      return false;
    }
    Node node;
    node.kind = kind;
    open.push_back(place(std::move(node)));
    return true;
  }

  bool null() override {
    return scalar(Node::Kind::null, [](Node&) {});
  }
  bool boolean(bool value) override {
    return scalar(Node::Kind::flag, [&](Node& n) { n.flag = value; });
  }
  bool number_integer(std::int64_t value) override { return number(static_cast<double>(value)); }
  bool number_unsigned(std::uint64_t value) override { return number(static_cast<double>(value)); }
  bool number_float(double value, const std::string&) override { return number(value); }
  bool string(std::string& value) override {
    if (value.find('\0') != std::string::npos) note("text holds a null character", "text without it");
    return scalar(Node::Kind::text, [&](Node& n) { n.text = std::move(value); });
  }
  bool binary(nlohmann::json::binary_t&) override { return false; }
  bool start_object(std::size_t) override { return begin(Node::Kind::object); }
  bool start_array(std::size_t) override { return begin(Node::Kind::list); }
  bool key(std::string& value) override {
    open.back()->members.push_back({value, line, {}});
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
  if (!read) return tl::unexpected(document->faults);
  if (document->root.kind != Node::Kind::object)
    return tl::unexpected(std::vector{Fault{document->file, document->root.line,
                                            std::string("the file holds ") + document->root.kind_name(),
                                            std::string(expected)}});
  return JsonFields(document, &document->root, false);
}

JsonFields::JsonFields(std::shared_ptr<Document> document, const Node* node, bool null_is_absent)
    : document_(std::move(document)), node_(node), null_is_absent_(null_is_absent) {
  node_->opened = true;
}

const JsonFields::Node* JsonFields::find(std::string_view key) {
  const auto* member = node_->member(key);
  if (member) member->asked = true;
  if (!member || (null_is_absent_ && member->value.kind == Node::Kind::null)) return nullptr;
  return &member->value;
}

void JsonFields::missing(std::string_view key) {
  document_->faults.push_back({document_->file, node_->line, ticked(key) + " is missing", "it to be there"});
}

void JsonFields::fault(std::string_view key, std::string what, std::string expected,
                       std::optional<size_t> item) {
  const auto* member = node_->member(key);
  int line = member ? member->value.line : node_->line;
  if (member && item && *item < member->value.items.size()) line = member->value.items[*item].line;
  document_->faults.push_back({document_->file, line, one_line(std::move(what)), std::move(expected)});
}

template <class Convert>
auto JsonFields::convert_if(std::string_view key, std::string_view expected, Convert convert) {
  const Node* node = find(key);
  decltype(convert(*node)) value;
  if (!node) return value;
  value = convert(*node);
  if (!value) fault(key, ticked(key) + " is " + node->kind_name(), std::string(expected));
  return value;
}

std::optional<std::string> JsonFields::text_if(std::string_view key) {
  return convert_if(key, "text", [](const Node& n) {
    return n.kind == Node::Kind::text ? std::optional(n.text) : std::nullopt;
  });
}

std::optional<bool> JsonFields::flag_if(std::string_view key) {
  return convert_if(key, "true or false", [](const Node& n) {
    return n.kind == Node::Kind::flag ? std::optional(n.flag) : std::nullopt;
  });
}

std::optional<double> JsonFields::number_if(std::string_view key, const Bounds& bounds) {
  const auto value = convert_if(key, bounds.expected, [](const Node& n) {
    return n.kind == Node::Kind::number ? std::optional(n.number) : std::nullopt;
  });
  if (!value) return value;
  const bool inside =
      *value <= bounds.high && (bounds.above_low ? *value > bounds.low : *value >= bounds.low);
  if (inside) return value;
  fault(key, ticked(key) + " is " + nlohmann::json(*value).dump(), bounds.expected);
  return std::nullopt;
}

std::optional<int> JsonFields::whole_if(std::string_view key, int low, int high) {
  if (!find(key)) return std::nullopt;
  const std::string expected =
      "a whole number from " + std::to_string(low) +
      (high == std::numeric_limits<int>::max() ? " up" : " to " + std::to_string(high));
  const auto value = number_if(key, {static_cast<double>(low), static_cast<double>(high), expected.c_str()});
  if (!value) return std::nullopt;
  if (*value == std::floor(*value)) return static_cast<int>(*value);
  fault(key, ticked(key) + " is " + nlohmann::json(*value).dump(), expected);
  return std::nullopt;
}

std::optional<Instant> JsonFields::instant_if(std::string_view key) {
  const auto text = text_if(key);
  if (!text) return std::nullopt;
  const auto instant = Instant::parse(*text);
  if (!instant)
    fault(key, ticked(key) + " is \"" + *text + "\"",
          "a time with its offset, like 2026-06-14T08:10:00-05:00");
  return instant;
}

std::optional<JsonFields> JsonFields::object_if(std::string_view key) {
  const Node* node = find(key);
  if (!node) return std::nullopt;
  if (node->kind == Node::Kind::object) return JsonFields(document_, node, null_is_absent_);
  fault(key, ticked(key) + " is " + node->kind_name(), "an object");
  return std::nullopt;
}

std::optional<std::vector<JsonFields>> JsonFields::objects_if(std::string_view key) {
  const Node* node = find(key);
  if (!node) return std::nullopt;
  std::vector<JsonFields> out;
  if (node->kind != Node::Kind::list) {
    fault(key, ticked(key) + " is " + node->kind_name(), "a list of objects");
    return out;
  }
  for (size_t i = 0; i < node->items.size(); ++i) {
    const Node& item = node->items[i];
    if (item.kind == Node::Kind::object)
      out.push_back(JsonFields(document_, &item, null_is_absent_));
    else
      fault(key, "an item of " + ticked(key) + " is " + item.kind_name(), "an object", i);
  }
  return out;
}

std::vector<std::string> JsonFields::texts_if(std::string_view key) {
  std::vector<std::string> out;
  const Node* node = find(key);
  if (!node) return out;
  if (node->kind != Node::Kind::list) {
    fault(key, ticked(key) + " is " + node->kind_name(), "a list of texts");
    return out;
  }
  for (size_t i = 0; i < node->items.size(); ++i) {
    const Node& item = node->items[i];
    if (item.kind == Node::Kind::text)
      out.push_back(item.text);
    else
      fault(key, "an item of " + ticked(key) + " is " + item.kind_name(), "text", i);
  }
  return out;
}

std::optional<std::vector<std::optional<double>>> JsonFields::numbers_if(std::string_view key) {
  const Node* node = find(key);
  if (!node) return std::nullopt;
  std::vector<std::optional<double>> out;
  if (node->kind != Node::Kind::list)
    fault(key, ticked(key) + " is " + node->kind_name(), "a list of numbers");
  for (size_t i = 0; i < node->items.size(); ++i) {
    const Node& item = node->items[i];
    if (item.kind == Node::Kind::number)
      out.emplace_back(item.number);
    else if (item.kind == Node::Kind::null)
      out.emplace_back(std::nullopt);
    else
      fault(key, "an item of " + ticked(key) + " is " + item.kind_name(), "a number or null", i);
  }
  return out;
}

std::string JsonFields::text(std::string_view key) {
  if (!has(key)) missing(key);
  const auto value = text_if(key);
  if (value && value->empty()) fault(key, ticked(key) + " is empty", "text");
  return value.value_or("");
}
std::string JsonFields::id(std::string_view key) {
  std::string value = text(key);
  if (std::any_of(value.begin(), value.end(), [](unsigned char c) { return c < 0x20 || c == 0x7f; }))
    fault(key, ticked(key) + " holds a control character", "text on one line");
  return value;
}
double JsonFields::number(std::string_view key, const Bounds& bounds) {
  if (!has(key)) missing(key);
  return number_if(key, bounds).value_or(0);
}
int JsonFields::whole(std::string_view key, int low, int high) {
  if (!has(key)) missing(key);
  return whole_if(key, low, high).value_or(low);
}
bool JsonFields::flag(std::string_view key) {
  if (!has(key)) missing(key);
  return flag_if(key).value_or(false);
}

bool JsonFields::has(std::string_view key) const {
  const auto* member = node_->member(key);
  return member && !(null_is_absent_ && member->value.kind == Node::Kind::null);
}

std::vector<std::string> JsonFields::keys() const {
  std::vector<std::string> out;
  for (const auto& member : node_->members) out.push_back(member.key);
  return out;
}

std::vector<Fault> JsonFields::finish() const {
  std::vector<Fault> all = document_->faults;
  const auto look = [&](const auto& look_into, const Node& node) -> void {
    for (const auto& member : node.members) {
      if (node.opened && !member.asked)
        all.push_back({document_->file, member.line, one_line(ticked(member.key) + " is not known here"),
                       "only the fields the form has"});
      look_into(look_into, member.value);
    }
    for (const Node& item : node.items) look_into(look_into, item);
  };
  look(look, document_->root);
  std::stable_sort(all.begin(), all.end(), [](const Fault& a, const Fault& b) { return a.line < b.line; });
  return all;
}

}  // namespace brimline
