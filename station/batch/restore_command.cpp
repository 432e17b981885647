// SPDX-License-Identifier: GPL-3.0-or-later
// restore: the store in a backup to where it is worked with; one that is there is set aside.
#include <iostream>

#include "station/batch/store_input.h"
#include "station/store/copy.h"

namespace brimline::batch {

int restore_command(const Arguments& arguments) {
  const auto parsed = parse(arguments, {"--from", "--database"}, {"--replace"});
  if (!parsed) return bad_usage("restore", parsed.error());
  const auto from = parsed->value("--from"), url = parsed->value("--database");
  if (!from || !url || !parsed->positional.empty())
    return bad_usage("restore", "expected --from FILE, --database URL and, for one that is there, --replace");
  const DatabaseProgram program;
  const auto done = restore(*from, *url, parsed->has("--replace") ? Existing::set_aside : Existing::refuse);
  if (!done) return store_failed("restore", done.error());
  if (*done) std::cerr << "brimline-batch restore: the store that was there is now " << **done << "\n";
  return kDone;
}

}  // namespace brimline::batch
