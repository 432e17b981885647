// SPDX-License-Identifier: GPL-3.0-or-later
// Everything as tables, judged by a reader of its own: Python's csv module.
#include <sys/stat.h>

#include "station/records/tables_out.h"
#include "tests/station/store/workshop.h"

namespace brimline::tests {
namespace {

class TablesOut : public StoreTest {
 protected:
  // The table as Python's csv module has it: a list of objects.
  nlohmann::json table(const std::string& name) const {
    write_file(folder / "read.py",
               "import csv, json, sys\n"
               "print(json.dumps(list(csv.DictReader(open(sys.argv[1], newline='', encoding='utf-8'), "
               "strict=True))))\n");
    const std::string command =
        "python3 " + path("read.py") + " " + path("tables/" + name) + " > " + path("table.json");
    // NOLINTNEXTLINE(cert-env33-c): Python, as a second reader
    if (std::system(command.c_str()) != 0) return {};
    return nlohmann::json::parse(contents_of(folder / "table.json"));
  }
};

TEST_F(TablesOut, HoldEverythingThatWasKept) {
  auto store = Store::open(url()).value();
  Visit visit = whole_visit();
  visit.customer->name = "=HYPERLINK(\"x\"), \"Invented\"\nName";
  ASSERT_TRUE(store.keep(visit));
  Customer alone = customer_named("C-alone", "Åse Ø");
  ASSERT_TRUE(store.save_customer(alone));
  const auto rows = write_tables(store, path("tables"), Tables::keep_existing);
  ASSERT_TRUE(rows) << rows.error().text;
  EXPECT_EQ(rows->at("customers.csv"), 2);
  EXPECT_EQ(rows->at("readings.csv"),
            static_cast<std::int64_t>(visit.bottle.readings.size() +
                                      (visit.bottle.fill_water ? visit.bottle.fill_water->size() : 0)));
  EXPECT_EQ(rows->at("steps.csv"), static_cast<std::int64_t>(visit.plan_as_told->steps.size()));
  const auto customers = table("customers.csv");
  ASSERT_EQ(customers.size(), 2u);
  for (const auto& row : customers)
    EXPECT_EQ(row["name"], row["id"] == "C-alone" ? "Åse Ø" : "'" + *visit.customer->name);
  const auto readings = table("readings.csv");
  for (size_t i = 0; i < visit.bottle.readings.size(); ++i) {
    EXPECT_EQ(readings[i]["analyte"], visit.bottle.readings[i].analyte);
    EXPECT_EQ(std::stod(readings[i]["value"].get<std::string>()), visit.bottle.readings[i].value);
    EXPECT_EQ(readings[i]["visit_id"], visit.id);
  }
  const auto steps = table("steps.csv");
  ASSERT_EQ(steps.size(), visit.plan_as_told->steps.size());
  for (size_t i = 0; i < steps.size(); ++i) EXPECT_EQ(steps[i]["text"], visit.plan_as_told->steps[i].text);
  const auto visits = table("visits.csv");
  ASSERT_EQ(visits.size(), 1u);
  EXPECT_EQ(visits[0]["vessel_id"], visit.vessel.id);
  const auto vessels = table("vessels.csv");
  ASSERT_EQ(vessels.size(), 1u);
  EXPECT_EQ(std::stod(vessels[0]["volume_m3"].get<std::string>()), visit.vessel.volume->cubic_metres());
  for (const std::string& name : table_files()) {
    struct stat info {};
    ASSERT_EQ(::stat(path("tables/" + name).c_str(), &info), 0);
    EXPECT_EQ(info.st_mode & 0777, 0600) << name;
  }
}

TEST_F(TablesOut, NothingIsOverwrittenUnasked) {
  auto store = Store::open(url()).value();
  std::filesystem::create_directory(folder / "tables");
  write_file(folder / "tables" / "visits.csv", "mine");
  const auto refused = write_tables(store, path("tables"), Tables::keep_existing);
  ASSERT_FALSE(refused);
  EXPECT_NE(refused.error().text.find("visits.csv"), std::string::npos);
  EXPECT_EQ(contents_of(folder / "tables" / "visits.csv"), "mine");
  EXPECT_EQ(tables_there(path("tables")), std::vector<std::string>{"visits.csv"});
  ASSERT_TRUE(write_tables(store, path("tables"), Tables::replace));
  EXPECT_EQ(tables_there(path("tables")), table_files());
}

TEST_F(TablesOut, StoppedOrFailedNothingAppears) {
  auto store = Store::open(url()).value();
  for (const char* id : {"V-1", "V-2", "V-3"}) ASSERT_TRUE(store.keep(whole_visit(id)));
  int asked = 0;
  EXPECT_FALSE(
      write_tables(store, path("tables"), Tables::keep_existing, [&](double) { return ++asked < 2; }));
  EXPECT_EQ(tables_there(path("tables")).size(), 0u);
  EXPECT_TRUE(std::filesystem::is_empty(folder / "tables"));
  write_file(folder / "file", "");
  EXPECT_FALSE(write_tables(store, path("file"), Tables::replace));
}

TEST_F(TablesOut, TheProgramWritesAndRefuses) {
  ASSERT_EQ(batch("keep --database " + url(), line_of(whole_visit())).code, 0);
  const StoreRun first = batch("tables --database " + url() + " --out " + path("tables"));
  EXPECT_EQ(first.code, 0) << first.err;
  EXPECT_NE(first.out.find("visits.csv,1\r\n"), std::string::npos) << first.out;
  const StoreRun again = batch("tables --database " + url() + " --out " + path("tables"));
  EXPECT_EQ(again.code, 2);
  EXPECT_EQ(again.out, "");
  EXPECT_EQ(batch("tables --database " + url() + " --out " + path("tables") + " --replace").code, 0);
  EXPECT_EQ(batch("tables --database " + url("none.db") + " --out " + path("o2")).code, 2);
  const StoreRun full = batch("tables --database " + url() + " --out " + path("o3"), "", "ulimit -f 0;");
  EXPECT_EQ(full.code, 2) << full.out << full.err;
  EXPECT_EQ(tables_there(path("o3")).size(), 0u);
}

}  // namespace
}  // namespace brimline::tests
