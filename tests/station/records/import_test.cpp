// SPDX-License-Identifier: GPL-3.0-or-later
// Tables from elsewhere into the records: once, and only when it is said.
#include "station/records/import.h"

#include "station/records/amounts.h"
#include "station/records/moments.h"
#include "station/records/tables_out.h"
#include "station/store/joining.h"
#include "station/wording/fault_words.h"
#include "tests/station/store/workshop.h"

namespace brimline::tests {
namespace {

class ImportTest : public StoreTest {
 protected:
  std::string file(const std::string& name, const std::string& text) const {
    write_file(folder / name, text);
    return path(name);
  }
  Import looked_through(Store& store, const ImportFiles& files) const {
    auto import = look_through(store, files);
    EXPECT_TRUE(import) << import.error().text;
    for (const Fault& fault : import->faults.list()) said_ += fault.text() + "\n";
    for (const Fault& fault : import->notes.list()) noted_ += fault.text() + "\n";
    for (const ImportRemarks* list : {&import->faults, &import->notes})
      for (const Fault& fault : list->list()) expect_every_language(fault);
    return std::move(*import);
  }
  // No half of it stays English on a Spanish or French screen.
  static void expect_every_language(const Fault& fault) {
    for (const char* language : {"es", "fr"})
      for (const std::string& half : {fault.what, fault.expected}) {
        const auto sentence = fault_sentence(Words(language), half);
        ASSERT_TRUE(sentence) << fault.text();
        if (half != "-") {
          EXPECT_NE(*sentence, half) << language;
        }
      }
  }
  mutable std::string said_, noted_;
};

const char* const kPeople =
    "Name;Telephone;STREET;Vessel;Volume;Volume unit;Sanitizer;Use\r\n"
    "Åsa Invented;555-0101;1 Made Up Road;pool;13.208,6;gal;chlorine;household\r\n";

TEST_F(ImportTest, HeadersOfAnyCaseSemicolonsAndUnits) {
  auto store = Store::open(url()).value();
  const auto people = file("people.csv",
                           "Name;Telephone;STREET;Vessel;Volume;Volume unit;Sanitizer;Use\r\n"
                           "Åsa Invented;555-0101;1 Made Up Road;pool;10000,5;gal;chlorine;household\r\n"
                           "Bo Invented;;2 Made Up Road;spa;1500;L;bromine;household\r\n");
  const Import import = looked_through(store, {{people}, {}});
  EXPECT_EQ(said_, "");
  EXPECT_EQ(import.counts.customers, (ImportCount{2, 0}));
  EXPECT_EQ(import.counts.vessels, (ImportCount{2, 0}));
  EXPECT_EQ(store.counts()->at("customers"), 0) << "looking through keeps nothing";
  ASSERT_TRUE(keep_import(store, import, {{people}, {}}));
  const auto found = store.customers_matching("asa");
  ASSERT_EQ(found->size(), 1u);
  ASSERT_EQ((*found)[0].vessels.size(), 1u);
  // A US gallon is 3.785411784 L exactly (NIST Handbook 44, appendix C).
  EXPECT_NEAR((*found)[0].vessels[0].volume->cubic_metres(), 10000.5 * 3.785411784e-3, 1e-9);
  EXPECT_EQ((*found)[0].vessels[0].sanitizer, Sanitizer::chlorine);
}

TEST_F(ImportTest, AThousandsPointIsNoNumber) {
  auto store = Store::open(url()).value();
  looked_through(store, {{file("people.csv", kPeople)}, {}});
  EXPECT_EQ(said_, path("people.csv") + ":2: `volume` is `13.208,6`; expected a number\n");
}

TEST_F(ImportTest, TheSameFileTwiceKeepsNothingTwice) {
  auto store = Store::open(url()).value();
  const ImportFiles files{
      {file("people.csv", "name,phone,kind\nÅsa Invented,555-0101,pool\nBo Invented,555-0102,spa\n")},
      {file("readings.csv",
            "name,date,pH,Free chlorine (ppm),TA,TA_unit\n"
            "asa invented,2025-06-14,7.4,2.5,100,mg/L\nBo Invented,2025-06-14T10:00:00+02:00,7.1,,5,°dH\n"
            "Åsa Invented,2025-07-01,7.6,1,,\n")}};
  const Import import = looked_through(store, files);
  EXPECT_EQ(said_, "");
  EXPECT_EQ(import.counts.visits, (ImportCount{3, 0}));
  EXPECT_EQ(import.counts.readings, (ImportCount{7, 0}));
  const auto kept = keep_import(store, import, files);
  ASSERT_TRUE(kept) << kept.error().text;
  EXPECT_EQ(kept->readings.fresh, 7);
  const auto before = *store.counts();
  const Import again = looked_through(store, files);
  EXPECT_EQ(again.counts.customers, (ImportCount{0, 2}));
  EXPECT_EQ(again.counts.visits, (ImportCount{0, 3}));
  EXPECT_EQ(again.counts.readings, (ImportCount{0, 7}));
  EXPECT_TRUE(again.customers.empty() && again.vessels.empty() && again.visits.empty());
  ASSERT_TRUE(keep_import(store, again, files));
  // And what was looked through before anything was kept, kept a second time.
  ASSERT_TRUE(keep_import(store, import, files));
  auto after = *store.counts();
  EXPECT_EQ(after.at("audit_trail"), before.at("audit_trail") + 2);  // that it was done
  after["audit_trail"] = before.at("audit_trail");
  EXPECT_EQ(after, before);
  const auto visits = store.visits_of_vessel((*store.customers_matching("bo"))[0].vessels[0].id);
  ASSERT_EQ(visits->size(), 1u);
  EXPECT_EQ((*visits)[0].bottle.taken_at->text(), "2025-06-14T10:00:00+02:00");
  // 1 °dH is 10 mg/L CaO, 17.85 mg/L CaCO3 (DIN 38409-6).
  EXPECT_NEAR((*visits)[0].bottle.readings[1].value, 5 * 17.848, 0.01);
}

TEST_F(ImportTest, WhatIsWrongWithAWholeTableIsToldInEveryLanguage) {
  auto store = Store::open(url()).value();
  const std::string head = "name,phone\n";
  const std::string tables[] = {"",
                                "name,name\nA,B\n",
                                head + std::string("A\0B,1\n", 6),
                                head + "Andr\xE9,1\n",
                                head + "\"open,1\n",
                                head + "\"a\"b,1\n",
                                head + std::string(2'000'000, 'x'),
                                std::string(1'000'000, ','),
                                head + "A,1,2\n",
                                head + "A\n"};
  for (const std::string& table : tables) {
    said_.clear();
    looked_through(store, {{file("whole.csv", table)}, {}});
    EXPECT_NE(said_, "") << table.substr(0, 40);
  }
  EXPECT_EQ(fault_words(Words("fr"), {"p.csv", 3, "`volume` is `13.208,6`", "a number"}),
            "p.csv, ligne 3\u00a0: `volume` est `13.208,6`\u202f; attendu\u00a0: un nombre");
  const Words french("fr");
  EXPECT_EQ(fault_sentence(french, "`low` is text"), "`low` est du texte");
  // What looks like a place for a value, or is a sentence itself, stays what was written.
  EXPECT_EQ(fault_sentence(french, "`%1` is `%2`"), "`%1` est `%2`");
  EXPECT_EQ(fault_sentence(french, "column `text` stands twice"), "la colonne `text` est là deux fois");
  // Nothing becomes French by half.
  EXPECT_EQ(fault_sentence(french, "`stop_bits` is not usual"), std::nullopt);
  EXPECT_EQ(fault_sentence(french, "no such sentence"), std::nullopt);
  EXPECT_EQ(fault_words(french, {"a.toml", 1, "`stop_bits` is not usual", "a number"}),
            "a.toml:1: `stop_bits` is not usual; expected a number");
}

TEST_F(ImportTest, EveryLineThatIsWrongIsToldWithItsPlace) {
  auto store = Store::open(url()).value();
  const auto people =
      file("people.csv",
           "id,name,language,units,volume_m3,use\n1,Good One,en,us,50,household\n2,,en,us,50,\n"
           "3,Bad Language,de,us,,\n4,Bad Units,en,metres,,\n5,Bad Volume,en,us,-3,\n6,short\n"
           "7,Bad Use,en,us,5,sometimes\n");
  const auto readings = file("readings.csv",
                             "customer_id,taken_at,analyte,value,unit\n1,2025-06-14,ph,7.4,\n"
                             "9,2025-06-14,ph,7.4,\n1,14.06.2025,ph,7.4,\n1,2025-02-30,ph,7.4,\n"
                             "1,2025-06-14,acidity,7.4,\n1,2025-06-14,ph,seven,\n1,2025-06-14,ph,14.5,\n"
                             "1,2025-06-14,free_chlorine,-1,\n1,2025-06-14,free_chlorine,1,bar\n"
                             "1,2025-06-14,free_chlorine,,\n1,,ph,7,\n1,2025-06-14,ph,7.4,\n");
  const Import import = looked_through(store, {{people}, {readings}});
  std::set<std::string> places;
  for (const Fault& fault : import.faults.list()) {
    places.insert(std::filesystem::path(fault.file).filename().string() + ":" + std::to_string(fault.line));
    EXPECT_FALSE(fault.what.empty() || fault.expected.empty());
  }
  std::set<std::string> expected;
  for (const int line : {3, 4, 5, 6, 7, 8}) expected.insert("people.csv:" + std::to_string(line));
  for (const int line : {3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
    expected.insert("readings.csv:" + std::to_string(line));
  EXPECT_EQ(places, expected) << said_;
  EXPECT_EQ(import.counts.customers.fresh, 1);
  EXPECT_EQ(import.counts.readings.fresh, 1) << "line 13 says what line 2 says";
  EXPECT_NE(noted_.find("readings.csv:13"), std::string::npos) << noted_;
}

TEST_F(ImportTest, WhatTheShopWroteStaysAndOnlyGapsAreFilled) {
  auto store = Store::open(url()).value();
  Customer ours = customer_named("C-1", "Åsa Invented");
  ours.phone = "555-0199";
  ASSERT_TRUE(store.save_customer(ours));
  const ImportFiles files{
      {file("people.csv", "id,name,phone,email\nC-1,Someone Else,555-0101,asa@example.invalid\n")}, {}};
  const Import import = looked_through(store, files);
  EXPECT_EQ(import.counts.customers, (ImportCount{0, 1}));
  EXPECT_NE(noted_.find("people.csv:2"), std::string::npos);
  ASSERT_TRUE(keep_import(store, import, files));
  const auto card = *store.customer("C-1");
  EXPECT_EQ(card->name, "Åsa Invented");
  EXPECT_EQ(card->phone, "555-0199");
  EXPECT_EQ(card->email, "asa@example.invalid");
}

TEST_F(ImportTest, AnErasedCustomerDoesNotComeBack) {
  auto store = Store::open(url()).value();
  const ImportFiles files{{file("people.csv", "name,phone\nÅsa Invented,555-0101\n")},
                          {file("readings.csv", "name,taken_at,ph\nÅsa Invented,2025-06-14,7.4\n")}};
  ASSERT_TRUE(keep_import(store, looked_through(store, files), files));
  const std::string id = (*store.customers_matching("asa"))[0].customer.id;
  ASSERT_TRUE(store.erase_customer(id, "asked for it"));
  const Import again = looked_through(store, {files.customers, {}});
  EXPECT_EQ(again.counts.customers, (ImportCount{0, 0}));
  ASSERT_TRUE(keep_import(store, again, {files.customers, {}}));
  EXPECT_TRUE(store.customers_matching("asa")->empty());
}

TEST_F(ImportTest, ATableFromBeforeACardWasJoinedComesToTheCardKept) {
  auto store = Store::open(url()).value();
  for (const char* id : {"C-1", "C-2"}) ASSERT_TRUE(store.save_customer(customer_named(id, "Bo Invented")));
  ASSERT_TRUE(join_customers(store, "C-1", "C-2"));
  const ImportFiles files{
      {file("people.csv", "id,name,phone,vessel_id,kind\nC-2,Bo Invented,555-0101,W-2,pool\n")},
      {file("readings.csv", "customer_id,vessel_id,taken_at,ph\nC-2,W-2,2025-06-14,7.4\n")}};
  const Import import = looked_through(store, files);
  EXPECT_EQ(import.counts.customers, (ImportCount{0, 1}));
  ASSERT_TRUE(keep_import(store, import, files));
  EXPECT_EQ(store.customer("C-1").value()->phone, "555-0101");
  ASSERT_EQ(store.visits_of_vessel("W-2")->size(), 1u);
  EXPECT_EQ(store.visits_of_vessel("W-2")->front().customer->id, "C-1");
  EXPECT_EQ(looked_through(store, files).counts.visits, (ImportCount{0, 1}));
}

TEST_F(ImportTest, AmbiguousOwnersAreAskedFor) {
  auto store = Store::open(url()).value();
  const auto people =
      file("people.csv",
           "id,name,phone,vessel_id,kind\n1,Bo Invented,555-0101,W1,pool\n1,Bo Invented,,W2,spa\n"
           "2,Bo Invented,555-0102,W3,pool\n");
  const auto readings =
      file("readings.csv",
           "name,phone,vessel_id,taken_at,ph\nBo Invented,,,2025-06-14,7\n"
           "Bo Invented,555 0101,,2025-06-14,7\nBo Invented,555 0101,W3,2025-06-14,7\n"
           "Bo Invented,555-0102,,2025-06-14,7\nNobody,,,2025-06-14,7\n,,W2,2025-06-14,7\n");
  const Import import = looked_through(store, {{people}, {readings}});
  EXPECT_EQ(import.counts.readings.fresh, 2) << said_;
  for (const char* at : {"readings.csv:2: `name`", "readings.csv:3: `vessel_id`",
                         "readings.csv:4: `vessel_id`", "readings.csv:6: `name`"})
    EXPECT_NE(said_.find(at), std::string::npos) << at << "\n" << said_;
}

TEST_F(ImportTest, OurOwnTablesFillAnEmptyStoreAgain) {
  auto store = Store::open(url()).value();
  for (const char* id : {"V-1", "V-2"}) {
    Visit visit = whole_visit(id);
    visit.vessel.learnt_volume = LearntVolume{
        Volume::cubic_metres(61.5), *Instant::parse("2025-06-14T09:00:00Z"), Volume::cubic_metres(55), 0.2};
    ASSERT_TRUE(store.keep(visit));
  }
  Customer formula = customer_named("C-f", "=1+1");
  formula.phone = "+1 555 0101";
  ASSERT_TRUE(store.save_customer(formula));
  ASSERT_TRUE(write_tables(store, path("tables"), Tables::keep_existing));
  auto other = Store::open(url("other.db")).value();
  const ImportFiles files{{path("tables/customers.csv"), path("tables/vessels.csv")},
                          {path("tables/readings.csv")}};
  const Import import = looked_through(other, files);
  EXPECT_EQ(said_, "");
  ASSERT_TRUE(keep_import(other, import, files));
  for (const char* table : {"customers", "vessels", "visits", "readings", "customer_words"})
    EXPECT_EQ(other.counts()->at(table), store.counts()->at(table)) << table;
  EXPECT_EQ(*other.customer("C-f"), *store.customer("C-f"));
  const auto was = **store.visit("V-1"), is = **other.visit("V-1");
  EXPECT_EQ(is.vessel, was.vessel);
  EXPECT_EQ(is.bottle.fill_water.has_value(), was.bottle.fill_water.has_value());
  for (size_t i = 0; i < was.bottle.readings.size(); ++i) {
    EXPECT_EQ(is.bottle.readings[i].analyte, was.bottle.readings[i].analyte);
    EXPECT_EQ(is.bottle.readings[i].value, was.bottle.readings[i].value);
    EXPECT_EQ(is.bottle.readings[i].method, was.bottle.readings[i].method);
  }
  // Into the records they came from nothing is new.
  const Import back = looked_through(store, files);
  EXPECT_EQ(back.counts.visits, (ImportCount{0, 2}));
  EXPECT_EQ(back.counts.customers.fresh + back.counts.vessels.fresh + back.counts.readings.fresh, 0);
}

TEST_F(ImportTest, StoppedWorkGoesOnWhereItWas) {
  auto store = Store::open(url()).value();
  std::string people = "name,phone\n", readings = "name,taken_at,ph\n";
  for (int i = 0; i < 350; ++i) {
    people += "Person " + std::to_string(i) + ",555-" + std::to_string(1000 + i) + "\n";
    readings += "Person " + std::to_string(i) + ",2025-06-14,7.4\n";
  }
  const ImportFiles files{{file("p.csv", people)}, {file("r.csv", readings)}};
  EXPECT_FALSE(look_through(store, files, [](double) { return false; }));
  const Import import = looked_through(store, files);
  int asked = 0;
  EXPECT_FALSE(keep_import(store, import, files, [&](double) { return ++asked < 6; }));
  EXPECT_EQ(store.counts()->at("customers"), 350);
  EXPECT_EQ(store.counts()->at("visits"), 200 - 200 % 100 - 100) << "some, not all";
  double last = 0;
  ASSERT_TRUE(keep_import(store, import, files, [&](double share) {
    EXPECT_GE(share, last);
    EXPECT_LE(share, 1);
    last = share;
    return true;
  }));
  EXPECT_EQ(store.counts()->at("visits"), 350);
  EXPECT_TRUE(store.faults()->empty());
}

TEST_F(ImportTest, TheProgramTriesFirstAndKeepsThen) {
  const auto people =
      file("p.csv", "name,phone,colour\nÅsa Invented,555-0101,blue\nBo Invented,555-0102,red\n");
  const std::string call = "import --database " + url() + " --customers " + people;
  const StoreRun dry = batch(call + " --dry-run");
  EXPECT_EQ(dry.code, 0) << dry.err;
  EXPECT_EQ(dry.out, "what,new,there\r\ncustomers,2,0\r\nvessels,0,0\r\nvisits,0,0\r\nreadings,0,0\r\n");
  EXPECT_NE(dry.err.find("column `colour` is not known"), std::string::npos) << dry.err;
  EXPECT_FALSE(std::filesystem::exists(url().substr(7))) << "looking through makes no store";
  EXPECT_EQ(batch(call).out, dry.out);
  EXPECT_EQ(batch(call).out,
            "what,new,there\r\ncustomers,0,2\r\nvessels,0,0\r\nvisits,0,0\r\nreadings,0,0\r\n");
  const auto bad = file("bad.csv", "name,units\nCy Invented,us\nDi Invented,furlongs\n");
  const StoreRun refused = batch("import --database " + url() + " --customers " + bad);
  EXPECT_EQ(refused.code, 2);
  EXPECT_EQ(refused.out, "");
  EXPECT_EQ(refused.err, bad + ":3: `units` is `furlongs`; expected one of us, metric\n");
  EXPECT_EQ(Store::open(url())->counts()->at("customers"), 2);
  EXPECT_EQ(batch("import --database " + url() + " --skip-faulty --customers " + bad).code, 0);
  EXPECT_EQ(Store::open(url())->counts()->at("customers"), 3);
  EXPECT_EQ(batch("import --database " + url()).code, 2);
  EXPECT_EQ(batch("import --database " + url() + " --customers " + path("none.csv")).code, 2);
}

TEST(Moments, OfIso8601) {
  EXPECT_EQ(moment_from("2026-06-14T08:10:00-05:00")->at.text(), "2026-06-14T08:10:00-05:00");
  EXPECT_EQ(moment_from("2026-06-14 08:10Z")->at.text(), Instant::parse("2026-06-14T08:10:00Z")->text());
  EXPECT_EQ(moment_from("2026-06-14T08:10:30.25+0530")->at.text(), "2026-06-14T08:10:30+05:30");
  EXPECT_EQ(moment_from("2026-06-14")->wall, "2026-06-14T12:00:00");
  EXPECT_EQ(moment_from("20260614")->wall, "2026-06-14T12:00:00");
  EXPECT_EQ(moment_from("2024-02-29")->wall, "2024-02-29T12:00:00");
  for (const char* bad : {"", "14.06.2026", "06/14/2026", "2026-02-29", "2026-13-01", "2026-06-14T25:00",
                          "2026-06-14T08:10-5", "2026-6-14", "202606-14", "2026-0614", "2026-06-14x",
                          "yesterday", "2026-06-14T08:10:00+19:00", "45123"})
    EXPECT_FALSE(moment_from(bad)) << bad;
}

TEST(Amounts, UnitsAreTurnedByTheirDefinitions) {
  const AnalyteKind& hardness = *find_analyte("calcium_hardness");
  EXPECT_NEAR(*factor_of(hardness, "°dH"), 17.848, 0.001);  // DIN 38409-6
  EXPECT_NEAR(*factor_of(hardness, "°fH"), 10, 1e-12);
  EXPECT_NEAR(*factor_of(hardness, "gpg"), 17.118, 0.001);     // grain / US gallon, both exact (NIST HB 44)
  EXPECT_NEAR(*factor_of(hardness, "Clark"), 14.254, 0.001);   // grain / imperial gallon
  EXPECT_NEAR(*factor_of(hardness, "mg/L Ca"), 2.497, 0.001);  // Standard Methods 2340 B
  EXPECT_NEAR(*factor_of(hardness, "mg/l as CaCO3"), 1, 0);
  EXPECT_NEAR(*factor_of(*find_analyte("nitrate"), "mg/L NO3"), 0.2259, 0.0001);  // 14.007 / 62.004
  EXPECT_NEAR(*factor_of(*find_analyte("phosphate"), "ppb"), 0.001, 0);
  EXPECT_NEAR(*factor_of(*find_analyte("phosphate"), "mg/L P"), 3.066, 0.001);
  EXPECT_NEAR(*factor_of(*find_analyte("conductivity"), "mS/cm"), 1000, 0);
  EXPECT_FALSE(factor_of(*find_analyte("ph"), "mg/L"));
  EXPECT_FALSE(factor_of(hardness, "bar"));
  EXPECT_FALSE(factor_of(*find_analyte("free_chlorine"), "°dH"));
  for (const AnalyteKind& kind : analyte_kinds()) EXPECT_EQ(factor_of(kind, kind.unit), 1.0) << kind.id;
  EXPECT_EQ(number_from("7,4", true), 7.4);
  for (const char* bad : {"7,4", "", "x", "1e999", "nan", "inf", "7.4 ", "1,2,3", "0x10"})
    EXPECT_FALSE(number_from(bad, false)) << bad;
}

}  // namespace
}  // namespace brimline::tests
