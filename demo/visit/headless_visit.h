// SPDX-License-Identifier: GPL-3.0-or-later
// A whole visit with no screen, on the counter's own parts: the emulated photometer behind its
// pseudo-terminal, the bench, the store, the plan service and the sheet.
#pragma once

#include <filesystem>
#include <iosfwd>

namespace brimline::demo {

struct HeadlessTask {
  std::filesystem::path bottle;      // demo/bottles/NAME.toml
  std::filesystem::path earlier;     // visits of the months before, one a line
  std::filesystem::path work;        // folder for the database, the port and the PDF
  std::filesystem::path photometer;  // the emulator's program
};

// Says `reading ANALYTE VALUE UNIT` as each is kept, `step TEXT` for each step of the sheet, and as
// the last line the path of the PDF. Exit code: 0, or 2 after one line on `err`.
int run_headless(const HeadlessTask& task, std::ostream& out, std::ostream& err);

// Writes the visit of a bottle as it comes over the counter, nothing read yet (`brimline-visit/1`).
int write_unread(const std::filesystem::path& bottle, std::ostream& out, std::ostream& err);

}  // namespace brimline::demo
