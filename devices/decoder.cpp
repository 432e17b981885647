// SPDX-License-Identifier: GPL-3.0-or-later
#include "devices/decoder.h"

#include <iterator>

namespace brimline {

void Heard::append(Heard more) {
  told.insert(told.end(), std::make_move_iterator(more.told.begin()),
              std::make_move_iterator(more.told.end()));
  answer += more.answer;
  alive = alive || more.alive;
}

}  // namespace brimline
