// SPDX-License-Identifier: GPL-3.0-or-later
// The volume as the water tells it, visit by visit, and what becomes of it when the clerk takes it.
#include <cmath>

#include <gtest/gtest.h>

#include "station/compare/compare.h"
#include "station/compare/volume_words.h"
#include "station/plan/plan_service.h"
#include "station/visit_json.h"

namespace brimline {
namespace {

const Words& english() {
  static const Words words;
  return words;
}

Visit visit_at(int month, double alkalinity, double hardness) {
  Visit v;
  v.id = "V-" + std::to_string(month);
  v.bottle.taken_at = Instant::parse("2026-0" + std::to_string(month) + "-14T08:00:00Z");
  v.bottle.tested_at = v.bottle.taken_at;
  v.vessel.id = "W-1";
  v.vessel.kind = VesselKind::pool;
  v.vessel.sanitizer = Sanitizer::salt_chlorine;
  v.vessel.volume = Volume::cubic_metres(57);
  v.vessel.volume_relative_sd = 0.2;
  for (const auto& [analyte, value] :
       {std::pair{"total_alkalinity", alkalinity}, {"calcium_hardness", hardness}}) {
    Reading r;
    r.analyte = analyte;
    r.value = value;
    r.method = Method::drop_titration;
    v.bottle.readings.push_back(r);
  }
  return v;
}

// A vessel of 48 m3 with 57 on file. Each month the water is brought back to where it was and calcium
// chloride put in: 1 mol is 100.09 g of hardness as CaCO3 (IUPAC weights), so 100 mol raise 48 m3 by 208.5
// mg/L.
std::vector<Visit> months(int visits) {
  std::vector<Visit> out;
  double hardness = 150;
  for (int i = 0; i < visits; ++i) {
    Visit v = visit_at(4 + i, 90, hardness);
    if (i > 0) v.bottle.additions_since = {{"calcium_chloride", 60.0, 10.0}};
    out.push_back(v);
    hardness += 60 * 100.0869 / 48;
  }
  return out;
}

VolumeFound found_in(const std::vector<Visit>& visits) {
  const auto volume = compare(visits, english()).volume;
  EXPECT_TRUE(volume);
  return volume.value_or(VolumeFound{});
}

TEST(TrueVolume, ComesNearerAndNarrowsVisitByVisit) {
  double sd = 57 * 0.2, off = 57 - 48;
  for (int n = 2; n <= 5; ++n) {
    const VolumeFound found = found_in(months(n));
    EXPECT_LT(found.sd, sd) << n;
    EXPECT_LT(std::abs(found.m3 - 48), off + 0.5) << n;
    sd = found.sd;
    off = std::abs(found.m3 - 48);
  }
  EXPECT_LT(off, 2 * sd);
}

// What the clerk took is in the volume on file: the same bottles do not count once more.
TEST(TrueVolume, TakenItIsNotCountedTwice) {
  std::vector<Visit> visits = months(4);
  const VolumeFound found = found_in(visits);
  visits.back().vessel = with_volume(visits.back().vessel, found, *visits.back().bottle.taken_at);
  EXPECT_DOUBLE_EQ(visits.back().vessel.volume->cubic_metres(), found.m3);
  EXPECT_NEAR(*visits.back().vessel.volume_relative_sd * found.m3, found.sd, 1e-12);
  EXPECT_FALSE(compare(visits, english()).volume) << "nothing has answered since";

  std::vector<Visit> five = months(5);
  const VolumeFound straight = found_in(five);
  for (int i = 3; i < 5; ++i) five[static_cast<size_t>(i)].vessel = visits.back().vessel;
  const VolumeFound by_steps = found_in(five);
  // Bayes' rule in one go or in two steps; the second takes a normal shape for what the first found
  EXPECT_NEAR(by_steps.m3, straight.m3, straight.sd);
  EXPECT_NEAR(by_steps.sd, straight.sd, 0.35 * straight.sd);
  EXPECT_LT(by_steps.sd, found.sd);
}

TEST(TrueVolume, IsGivenBackAsItWas) {
  const std::vector<Visit> visits = months(3);
  const Vessel before = visits.back().vessel;
  const Vessel taken = with_volume(before, found_in(visits), *visits.back().bottle.taken_at);
  EXPECT_NE(taken, before);
  EXPECT_EQ(without_lesson(taken), before);
  EXPECT_EQ(without_lesson(before), before);
  // taken twice, the first file still stands behind it
  const Vessel again = with_volume(taken, {47, 2, true}, *visits.back().bottle.taken_at);
  EXPECT_EQ(without_lesson(again), before);
}

// Typed anew, a volume owes nothing to the bottles before: all of them speak of it.
TEST(TrueVolume, ATypedVolumeIsNoLesson) {
  std::vector<Visit> visits = months(4);
  Vessel vessel = with_volume(visits.back().vessel, found_in(visits), *visits.back().bottle.taken_at);
  vessel.volume = Volume::cubic_metres(50);
  vessel.volume_relative_sd = 0.1;
  EXPECT_EQ(standing_lesson(vessel), nullptr);
  visits.back().vessel = vessel;
  EXPECT_TRUE(compare(visits, english()).volume);
  EXPECT_TRUE(lesson_sentence(english(), vessel, Units::metric).empty());
}

TEST(TrueVolume, CorrectsTheNextPlan) {
  std::vector<Visit> visits = months(4);
  Visit visit = visits.back();
  visit.bottle.readings.clear();
  visit.vessel.sanitizer = Sanitizer::chlorine;
  visit.vessel.surface = Surface::plaster;
  visit.vessel.use = VesselUse::household;
  visit.vessel.place = Place::outdoor;
  for (const auto& [analyte, value] : {std::pair{"ph", 7.5},
                                       {"total_alkalinity", 50.0},
                                       {"calcium_hardness", 300.0},
                                       {"cyanuric_acid", 40.0},
                                       {"free_chlorine", 3.0}}) {
    Reading r;
    r.analyte = analyte;
    r.value = value;
    visit.bottle.readings.push_back(r);
  }
  const auto bicarbonate = [](const Plan& plan) {
    for (const Step& step : plan.steps)
      if (step.chemical == "sodium_bicarbonate") return step.active_mol.value_or(0);
    return 0.0;
  };
  const auto plan = [](const Visit& of) {
    return make_plan(of, {}, built_in_shelf(), *find_targets("household"), english());
  };
  const double before = bicarbonate(plan(visit));
  visit.vessel = with_volume(visit.vessel, {48, 4, false}, *visit.bottle.taken_at);
  const double after = bicarbonate(plan(visit));
  ASSERT_GT(before, 0);
  EXPECT_NEAR(after / before, 48.0 / 57, 0.05);
}

TEST(TrueVolume, IsSaidInTheCustomersUnits) {
  Vessel vessel;
  vessel.volume = Volume::cubic_metres(57);
  vessel.volume_relative_sd = 0.1;
  EXPECT_EQ(found_volume_sentence(english(), {48.2, 4.1, false}, vessel, Units::metric),
            "From how the water answered the doses: 48 ± 4 m³; on file: 57 m³.");
  // 1 US gallon is 3.785412 L (NIST SP 811): 48.2 m3 are 12,733, 4.1 m3 1,083, 57 m3 15,058
  EXPECT_EQ(found_volume_sentence(english(), {48.2, 4.1, false}, vessel, Units::us),
            "From how the water answered the doses: 12,700 ± 1,100 US gallons; on file: 15,100 US gallons.");
  EXPECT_EQ(volume_words(Words("fr"), 1.234, 0.1, Units::metric), "1,23 m³");
}

}  // namespace
}  // namespace brimline
