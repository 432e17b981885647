// SPDX-License-Identifier: GPL-3.0-or-later
// The commands check, demand and compare as scripts see them: fields, exit codes and faults of the contract.
#include <sys/wait.h>
#include <cstdio>
#include <filesystem>
#include <fstream>

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

namespace {

using Json = nlohmann::json;

struct Ran {
  int exit = -1;
  std::string out;
};

Ran run(const std::string& arguments) {
  Ran ran;
  FILE* pipe = popen((std::string(BRIMLINE_BIN_DIR) + "/brimline-batch " + arguments).c_str(), "r");
  char buffer[4096];
  for (size_t n; (n = fread(buffer, 1, sizeof buffer, pipe)) > 0;) ran.out.append(buffer, n);
  ran.exit = WEXITSTATUS(pclose(pipe));
  return ran;
}

class Commands : public testing::Test {
 protected:
  void SetUp() override {
    folder_ = std::filesystem::temp_directory_path() /
              ("brimline_commands_" + std::to_string(getpid()) + "_" +
               testing::UnitTest::GetInstance()->current_test_info()->name());
    std::filesystem::create_directories(folder_);
  }
  void TearDown() override { std::filesystem::remove_all(folder_); }
  std::string file(const std::string& name, const Json& visit) {
    const std::string path = (folder_ / name).string();
    std::ofstream(path) << visit.dump();
    return path;
  }
  static Json visit(const char* id, const char* day, double alkalinity) {
    return {{"format", "brimline-visit/1"},
            {"id", id},
            {"bottle", "B-1"},
            {"taken_at", std::string(day) + "T08:00:00Z"},
            {"tested_at", std::string(day) + "T09:00:00Z"},
            {"vessel", {{"id", "W-1"}, {"kind", "pool"}, {"volume_m3", 50}, {"sanitizer", "chlorine"}}},
            {"readings",
             {{{"analyte", "ph"}, {"value", 7.5}, {"sd", 0.05}},
              {{"analyte", "free_chlorine"}, {"value", 2}},
              {{"analyte", "total_alkalinity"}, {"value", alkalinity}}}}};
  }

 private:
  std::filesystem::path folder_;
};

// The water in its vessel, each result with its error, and which reading the background salt follows from.
TEST_F(Commands, CheckTellsTheWaterAndItsErrors) {
  Json v = visit("V-1", "2026-05-01", 100);
  v["readings"].push_back({{"analyte", "calcium_hardness"}, {"value", 250}});
  v["readings"].push_back({{"analyte", "cyanuric_acid"}, {"value", 40}});
  v["vessel"]["water_temperature_c"] = 38;
  const auto water_of = [&] {
    const Ran ran = run("check " + file("a.json", v));
    EXPECT_EQ(ran.exit, 0);
    return Json::parse(ran.out)["water"];
  };
  Json water = water_of();
  EXPECT_EQ(water["background"], "assumed");
  EXPECT_NE(water["notes"][0].get<std::string>().find("1,000 mg/L of dissolved solids are assumed"),
            std::string::npos);
  EXPECT_EQ(water["vessel_temperature_c"], 38);
  const Json results = water["results"];
  for (const char* name : {"ph_vessel", "si_calcite", "si_factor_table", "carbonate_alkalinity_mg_l_caco3",
                           "ph_saturation_const_alk", "ccpp_mg_l_caco3", "hocl_mg_l_cl2", "hocl_share",
                           "free_chlorine_to_stabilizer", "acid_when_spent_mmol_kgw", "spent_ph"}) {
    ASSERT_TRUE(results[name]["value"].is_number()) << name;
    EXPECT_GT(results[name]["sd"], 0) << name;
  }
  EXPECT_FALSE(results.contains("hobr_mg_l_br2"));
  EXPECT_NEAR(results["free_chlorine_to_stabilizer"]["value"], 0.05, 1e-9);
  EXPECT_LT(results["spent_ph"]["value"], results["ph_vessel"]["value"]);
  v["readings"].push_back({{"analyte", "salt"}, {"value", 3200}});
  water = water_of();
  EXPECT_EQ(water["background"], "salt");
  EXPECT_LT(water["results"]["si_calcite"]["value"], results["si_calcite"]["value"]);
  v["readings"] = {{{"analyte", "free_chlorine"}, {"value", 2}}};
  EXPECT_TRUE(water_of().is_null());
}

TEST_F(Commands, CheckAnswersInTheContractsFields) {
  Json strange = visit("V-1", "2026-06-14", 100);
  strange["readings"][0]["value"] = 11.5;
  const Ran ran = run("check " + file("a.json", strange));
  ASSERT_EQ(ran.exit, 0);
  const Json answer = Json::parse(ran.out);
  EXPECT_EQ(answer["panel_due"].size(), 8u);
  EXPECT_DOUBLE_EQ(answer["uncertainty"]["ph"], 0.05);
  bool repeated = false;
  for (const Json& check : answer["checks"])
    repeated |= check["verdict"] == "repeat" && check["analytes"][0] == "ph";
  EXPECT_TRUE(repeated);
}

TEST_F(Commands, CheckKnowsWhatWasReadLately) {
  const std::string earlier = file("a.json", visit("V-1", "2026-06-07", 100));
  const Json answer = Json::parse(
      run("check " + file("b.json", visit("V-2", "2026-06-14", 100)) + " --earlier " + earlier).out);
  EXPECT_EQ(std::count(answer["panel_due"].begin(), answer["panel_due"].end(), "total_alkalinity"), 1);
  EXPECT_EQ(std::count(answer["panel_due"].begin(), answer["panel_due"].end(), "calcium_hardness"), 1);
}

TEST_F(Commands, CompareAnswersInTheContractsFields) {
  Json later = visit("V-2", "2026-06-14", 110);
  later["additions_since"] = {
      {{"chemical", "sodium_bicarbonate"}, {"active_mol", 40.0}, {"days_before", 20}}};
  const Ran ran =
      run("compare " + file("a.json", visit("V-1", "2026-05-14", 70)) + " " + file("b.json", later));
  ASSERT_EQ(ran.exit, 0);
  const Json answer = Json::parse(ran.out);
  EXPECT_TRUE(answer["water_replaced"].is_null());
  EXPECT_NEAR(double(answer["volume"]["m3"]), 50, 5);
  EXPECT_EQ(answer["volume"]["agrees"], true);
  for (const Json& change : answer["changes"]) {
    for (const char* field : {"analyte", "earlier", "later", "expected", "expected_sd", "verdict", "text"})
      EXPECT_TRUE(change.contains(field)) << field;
    if (change["analyte"] == "total_alkalinity") {
      EXPECT_EQ(change["verdict"], "as_expected");
    }
  }
}

TEST_F(Commands, DemandAnswersInTheContractsFields) {
  Json v = visit("V-1", "2026-06-14", 100);
  v["demand_test"] = {{"hours", 24},
                      {"bottles",
                       {{{"dose_mg_l", 5}, {"stock_share", 0.005}, {"free_mg_l", 0}, {"total_mg_l", 0.6}},
                        {{"dose_mg_l", 10}, {"stock_share", 0.01}, {"free_mg_l", 3}, {"total_mg_l", 3.1}}}}};
  const Ran ran = run("demand " + file("a.json", v));
  ASSERT_EQ(ran.exit, 0);
  const Json answer = Json::parse(ran.out);
  EXPECT_NEAR(double(answer["demand_mg_l"]), (10 + 2 * 0.99 - 3) / 0.99,
              1e-9);  // by mass balance of the mixture
  EXPECT_EQ(answer["enough"], true);
  EXPECT_TRUE(answer["demand_above_mg_l"].is_null());
  v["demand_test"]["bottles"].erase(1);
  const Json short_of = Json::parse(run("demand " + file("b.json", v)).out);
  EXPECT_EQ(short_of["enough"], false);
  EXPECT_TRUE(short_of["demand_mg_l"].is_null());
  EXPECT_TRUE(short_of["dose_mg_l"].is_null());
  EXPECT_NEAR(double(short_of["demand_above_mg_l"]), (5 + 2 * 0.995) / 0.995, 1e-9);
}

TEST_F(Commands, BadInputSaysWhereAndExitsTwo) {
  const std::string sound = file("a.json", visit("V-1", "2026-06-14", 100));
  Json negative = visit("V-1", "2026-06-14", -5);
  for (const std::string& arguments :
       {"check " + file("b.json", negative), "demand " + sound, "compare " + sound, std::string("check"),
        std::string("check /nowhere.json"), "check " + sound + " --later x"}) {
    const Ran ran = run(arguments + " 2>&1 >/dev/null");
    EXPECT_EQ(ran.exit, 2) << arguments;
    EXPECT_FALSE(ran.out.empty()) << arguments;
    EXPECT_EQ(run(arguments + " 2>/dev/null").out, "") << arguments;
  }
}

}  // namespace
