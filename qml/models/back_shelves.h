// SPDX-License-Identifier: GPL-3.0-or-later
// The pages of the Back room, in their order and groups, and what stands over each.
#pragma once

#include <span>

namespace brimline {

struct ShelfRow {
  const char* key;
  const char* group;
  const char* word;   // of the context "back"
  const char* intro;  // likewise
};

struct GroupRow {
  const char* key;
  const char* word;
};

std::span<const ShelfRow> back_shelves();
std::span<const GroupRow> back_groups();

}  // namespace brimline
