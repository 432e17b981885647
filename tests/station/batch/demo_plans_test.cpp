// SPDX-License-Identifier: GPL-3.0-or-later
// `plan` on every bottle of the invented shop obeys the contract: fields, order of time, moles,
// hard blocks of facts that hold for any household plan.
#include <gtest/gtest.h>

#include <nlohmann/json.hpp>
#include <set>

#include "tests/support/run_program.h"

namespace brimline {
namespace {

using nlohmann::json;
namespace fs = std::filesystem;

std::vector<std::string> demo_visits() {
  std::vector<std::string> out;
  for (const auto& entry : fs::directory_iterator(fs::path(BRIMLINE_SOURCE_DIR) / "demo/visits"))
    if (entry.path().extension() == ".json") out.push_back(entry.path().stem().string());
  std::sort(out.begin(), out.end());
  return out;
}

std::string path_of(const std::string& name) {
  return (fs::path(BRIMLINE_SOURCE_DIR) / "demo/visits" / (name + ".json")).string();
}

class DemoPlan : public ::testing::TestWithParam<std::string> {
 protected:
  void SetUp() override {
    visit = json::parse(testing::slurp(path_of(GetParam())));
    const testing::Ran ran = testing::run_program("brimline-batch", {"plan", path_of(GetParam())});
    ASSERT_EQ(ran.exit_code, 0) << ran.err;
    plan = json::parse(ran.out);
  }
  json visit, plan;
};

const std::set<std::string> kActions = {"drain_refill",     "add",           "aerate",       "brush",
                                        "vacuum",           "filter",        "clean_filter", "circulate",
                                        "remove_tablets",   "set_generator", "cool",         "retest",
                                        "call_professional"};
const std::set<std::string> kChlorine = {"sodium_hypochlorite", "calcium_hypochlorite", "dichlor",
                                         "trichlor"};
const std::set<std::string> kAcid = {
    "hydrochloric_acid", "sodium_bisulfate", "potassium_monopersulfate", "alum",
    "cyanuric_acid",     "ascorbic_acid"};

bool among(const std::set<std::string>& set, const json& value) {
  return value.is_string() && set.contains(value.get<std::string>());
}

TEST_P(DemoPlan, HasTheFieldsOfTheContract) {
  EXPECT_EQ(plan["format"], "brimline-plan/1");
  for (const char* key : {"home_plan", "why_not", "swim", "findings", "steps", "predicted", "proof", "retest",
                          "cautions", "basis"})
    EXPECT_TRUE(plan.contains(key)) << key;
  EXPECT_TRUE(plan["swim"]["now"] == "yes" || plan["swim"]["now"] == "no");
  EXPECT_FALSE(plan["cautions"].empty());
  for (const json& finding : plan["findings"]) EXPECT_NE(finding["text"], "");
}

TEST_P(DemoPlan, StepsFollowTheClockAndKeepTheirWaits) {
  double free_from = 0;
  int order = 0;
  for (const json& step : plan["steps"]) {
    EXPECT_TRUE(among(kActions, step["action"])) << step;
    EXPECT_EQ(step["order"], ++order);
    EXPECT_NE(step["text"], "");
    EXPECT_GE(step["start_h"].get<double>(), free_from - 1e-6) << step;
    free_from = step["start_h"].get<double>() +
                (step["portions"].get<int>() - 1) * step["portion_gap_h"].get<double>() +
                step["wait_h"].get<double>();
    if (step["action"] == "add") {
      EXPECT_TRUE(step["chemical"].is_string());
      EXPECT_GT(step["amount"]["value"].get<double>(), 0);
      EXPECT_TRUE(among({"L", "mL", "kg", "g"}, step["amount"]["unit"]));
      EXPECT_TRUE(step["amount_household"].is_string());
      EXPECT_FALSE(step["cautions"].empty()) << step;
    }
  }
}

TEST_P(DemoPlan, NeverTwoChlorinesNorAcidBesideChlorine) {
  std::set<std::string> chlorines;
  const double gap = visit["vessel"]["kind"] == "spa" || visit["vessel"]["kind"] == "plunge" ? 1 : 4;
  const json* before = nullptr;
  for (const json& step : plan["steps"]) {
    if (step["action"] != "add") continue;
    if (among(kChlorine, step["chemical"])) chlorines.insert(step["chemical"]);
    if (before && ((among(kChlorine, step["chemical"]) && among(kAcid, (*before)["chemical"])) ||
                   (among(kAcid, step["chemical"]) && among(kChlorine, (*before)["chemical"])))) {
      EXPECT_GE((*before)["wait_h"].get<double>(), gap) << step;
    }
    before = &step;
  }
  EXPECT_LE(chlorines.size(), 1u);
}

TEST_P(DemoPlan, GivesNoVesselWhatItMustNotHave) {
  const std::string sanitizer = visit["vessel"]["sanitizer"];
  const bool indoor = visit["vessel"]["place"] == "indoor";
  for (const json& step : plan["steps"]) {
    if (step["action"] != "add") continue;
    const std::string chemical = step["chemical"];
    EXPECT_NE(chemical, "copper_sulfate");
    if (sanitizer == "biguanide") {
      EXPECT_FALSE(kChlorine.contains(chemical) || chemical == "potassium_monopersulfate" ||
                   chemical == "sodium_bromide" || chemical == "bcdmh")
          << chemical;
    }
    if (sanitizer == "bromine" || indoor) {
      EXPECT_FALSE(chemical == "cyanuric_acid" || chemical == "dichlor" || chemical == "trichlor")
          << chemical;
    }
  }
}

TEST_P(DemoPlan, AcidLowersAndBaseRaisesWhatTheSheetPredicts) {
  const json* before = nullptr;
  for (const json& step : plan["steps"]) {
    if (!step.contains("after") || step["after"].is_null()) continue;
    if (before && step["action"] == "add") {
      const double alkalinity = step["after"].value("total_alkalinity", 0.0),
                   was = before->value("total_alkalinity", 0.0);
      if (step["chemical"] == "hydrochloric_acid" || step["chemical"] == "sodium_bisulfate") {
        EXPECT_LT(alkalinity, was);
      }
      if (step["chemical"] == "sodium_bicarbonate" || step["chemical"] == "sodium_carbonate") {
        EXPECT_GT(alkalinity, was);
      }
    }
    before = &step["after"];
  }
}

INSTANTIATE_TEST_SUITE_P(Shop, DemoPlan, ::testing::ValuesIn(demo_visits()),
                         [](const auto& one) { return one.param; });

TEST(DemoShop, HoldsTheKindsOfVesselACounterSees) {
  EXPECT_GE(demo_visits().size(), 8u);
}

}  // namespace
}  // namespace brimline
