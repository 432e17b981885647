// SPDX-License-Identifier: GPL-3.0-or-later
// Visits from files named on the command line.
#pragma once

#include <string>
#include <vector>

#include <tl/expected.hpp>

#include "analysis/fields.h"
#include "station/visit.h"

namespace brimline::batch {

// The whole of a file, "-" for standard input; the fault is a file that cannot be read.
tl::expected<std::string, Fault> read_text(const std::string& path);

// The visit in a file ("-": standard input), or its faults, one that it cannot be read included.
tl::expected<Visit, std::vector<Fault>> read_visit_file(const std::string& path);

// The same for several; all faults of all files at once.
tl::expected<std::vector<Visit>, std::vector<Fault>> read_visit_files(const std::vector<std::string>& paths);

// One line a fault on standard error, at most 50; returns kBadInput.
int bad_input(const std::vector<Fault>& faults);

}  // namespace brimline::batch
