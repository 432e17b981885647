// SPDX-License-Identifier: GPL-3.0-or-later
// The floor of `brimline-batch water`: the same table through the same reader, number parser and writer, with
// nothing solved. build/bench/table_floor si_calcite|all [--in F] [--out F] [--threads N]
// Each output number is a number of the row as it stands, with as many digits as an answer has.
#include <array>
#include <cstdio>

#include "station/batch/table.h"
#include "station/batch/usage.h"

namespace brimline::batch {
namespace {

constexpr std::array kInput = {
    InputColumn{"id", true},
    InputColumn{"temperature_c", true},
    InputColumn{"ph", true},
    InputColumn{"total_alkalinity_mg_l_caco3", true},
    InputColumn{"calcium_hardness_mg_l_caco3"},
    InputColumn{"cyanuric_acid_mg_l"},
    InputColumn{"borate_mg_l_b"},
    InputColumn{"free_chlorine_mg_l_cl2"},
    InputColumn{"magnesium_hardness_mg_l_caco3"},
    InputColumn{"sulfate_mg_l"},
    InputColumn{"background_nacl_mg_l"},
    InputColumn{"salt_mg_l"},
    InputColumn{"tds_mg_l"},
};

void answer(size_t columns, Cells& cells, std::string& out) {
  double sum = 0;
  for (size_t i = 1; i < kInput.size(); ++i) sum += cells.number(i, -1e9).value_or(0);
  if (cells.fault()) return;
  out += cells.text(0);
  for (size_t i = 0; i < columns; ++i) {
    out += ',';
    append_number(out, (sum + static_cast<double>(i)) / 7e3);  // seventeen digits, as an answer has
  }
  out += ",\n";
}

int run(const Arguments& arguments) {
  const auto parsed =
      parse(Arguments(arguments.begin() + 1, arguments.end()), {"--in", "--out", "--threads"});
  if (!parsed) return bad_usage("floor", parsed.error());
  const auto files = table_files(*parsed);
  if (!files) return bad_usage("floor", files.error());
  const size_t columns = arguments.front() == "all" ? 11 : 1;
  const Table table{kInput, [](const Header&) { return std::string("id,answers,refused\n"); },
                    [columns](Cells& cells, std::string& out) { answer(columns, cells, out); }};
  return run_table(table, *files);
}

}  // namespace
}  // namespace brimline::batch

int main(int argc, char** argv) {
  if (argc < 2) {
    std::fputs("usage: table_floor si_calcite|all [--in F] [--out F] [--threads N]\n", stderr);
    return 2;
  }
  return brimline::batch::run({argv + 1, argv + argc});
}
