// SPDX-License-Identifier: GPL-3.0-or-later
// Tables as text after RFC 4180: UTF-8, cells in quotes where they need them, records over several lines.
// Read in pieces, with memory bounded by the longest record allowed, whatever the file.
//
//   CsvReader reader(stream, "customers.csv");
//   while (reader.next(cells)) { ... reader.line() ... }
//   if (reader.fault()) ...
#pragma once

#include <cstdint>
#include <istream>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "analysis/fields.h"

namespace brimline {

// What is read of one record; more is no table but a mistake or an attack.
inline constexpr size_t kLongestRecord = 4'000'000;  // bytes
inline constexpr size_t kMostColumns = 1'000;

class CsvReader {
 public:
  // `file` is how faults name it. The delimiter, `,` or `;`, is the one the first line has more of; a byte
  // order mark is passed over. Lines end with CR LF, LF or CR; empty ones are left out.
  CsvReader(std::istream& in, std::string file) : in_(in), file_(std::move(file)) {}

  // The next record's cells, without their quotes; false at the end, and at the first fault: bytes that are
  // no UTF-8, a NUL, a quotation mark that is not closed or has text after it, a record too long or too wide.
  bool next(std::vector<std::string>& cells);
  int line() const { return line_; }  // on which the record began, from 1
  char delimiter() const { return delimiter_; }
  std::uint64_t bytes_read() const { return taken_; }
  const std::optional<Fault>& fault() const { return fault_; }

 private:
  int get();
  int peek();
  bool fill();
  void begin();
  bool read_record(std::vector<std::string>& cells);
  bool read_quoted(std::string& cell);
  bool end_cell(std::vector<std::string>& cells, std::string& cell);
  bool is_sound(const std::vector<std::string>& cells);
  bool take(std::string& cell, int c);
  bool fail(int line, std::string what, std::string expected);

  std::istream& in_;
  std::string file_;
  std::string buffer_;
  size_t at_ = 0;
  std::uint64_t taken_ = 0;
  bool begun_ = false;
  char delimiter_ = ',';
  int line_ = 0, next_line_ = 1;
  size_t size_ = 0;  // bytes of the record at hand
  std::optional<Fault> fault_;
};

// A record being written: commas between, CR LF at its end.
class CsvRow {
 public:
  explicit CsvRow(std::string& out) : out_(out) {}

  // What people or instruments wrote. A spreadsheet would run a cell that begins with = + - @, a tab or a
  // line end: an apostrophe goes before it (OWASP, "CSV Injection"), and before cells that begin so already.
  CsvRow& text(std::string_view text);
  CsvRow& text_if(const std::optional<std::string>& text) { return text ? this->text(*text) : word({}); }
  // What this program alone wrote: names of choices, moments.
  CsvRow& word(std::string_view word);
  // The shortest digits that read back as the same number.
  CsvRow& number(double value);
  CsvRow& number_if(const std::optional<double>& value) { return value ? number(*value) : word({}); }
  CsvRow& whole(std::int64_t value);
  CsvRow& flag(bool value) { return word(value ? "yes" : "no"); }
  void end();

 private:
  void cell(std::string_view cell);
  std::string& out_;
  bool first_ = true;
};

// A cell as it was before CsvRow::text guarded it.
std::string unguarded(std::string cell);

}  // namespace brimline
