// SPDX-License-Identifier: GPL-3.0-or-later
#include "devices/protocols.h"

#include "devices/line_decoder.h"
#include "devices/lis_decoder.h"
#include "devices/modbus_decoder.h"

namespace brimline {
namespace {

constexpr Protocol kProtocols[] = {
    {"ascii_lines", read_line_form, make_line_decoder},
    {"lis", read_lis_form, make_lis_decoder},
    {"modbus_rtu", read_modbus_form, make_modbus_decoder},
};

}  // namespace

const Protocol* protocol_named(std::string_view name) {
  for (const Protocol& protocol : kProtocols)
    if (protocol.name == name) return &protocol;
  return nullptr;
}

std::string protocol_names() {
  std::string out;
  for (const Protocol& protocol : kProtocols) out += (out.empty() ? "" : ", ") + std::string(protocol.name);
  return out;
}

std::unique_ptr<Decoder> decoder_for(const Profile& profile) {
  const Protocol* protocol = protocol_named(profile.protocol);
  return protocol ? protocol->decoder(profile) : nullptr;
}

}  // namespace brimline
