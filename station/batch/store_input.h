// SPDX-License-Identifier: GPL-3.0-or-later
// The store a command names with --database.
#pragma once

#include <functional>
#include <memory>
#include <string>
#include <string_view>

#include "station/batch/usage.h"
#include "station/store/store.h"

namespace brimline::batch {

class QCoreApplicationHolder;

// What database code needs of a program: Qt's application object, numbers with a point, and a write
// past a file-size limit that fails instead of killing the program. Lives as long as the store.
class DatabaseProgram {
 public:
  DatabaseProgram();
  ~DatabaseProgram();

 private:
  std::unique_ptr<QCoreApplicationHolder> application_;
};

// Opens the store at `--database` and runs `work`; a store that is not named or cannot be opened is
// said on standard error and gives kBadInput.
int with_store(std::string_view command, const Parsed& parsed, Opening opening,
               const std::function<int(Store&)>& work);

// `brimline-batch COMMAND: text` on standard error; returns kBadInput.
int store_failed(std::string_view command, const StoreError& error);

}  // namespace brimline::batch
