// SPDX-License-Identifier: GPL-3.0-or-later
#include "analysis/fields.h"

#include <algorithm>
#include <set>

// In a release the parser's assertions are promises to the compiler, and a table named "[&x]" breaks one:
// here they are nothing at all, and the parser's own error comes after them.
#undef NDEBUG
#define TOML_ASSERT(expr) static_cast<void>(0)
#define TOML_EXCEPTIONS 0
#define TOML_HEADER_ONLY 1
#include <toml++/toml.h>

namespace brimline {

// One table; all tables of a file share the document and the list of faults. The file owns its tables, and
// every Fields owns the file: a table that held it in turn would keep both for ever.
struct Fields::Node {
  struct File {
    std::string name;
    toml::table document;
    std::vector<Fault> faults;
    std::vector<std::unique_ptr<Node>> opened;

    Node* open(const toml::table* table, bool missing = false) {
      opened.push_back(std::make_unique<Node>());
      Node& node = *opened.back();
      node.file = this;
      node.table = table;
      node.missing = missing;
      return &node;
    }
  };
  File* file = nullptr;
  const toml::table* table = nullptr;
  std::set<std::string, std::less<>> asked;
  bool missing = false;  // stands for a table that is not there: its keys are no further faults

  const toml::node* find(std::string_view key) {
    asked.emplace(key);
    return table ? table->get(key) : nullptr;
  }
  int line_of(const toml::node* node) const {
    if (node) return static_cast<int>(node->source().begin.line);
    return table ? static_cast<int>(table->source().begin.line) : 0;
  }
  void fault(const toml::node* at, std::string what, std::string expected) {
    if (!missing) file->faults.push_back({file->name, line_of(at), std::move(what), std::move(expected)});
  }
};

namespace {

std::string quoted(std::string_view key) {
  return "`" + std::string(key) + "`";
}

std::string type_name(const toml::node& node) {
  switch (node.type()) {
    case toml::node_type::string:
      return "text";
    case toml::node_type::integer:
      return "a whole number";
    case toml::node_type::floating_point:
      return "a number";
    case toml::node_type::boolean:
      return "true or false";
    case toml::node_type::array:
      return "a list";
    case toml::node_type::table:
      return "a table";
    default:
      return "a date or time";
  }
}

std::optional<double> as_number(const toml::node& node) {
  if (const auto* i = node.as_integer()) return static_cast<double>(i->get());
  if (const auto* f = node.as_floating_point()) return f->get();
  return std::nullopt;
}

std::optional<std::string> as_text(const toml::node& node) {
  if (const auto* s = node.as_string()) return s->get();
  return std::nullopt;
}

std::optional<int> as_whole(const toml::node& node) {
  if (const auto* i = node.as_integer()) return static_cast<int>(i->get());
  return std::nullopt;
}

std::optional<bool> as_flag(const toml::node& node) {
  if (const auto* b = node.as_boolean()) return b->get();
  return std::nullopt;
}

// Past the string that opens at `at`: basic or literal, of one line or of several; the end where it has none.
size_t past_string(std::string_view text, size_t at) {
  const char quote = text[at];
  const std::string three(3, quote);
  const bool lines = text.substr(at, 3) == three;
  for (size_t i = at + (lines ? 3 : 1); i < text.size(); ++i) {
    if (quote == '"' && text[i] == '\\')
      ++i;
    else if (lines ? text.substr(i, 3) == three : text[i] == quote)
      return i + (lines ? 3 : 1);
    else if (!lines && text[i] == '\n')
      return i;
  }
  return text.size();
}

// The first letter beyond ASCII that stands outside strings and comments, where TOML 1.0 has none and the
// parser's test for blanks may not come back from it.
std::optional<size_t> stray_letter(std::string_view text) {
  for (size_t i = text.starts_with("\xEF\xBB\xBF") ? 3 : 0; i < text.size();) {
    if (text[i] == '#')
      i = std::min(text.find('\n', i), text.size());
    else if (text[i] == '"' || text[i] == '\'')
      i = past_string(text, i);
    else if (static_cast<unsigned char>(text[i]) >= 0x80)
      return i;
    else
      ++i;
  }
  return std::nullopt;
}

// A value by `convert`, or nothing and a fault when the node is of another type.
template <class Node, class Convert>
auto convert_if(Node& n, std::string_view key, const char* expected, Convert convert)
    -> decltype(convert(std::declval<const toml::node&>())) {
  const toml::node* node = n.find(key);
  if (!node) return std::nullopt;
  auto value = convert(*node);
  if (!value) n.fault(node, quoted(key) + " is " + type_name(*node), expected);
  return value;
}

template <class Node, class Convert>
auto list_if(Node& n, std::string_view key, const char* expected, Convert convert) {
  using Value = typename decltype(convert(std::declval<const toml::node&>()))::value_type;
  std::optional<std::vector<Value>> out;
  const toml::node* node = n.find(key);
  if (!node) return out;
  const toml::array* array = node->as_array();
  if (!array) {
    n.fault(node, quoted(key) + " is " + type_name(*node), expected);
    return out;
  }
  out.emplace();
  for (const toml::node& item : *array) {
    if (auto value = convert(item))
      out->push_back(*value);
    else
      n.fault(&item, "an item of " + quoted(key) + " is " + type_name(item), expected);
  }
  return out;
}

}  // namespace

tl::expected<Fields, Fault> Fields::parse(std::string_view text, std::string_view file) {
  if (const auto at = stray_letter(text)) {
    const auto line = 1 + std::count(text.begin(), text.begin() + static_cast<std::ptrdiff_t>(*at), '\n');
    return tl::unexpected(Fault{std::string(file), static_cast<int>(line),
                                "a letter beyond ASCII stands outside quotes", "it in quotes"});
  }
  toml::parse_result result = toml::parse(text, file);
  if (!result) {
    const toml::parse_error& error = result.error();
    return tl::unexpected(Fault{std::string(file), static_cast<int>(error.source().begin.line),
                                std::string(error.description()), "TOML"});
  }
  auto shared = std::make_shared<Node::File>();
  shared->name = file;
  shared->document = std::move(result).table();
  Node* node = shared->open(&shared->document);
  return Fields(std::shared_ptr<Node>(shared, node));
}

std::optional<std::string> Fields::text_if(std::string_view key) {
  return convert_if(*node_, key, "text", as_text);
}
std::optional<double> Fields::number_if(std::string_view key) {
  return convert_if(*node_, key, "a number", as_number);
}
std::optional<int> Fields::whole_if(std::string_view key) {
  return convert_if(*node_, key, "a whole number", as_whole);
}
std::optional<bool> Fields::flag_if(std::string_view key) {
  return convert_if(*node_, key, "true or false", as_flag);
}
std::optional<std::vector<std::string>> Fields::texts_if(std::string_view key) {
  return list_if(*node_, key, "a list of texts", as_text);
}
std::optional<std::vector<double>> Fields::numbers_if(std::string_view key) {
  return list_if(*node_, key, "a list of numbers", as_number);
}

std::optional<Fields> Fields::table_if(std::string_view key) {
  const toml::node* node = node_->find(key);
  if (!node) return std::nullopt;
  const toml::table* table = node->as_table();
  if (!table) {
    node_->fault(node, quoted(key) + " is " + type_name(*node), "a table");
    return std::nullopt;
  }
  return Fields(std::shared_ptr<Node>(node_, node_->file->open(table)));
}

std::vector<Fields> Fields::tables_if(std::string_view key) {
  std::vector<Fields> out;
  const toml::node* node = node_->find(key);
  if (!node) return out;
  const toml::array* array = node->as_array();
  if (!array) {
    node_->fault(node, quoted(key) + " is " + type_name(*node), "a list of tables");
    return out;
  }
  for (const toml::node& item : *array) {
    const toml::table* table = item.as_table();
    if (!table) {
      node_->fault(&item, "an item of " + quoted(key) + " is " + type_name(item), "a table");
      continue;
    }
    out.push_back(Fields(std::shared_ptr<Node>(node_, node_->file->open(table))));
  }
  return out;
}

namespace {
constexpr const char* kThere = "it to be there";
}

// NOLINTBEGIN(bugprone-macro-parentheses): a type takes no parentheses
#define BRIMLINE_REQUIRED(type, name)                                          \
  type Fields::name(std::string_view key) {                                    \
    if (!has(key)) node_->fault(nullptr, quoted(key) + " is missing", kThere); \
    return name##_if(key).value_or(type{});                                    \
  }
BRIMLINE_REQUIRED(std::string, text)
BRIMLINE_REQUIRED(double, number)
BRIMLINE_REQUIRED(int, whole)
BRIMLINE_REQUIRED(bool, flag)
BRIMLINE_REQUIRED(std::vector<std::string>, texts)
BRIMLINE_REQUIRED(std::vector<double>, numbers)
#undef BRIMLINE_REQUIRED
// NOLINTEND(bugprone-macro-parentheses)

Fields Fields::table(std::string_view key) {
  if (auto found = table_if(key)) return *found;
  if (!has(key)) node_->fault(nullptr, quoted(key) + " is missing", kThere);
  return Fields(std::shared_ptr<Node>(node_, node_->file->open(nullptr, true)));
}

std::vector<Fields> Fields::tables(std::string_view key) {
  if (!has(key)) node_->fault(nullptr, quoted(key) + " is missing", kThere);
  return tables_if(key);
}

bool Fields::has(std::string_view key) const {
  return node_->table && node_->table->contains(key);
}

std::vector<std::string> Fields::keys() const {
  std::vector<std::string> out;
  if (node_->table)
    for (const auto& [key, value] : *node_->table) out.emplace_back(key.str());
  return out;
}

int Fields::line() const {
  return node_->line_of(nullptr);
}

int Fields::line_of(std::string_view key) const {
  return node_->line_of(node_->table ? node_->table->get(key) : nullptr);
}

void Fields::fault(std::string_view key, std::string what, std::string expected) {
  node_->fault(node_->table ? node_->table->get(key) : nullptr, std::move(what), std::move(expected));
}

std::vector<Fault> Fields::finish() {
  std::vector<Fault> all = node_->file->faults;
  for (const auto& opened : node_->file->opened)
    if (opened->table)
      for (const auto& [key, value] : *opened->table)
        if (!opened->asked.contains(key.str()))
          all.push_back({node_->file->name, static_cast<int>(key.source().begin.line),
                         quoted(key.str()) + " is not known here", "one of the keys this file may have"});
  std::stable_sort(all.begin(), all.end(), [](const Fault& a, const Fault& b) { return a.line < b.line; });
  return all;
}

}  // namespace brimline
