// SPDX-License-Identifier: GPL-3.0-or-later
// Sound frames of every profile of a protocol, one file each, for the fuzzer to begin with.
// Arguments: the protocol, the folder.
#include <fstream>
#include <iostream>

#include "demo/photometer/talker.h"
#include "devices/lis_decoder.h"
#include "devices/modbus_decoder.h"

using namespace brimline;

namespace {

// The decoder's question to a server of registers; an acknowledgement for the rest.
std::string question_of(const Profile& profile) {
  if (profile.protocol != "modbus_rtu") return "\x06" + profile.line.ask;
  const auto decoder = make_modbus_decoder(profile);
  (void)decoder->opened(Millis(0));
  return decoder->waited(Millis(0)).answer;
}

std::string frames_of(const Profile& profile) {
  const auto talker = demo::talker_for(profile);
  for (const MethodRow& row : profile.methods) {
    const double value = (row.low + row.high) / 2;
    talker->put(row, {"20260614080000", "B-0001", value, std::nullopt});
    talker->put(row, {"20260614080100", "B-0001", row.high, Clip::above});
  }
  std::string out;
  for (int i = 0; i < 40; ++i) {
    for (const std::string& frame : talker->turn(i == 0 ? "" : question_of(profile), Millis(i))) out += frame;
    if (profile.protocol == "modbus_rtu") out += '\xff';  // a pause, in which the counter asks
  }
  return out;
}

}  // namespace

int main(int count, char** words) {
  if (count != 3) {
    std::cerr << "usage: frame_seeds PROTOCOL FOLDER\n";
    return 2;
  }
  int number = 0;
  for (const Profile& profile : builtin_profiles())
    if (profile.protocol == words[1]) {
      std::ofstream(std::string(words[2]) + "/seed-" + profile.id, std::ios::binary)
          << static_cast<char>(number++) << frames_of(profile).substr(0, 4000);
    }
}
