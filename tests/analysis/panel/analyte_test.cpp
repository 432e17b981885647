// SPDX-License-Identifier: GPL-3.0-or-later
// Every reading file is opened and judged; the list and the units are those of the contract.
#include "analysis/panel/analyte.h"

#include <cmath>
#include <map>
#include <set>

#include <gtest/gtest.h>

namespace brimline {
namespace {

const std::map<std::string, std::string> kContractUnits = {{"free_chlorine", "mg/L Cl2"},
                                                           {"total_chlorine", "mg/L Cl2"},
                                                           {"total_bromine", "mg/L Br2"},
                                                           {"bromide", "mg/L"},
                                                           {"biguanide", "mg/L as 20 % product"},
                                                           {"peroxide", "mg/L H2O2"},
                                                           {"ph", ""},
                                                           {"total_alkalinity", "mg/L CaCO3"},
                                                           {"calcium_hardness", "mg/L CaCO3"},
                                                           {"magnesium_hardness", "mg/L CaCO3"},
                                                           {"total_hardness", "mg/L CaCO3"},
                                                           {"cyanuric_acid", "mg/L"},
                                                           {"iron", "mg/L"},
                                                           {"copper", "mg/L"},
                                                           {"manganese", "mg/L"},
                                                           {"tds", "mg/L"},
                                                           {"sulfate", "mg/L"},
                                                           {"salt", "mg/L"},
                                                           {"phosphate", "mg/L PO4"},
                                                           {"borate", "mg/L B"},
                                                           {"nitrate", "mg/L N"},
                                                           {"conductivity", "uS/cm at 25 C"},
                                                           {"turbidity", "NTU"}};

TEST(Analyte, EveryFileIsRead) {
  for (const embedded::Text& file : embedded::readings()) {
    const auto kind = read_analyte(file.text, file.name);
    if (!kind)
      for (const Fault& fault : kind.error()) ADD_FAILURE() << fault.text();
    else
      EXPECT_NE(std::string(file.name).find(kind->id + ".toml"), std::string::npos) << file.name;
  }
}

TEST(Analyte, TheContractsListAndUnits) {
  EXPECT_EQ(analyte_kinds().size(), kContractUnits.size());
  for (const auto& [id, unit] : kContractUnits) {
    const AnalyteKind* kind = find_analyte(id);
    ASSERT_NE(kind, nullptr) << id;
    EXPECT_EQ(kind->unit, unit) << id;
  }
  EXPECT_EQ(find_analyte("ozone"), nullptr);
}

TEST(Analyte, RangesLieInsideOneAnother) {
  for (const AnalyteKind& kind : analyte_kinds()) {
    EXPECT_FALSE(kind.methods.empty()) << kind.id;
    EXPECT_LE(kind.possible.low, kind.believable.low) << kind.id;
    EXPECT_GE(kind.possible.high, kind.believable.high) << kind.id;
    EXPECT_LE(kind.sound_h, kind.indicative_h) << kind.id;
    if (kind.default_target) {
      EXPECT_GE(kind.default_target->low, kind.believable.low) << kind.id;
      EXPECT_LE(kind.default_target->high, kind.believable.high) << kind.id;
    }
    std::set<Method> once;
    for (const MethodKind& method : kind.methods) {
      EXPECT_TRUE(once.insert(method.method).second) << kind.id;
      EXPECT_GE(method.range.low, kind.possible.low) << kind.id;
      EXPECT_LE(method.range.high, kind.possible.high) << kind.id;
      EXPECT_GT(std::hypot(method.sd_constant, method.sd_proportional), 0) << kind.id;
      EXPECT_LE(method.sd_constant, method.range.high - method.range.low) << kind.id;
      EXPECT_FALSE(method.origin.source.empty()) << kind.id;
    }
  }
}

// Standard Methods 4500-Cl F: FAS-DPD; ISO 7393-2:2017 covers 0.03 to 5 mg/L undiluted.
TEST(Analyte, PhotometersCoverThePublishedRange) {
  const MethodKind* dpd = find_analyte("free_chlorine")->method(Method::photometer);
  ASSERT_NE(dpd, nullptr);
  EXPECT_LE(dpd->range.low, 0.03);
  EXPECT_GE(dpd->range.high, 5);
  EXPECT_EQ(find_analyte("ph")->method(Method::drop_titration), nullptr);
}

// 159.808 g/mol of bromine over 70.906 g/mol of chlorine (IUPAC atomic weights): one scale is the other.
TEST(Analyte, BromineScaleIsTheChlorineScale) {
  const MethodKind* chlorine = find_analyte("free_chlorine")->method(Method::photometer);
  const MethodKind* bromine = find_analyte("total_bromine")->method(Method::photometer);
  EXPECT_NEAR(bromine->sd_constant / chlorine->sd_constant, 159.808 / 70.906, 0.06);
  EXPECT_NEAR(bromine->range.high / chlorine->range.high, 159.808 / 70.906, 0.06);
}

// 10 mg/L of alkalinity a drop, 0.2 mg/L of chlorine a drop: common practice, no source. Twelve drops of a
// sample at 1+4 are five times twelve of an undiluted one.
TEST(Analyte, DropsBecomeAValue) {
  const MethodKind& alkalinity = *find_analyte("total_alkalinity")->method(Method::drop_titration);
  EXPECT_DOUBLE_EQ(value_of_drops(alkalinity, 9), 90);
  const MethodKind& chlorine = *find_analyte("free_chlorine")->method(Method::drop_titration);
  EXPECT_NEAR(value_of_drops(chlorine, 12, 5), 12, 1e-12);
  for (const AnalyteKind& kind : analyte_kinds())
    if (const MethodKind* drops = kind.method(Method::drop_titration)) {
      EXPECT_GT(drops->step, 0) << kind.id;
      EXPECT_GE(drops->sd_constant, drops->step / std::sqrt(12.0)) << kind.id;  // a whole drop, rectangular
    }
}

TEST(Analyte, NumbersAreShownWithTheirDecimals) {
  EXPECT_EQ(format_value(*find_analyte("ph"), 7.6), "7.60");
  EXPECT_EQ(format_value(*find_analyte("total_alkalinity"), 99.6), "100");
  EXPECT_EQ(format_value(*find_analyte("iron"), -0.001), "0.00");
  EXPECT_EQ(format_with_unit(*find_analyte("calcium_hardness"), 250), "250 mg/L CaCO3");
  EXPECT_EQ(format_with_unit(*find_analyte("ph"), 7.2), "7.20");
}

std::string sound_file() {
  return std::string(embedded::readings()[0].text);
}

TEST(Analyte, AnUnknownKeyIsAFault) {
  const auto kind = read_analyte("colour = 'red'\n" + sound_file(), "x.toml");
  ASSERT_FALSE(kind);
  EXPECT_EQ(kind.error().front().line, 1);
}

TEST(Analyte, AMissingKeyIsAFault) {
  const std::string text = sound_file();
  for (const std::string key :
       {"id = ", "unit = ", "decimals = ", "possible = ", "believable = ", "sound_h = ", "interferences = ",
        "source = ", "method = ", "range = ", "sd_constant = "}) {
    std::string cut = text;
    const size_t at = cut.find("\n" + key);
    ASSERT_NE(at, std::string::npos) << key;
    cut.erase(at, cut.find('\n', at + 1) - at);
    EXPECT_FALSE(read_analyte(cut, "x.toml")) << key;
  }
}

TEST(Analyte, AWrongMethodOrRangeIsAFault) {
  const auto with = [](std::string from, const std::string& to) {
    std::string text = sound_file();
    const size_t at = text.find(from);
    text.replace(at, text.find('\n', at) - at, to);
    return read_analyte(text, "x.toml");
  };
  EXPECT_FALSE(with("method = ", "method = 'guess'"));
  EXPECT_FALSE(with("believable = ", "believable = [5, 1]"));
  EXPECT_FALSE(with("sd_constant = ", "sd_constant = -1"));
  EXPECT_FALSE(with("tag = ", "tag = 'X'"));
}

}  // namespace
}  // namespace brimline
