// SPDX-License-Identifier: GPL-3.0-or-later
// Where a command's answer goes: standard output, or a file that appears whole or not at all.
#pragma once

#include <fstream>
#include <memory>
#include <optional>
#include <ostream>
#include <string>

#include <tl/expected.hpp>

#include "analysis/fields.h"

namespace brimline::batch {

// A plain file is replaced on `commit` by one written beside it; a device or pipe is written to
// directly; nothing else is touched. Without `commit` a file does not appear.
class OutFile {
 public:
  // No path: standard output.
  static tl::expected<OutFile, Fault> open(const std::optional<std::string>& path);
  ~OutFile();
  OutFile(OutFile&& other) noexcept;
  OutFile& operator=(OutFile&&) = delete;

  std::ostream& stream();
  // Flushes, makes it durable and gives it its name; the fault is a full disk or a closed pipe.
  tl::expected<void, Fault> commit();

 private:
  OutFile() = default;
  std::string path_, beside_;  // empty: standard output; empty: written to directly
  std::ofstream file_;
};

}  // namespace brimline::batch
