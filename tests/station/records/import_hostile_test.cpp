// SPDX-License-Identifier: GPL-3.0-or-later
// Tables that nobody should send: the program says one line where and what, keeps nothing, and stays small.
#include "station/store/store.h"
#include "tests/station/store/workshop.h"

namespace brimline::tests {
namespace {

class HostileTables : public StoreTest {
 protected:
  // The program refuses `text` as customers and as readings, with one line for the place; nothing is kept.
  void expect_refused(const std::string& text, const std::string& place) const {
    write_file(folder / "bad.csv", text);
    for (const char* as : {"--customers", "--readings"}) {
      const StoreRun ran =
          batch("import --database " + url() + " " + as + " " + path("bad.csv"), "", "ulimit -v 1500000;");
      EXPECT_EQ(ran.code, 2) << ran.out.substr(0, 200);
      EXPECT_EQ(ran.out, "");
      EXPECT_NE(ran.err.find("bad.csv:" + place + ": "), std::string::npos) << ran.err.substr(0, 400);
      EXPECT_NE(ran.err.find("; expected "), std::string::npos);
      EXPECT_LT(ran.err.size(), 2'000u);
      for (const unsigned char c : ran.err) EXPECT_TRUE(c == '\n' || c >= 0x20) << int(c);
    }
    auto store = Store::open(url()).value();
    EXPECT_EQ(store.counts()->at("customers"), 0);
  }
};

const std::string kHeader = "name,phone,taken_at,ph\n";

TEST_F(HostileTables, AreRefusedWithTheirPlace) {
  expect_refused("", "1");
  expect_refused("\xEF\xBB\xBF", "1");
  expect_refused(std::string("name,phone\0,taken_at,ph\n", 24), "1");
  expect_refused(kHeader + std::string("A\0B,1,2025-06-14,7\n", 19), "2");
  expect_refused(kHeader + "Andr\xE9,1,2025-06-14,7\n", "2");
  expect_refused("\xFF\xFEn\xFF", "1");
  expect_refused(kHeader + "ok,1,2025-06-14,7\n\"open,1,2025-06-14,7\n", "3");
  expect_refused(kHeader + "\"two\nlines\",1,x,7\n", "2");
  expect_refused("name,name\nA,B\n", "1");
  expect_refused(std::string(1'000'000, ','), "1");
}

TEST_F(HostileTables, ALineOf100MegabytesIsRefused) {
  std::string long_line;
  long_line.resize(100'000'000, 'x');
  expect_refused(kHeader + long_line, "2");
}

TEST_F(HostileTables, AFormulaIsATextAndGoesOutGuarded) {
  write_file(folder / "p.csv", "name,phone\n=cmd|' /C calc'!A0,+1 555\n\"'=already guarded\",1\n");
  ASSERT_EQ(batch("import --database " + url() + " --customers " + path("p.csv")).code, 0);
  ASSERT_EQ(batch("tables --database " + url() + " --out " + path("tables")).code, 0);
  const std::string out = contents_of(folder / "tables" / "customers.csv");
  EXPECT_NE(out.find("'=cmd|' /C calc'!A0"), std::string::npos) << out;
  EXPECT_EQ(out.find(",=cmd"), std::string::npos);
  EXPECT_NE(out.find("'+1 555"), std::string::npos);
  EXPECT_EQ(out.find("''="), std::string::npos) << "a guard is taken away when it comes in";
}

TEST_F(HostileTables, SqlAndPathsInTextAreText) {
  write_file(folder / "p.csv",
             "id,name,phone\n../../etc,'); DROP TABLE customers; --,1\n\"%_\\\",x\"\"y,2\n");
  ASSERT_EQ(batch("import --database " + url() + " --customers " + path("p.csv")).code, 0);
  auto store = Store::open(url()).value();
  EXPECT_EQ(store.counts()->at("customers"), 2);
  EXPECT_EQ((*store.customer("../../etc"))->name, "'); DROP TABLE customers; --");
  EXPECT_TRUE(store.faults()->empty());
}

TEST_F(HostileTables, AMillionFaultsAreCountedNotListed) {
  std::string text = "name,units\n";
  for (int i = 0; i < 200'000; ++i) text += "A,x\n";
  write_file(folder / "bad.csv", text);
  const StoreRun ran = batch("import --database " + url() + " --customers " + path("bad.csv"));
  EXPECT_EQ(ran.code, 2);
  EXPECT_EQ(std::count(ran.err.begin(), ran.err.end(), '\n'), 1001);
  EXPECT_TRUE(ran.err.ends_with("and 199000 more\n"));
}

TEST_F(HostileTables, ADeviceOrFolderIsNoTable) {
  for (const char* file : {"/dev/null", "/tmp", "/dev/zero"}) {
    const StoreRun ran = batch(std::string("import --database ") + url() + " --customers " + file);
    EXPECT_EQ(ran.code, 2) << file;
    EXPECT_NE(ran.err.find(std::string(file) + ":1: "), std::string::npos) << ran.err;
  }
}

}  // namespace
}  // namespace brimline::tests
