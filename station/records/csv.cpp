// SPDX-License-Identifier: GPL-3.0-or-later
#include "station/records/csv.h"

#include <QStringDecoder>

#include <algorithm>
#include <charconv>

namespace brimline {
namespace {

constexpr size_t kBlock = 1 << 16;
constexpr int kEnd = -1;
constexpr std::string_view kMark = "\xEF\xBB\xBF";

bool is_utf8(std::string_view text) {
  if (std::all_of(text.begin(), text.end(), [](char c) { return static_cast<unsigned char>(c) < 0x80; }))
    return true;
  QStringDecoder decoder(QStringDecoder::Utf8, QStringDecoder::Flag::Stateless);
  const QString decoded = decoder(QByteArrayView(text.data(), static_cast<qsizetype>(text.size())));
  return decoded.isNull() ? text.empty() : !decoder.hasError();
}

bool runs(char first) {
  return std::string_view("=+-@\t\r\n").find(first) != std::string_view::npos;
}

// Whether a spreadsheet would run it, or has it guarded already.
bool needs_guard(std::string_view text) {
  const size_t at = text.find_first_not_of('\'');
  return at != std::string_view::npos && runs(text[at]);
}

}  // namespace

bool CsvReader::fill() {
  if (at_ < buffer_.size()) return true;
  buffer_.resize(kBlock);
  in_.read(buffer_.data(), static_cast<std::streamsize>(kBlock));
  buffer_.resize(static_cast<size_t>(in_.gcount()));
  at_ = 0;
  taken_ += buffer_.size();
  return !buffer_.empty();
}

int CsvReader::peek() {
  return fill() ? static_cast<unsigned char>(buffer_[at_]) : kEnd;
}

int CsvReader::get() {
  const int c = peek();
  if (c != kEnd) {
    ++at_;
    ++size_;
  }
  return c;
}

// Passes the mark over and counts delimiters of the first line that stand outside of quotes.
void CsvReader::begin() {
  begun_ = true;
  if (!fill()) return;
  if (buffer_.starts_with(kMark)) at_ = kMark.size();
  size_t commas = 0, semicolons = 0;
  bool quoted = false;
  for (size_t i = at_; i < buffer_.size(); ++i) {
    const char c = buffer_[i];
    if (c == '"') quoted = !quoted;
    if (quoted) continue;
    if (c == '\n' || c == '\r') break;
    commas += c == ',' ? 1 : 0;
    semicolons += c == ';' ? 1 : 0;
  }
  delimiter_ = semicolons > commas ? ';' : ',';
}

bool CsvReader::fail(int line, std::string what, std::string expected) {
  fault_ = Fault{file_, line, std::move(what), std::move(expected)};
  return false;
}

// Puts one byte into the cell; what cannot be part of a table ends the reading.
bool CsvReader::take(std::string& cell, int c) {
  if (c == 0) return fail(next_line_, "a NUL byte", "a text file in UTF-8");
  if (size_ > kLongestRecord)
    return fail(line_, "a line of over " + std::to_string(kLongestRecord) + " bytes", "a table");
  cell += static_cast<char>(c);
  return true;
}

bool CsvReader::end_cell(std::vector<std::string>& cells, std::string& cell) {
  if (cells.size() == kMostColumns)
    return fail(line_, "more than " + std::to_string(kMostColumns) + " columns", "a table");
  cells.push_back(std::move(cell));
  cell.clear();
  return true;
}

// What stands between quotation marks; the first has been taken.
bool CsvReader::read_quoted(std::string& cell) {
  const int opened = next_line_;
  for (;;) {
    const int c = get();
    if (c == kEnd || size_ > kLongestRecord)
      return fail(opened, "a quotation mark is not closed", "its end, before the end of the file");
    if (c == '"') {
      if (peek() != '"') break;
      get();
    } else if (c == '\n' || (c == '\r' && peek() != '\n')) {
      ++next_line_;
    }
    if (!take(cell, c)) return false;
  }
  const int after = peek();
  if (after == kEnd || after == delimiter_ || after == '\n' || after == '\r') return true;
  return fail(next_line_, "text after a closing quotation mark",
              std::string("a \"") + delimiter_ + "\" or the line's end");
}

bool CsvReader::read_record(std::vector<std::string>& cells) {
  cells.clear();
  line_ = next_line_;
  size_ = 0;
  std::string cell;
  bool fresh = true;  // nothing of the cell has been read
  for (;;) {
    const int c = get();
    if (c == kEnd || c == '\n' || c == '\r') {
      if (c == '\r' && peek() == '\n') get();
      if (c != kEnd) ++next_line_;
      return end_cell(cells, cell);
    }
    if (c == delimiter_) {
      if (!end_cell(cells, cell)) return false;
      fresh = true;
      continue;
    }
    if (fresh && c == '"') {
      if (!read_quoted(cell)) return false;
    } else if (!take(cell, c)) {
      return false;
    }
    fresh = false;
  }
}

bool CsvReader::is_sound(const std::vector<std::string>& cells) {
  for (const std::string& cell : cells)
    if (!is_utf8(cell))
      return fail(line_, "bytes that are not UTF-8", "a table saved as UTF-8 (\"CSV UTF-8\")");
  return true;
}

bool CsvReader::next(std::vector<std::string>& cells) {
  if (fault_) return false;
  if (!begun_) begin();
  while (peek() != kEnd) {
    if (!read_record(cells)) return false;
    if (cells.size() == 1 && cells[0].empty()) continue;
    return is_sound(cells);
  }
  if (in_.bad()) return fail(next_line_, "the file cannot be read further", "a file that can be read");
  return false;
}

void CsvRow::cell(std::string_view cell) {
  if (!first_) out_ += ',';
  first_ = false;
  const bool padded = !cell.empty() && (cell.front() == ' ' || cell.back() == ' ');
  if (!padded && cell.find_first_of(",;\"\r\n") == std::string_view::npos) {
    out_ += cell;
    return;
  }
  out_ += '"';
  for (const char c : cell) out_.append(c == '"' ? 2 : 1, c);
  out_ += '"';
}

CsvRow& CsvRow::text(std::string_view text) {
  if (needs_guard(text))
    cell("'" + std::string(text));
  else
    cell(text);
  return *this;
}

CsvRow& CsvRow::word(std::string_view word) {
  cell(word);
  return *this;
}

CsvRow& CsvRow::number(double value) {
  char digits[40];
  cell({digits, static_cast<size_t>(std::to_chars(digits, digits + sizeof digits, value).ptr - digits)});
  return *this;
}

CsvRow& CsvRow::whole(std::int64_t value) {
  cell(std::to_string(value));
  return *this;
}

void CsvRow::end() {
  out_ += "\r\n";
  first_ = true;
}

std::string unguarded(std::string cell) {
  if (cell.starts_with('\'') && needs_guard(cell)) cell.erase(0, 1);
  return cell;
}

}  // namespace brimline
