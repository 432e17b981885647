// SPDX-License-Identifier: GPL-3.0-or-later
// Tables in CSV, row by row: a header of column names, then lines answered each by a line, in their order,
// with memory that does not grow with the table and the same bytes for any number of threads.
//
//   Table table{kColumns, [](const Header& h) { return std::string("id,sum\n"); },
//               [](const Header& h, Cells& cells, std::string& out) { ... }};
//   return run_table("water", table, arguments);
#pragma once

#include <functional>
#include <limits>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include <tl/expected.hpp>

namespace brimline::batch {

struct InputColumn {
  std::string_view name;
  bool required = false;
};

// Where each known column stands in the table at hand; other columns are ignored.
struct Header {
  std::span<const InputColumn> known;
  std::vector<int> known_of;  // for each column of the table, the index in `known`, or -1
  std::vector<bool> present;  // for each known column
};
// The error says what is wrong and what was expected.
tl::expected<Header, std::string> read_header(std::string_view line, std::span<const InputColumn> known);

// The cells of one row by known column. A value of the wrong kind is a fault: the first is kept, and the row
// is then not to be answered.
class Cells {
 public:
  explicit Cells(const Header& header) : header_(header), views_(header.known.size()) {}

  // Takes a line without its end; false, with a fault, if it does not have the header's number of fields.
  bool split(std::string_view line);

  std::string_view text(size_t column) const { return views_[column]; }  // as it stands; quotes included
  // Empty cell or absent column: nothing. A fault if no finite number, or outside `least` to `most`.
  std::optional<double> number(size_t column, double least = 0,
                               double most = std::numeric_limits<double>::infinity());
  double needed(size_t column, double least = 0, double most = std::numeric_limits<double>::infinity());
  bool present(size_t column) const { return header_.present[column]; }

  void fault(size_t column, std::string_view expected);
  const std::optional<std::string>& fault() const { return fault_; }  // "what is wrong; what was expected"

 private:
  bool split_quoted(std::string_view line);
  void note(std::string text);
  void put(size_t field, std::string_view text);

  const Header& header_;
  std::vector<std::string_view> views_;
  std::optional<std::string> fault_;
};

// The names in the text of --columns, without `id` and `refused`, which always stand first and last.
std::vector<std::string_view> column_names(std::string_view names);

// The shortest digits that read back as the same number.
void append_number(std::string& out, double value);
void append_number(std::string& out, std::optional<double> value);  // nothing if absent
void append_text(std::string& out, std::string_view text);          // quoted where CSV needs it

struct Table {
  std::span<const InputColumn> columns;
  // The header of the answer, with its line end.
  std::function<std::string(const Header&)> header;
  // Appends the answer to one row, with its line end; called from several threads at once. A fault noted in
  // the cells ends the run.
  std::function<void(Cells&, std::string& out)> row;
};

struct TableFiles {
  std::optional<std::string> in, out;  // absent: standard input, standard output
  int threads = 1;
};

// Runs the table through; faults go to standard error as FILE:LINE: what; expected. Returns the exit code.
int run_table(const Table& table, const TableFiles& files);

// --in, --out and --threads of the command line.
struct Parsed;
tl::expected<TableFiles, std::string> table_files(const Parsed& parsed);

// One block of whole lines answered into `out`; `lines` counts those read. The fault, if any, is of line
// `lines`.
struct BlockAnswer {
  std::string out;
  size_t lines = 0;
  std::optional<std::string> fault;
};
void answer_block(const Table& table, const Header& header, std::string_view block, BlockAnswer& answer);

}  // namespace brimline::batch
