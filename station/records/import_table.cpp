// SPDX-License-Identifier: GPL-3.0-or-later
#include "station/records/import_table.h"

#include <QString>

#include <algorithm>
#include <filesystem>

#include "station/records/amounts.h"

namespace brimline {
namespace {

// What a message shows of a cell: short, on one line, whole letters.
std::string shown(const std::string& cell) {
  QString text = QString::fromStdString(cell);
  for (QChar& c : text)
    if (!c.isPrint()) c = '?';
  if (text.size() > 40) text = text.left(40) + "...";
  return "`" + text.toStdString() + "`";
}

std::string without_blanks(const std::string& cell) {
  const char* const blanks = " \t\r\n";
  const size_t from = cell.find_first_not_of(blanks);
  if (from == std::string::npos) return {};
  return cell.substr(from, cell.find_last_not_of(blanks) - from + 1);
}

}  // namespace

std::string ImportTable::simplified(std::string_view name) {
  QString text = QString::fromUtf8(name.data(), static_cast<qsizetype>(name.size())).toLower();
  if (const auto bracket = text.indexOf('('); bracket > 0) text.truncate(bracket);
  for (QChar& c : text)
    if (!c.isLetterOrNumber()) c = ' ';
  return text.simplified().replace(' ', '_').toStdString();
}

ImportTable::ImportTable(const std::string& file, std::span<const ImportColumn> known)
    : file_(file), in_(file, std::ios::binary), reader_(in_, file), known_(known) {
  std::error_code ignored;
  size_ = std::filesystem::is_regular_file(file, ignored) ? std::filesystem::file_size(file, ignored) : 0;
}

tl::expected<std::unique_ptr<ImportTable>, Fault> ImportTable::open(const std::string& file,
                                                                    std::span<const ImportColumn> known) {
  std::unique_ptr<ImportTable> table(new ImportTable(file, known));
  std::error_code ignored;
  if (!table->in_ || std::filesystem::is_directory(file, ignored))
    return tl::unexpected(Fault{file, 1, "the file cannot be read", "a table"});
  std::vector<std::string> names;
  if (!table->reader_.next(names)) {
    if (table->reader_.fault()) return tl::unexpected(*table->reader_.fault());
    return tl::unexpected(Fault{file, 1, "the file is empty", "a line of column names"});
  }
  table->width_ = names.size();
  table->index_of_.assign(known.size(), -1);
  for (size_t i = 0; i < names.size(); ++i) {
    const std::string name = simplified(names[i]);
    const auto found = std::find_if(known.begin(), known.end(), [&](const ImportColumn& column) {
      return column.name == name ||
             std::find(column.also.begin(), column.also.end(), name) != column.also.end();
    });
    if (found == known.end()) {
      const size_t from = names[i].find('('), to = names[i].rfind(')');
      const bool bracket = from != std::string::npos && to != std::string::npos && to > from;
      table->extras_.push_back({i, name, bracket ? names[i].substr(from + 1, to - from - 1) : ""});
      continue;
    }
    int& index = table->index_of_[static_cast<size_t>(found - known.begin())];
    if (index >= 0)
      return tl::unexpected(Fault{file, table->reader_.line(),
                                  "column `" + std::string(found->name) + "` stands twice", "it once"});
    index = static_cast<int>(i);
  }
  return table;
}

void ImportTable::forget_extra(size_t index) {
  std::erase_if(extras_, [&](const Extra& extra) { return extra.index == index; });
}

bool ImportTable::next(ImportRemarks& faults) {
  faults_ = &faults;
  spoilt_ = false;
  if (!reader_.next(cells_)) {
    if (reader_.fault()) faults.add(*reader_.fault());
    return false;
  }
  // Spreadsheets leave empty cells at a line's end out, or add some.
  while (cells_.size() > width_ && cells_.back().empty()) cells_.pop_back();
  if (cells_.size() != width_)
    fault(at_line(std::to_string(cells_.size()) + (cells_.size() == 1 ? " field" : " fields"),
                  std::to_string(width_) + " as in the header"));
  cells_.resize(width_);
  return true;
}

std::optional<std::string> ImportTable::cell(size_t index) const {
  std::string text = unguarded(without_blanks(cells_[index]));
  if (text.empty()) return std::nullopt;
  return text;
}

bool ImportTable::has(std::string_view column) const {
  for (size_t i = 0; i < known_.size(); ++i)
    if (known_[i].name == column) return index_of_[i] >= 0;
  return false;
}

std::optional<std::string> ImportTable::text(std::string_view column) const {
  for (size_t i = 0; i < known_.size(); ++i)
    if (known_[i].name == column && index_of_[i] >= 0) return cell(static_cast<size_t>(index_of_[i]));
  return std::nullopt;
}

std::optional<double> ImportTable::number(std::string_view column) {
  const auto cell = text(column);
  if (!cell) return std::nullopt;
  const auto value = number_from(*cell, comma());
  if (!value) fault(column, "a number");
  return value;
}

std::optional<bool> ImportTable::flag(std::string_view column) {
  const auto cell = text(column);
  if (!cell) return std::nullopt;
  const std::string word = simplified(*cell);
  if (word == "yes" || word == "true" || word == "1") return true;
  if (word == "no" || word == "false" || word == "0") return false;
  fault(column, "yes or no");
  return std::nullopt;
}

Fault ImportTable::at_line(std::string what, std::string expected) const {
  return {file_, reader_.line(), std::move(what), std::move(expected)};
}

void ImportTable::fault(Fault fault) {
  spoilt_ = true;
  if (faults_) faults_->add(std::move(fault));
}

void ImportTable::fault(std::string_view column, const std::string& expected) {
  const auto cell = text(column);
  fault(at_line("`" + std::string(column) + "` is " + (cell ? shown(*cell) : std::string("missing")),
                expected));
}

double ImportTable::share() const {
  return size_ == 0 ? 0
                    : std::min(1.0, static_cast<double>(reader_.bytes_read()) / static_cast<double>(size_));
}

}  // namespace brimline
