// SPDX-License-Identifier: GPL-3.0-or-later
#include "station/json_fields.h"

#include <algorithm>
#include <cmath>

#include <nlohmann/json.hpp>

#include "station/json_fields_tree.h"

namespace brimline {

const JsonFields::Node::Member* JsonFields::Node::member(std::string_view key) const {
  for (const size_t i : {last, last + 1})
    if (i < members.size() && members[i].key == key) return &members[last = i];
  const auto found =
      std::find_if(members.begin(), members.end(), [&](const Member& m) { return m.key == key; });
  if (found == members.end()) return nullptr;
  last = static_cast<size_t>(found - members.begin());
  return &*found;
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

std::optional<std::string_view> JsonFields::view_if(std::string_view key) {
  return convert_if(key, "text", [](const Node& n) {
    return n.kind == Node::Kind::text ? std::optional(n.text) : std::nullopt;
  });
}

std::optional<std::string> JsonFields::text_if(std::string_view key) {
  const auto text = view_if(key);
  return text ? std::optional<std::string>(*text) : std::nullopt;
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
  const auto text = view_if(key);
  if (!text) return std::nullopt;
  const auto instant = Instant::parse(*text);
  if (!instant)
    fault(key, ticked(key) + " is \"" + std::string(*text) + "\"",
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
      out.emplace_back(item.text);
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
  for (const auto& member : node_->members) out.emplace_back(member.key);
  return out;
}

bool JsonFields::empty() const {
  return node_->members.empty();
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
