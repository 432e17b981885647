// SPDX-License-Identifier: GPL-3.0-or-later
// backup: the whole store in one file, opened and counted before it gets its name.
#include <iostream>

#include "station/batch/store_input.h"
#include "station/store/copy.h"

namespace brimline::batch {

int backup_command(const Arguments& arguments) {
  const auto parsed = parse(arguments, {"--database", "--out"});
  if (!parsed) return bad_usage("backup", parsed.error());
  const auto out = parsed->value("--out");
  if (!out || out->empty() || !parsed->positional.empty())
    return bad_usage("backup", "expected --database URL and --out FILE");
  return with_store("backup", *parsed, Opening::existing, [&](Store& store) {
    const auto done = back_up(store, *out);
    return done ? kDone : store_failed("backup", done.error());
  });
}

}  // namespace brimline::batch
