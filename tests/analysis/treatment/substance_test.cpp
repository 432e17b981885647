// SPDX-License-Identifier: GPL-3.0-or-later
#include "analysis/treatment/substance.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "analysis/findings/targets.h"

namespace brimline {
namespace {

std::string joined(const std::vector<Fault>& faults) {
  std::string out;
  for (const Fault& f : faults) out += f.text() + "\n";
  return out;
}

TEST(Substances, EveryFileIsSound) {
  EXPECT_EQ(joined(substance_faults()), "");
}

TEST(Targets, EveryFileIsSound) {
  EXPECT_EQ(joined(target_faults()), "");
}

TEST(Substances, EveryChemicalOfTheContractIsThere) {
  for (const char* id : {"hydrochloric_acid",
                         "sodium_bisulfate",
                         "sodium_bicarbonate",
                         "sodium_carbonate",
                         "sodium_sesquicarbonate",
                         "calcium_chloride",
                         "cyanuric_acid",
                         "sodium_hypochlorite",
                         "calcium_hypochlorite",
                         "dichlor",
                         "trichlor",
                         "potassium_monopersulfate",
                         "hydrogen_peroxide",
                         "sodium_bromide",
                         "bcdmh",
                         "sodium_thiosulfate",
                         "sodium_sulfite",
                         "ascorbic_acid",
                         "boric_acid",
                         "borax",
                         "sodium_chloride",
                         "lanthanum_chloride",
                         "sequestrant",
                         "polyquat",
                         "phmb",
                         "clarifier",
                         "alum",
                         "copper_sulfate"})
    EXPECT_NE(find_substance(id), nullptr) << id;
  EXPECT_EQ(substances().size(), 28u);
  EXPECT_FALSE(find_substance("copper_sulfate")->dosed);
}

// GHS: H314 burns the skin, H318 damages eyes. What carries either is never handed out without a
// sentence that puts goggles and gloves on; "label" alone is none.
TEST(Substances, WhatBurnsSaysGogglesAndGloves) {
  const auto among = [](const std::vector<std::string>& all, std::initializer_list<const char*> wanted) {
    return std::any_of(all.begin(), all.end(), [&](const std::string& one) {
      return std::find(wanted.begin(), wanted.end(), one) != wanted.end();
    });
  };
  int burning = 0;
  for (const Substance& s : substances()) {
    if (!s.dosed || !among(s.hazards, {"H314", "H318"})) continue;
    ++burning;
    EXPECT_TRUE(among(s.cautions, {"acid", "oxidiser", "bleach", "burns"})) << s.id;
  }
  EXPECT_GE(burning, 8);
}

TEST(Substances, AcidAndChlorineKeepApart) {
  const Conflict* c =
      conflict_between(*find_substance("sodium_hypochlorite"), *find_substance("hydrochloric_acid"));
  ASSERT_NE(c, nullptr);
  EXPECT_EQ(c->gap_h, 4);
  EXPECT_EQ(c->gap_spa_h, 1);
  // J Toxicol Clin Toxicol 1995;33(4):349-354: hypochlorite with isocyanurate exploded.
  const Conflict* never =
      conflict_between(*find_substance("calcium_hypochlorite"), *find_substance("trichlor"));
  ASSERT_NE(never, nullptr);
  EXPECT_EQ(never->gap_h, std::nullopt);
}

TEST(Targets, TheMostParticularRowWins) {
  const TargetSet* home = find_targets("household");
  ASSERT_NE(home, nullptr);
  TargetCase c{Sanitizer::chlorine, VesselKind::pool, Place::outdoor, Surface::plaster, 60.0, 7.5, 27.0};
  EXPECT_EQ(home->find("free_chlorine", c)->range.low, 3.0);  // CYA/20
  c.cyanuric_acid = 0;
  EXPECT_EQ(home->find("free_chlorine", c)->range.low, 1.0);
  c.kind = VesselKind::spa;
  EXPECT_EQ(home->find("free_chlorine", c)->range.low, 3.0);
  EXPECT_FALSE(home->find("total_bromine", c));
}

// 22 CCR 65529 as read: pools 1.0 without and 2.0 with cyanuric acid, spas 3.0, at most 10.
TEST(Targets, CaliforniaSaysWhatItsRuleSays) {
  const TargetSet* set = find_targets("california");
  ASSERT_NE(set, nullptr);
  TargetCase c{Sanitizer::chlorine, VesselKind::pool, Place::outdoor, {}, 30.0, 7.5, {}};
  EXPECT_EQ(set->find("free_chlorine", c)->range, (Target{2.0, 10.0}));
  c.cyanuric_acid.reset();
  EXPECT_EQ(set->find("free_chlorine", c)->range, (Target{1.0, 10.0}));
  c.kind = VesselKind::spa;
  EXPECT_EQ(set->find("free_chlorine", c)->range, (Target{3.0, 10.0}));
}

}  // namespace
}  // namespace brimline
