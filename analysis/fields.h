// SPDX-License-Identifier: GPL-3.0-or-later
// Strict reading of one TOML table: a wrong type, a missing key and a key nobody asked for are
// faults with file and line, never silent defaults.
//
//   auto file = Fields::parse(text, "readings/ph.toml");
//   kind.id = file->text("id");
//   kind.low = file->number("low");
//   const std::vector<Fault> faults = file->finish();   // left-over keys included
#pragma once

#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include <tl/expected.hpp>

namespace brimline {

struct Fault {
  std::string file;
  int line = 0;
  std::string what;      // "`low` is text"
  std::string expected;  // "a number"
  std::string text() const {
    return file + ":" + std::to_string(line) + ": " + what + "; expected " + expected;
  }
};

class Fields {
 public:
  // A syntax error is the one fault returned here.
  static tl::expected<Fields, Fault> parse(std::string_view text, std::string_view file);

  // Required; a fault is noted and an empty value returned where missing or of another type.
  std::string text(std::string_view key);
  double number(std::string_view key);  // a TOML integer is a number too
  int whole(std::string_view key);
  bool flag(std::string_view key);
  std::vector<std::string> texts(std::string_view key);
  std::vector<double> numbers(std::string_view key);
  Fields table(std::string_view key);
  std::vector<Fields> tables(std::string_view key);  // array of tables

  // Absent is nothing; of another type is a fault.
  std::optional<std::string> text_if(std::string_view key);
  std::optional<double> number_if(std::string_view key);
  std::optional<int> whole_if(std::string_view key);
  std::optional<bool> flag_if(std::string_view key);
  std::optional<std::vector<std::string>> texts_if(std::string_view key);
  std::optional<std::vector<double>> numbers_if(std::string_view key);
  std::optional<Fields> table_if(std::string_view key);
  std::vector<Fields> tables_if(std::string_view key);

  bool has(std::string_view key) const;
  std::vector<std::string> keys() const;  // in the file's order of names
  int line() const;                       // where this table starts
  int line_of(std::string_view key) const;
  // Notes a fault at `key` of this table, for a value that is of the right type but wrong.
  void fault(std::string_view key, std::string what, std::string expected);

  // All faults of the whole file so far, with those of keys nobody asked for.
  std::vector<Fault> finish();

 private:
  struct Node;
  explicit Fields(std::shared_ptr<Node> node) : node_(std::move(node)) {}
  std::shared_ptr<Node> node_;
};

}  // namespace brimline
