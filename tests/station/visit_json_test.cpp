// SPDX-License-Identifier: GPL-3.0-or-later
// The JSON forms against the project's contract for them: same visit again, and the line of each fault.
#include "station/visit_json.h"

#include <gmock/gmock.h>
#include <nlohmann/json.hpp>

#include "station/plan_json.h"
#include "tests/station/whole_visit.h"

namespace brimline {
namespace {

using nlohmann::json;
using testing::HasSubstr;

Visit whole() {
  return read_visit(tests::kWholeVisit, "whole.json").value();
}

TEST(VisitJson, WholeVisitIsTheSameAgain) {
  const Visit visit = whole();
  const std::string text = visit_to_json(visit).dump();
  EXPECT_EQ(read_visit(text, "again.json").value(), visit);
  // The writer's parts are those of the text it came from, but for defaults that were spelled out.
  EXPECT_EQ(json::parse(text), json::parse(tests::kWholeVisit));
}

TEST(VisitJson, EveryFieldIsRead) {
  const Visit v = whole();
  EXPECT_EQ(v.customer->name, "Ines Ørsted");
  EXPECT_EQ(v.customer->units, Units::metric);
  EXPECT_EQ(v.vessel.use, VesselUse::public_use);
  EXPECT_EQ(v.vessel.water_temperature->celsius(), 27.123456789012345);
  EXPECT_EQ(v.bottle.readings[2].value, 7.8000000000000007);
  EXPECT_EQ(v.bottle.readings[1].dilution, 2);
  EXPECT_EQ(v.bottle.demand_test->bottles[1].later[0].total_mg_l, 0.4);
  EXPECT_FALSE(v.bottle.demand_test->bottles[0].free_mg_l);
  EXPECT_EQ(v.plan_as_told->findings[0].target->high, std::nullopt);
  EXPECT_EQ(v.plan_as_told->steps[0].after->vessel.at("si_calcite"), -0.03);
}

TEST(VisitJson, SmallestVisit) {
  const auto v = read_visit(R"({"format":"brimline-visit/1","id":"V-9"})", "small.json");
  ASSERT_TRUE(v);
  EXPECT_FALSE(v->customer);
  EXPECT_FALSE(v->bottle.fill_water);
  EXPECT_EQ(visit_to_json(*v).dump(), R"({"format":"brimline-visit/1","id":"V-9","readings":[]})");
}

TEST(VisitJson, ExtremeNumbersSurvive) {
  for (const double value : {5e-324, 0.1, 1e6 - 1e-10, 123456.789012345678}) {
    Visit v = whole();
    v.bottle.readings[1].value = value;
    EXPECT_EQ(read_visit(visit_to_json(v).dump(), "f").value().bottle.readings[1].value, value);
  }
}

// Replaces `from` in the whole visit and gives the faults.
std::vector<Fault> faults_with(const std::string& from, const std::string& to) {
  std::string text = tests::kWholeVisit;
  const auto at = text.find(from);
  if (at == std::string::npos) return {};
  text.replace(at, from.size(), to);
  const auto visit = read_visit(text, "v.json", 1);
  return visit ? std::vector<Fault>{} : visit.error();
}

struct Wrong {
  const char *from, *to;
  int line;
  const char* what;
  friend void PrintTo(const Wrong& wrong, std::ostream* out) { *out << wrong.to; }
};

class WrongVisit : public testing::TestWithParam<Wrong> {};

TEST_P(WrongVisit, IsRefusedWithTheLine) {
  const Wrong& wrong = GetParam();
  const auto faults = faults_with(wrong.from, wrong.to);
  ASSERT_FALSE(faults.empty());
  EXPECT_EQ(faults[0].line, wrong.line) << faults[0].text();
  EXPECT_THAT(faults[0].text(), HasSubstr(wrong.what));
  EXPECT_THAT(faults[0].text(), testing::StartsWith("v.json:" + std::to_string(wrong.line) + ": "));
  EXPECT_THAT(faults[0].text(), HasSubstr("; expected "));
}

INSTANTIATE_TEST_SUITE_P(
    All, WrongVisit,
    testing::Values(
        Wrong{"\"value\":7.9", "\"value\":-0.1", 7, "`value` is -0.1"},
        Wrong{"\"value\":7.9", "\"value\":14.1", 7, "a pH from 0 to 14"},
        Wrong{"\"value\":7.9", "\"value\":\"7.9\"", 7, "`value` is text"},
        Wrong{"\"value\":7.9", "\"value\":NaN", 7, "not JSON"},
        Wrong{"\"value\":7.9", "\"value\":1e999", 7, "not JSON"},
        Wrong{"\"value\":7.9", "\"value\":null", 7, "`value` is null"},
        Wrong{"\"value\":7.9,", "", 7, "`value` is missing"},
        Wrong{"\"analyte\":\"free_chlorine\"", "\"analyte\":\"chlorine\"", 8, "unknown analyte \"chlorine\""},
        Wrong{"\"value\":0.1", "\"value\":0.1,\"unit\":\"ppm\"", 8, "`unit` is not known here"},
        Wrong{"\"dilution\":2", "\"dilution\":0.5", 8, "`dilution` is 0.5"},
        Wrong{"\"clipped\":\"above\"", "\"clipped\":\"over\"", 8, "\"over\""},
        Wrong{"\"repeat_of\":0", "\"repeat_of\":2", 9, "`repeat_of` is 2"},
        Wrong{"\"repeat_of\":0", "\"repeat_of\":1", 9, "a reading of free_chlorine"},
        Wrong{"\"repeat_of\":0", "\"repeat_of\":-1", 9, "`repeat_of` is -1"},
        Wrong{"\"repeat_of\":0", "\"repeat_of\":0.5", 9, "a whole number"},
        Wrong{"swim_spa", "jacuzi", 5, "unknown `kind`"},
        Wrong{"\"in_ground\":true", "\"in_ground\":1", 5, "`in_ground`"},
        Wrong{"\"volume_m3\":56.8", "\"volume_m3\":0", 6, "above 0"},
        Wrong{"\"dose_mg_l\":5.5", "\"dose_mg_l\":-5.5", 13, "`dose_mg_l`"},
        Wrong{"\"total_mg_l\":0.4", "\"total_mg_l\":-0.4", 13, "`total_mg_l`"},
        Wrong{"\"drain_not_visible\"", "\"rain\"", 14, "unknown sign"},
        Wrong{"dead_animal", "fish", 15, "unknown `incident`"},
        Wrong{"sodium_bicarbonate", "salt_of_the_earth", 16, "unknown chemical"},
        Wrong{"\"unit\":\"L\"}},{\"chemical\":\"trichlor\"", "\"unit\":\"gal\"}},{\"chemical\":\"trichlor\"",
              17, "unknown unit"},
        Wrong{"2026-06-14T08:10:00-05:00", "2026-06-14 08:10", 2, "a time with its offset"},
        Wrong{"2026-06-14T08:10:00-05:00", "2026-02-30T08:10:00-05:00", 2, "a time with its offset"},
        Wrong{"\"bottle\":\"B-0001\"", "\"bottle\":7", 1, "`bottle` is a number"},
        Wrong{"brimline-visit/1", "brimline-visit/2", 1, "`format`"},
        Wrong{"\"id\":\"V-1\",", "", 1, "`id` is missing"},
        Wrong{"\"id\":\"V-1\"", "\"id\":\"V-1\",\"id\":\"V-2\"", 1, "`id` is there twice"},
        Wrong{"\"id\":\"V-1\"", "\"id\":\"\"", 1, "`id` is empty"},
        Wrong{"\"id\":\"V-1\"", "\"id\":\"V\\u0000\"", 1, "null character"},
        Wrong{"\"now\":\"no\"", "\"now\":true", 20, "`now`"},
        Wrong{"\"steps\":[", "\"steps\":3,\"x\":[", 23, "`steps` is a number"},
        Wrong{"\"built-in\"}}}", "\"built-in\"}}", 29, "not JSON"}));

TEST(VisitJson, AllFaultsInTheOrderOfLines) {
  const auto v = read_visit(
      "{\"format\":\"brimline-visit/1\",\n\"colour\":1,\n\"readings\":[{\"analyte\":\"ph\",\n\"value\":-1}]}",
      "f.json", 11);
  ASSERT_FALSE(v);
  std::vector<int> lines;
  for (const Fault& fault : v.error()) lines.push_back(fault.line);
  EXPECT_THAT(lines, testing::ElementsAre(11, 12, 14));
}

TEST(VisitJson, NothingAndHostileDepthAreRefused) {
  EXPECT_THAT(read_visit("", "e.json").error()[0].text(), testing::StartsWith("e.json:1: nothing is there"));
  EXPECT_FALSE(read_visit("[]", "e.json"));
  EXPECT_FALSE(read_visit("7", "e.json"));
  EXPECT_THAT(read_visit(std::string(1000000, '['), "deep.json").error()[0].text(),
              HasSubstr("nested too deep"));
  EXPECT_THAT(read_visit("{\"id\":\"\xff\"}", "u.json").error()[0].text(), HasSubstr("not JSON"));
}

}  // namespace
}  // namespace brimline
