// SPDX-License-Identifier: GPL-3.0-or-later
// export: every visit, one a line, oldest first.
#include <nlohmann/json.hpp>

#include "station/batch/out_file.h"
#include "station/batch/store_input.h"
#include "station/batch/visit_input.h"
#include "station/visit_json.h"

namespace brimline::batch {

int export_command(const Arguments& arguments) {
  const auto parsed = parse(arguments, {"--database", "--out"});
  if (!parsed) return bad_usage("export", parsed.error());
  if (!parsed->positional.empty()) return bad_usage("export", "unknown argument " + parsed->positional[0]);
  return with_store("export", *parsed, Opening::existing, [&](Store& store) {
    const auto ids = store.visit_ids();
    if (!ids) return store_failed("export", ids.error());
    auto out = OutFile::open(parsed->value("--out"));
    if (!out) return bad_input({out.error()});
    for (const std::string& id : *ids) {
      const auto visit = store.visit(id);
      if (!visit) return bad_usage("export", "visit " + id + ": " + visit.error().text);
      if (*visit) out->stream() << visit_to_json(**visit).dump() << "\n";
    }
    const auto done = out->commit();
    return done ? kDone : bad_input({done.error()});
  });
}

}  // namespace brimline::batch
