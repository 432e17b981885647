// SPDX-License-Identifier: GPL-3.0-or-later
#include "station/journal/merge.h"

#include <algorithm>
#include <optional>

namespace brimline {

using nlohmann::ordered_json;

namespace {

struct Join {
  bool ours_win;
  std::optional<Clash> clash;

  ordered_json value(const ordered_json& base, const ordered_json& ours, const ordered_json& theirs,
                     const std::string& path) {
    if (ours == theirs || ours == base) return theirs;
    if (theirs == base) return ours;
    if (ours.is_object() && theirs.is_object()) return object(base, ours, theirs, path);
    if (base.is_array() && ours.is_array() && theirs.is_array()) {
      if (ours.size() == theirs.size() && base.size() == ours.size())
        return elements(base, ours, theirs, path);
      if (begins_with(ours, base) && begins_with(theirs, base)) {
        ordered_json out = theirs;
        out.insert(out.end(), ours.begin() + static_cast<std::ptrdiff_t>(base.size()), ours.end());
        return out;
      }
    }
    if (!ours_win && !clash) clash = Clash{path, ours, theirs};
    return ours;
  }

  static ordered_json member(const ordered_json& object, const std::string& key) {
    if (!object.is_object()) return nullptr;
    const auto found = object.find(key);
    return found == object.end() ? ordered_json(nullptr) : *found;
  }

  ordered_json object(const ordered_json& base, const ordered_json& ours, const ordered_json& theirs,
                      const std::string& path) {
    ordered_json out = ordered_json::object();
    const auto take = [&](const std::string& key) {
      if (out.contains(key)) return;
      ordered_json one = value(member(base, key), member(ours, key), member(theirs, key),
                               path.empty() ? key : path + "/" + key);
      if (!one.is_null()) out[key] = std::move(one);
    };
    for (const auto& item : theirs.items()) take(item.key());
    for (const auto& item : ours.items()) take(item.key());
    return out;
  }

  ordered_json elements(const ordered_json& base, const ordered_json& ours, const ordered_json& theirs,
                        const std::string& path) {
    ordered_json out = ordered_json::array();
    for (size_t i = 0; i < ours.size(); ++i)
      out.push_back(value(base[i], ours[i], theirs[i], path + "/" + std::to_string(i + 1)));
    return out;
  }

  static bool begins_with(const ordered_json& array, const ordered_json& part) {
    return array.size() >= part.size() && std::equal(part.begin(), part.end(), array.begin());
  }
};

}  // namespace

tl::expected<ordered_json, Clash> joined(const ordered_json& base, const ordered_json& ours,
                                         const ordered_json& theirs, bool ours_win) {
  Join join{ours_win, std::nullopt};
  ordered_json out = join.value(base, ours, theirs, "");
  if (join.clash) return tl::unexpected(std::move(*join.clash));
  return out;
}

}  // namespace brimline
