// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <string_view>

#include "devices/profile.h"
#include "devices/protocols.h"
#include "devices/session.h"
#include "devices/wire_log.h"
#include "tests/long/fuzz.h"

namespace brimline::fuzz {
namespace {

// No reading is negative or not finite; none is beyond its method's range unless it is marked.
void judge(const Profile& profile, const Said& said) {
  for (const auto& one : said.told) {
    const auto* reading = std::get_if<InstrumentReading>(&one);
    if (!reading) continue;
    if (!std::isfinite(reading->value) || reading->value < 0) std::abort();
    const bool inside =
        std::any_of(profile.methods.begin(), profile.methods.end(), [&](const MethodRow& row) {
          return row.analyte == reading->analyte && reading->value >= row.low * row.factor &&
                 reading->value <= row.high * row.factor;
        });
    if (!inside && !reading->clipped) std::abort();
  }
}

// A byte 0xff is a pause of a second.
void decode(const Profile& profile, std::string_view bytes) {
  Session session(profile);
  Millis at{0};
  judge(profile, session.opened(at));
  while (!bytes.empty()) {
    at += Millis(1000);
    judge(profile, session.waited(at));
    const std::string_view piece = bytes.substr(0, bytes.find('\xff'));
    judge(profile, session.received(piece, at));
    bytes.remove_prefix(std::min(piece.size() + 1, bytes.size()));
  }
  judge(profile, session.waited(at + Millis(60000)));
}

}  // namespace

// Those of one protocol, or all.
std::vector<Profile> profiles_of(std::string_view protocol) {
  std::vector<Profile> out = builtin_profiles();
  std::erase_if(out, [&](const Profile& p) { return !protocol.empty() && p.protocol != protocol; });
  return out;
}

// First byte: which of the protocol's profiles.
void decoder(std::span<const std::uint8_t> bytes, std::string_view protocol) {
  static const std::vector<Profile> profiles = profiles_of(protocol);
  if (bytes.empty()) return;
  const std::string_view text(reinterpret_cast<const char*>(bytes.data()) + 1, bytes.size() - 1);
  decode(profiles[bytes[0] % profiles.size()], text);
}

void profile(std::span<const std::uint8_t> bytes) {
  const std::string_view text(reinterpret_cast<const char*>(bytes.data()), bytes.size());
  const auto read = read_profile(text, "fuzz.toml");
  if (!read) {
    if (read.error().empty()) std::abort();
    for (const Fault& fault : read.error())
      if (fault.text().empty()) std::abort();
    return;
  }
  decode(*read, text);
}

// First byte: a built-in profile's decoder, the profile reader or the log reader.
void wire(std::span<const std::uint8_t> bytes) {
  static const std::vector<Profile> profiles = profiles_of("");
  if (bytes.empty()) return;
  const std::string_view text(reinterpret_cast<const char*>(bytes.data()) + 1, bytes.size() - 1);
  const size_t choice = bytes[0] % (profiles.size() + 2);
  if (choice < profiles.size())
    decode(profiles[choice], text);
  else if (choice == profiles.size())
    (void)read_profile(text, "fuzz.toml");
  else
    (void)read_wire_log(text, "fuzz.log");
}

}  // namespace brimline::fuzz

#ifdef BRIMLINE_FUZZ_WHAT
extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  constexpr std::string_view kWhat = BRIMLINE_FUZZ_WHAT;
  if (kWhat == "wire")
    brimline::fuzz::wire({data, size});
  else if (kWhat == "profile")
    brimline::fuzz::profile({data, size});
  else
    brimline::fuzz::decoder({data, size}, kWhat);
  return 0;
}
#endif
