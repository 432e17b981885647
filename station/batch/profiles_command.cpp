// SPDX-License-Identifier: GPL-3.0-or-later
// `profiles`: the built-in instrument profiles; with --check, a file judged.
#include <iostream>

#include <nlohmann/json.hpp>

#include "devices/profile.h"
#include "station/batch/commands.h"
#include "station/batch/usage.h"

namespace brimline::batch {
namespace {

void print(const Profile& profile) {
  nlohmann::ordered_json line = {{"id", profile.id},
                                 {"name", profile.name},
                                 {"protocol", profile.protocol},
                                 {"baud", profile.serial.baud},
                                 {"analytes", nlohmann::ordered_json::array()}};
  for (const MethodRow& row : profile.methods) line["analytes"].push_back(row.analyte);
  std::cout << line.dump(-1, ' ', false, nlohmann::ordered_json::error_handler_t::replace) << "\n";
}

}  // namespace

int profiles_command(const Arguments& arguments) {
  const auto parsed = parse(arguments, {"--check"});
  if (!parsed) return bad_usage("profiles", parsed.error());
  if (!parsed->positional.empty()) return bad_usage("profiles", "expected nothing, or --check FILE");
  const auto file = parsed->value("--check");
  if (!file) {
    for (const Profile& profile : builtin_profiles()) print(profile);
    return kDone;
  }
  const auto profile = read_profile_file(*file);
  if (!profile) {
    for (const Fault& fault : profile.error()) std::cerr << fault.text() << "\n";
    return kBadInput;
  }
  print(*profile);
  return kDone;
}

}  // namespace brimline::batch
