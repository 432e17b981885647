// SPDX-License-Identifier: GPL-3.0-or-later
// How a chlorine-demand test is set up: whether one is wanted, which doses, how much stock, how strong.
// Doses are mg/L Cl2 in the finished mixture. The idea is that of Standard Methods 2350 (from memory); the
// ladders, volumes and limits are common practice, no source.
#pragma once

#include <optional>
#include <span>

#include "analysis/panel/bottle.h"
#include "analysis/panel/vessel.h"

namespace brimline {

// Why a test is wanted.
enum class DemandSign {
  used_up,        // no free chlorine although some was added or should be there
  combined_stays  // combined chlorine now and at the visit before
};

// Nothing where the vessel takes no chlorine, or where its readings ask for no test.
std::optional<DemandSign> demand_sign(const Bottle& bottle, const Vessel& vessel,
                                      std::span<const Bottle> earlier);

// Whether a test makes sense at all: the water is known to be kept with chlorine, and held no biguanide.
bool may_test_demand(const Vessel& vessel);

// How far the doses go.
enum class DemandReach { little, usual, much };

enum class ReachReason {
  holds,        // free chlorine stands: a small loss is looked for
  combined,     // ten times the combined chlorine, the most that the trade reckons with
  used_up,      // nothing stands, and nobody knows how much is missing
  algae,        // green or slimy: much organic matter
  known_above,  // an earlier test was used up
};

struct DemandReachAdvice {
  DemandReach reach = DemandReach::usual;
  ReachReason reason = ReachReason::used_up;
  double least = 0;  // the dose that the strongest bottle should reach
  friend bool operator==(const DemandReachAdvice&, const DemandReachAdvice&) = default;
};

// From the first readings, and from what an earlier test says the demand is above.
DemandReachAdvice advise_reach(const Bottle& bottle, std::optional<double> known_above = std::nullopt);

// Doses of the bottles, rising, the first of them 0: it shows what the water loses by itself.
std::span<const double> demand_doses(DemandReach reach);

// mL of stock for `sample_ml` of sample, so that the mixture has the dose: V d / (C - d). `stock_mg_l` is
// above the dose.
double stock_for(double dose_mg_l, double sample_ml, double stock_mg_l);
// The same as a syringe can measure it: to 0.01 mL below 1 mL, then to 0.1 mL.
double measurable_ml(double ml);
// The dose that so much stock makes: C Vs / (V + Vs).
double dose_made(double stock_ml, double sample_ml, double stock_mg_l);

// The stock aimed at, and the litre it is made up to.
inline constexpr double kStockAimed = 1000;   // mg/L Cl2
inline constexpr double kStockMadeUp = 1000;  // mL
// mL of bleach to be made up to kStockMadeUp; `available_g_l` grams Cl2 in a litre of it (trade percent
// times ten).
double bleach_for_stock(double available_g_l);

// The strength check: 1 mL of stock made up to 500 mL with water free of chlorine and of demand should
// read 2.0 mg/L, in the middle of what a photometer reads (ISO 7393-2:2017: 0.03 to 5 mg/L).
inline constexpr double kCheckStockMl = 1, kCheckMadeUpMl = 500;
double checked_stock(double reading_mg_l);
// Between half and twice what was aimed at; beyond, the stock was made wrongly or the bleach is spent.
bool is_sound_stock(double stock_mg_l);

// (sample + water) / sample at which what may be left stays inside 5 mg/L: 1, 5, 10 or 20.
double dilution_to_read(double dose_mg_l, std::optional<double> free_now);

}  // namespace brimline
