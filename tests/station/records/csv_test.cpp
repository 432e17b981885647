// SPDX-License-Identifier: GPL-3.0-or-later
// Tables as text: the rules of RFC 4180 (October 2005), section 2, and bytes that nobody should send.
#include <sys/resource.h>

#include <sstream>

#include <gtest/gtest.h>

#include "station/records/csv.h"

namespace brimline::tests {
namespace {

using Table = std::vector<std::vector<std::string>>;

struct ReadBack {
  Table rows;
  std::vector<int> lines;
  std::optional<Fault> fault;
  char delimiter = 0;
};

ReadBack read(const std::string& text) {
  std::istringstream in(text);
  CsvReader reader(in, "t.csv");
  ReadBack out;
  std::vector<std::string> cells;
  while (reader.next(cells)) {
    out.rows.push_back(cells);
    out.lines.push_back(reader.line());
  }
  out.fault = reader.fault();
  out.delimiter = reader.delimiter();
  return out;
}

// A stream of so many of the same byte after a beginning, that is never held whole.
class LongBuffer : public std::streambuf {
 public:
  LongBuffer(std::string head, char byte, size_t count) : head_(std::move(head)), left_(count) {
    piece_.assign(1 << 16, byte);
    setg(head_.data(), head_.data(), head_.data() + head_.size());
  }
  int_type underflow() override {
    if (left_ == 0) return traits_type::eof();
    const size_t size = std::min(left_, piece_.size());
    left_ -= size;
    setg(piece_.data(), piece_.data(), piece_.data() + size);
    return traits_type::to_int_type(*gptr());
  }
  size_t left() const { return left_; }

 private:
  std::string head_, piece_;
  size_t left_;
};

long peak_kib() {
  rusage usage{};
  getrusage(RUSAGE_SELF, &usage);
  return usage.ru_maxrss;
}

// The examples of RFC 4180, section 2, rules 1 to 7.
TEST(Csv, TheExamplesOfTheStandard) {
  EXPECT_EQ(read("aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n").rows,
            (Table{{"aaa", "bbb", "ccc"}, {"zzz", "yyy", "xxx"}}));
  EXPECT_EQ(read("aaa,bbb,ccc\r\nzzz,yyy,xxx").rows, (Table{{"aaa", "bbb", "ccc"}, {"zzz", "yyy", "xxx"}}));
  EXPECT_EQ(read("\"aaa\",\"bbb\",\"ccc\"\r\nzzz,yyy,xxx").rows,
            (Table{{"aaa", "bbb", "ccc"}, {"zzz", "yyy", "xxx"}}));
  EXPECT_EQ(read("\"aaa\",\"b\r\nbb\",\"ccc\"\r\nzzz,yyy,xxx").rows,
            (Table{{"aaa", "b\r\nbb", "ccc"}, {"zzz", "yyy", "xxx"}}));
  EXPECT_EQ(read("\"aaa\",\"b\"\"bb\",\"ccc\"").rows, (Table{{"aaa", "b\"bb", "ccc"}}));
  EXPECT_EQ(read("a, b ,c").rows, (Table{{"a", " b ", "c"}}));  // rule 4: spaces are part of a field
}

TEST(Csv, LinesAreCountedAsAnEditorDoes) {
  const auto got = read("a,b\n\"1\n2\",x\r\n\r\ny,z\rlast,one");
  EXPECT_EQ(got.rows, (Table{{"a", "b"}, {"1\n2", "x"}, {"y", "z"}, {"last", "one"}}));
  EXPECT_EQ(got.lines, (std::vector<int>{1, 2, 5, 6}));
}

TEST(Csv, TheDelimiterIsTheOneOfTheHeader) {
  EXPECT_EQ(read("a;b;c\n1,5;2;3\n").rows, (Table{{"a", "b", "c"}, {"1,5", "2", "3"}}));
  EXPECT_EQ(read("\"a;b;c\",d\n1;2;3,4\n").rows, (Table{{"a;b;c", "d"}, {"1;2;3", "4"}}));
}

TEST(Csv, AByteOrderMarkIsNoPartOfTheFirstColumn) {
  EXPECT_EQ(read("\xEF\xBB\xBF\"id\",name\n1,x\n").rows, (Table{{"id", "name"}, {"1", "x"}}));
}

TEST(Csv, AQuoteNotClosedIsToldWhereItOpened) {
  const auto got = read("a,b\n1,2\n3,\"four\n5,6\n");
  EXPECT_EQ(got.rows.size(), 2u);
  ASSERT_TRUE(got.fault);
  EXPECT_EQ(got.fault->text(),
            "t.csv:3: a quotation mark is not closed; expected its end, before the end of the file");
}

TEST(Csv, TextAfterAClosingQuoteIsAFault) {
  const auto got = read("a,b\n\"1\"x,2\n");
  ASSERT_TRUE(got.fault);
  EXPECT_EQ(got.fault->line, 2);
}

TEST(Csv, NulAndOtherEncodingsAreFaults) {
  const auto nul = read(std::string("a,b\n1,x\0y\n", 10));
  ASSERT_TRUE(nul.fault);
  EXPECT_EQ(nul.fault->text(), "t.csv:2: a NUL byte; expected a text file in UTF-8");
  const auto latin = read("name\nAndr\xE9\n");  // é of ISO 8859-1
  ASSERT_TRUE(latin.fault);
  EXPECT_EQ(latin.fault->line, 2);
  EXPECT_NE(latin.fault->what.find("UTF-8"), std::string::npos);
  // Overlong and surrogate forms (RFC 3629, section 3), and a letter cut short.
  for (const char* bytes : {"\xC0\xAF", "\xED\xA0\x80", "\xF5\x80\x80\x80", "\xC3"})
    EXPECT_TRUE(read(std::string("name\nx") + bytes + "\n").fault) << bytes;
  const auto wide = read(std::string("\xFF\xFEn\0a\0", 6));  // UTF-16
  EXPECT_TRUE(wide.fault);
  EXPECT_FALSE(read("name\nÅsa \xF0\x9F\x92\xA7\n").fault);
}

TEST(Csv, ALineOf100MegabytesIsGivenUpEarlyAndCostsNoMemory) {
  for (const char* head : {"a,b\n", "a,b\n\""}) {
    const long before = peak_kib();
    LongBuffer buffer(head, 'x', 100'000'000);
    std::istream in(&buffer);
    CsvReader reader(in, "long.csv");
    std::vector<std::string> cells;
    EXPECT_TRUE(reader.next(cells));
    EXPECT_FALSE(reader.next(cells));
    ASSERT_TRUE(reader.fault());
    EXPECT_EQ(reader.fault()->line, 2);
    EXPECT_GT(buffer.left(), 90'000'000u) << "read on in vain";
    EXPECT_LT(peak_kib() - before, 40'000);
  }
}

TEST(Csv, AMillionColumnsAreRefused) {
  LongBuffer buffer("a", ',', 1'000'000);
  std::istream in(&buffer);
  CsvReader reader(in, "wide.csv");
  std::vector<std::string> cells;
  EXPECT_FALSE(reader.next(cells));
  ASSERT_TRUE(reader.fault());
  EXPECT_EQ(reader.fault()->text(), "wide.csv:1: more than 1000 columns; expected a table");
}

TEST(Csv, WhatIsWrittenIsReadBackTheSame) {
  const std::vector<std::string> texts = {
      "",      "plain",  "a,b",  "a;b",      "say \"so\"", "two\nlines", "two\r\nl", " padded ",
      "=1+1",  "+1 555", "-5",   "@x",       "'=1+1",      "''=x",       "'quoted",  "\tx",
      "ø å é", "#1",     "\r=x", "\"=1+1\"", "'",          "\n"};
  std::string out;
  CsvRow row(out);
  for (const std::string& text : texts) row.text(text);
  row.end();
  EXPECT_TRUE(out.ends_with("\r\n"));
  const auto got = read(out);
  ASSERT_FALSE(got.fault) << got.fault->text();
  ASSERT_EQ(got.rows.size(), 1u);
  ASSERT_EQ(got.rows[0].size(), texts.size());
  for (size_t i = 0; i < texts.size(); ++i) EXPECT_EQ(unguarded(got.rows[0][i]), texts[i]);
}

// OWASP, "CSV Injection": a cell must not begin with = + - @, tab or line end.
TEST(Csv, NoCellOfTextStartsAFormula) {
  for (const std::string bad :
       {"=cmd|' /C calc'!A0", "+1+cmd", "-2+3+cmd", "@SUM(A1)", "\t=1", "\r=1", "\n=1"}) {
    std::string out;
    CsvRow row(out);
    row.text(bad).end();
    const auto got = read(out);
    ASSERT_EQ(got.rows.size(), 1u) << bad;
    EXPECT_EQ(got.rows[0][0], "'" + bad);
  }
  std::string out;
  CsvRow row(out);
  row.number(-0.5).end();  // a number is no text
  EXPECT_EQ(out, "-0.5\r\n");
}

TEST(Csv, RandomBytesNeverBreakTheReader) {
  std::uint64_t state = 88172645463325252u;  // xorshift64 (Marsaglia 2003)
  const std::string alphabet = "ab,;\"\r\n'=\xC3\xA9 ";
  for (int run = 0; run < 20'000; ++run) {
    std::string text;
    for (int i = 0; i < 40; ++i) {
      state ^= state << 13;
      state ^= state >> 7;
      state ^= state << 17;
      text += alphabet[state % alphabet.size()];
    }
    const auto got = read(text);
    // Written again and read again, what was read is the same.
    if (got.rows.empty()) continue;
    std::string out;
    for (const auto& cells : got.rows) {
      CsvRow row(out);
      for (const std::string& cell : cells) row.text(cell);
      row.end();
    }
    std::istringstream again(out);
    CsvReader reader(again, "again.csv");
    std::vector<std::string> cells;
    size_t i = 0;
    while (reader.next(cells)) {
      if (reader.delimiter() != ',') break;  // a header of one cell full of ;
      for (std::string& cell : cells) cell = unguarded(cell);
      ASSERT_LT(i, got.rows.size());
      ASSERT_EQ(cells, got.rows[i++]) << text;
    }
  }
}

}  // namespace
}  // namespace brimline::tests
