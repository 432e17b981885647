// SPDX-License-Identifier: GPL-3.0-or-later
// The headless answers in the languages of the counter: other sentences, the same numbers.
#include <gtest/gtest.h>

#include <fstream>
#include <functional>

#include <nlohmann/json.hpp>

#include "tests/support/run_program.h"

namespace brimline {
namespace {

using nlohmann::json;
using testing::run_program;
using testing::ScratchFolder;

// A bottle three hours old, bleached after a dose, and an overnight test.
const char* const kVisit = R"({"format":"brimline-visit/1","id":"V-1","bottle":"B-1",
"taken_at":"2026-06-14T08:10:00-05:00","tested_at":"2026-06-14T11:20:00-05:00",
"vessel":{"id":"W-1","kind":"pool","use":"household","volume_m3":50,"sanitizer":"chlorine","surface":"vinyl"},
"readings":[{"analyte":"free_chlorine","value":0},{"analyte":"total_chlorine","value":0.2},
{"analyte":"ph","value":7.9},{"analyte":"total_alkalinity","value":60}],
"demand_test":{"hours":24,"temperature_c":19,"bottles":[{"dose_mg_l":10,"free_mg_l":3,"total_mg_l":3.1}]}})";

// The answer with every sentence taken out, and the sentences.
std::pair<json, std::string> answer(const std::string& command, const std::string& language) {
  ScratchFolder folder;
  const std::string file = (folder / "visit.json").string();
  std::ofstream(file) << kVisit;
  const auto ran = run_program("brimline-batch", {command, file, "--language", language});
  EXPECT_EQ(ran.exit_code, 0) << ran.err;
  json all = json::parse(ran.out, nullptr, false);
  std::string sentences;
  const std::function<void(json&)> strip = [&](json& value) {
    if (value.is_object())
      for (const char* key : {"text", "amount_household", "cautions", "why_not"})
        if (value.contains(key)) {
          sentences += value[key].dump();
          value.erase(key);
        }
    if (value.is_structured())
      for (json& item : value) strip(item);
  };
  strip(all);
  return {all, sentences};
}

class Language : public ::testing::TestWithParam<const char*> {};

TEST_P(Language, ChangesTheSentencesAndNothingElse) {
  const auto [english, in_english] = answer(GetParam(), "en");
  for (const char* language : {"es", "fr"}) {
    const auto [other, in_other] = answer(GetParam(), language);
    EXPECT_EQ(english, other) << language;
    EXPECT_NE(in_english, in_other) << language;
    EXPECT_GT(in_other.size(), 60U);
  }
}

INSTANTIATE_TEST_SUITE_P(Commands, Language, ::testing::Values("check", "demand", "plan"),
                         [](const auto& row) { return std::string(row.param); });

TEST(LanguageFlag, OfNobodyIsRefused) {
  const auto ran = run_program("brimline-batch", {"check", "none.json", "--language", "tlh"});
  EXPECT_EQ(ran.exit_code, 2);
  EXPECT_NE(ran.err.find("expected en, es or fr"), std::string::npos);
}

}  // namespace
}  // namespace brimline
