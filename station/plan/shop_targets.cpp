// SPDX-License-Identifier: GPL-3.0-or-later
#include "station/plan/shop_targets.h"

#include <fstream>
#include <sstream>

namespace brimline {

namespace {

std::string known_ids() {
  std::string out;
  for (const TargetSet& set : target_sets()) out += (out.empty() ? "" : ", ") + set.id;
  return out;
}

}  // namespace

tl::expected<TargetSet, std::vector<Fault>> targets_named(const std::string& name) {
  if (const TargetSet* set = find_targets(name)) return *set;
  std::ifstream file(name, std::ios::binary);
  std::ostringstream text;
  if (!file || !(text << file.rdbuf()))
    return tl::unexpected(std::vector<Fault>{
        {name, 1, "is no target set and cannot be read", "a TOML file, or one of " + known_ids()}});
  return read_targets(text.str(), name);
}

}  // namespace brimline
