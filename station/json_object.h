// SPDX-License-Identifier: GPL-3.0-or-later
// A JSON object from its members, each made once. A braced list of nlohmann's copies them all and looks each
// key up.
#pragma once

#include <string>
#include <utility>
#include <vector>

#include <nlohmann/json.hpp>

namespace brimline {

// `key` at the end of the object, where it is not yet.
template <class Value>
void json_add(nlohmann::ordered_json& object, const char* key, Value&& value) {
  std::vector<nlohmann::ordered_json::object_t::value_type>& members =
      object.get_ref<nlohmann::ordered_json::object_t&>();
  members.emplace_back(key, std::forward<Value>(value));
}

template <class... More>
void json_add(nlohmann::ordered_json& object, const char* key, auto&& value, const char* next,
              More&&... more) {
  json_add(object, key, std::forward<decltype(value)>(value));
  json_add(object, next, std::forward<More>(more)...);
}

// An object that will have so many members, and has none yet.
inline nlohmann::ordered_json json_object_of(size_t members) {
  nlohmann::ordered_json out = nlohmann::ordered_json::object();
  std::vector<nlohmann::ordered_json::object_t::value_type>& room =
      out.get_ref<nlohmann::ordered_json::object_t&>();
  room.reserve(members);
  return out;
}

// `members`: key, value, key, value, ...; no key twice.
template <class... Members>
nlohmann::ordered_json json_object(Members&&... members) {
  static_assert(sizeof...(Members) % 2 == 0, "a value for each key");
  nlohmann::ordered_json out = json_object_of(sizeof...(Members) / 2 + 4);
  if constexpr (sizeof...(Members) > 0) json_add(out, std::forward<Members>(members)...);
  return out;
}

template <class List, class Convert>
nlohmann::ordered_json list_to_json(const List& list, Convert convert) {
  nlohmann::ordered_json out = nlohmann::ordered_json::array();
  auto& items = out.get_ref<nlohmann::ordered_json::array_t&>();
  items.reserve(list.size());
  for (const auto& item : list) items.push_back(convert(item));
  return out;
}

}  // namespace brimline
