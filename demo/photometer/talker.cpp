// SPDX-License-Identifier: GPL-3.0-or-later
#include "demo/photometer/talker.h"

#include "demo/photometer/line_talker.h"
#include "demo/photometer/lis_talker.h"
#include "demo/photometer/modbus_talker.h"

namespace brimline::demo {

std::unique_ptr<Talker> talker_for(const Profile& profile) {
  if (profile.protocol == "lis") return std::make_unique<LisTalker>(profile);
  if (profile.protocol == "modbus_rtu") return std::make_unique<ModbusTalker>(profile);
  return std::make_unique<LineTalker>(profile);
}

}  // namespace brimline::demo
