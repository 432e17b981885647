// SPDX-License-Identifier: GPL-3.0-or-later
#include "station/batch/table.h"

#include <algorithm>
#include <charconv>
#include <cmath>
#include <cstring>

#include "station/batch/usage.h"

namespace brimline::batch {
namespace {

std::string_view without_blanks(std::string_view s) {
  while (!s.empty() && (s.front() == ' ' || s.front() == '\t')) s.remove_prefix(1);
  while (!s.empty() && (s.back() == ' ' || s.back() == '\t')) s.remove_suffix(1);
  return s;
}

// What a message shows of a cell: short, printable.
std::string shown(std::string_view cell) {
  std::string out;
  for (const char c : cell.substr(0, 40)) out += static_cast<unsigned char>(c) < 0x20 ? '?' : c;
  return cell.size() > 40 ? out + "..." : out;
}

std::string plain(double v) {
  char digits[40];
  return {digits, std::to_chars(digits, digits + sizeof digits, v).ptr};
}

std::string range_text(double least, double most) {
  if (std::isfinite(least) && std::isfinite(most))
    return "a number from " + plain(least) + " to " + plain(most);
  if (std::isfinite(least)) return "a number, " + plain(least) + " or more";
  return "a number";
}

std::string count_text(size_t is, size_t should) {
  return std::to_string(is) + (is == 1 ? " field" : " fields") + "; expected " + std::to_string(should) +
         " as in the header";
}

std::vector<std::string_view> split_names(std::string_view line) {
  std::vector<std::string_view> names;
  for (;;) {
    const size_t comma = line.find(',');
    std::string_view name = without_blanks(line.substr(0, comma));
    if (name.size() > 1 && name.front() == '"' && name.back() == '"') name = name.substr(1, name.size() - 2);
    names.push_back(name);
    if (comma == std::string_view::npos) return names;
    line.remove_prefix(comma + 1);
  }
}

}  // namespace

tl::expected<Header, std::string> read_header(std::string_view line, std::span<const InputColumn> known) {
  Header header{known, {}, std::vector<bool>(known.size())};
  for (const std::string_view name : split_names(line)) {
    const auto found =
        std::find_if(known.begin(), known.end(), [&](const auto& c) { return c.name == name; });
    if (found == known.end()) {
      header.known_of.push_back(-1);
      continue;
    }
    const auto index = static_cast<size_t>(found - known.begin());
    if (header.present[index])
      return tl::unexpected("column `" + std::string(name) + "` stands twice; expected it once");
    header.present[index] = true;
    header.known_of.push_back(static_cast<int>(index));
  }
  for (size_t i = 0; i < known.size(); ++i)
    if (known[i].required && !header.present[i])
      return tl::unexpected("no column `" + std::string(known[i].name) +
                            "`; expected a header that names it");
  return header;
}

void Cells::note(std::string text) {
  if (!fault_) fault_ = std::move(text);
}

void Cells::put(size_t field, std::string_view text) {
  if (const int known = header_.known_of[field]; known >= 0)
    views_[static_cast<size_t>(known)] = without_blanks(text);
}

bool Cells::split(std::string_view line) {
  fault_.reset();
  if (std::memchr(line.data(), '"', line.size())) return split_quoted(line);
  const size_t expected = header_.known_of.size();
  size_t field = 0;
  const char *from = line.data(), *const end = from + line.size();
  for (const char* at = from;; ++at) {
    if (at != end && *at != ',') continue;
    if (field < expected) put(field, {from, static_cast<size_t>(at - from)});
    ++field;
    if (at == end) break;
    from = at + 1;
  }
  if (field != expected) note(count_text(field, expected));
  return !fault_;
}

bool Cells::split_quoted(std::string_view line) {
  const size_t expected = header_.known_of.size();
  size_t field = 0, from = 0;
  bool quoted = false;
  for (size_t at = 0; at <= line.size(); ++at) {
    if (at < line.size() && line[at] == '"') quoted = !quoted;
    if (at < line.size() && (quoted || line[at] != ',')) continue;
    if (field < expected) put(field, line.substr(from, at - from));
    ++field;
    from = at + 1;
  }
  if (quoted) note("a quotation mark is not closed; expected its end on the same line");
  if (field != expected) note(count_text(field, expected));
  return !fault_;
}

std::optional<double> Cells::number(size_t column, double least, double most) {
  const std::string_view cell = views_[column];
  if (cell.empty()) return std::nullopt;
  double value = 0;
  const auto [end, error] = std::from_chars(cell.data(), cell.data() + cell.size(), value);
  if (error != std::errc() || end != cell.data() + cell.size() || !std::isfinite(value)) {
    fault(column, "a number");
    return std::nullopt;
  }
  if (!(value >= least && value <= most)) {
    fault(column, range_text(least, most));
    return std::nullopt;
  }
  return value;
}

double Cells::needed(size_t column, double least, double most) {
  if (views_[column].empty()) fault(column, range_text(least, most));
  return number(column, least, most).value_or(0);
}

void Cells::fault(size_t column, std::string_view expected) {
  const std::string_view cell = views_[column];
  note("`" + std::string(header_.known[column].name) + "` is " +
       (cell.empty() ? std::string("missing") : "`" + shown(cell) + "`") + "; expected " +
       std::string(expected));
}

std::vector<std::string_view> column_names(std::string_view names) {
  std::vector<std::string_view> out;
  while (!names.empty()) {
    const size_t comma = std::min(names.find(','), names.size());
    const std::string_view name = names.substr(0, comma);
    names.remove_prefix(std::min(comma + 1, names.size()));
    if (name != "id" && name != "refused") out.push_back(name);
  }
  return out;
}

void append_number(std::string& out, double value) {
  char digits[40];
  out.append(digits, static_cast<size_t>(std::to_chars(digits, digits + sizeof digits, value).ptr - digits));
}

void append_number(std::string& out, std::optional<double> value) {
  if (value && std::isfinite(*value)) append_number(out, *value);
}

void append_text(std::string& out, std::string_view text) {
  if (text.find_first_of(",\"") == std::string_view::npos) {
    out += text;
    return;
  }
  out += '"';
  for (const char c : text) out.append(c == '"' ? 2 : 1, c);
  out += '"';
}

tl::expected<TableFiles, std::string> table_files(const Parsed& parsed) {
  TableFiles files{parsed.value("--in"), parsed.value("--out"), 1};
  if (!parsed.positional.empty()) return tl::unexpected("unknown argument " + parsed.positional.front());
  if (const auto threads = parsed.value("--threads")) {
    const auto [end, error] =
        std::from_chars(threads->data(), threads->data() + threads->size(), files.threads);
    if (error != std::errc() || end != threads->data() + threads->size() || files.threads < 1 ||
        files.threads > 64)
      return tl::unexpected("--threads is " + *threads + "; expected a whole number from 1 to 64");
  }
  return files;
}

void answer_block(const Table& table, const Header& header, std::string_view block, BlockAnswer& answer) {
  answer.out.clear();
  answer.lines = 0;
  answer.fault.reset();
  Cells cells(header);
  while (!block.empty()) {
    const auto* const newline = static_cast<const char*>(std::memchr(block.data(), '\n', block.size()));
    const size_t length = newline ? static_cast<size_t>(newline - block.data()) : block.size();
    std::string_view line = block.substr(0, length);
    block.remove_prefix(std::min(length + 1, block.size()));
    ++answer.lines;
    if (!line.empty() && line.back() == '\r') line.remove_suffix(1);
    if (line.empty() || line.front() == '#') continue;
    const size_t before = answer.out.size();
    if (cells.split(line)) table.row(cells, answer.out);
    if (!cells.fault()) continue;
    answer.out.resize(before);
    answer.fault = cells.fault();
    return;
  }
}

}  // namespace brimline::batch
