// SPDX-License-Identifier: GPL-3.0-or-later
// Every table of a store that is copied, counted and compared, and the columns it is copied by.
#pragma once

#include <span>

namespace brimline {

struct StoredTable {
  const char *name, *columns;
  int count;  // of columns
};

// In an order in which what is named comes before what names it.
std::span<const StoredTable> stored_tables();

}  // namespace brimline
