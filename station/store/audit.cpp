// SPDX-License-Identifier: GPL-3.0-or-later
#include "station/store/audit.h"

#include <algorithm>
#include <set>
#include <string_view>

#include <nlohmann/json.hpp>

namespace brimline {

using nlohmann::ordered_json;

namespace {

constexpr size_t kLongest = 200;  // bytes of a value

std::optional<std::string> value_text(const ordered_json* value) {
  if (!value || value->is_null()) return std::nullopt;
  std::string text = value->is_string() ? value->get<std::string>() : value->dump();
  if (text.size() > kLongest) {
    size_t end = kLongest;
    while (end > 0 && (static_cast<unsigned char>(text[end]) & 0xc0u) == 0x80u) --end;  // whole letters
    text = text.substr(0, end) + "...";
  }
  return text;
}

bool is_personal(std::string_view path) {
  for (const std::string_view field :
       {"customer/name", "customer/phone", "customer/street", "customer/email"})
    if (path == field) return true;
  return false;
}

const ordered_json* member(const ordered_json& object, const std::string& key) {
  const auto found = object.find(key);
  return found == object.end() ? nullptr : &*found;
}

struct Walk {
  const std::string& subject;
  bool filled;
  std::vector<AuditNote> notes;

  void add(const std::string& path, const ordered_json* before, const ordered_json* after) {
    if (!before && !filled) return;
    if (is_personal(path))
      notes.push_back({"visit", subject, path, std::nullopt, std::nullopt, std::nullopt});
    else
      notes.push_back({"visit", subject, path, value_text(before), value_text(after), std::nullopt});
  }

  void object(const ordered_json& before, const ordered_json& after, const std::string& path) {
    std::set<std::string> keys;
    for (const auto& item : before.items()) keys.insert(item.key());
    for (const auto& item : after.items()) keys.insert(item.key());
    for (const std::string& key : keys) {
      const ordered_json *was = member(before, key), *is = member(after, key);
      if (was && is && *was == *is) continue;
      const std::string there = path.empty() ? key : std::string(path).append("/").append(key);
      const ordered_json none = ordered_json::object();
      const bool nested = (was && was->is_object()) || (is && is->is_object());
      if (there == "readings")
        readings(was ? *was : ordered_json::array(), is ? *is : ordered_json::array());
      else if (there == "plan_as_told")
        plan(was, is);
      else if (nested)
        object(was && was->is_object() ? *was : none, is && is->is_object() ? *is : none, there);
      else
        add(there, was, is);
    }
  }

  // A plan is long: that it changed is told here, what it was stands in the visit's earlier revision.
  void plan(const ordered_json* before, const ordered_json* after) {
    if (!before && !filled) return;
    const auto size_of = [](const ordered_json* plan) -> std::optional<std::string> {
      if (!plan) return std::nullopt;
      const ordered_json* steps = member(*plan, "steps");
      return std::to_string(steps ? steps->size() : 0) + " steps";
    };
    notes.push_back({"visit", subject, "plan_as_told", size_of(before), size_of(after), std::nullopt});
  }

  void readings(const ordered_json& before, const ordered_json& after) {
    for (size_t i = 0; i < std::max(before.size(), after.size()); ++i) {
      const ordered_json* was = i < before.size() ? &before[i] : nullptr;
      const ordered_json* is = i < after.size() ? &after[i] : nullptr;
      if (was && is && *was == *is) continue;
      const ordered_json& known = was ? *was : after[i];
      const ordered_json* named = member(known, "analyte");
      notes.push_back({"reading", subject, named ? value_text(named) : std::nullopt, text_of(was),
                       text_of(is), std::nullopt});
    }
  }

  static std::optional<std::string> text_of(const ordered_json* reading) {
    if (!reading) return std::nullopt;
    std::string out = value_text(member(*reading, "value")).value_or("");
    for (const char* key : {"clipped", "method", "dilution", "instrument", "lot"})
      if (const auto text = value_text(member(*reading, key))) out.append(", ").append(*text);
    return out;
  }
};

}  // namespace

std::string in_one_line(const AuditNote& note) {
  std::string out = note.what + " " + note.subject;
  if (note.field) out += " " + *note.field;
  if (note.before || note.after) out += ": " + note.before.value_or("-") + " -> " + note.after.value_or("-");
  if (note.reason) out += " (" + *note.reason + ")";
  return out;
}

std::vector<AuditNote> differences(const ordered_json& before, const ordered_json& after,
                                   const std::string& subject, bool filled) {
  Walk walk{subject, filled, {}};
  walk.object(before, after, "");
  return std::move(walk.notes);
}

}  // namespace brimline
