// SPDX-License-Identifier: GPL-3.0-or-later
// The tables of `water` and `dose`, apart from the command line so that tests can feed them.
#pragma once

#include <optional>
#include <string>

#include <tl/expected.hpp>

#include "station/batch/table.h"

namespace brimline::batch {

// `columns` as of --columns: names with commas, or all. The error is a sentence.
tl::expected<Table, std::string> water_table(const std::optional<std::string>& columns);
tl::expected<Table, std::string> dose_table(const std::optional<std::string>& columns);

}  // namespace brimline::batch
