// SPDX-License-Identifier: GPL-3.0-or-later
// What can go wrong with a store, as a value and one clear sentence.
#pragma once

#include <string>

#include <tl/expected.hpp>

namespace brimline {

enum class StoreTrouble {
  unreachable,  // no such file, no server, no right to open it
  not_a_store,  // the file or database is something else
  newer,        // written by a later program
  full,         // the disk is full; nothing of the refused change was stored
  damaged,      // what is stored cannot be read
  busy,         // another program holds it
  refused,      // the change breaks a rule of the store
  conflicting   // somebody else has changed the same thing meanwhile
};

struct StoreError {
  StoreTrouble trouble = StoreTrouble::refused;
  std::string text;  // one line, no password in it
};

template <class T>
using Stored = tl::expected<T, StoreError>;

}  // namespace brimline
