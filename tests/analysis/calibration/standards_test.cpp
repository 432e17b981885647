// SPDX-License-Identifier: GPL-3.0-or-later
#include "analysis/calibration/standards.h"

#include <vector>

#include <gtest/gtest.h>

namespace brimline {
namespace {

// Standard Methods 4500-Cl G (from memory): 891 mg/L of KMnO4 stands for 1000 mg/L of chlorine; stoichiometry
// says 999.4.
TEST(Standards, Permanganate) {
  EXPECT_NEAR(chlorine_of_permanganate(891), 999.4, 0.1);
  EXPECT_NEAR(chlorine_of_permanganate(891), 1000, 1);
}

// ISO 7393-2 (from memory): 1.006 g/L of KIO3 stands for 1000 mg/L of chlorine; stoichiometry says 999.97.
TEST(Standards, Iodate) {
  EXPECT_NEAR(chlorine_of_iodate(1006), 999.97, 0.05);
}

// Standard Methods 4500-Cl G (from memory): 10 mL to 100 mL, then 1 mL to 100 mL of a 1000 mg/L stock is 1.00
// mg/L; and its row of standards.
TEST(Standards, ChainsOfDilution) {
  EXPECT_NEAR(diluted(1000, std::vector<MadeUp>{{10, 100}, {1, 100}}), 1.00, 1e-12);
  const struct {
    double millilitres, mg_l;
  } rows[] = {{1, 0.10}, {5, 0.50}, {10, 1.00}, {20, 2.00}, {40, 4.00}};
  for (const auto& row : rows)
    EXPECT_NEAR(diluted(1000, std::vector<MadeUp>{{1, 100}, {row.millilitres, 100}}), row.mg_l, 1e-12);
}

}  // namespace
}  // namespace brimline
