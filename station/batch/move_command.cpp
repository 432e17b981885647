// SPDX-License-Identifier: GPL-3.0-or-later
// move: everything from one store into another that is empty; the first stays as it is.
#include "station/batch/store_input.h"
#include "station/store/copy.h"

namespace brimline::batch {

int move_command(const Arguments& arguments) {
  const auto parsed = parse(arguments, {"--from", "--to"});
  if (!parsed) return bad_usage("move", parsed.error());
  const auto from_url = parsed->value("--from"), to_url = parsed->value("--to");
  if (!from_url || !to_url || !parsed->positional.empty())
    return bad_usage("move", "expected --from URL and --to URL");
  const DatabaseProgram program;
  auto from = Store::open(*from_url, Opening::existing);
  if (!from) return store_failed("move", from.error());
  auto to = Store::open(*to_url);
  if (!to) return store_failed("move", to.error());
  const auto done = copy_store(*from, *to);
  return done ? kDone : store_failed("move", done.error());
}

}  // namespace brimline::batch
