// SPDX-License-Identifier: GPL-3.0-or-later
// A table that came from elsewhere, row by row: columns found by name in any case and order, faults with file
// and line.
#pragma once

#include <fstream>
#include <memory>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include <tl/expected.hpp>

#include "analysis/panel/names.h"
#include "station/records/csv.h"
#include "station/records/progress.h"

namespace brimline {

// A column and the other names it is known by, small letters, words joined by _.
struct ImportColumn {
  std::string_view name;
  std::vector<std::string_view> also;
};

// Faults and remarks as they are found, in their order; only so many are kept.
class ImportRemarks {
 public:
  static constexpr size_t kMost = 1'000;
  void add(Fault fault) {
    if (list_.size() < kMost) list_.push_back(std::move(fault));
    ++count_;
  }
  const std::vector<Fault>& list() const { return list_; }
  size_t count() const { return count_; }  // those not kept too

 private:
  std::vector<Fault> list_;
  size_t count_ = 0;
};

class ImportTable {
 public:
  // Reads the header.
  static tl::expected<std::unique_ptr<ImportTable>, Fault> open(const std::string& file,
                                                                std::span<const ImportColumn> known);
  // The next row; false at the end. Faults of rows go to `faults`, the row being `spoilt()`.
  bool next(ImportRemarks& faults);

  bool has(std::string_view column) const;
  // The cell without blanks around it and its guard; nothing where it is empty or the column is not there.
  std::optional<std::string> text(std::string_view column) const;
  std::optional<double> number(std::string_view column);
  std::optional<bool> flag(std::string_view column);  // yes, no, true, false, 1, 0
  template <class E>
  std::optional<E> choice(std::string_view column) {
    const auto cell = text(column);
    if (!cell) return std::nullopt;
    const auto found = named<E>(simplified(*cell));
    if (!found) fault(column, "one of " + choices<E>());
    return found;
  }
  // Columns that are none of `known`, "free_chlorine" with what stood in brackets behind it.
  struct Extra {
    size_t index;
    std::string name, bracket;
  };
  const std::vector<Extra>& extras() const { return extras_; }
  std::optional<std::string> cell(size_t index) const;

  // "`volume` is `x`; expected a number"
  void fault(std::string_view column, const std::string& expected);
  void fault(Fault fault);
  Fault at_line(std::string what, std::string expected) const;
  bool spoilt() const { return spoilt_; }
  bool comma() const { return reader_.delimiter() == ';'; }  // numbers may have a decimal comma
  double share() const;                                      // of the file that has been read
  void forget_extra(size_t index);                           // it is known after all

  // "Free chlorine (mg/L)" -> "free_chlorine"
  static std::string simplified(std::string_view name);

 private:
  ImportTable(const std::string& file, std::span<const ImportColumn> known);

  std::string file_;
  std::ifstream in_;
  CsvReader reader_;
  std::span<const ImportColumn> known_;
  std::vector<int> index_of_;  // of each known column, its place in the table or -1
  std::vector<Extra> extras_;
  size_t width_ = 0;
  std::uint64_t size_ = 0;
  std::vector<std::string> cells_;
  ImportRemarks* faults_ = nullptr;
  bool spoilt_ = false;
};

}  // namespace brimline
