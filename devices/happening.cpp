// SPDX-License-Identifier: GPL-3.0-or-later
#include "devices/happening.h"

namespace brimline {

std::string_view name_of(TroubleKind kind) {
  switch (kind) {
    case TroubleKind::unplugged:
      return "unplugged";
    case TroubleKind::silent:
      return "silent";
    case TroubleKind::garbled:
      return "garbled";
    case TroubleKind::out_of_range:
      return "out_of_range";
    case TroubleKind::unknown_method:
      return "unknown_method";
    case TroubleKind::wrong_sample:
      return "wrong_sample";
    case TroubleKind::busy:
      return "busy";
  }
  return "";
}

}  // namespace brimline
