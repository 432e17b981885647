// SPDX-License-Identifier: GPL-3.0-or-later
// The wire formats: a row each. A new one is its own files and a row here.
#pragma once

#include <memory>
#include <string>
#include <string_view>

#include "devices/decoder.h"

namespace brimline {

struct Protocol {
  std::string_view name;
  void (*read)(Fields& file, Profile& into);  // its own tables of the profile's file
  std::unique_ptr<Decoder> (*decoder)(const Profile& profile);
};

const Protocol* protocol_named(std::string_view name);  // nullptr: not known
std::string protocol_names();                           // "ascii_lines, lis"
std::unique_ptr<Decoder> decoder_for(const Profile& profile);

}  // namespace brimline
