// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/printing/sample_visit.h"

namespace brimline {
namespace {

Reading reading(const char* analyte, double value) {
  Reading out;
  out.analyte = analyte;
  out.value = value;
  out.method = Method::photometer;
  return out;
}

Finding finding(const char* id, int rank, const char* analyte, double value, Target target,
                const char* text) {
  Finding out;
  out.id = id;
  out.rank = rank;
  out.analyte = analyte;
  out.value = value;
  out.target = target;
  out.text = text;
  return out;
}

Step add(int order, const char* chemical, const ProductAmount& amount, const char* household, double start_h,
         double wait_h, const char* text, std::vector<std::string> cautions) {
  Step out;
  out.order = order;
  out.chemical = chemical;
  out.amount = amount;
  out.amount_household = household;
  out.start_h = start_h;
  out.wait_h = wait_h;
  out.text = text;
  out.cautions = std::move(cautions);
  return out;
}

Plan sample_plan() {
  Plan plan;
  plan.swim = {false, {"chlorine_low"}, 3, 14.5};
  plan.findings = {
      finding(
          "chlorine_low", 1, "free_chlorine", 0.4, {2, 4},
          "Free chlorine is 0.40 mg/L, too little to keep the water safe; it should stand between 2 and 4."),
      finding("ph_high", 2, "ph", 7.9, {7.2, 7.6},
              "The pH of 7.90 is above its range, so the chlorine that is there works slowly and scale can "
              "form."),
      finding("alkalinity_high", 3, "total_alkalinity", 132, {80, 120},
              "Total alkalinity is 132 mg/L, a little high, which keeps pushing the pH up."),
      finding("calcium_low", 4, "calcium_hardness", 150, {200, 400},
              "Calcium hardness is 150 mg/L; below 200 the water takes calcium out of the plaster."),
  };
  plan.steps.push_back(
      add(1, "hydrochloric_acid", {1.06, "L"}, "4 1/2 cups", 0, 4,
          "With the pump running, pour the muriatic acid slowly into the deep end, walking along the "
          "edge, away from the skimmer and from metal.",
          {"Acid burns skin and eyes: goggles and gloves, wind at your back.",
           "Never bring acid near chlorine, not even the empty measuring cup."}));
  plan.steps.push_back(
      add(2, "sodium_hypochlorite", {1.9, "L"}, "2 quarts", 4.5, 10,
          "After dark, pour the liquid chlorine in along the edge with the pump running and leave the "
          "pump on over night.",
          {"Wait until the clock says so: acid and chlorine must never meet."}));
  Step brush;
  brush.order = 3;
  brush.action = Action::brush;
  brush.start_h = 14.5;
  brush.text = "Brush the walls and the floor, and run the filter for six hours.";
  plan.steps.push_back(brush);
  plan.steps.push_back(
      add(4, "calcium_chloride", {5.4, "kg"}, "5 lb 15 oz", 26.5, 4,
          "Dissolve each portion in a clean bucket of pool water as its label allows, then pour it in "
          "slowly around the pool with the pump running.",
          {"It gets hot while it dissolves: add the flakes to the water, never water to the flakes."}));
  plan.steps.back().portions = 2;
  plan.steps.back().portion_gap_h = 4;
  Step retest;
  retest.order = 5;
  retest.action = Action::retest;
  retest.start_h = 48;
  retest.text = "Fill a fresh bottle from elbow depth and bring it in the same day.";
  plan.steps.push_back(retest);
  plan.predicted = {{"ph", {7.5, 0.08}},
                    {"total_alkalinity", {118, 6}},
                    {"calcium_hardness", {232, 12}},
                    {"free_chlorine", {4.2, 0.4}}};
  plan.retest = Retest{24, {"ph", "free_chlorine", "total_alkalinity"}};
  plan.cautions = {
      "Keep children and pets away from the water and the products until the last step is done."};
  plan.basis = {"0.1", "household", "built-in"};
  return plan;
}

}  // namespace

Visit sample_visit() {
  Visit visit;
  visit.id = "V-1042";
  visit.bottle.code = "B-0417";
  visit.bottle.taken_at = Instant::parse("2026-06-14T08:10:00-05:00");
  visit.bottle.tested_at = Instant::parse("2026-06-14T09:02:00-05:00");
  visit.home_at = Instant::parse("2026-06-14T17:30:00-05:00");
  visit.bottle.sample_temperature = Temperature::celsius(22);
  visit.bottle.readings = {reading("free_chlorine", 0.4),
                           reading("total_chlorine", 0.6),
                           reading("ph", 7.9),
                           reading("total_alkalinity", 132),
                           reading("calcium_hardness", 150),
                           reading("cyanuric_acid", 38),
                           reading("iron", 0.02),
                           reading("copper", 0.05)};
  Reading again = reading("free_chlorine", 0.42);
  again.repeat_of = 0;
  visit.bottle.readings.push_back(again);
  visit.vessel.id = "W-7";
  visit.vessel.kind = VesselKind::pool;
  visit.vessel.place = Place::outdoor;
  visit.vessel.volume = Volume::us_gallons(15000);
  visit.vessel.sanitizer = Sanitizer::chlorine;
  Customer customer;
  customer.id = "C-3";
  customer.name = "Marisol Brandt";
  customer.units = Units::us;
  visit.customer = customer;
  visit.plan_as_told = sample_plan();
  return visit;
}

Visit sample_earlier_visit() {
  Visit visit = sample_visit();
  visit.id = "V-0988";
  visit.plan_as_told.reset();
  visit.bottle.code = "B-0371";
  visit.bottle.readings = {reading("free_chlorine", 2.6), reading("ph", 7.45),
                           reading("total_alkalinity", 118), reading("calcium_hardness", 214)};
  return visit;
}

Visit sample_refused_visit() {
  Visit visit = sample_visit();
  visit.id = "V-1043";
  visit.vessel.use = VesselUse::public_use;
  Plan plan = *visit.plan_as_told;
  plan.home_plan = false;
  plan.why_not =
      "This water serves the public: your local code and a licensed operator say what is to be done. "
      "These are the readings only.";
  plan.swim = {};
  plan.predicted.clear();
  plan.steps.resize(1);
  plan.steps.front() = Step{};
  plan.steps.front().action = Action::call_professional;
  plan.steps.front().text = "Take these readings to the operator of the pool today.";
  visit.plan_as_told = plan;
  return visit;
}

Visit sample_long_visit() {
  Visit visit = sample_visit();
  const auto thrice = [](std::string& text) { text = text + " " + text + " " + text; };
  visit.customer->name =
      "Maximiliana-Theodora von und zu Hohenzollern-Beispielhausen and the Committee of Friends";
  for (Finding& finding : visit.plan_as_told->findings) thrice(finding.text);
  for (Step& step : visit.plan_as_told->steps) {
    thrice(step.text);
    for (std::string& caution : step.cautions) thrice(caution);
  }
  visit.plan_as_told->steps.front().text +=
      " See https://example.invalid/" + std::string(180, 'x') + "/leaflet before opening.";
  return visit;
}

ShopDetails sample_shop() {
  return {"Kestrel Pool & Spa Supply",
          "12 Invented Row, Sample City",
          "555-0142",
          {{"Emergency", "911"}, {"Poison line", "1-800-222-1222"}}};
}

}  // namespace brimline
