// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/long/fuzz.h"

#include <algorithm>
#include <cstdio>
#include <cstdlib>
#include <optional>
#include <string_view>

#include "station/batch/water_command.h"

namespace brimline::fuzz {
namespace {

void require(bool held, const char* what) {
  if (held) return;
  std::fprintf(stderr, "broken: %s\n", what);
  std::abort();
}

// Separators outside quotation marks.
size_t fields(std::string_view line) {
  bool quoted = false;
  size_t n = 1;
  for (const char c : line) {
    if (c == '"') quoted = !quoted;
    if (c == ',' && !quoted) ++n;
  }
  return n;
}

}  // namespace

// First byte: which command. Then a header line, then rows.
void table(std::span<const std::uint8_t> bytes) {
  if (bytes.empty()) return;
  const bool dosing = bytes[0] % 2 == 1;
  const std::string_view text(reinterpret_cast<const char*>(bytes.data()) + 1, bytes.size() - 1);
  const size_t end = std::min(text.find('\n'), text.size());
  const batch::Table table = dosing ? *batch::dose_table(std::nullopt) : *batch::water_table(std::nullopt);
  const auto header = batch::read_header(text.substr(0, end), table.columns);
  if (!header) return require(!header.error().empty(), "a refused header says why");
  const std::string answer_header = table.header(*header);
  batch::BlockAnswer answer;
  batch::answer_block(table, *header, text.substr(std::min(end + 1, text.size())), answer);
  if (answer.fault)
    require(answer.fault->find("; expected ") != std::string::npos, "a fault says what was expected");
  std::string_view rest = answer.out;
  while (!rest.empty()) {
    const size_t line_end = rest.find('\n');
    require(line_end != std::string_view::npos, "an answered row ends its line");
    require(fields(rest.substr(0, line_end)) == fields(answer_header), "an answer has the header's fields");
    rest.remove_prefix(line_end + 1);
  }
}

}  // namespace brimline::fuzz

#ifdef BRIMLINE_FUZZ_TABLE
extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, size_t size) {
  brimline::fuzz::table({data, size});
  return 0;
}
#endif
