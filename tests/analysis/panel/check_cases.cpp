// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/analysis/panel/check_cases.h"

namespace brimline {

Reading read(AnalyteId analyte, double value, std::optional<Method> method, double dilution) {
  Reading r;
  r.analyte = std::move(analyte);
  r.value = value;
  r.method = method;
  r.dilution = dilution;
  return r;
}

Reading clipped(AnalyteId analyte, double value, Clip clip, Method method) {
  Reading r = read(std::move(analyte), value, method);
  r.clipped = clip;
  return r;
}

Case sound() {
  Case c;
  c.bottle.taken_at = Instant::parse("2026-06-14T08:10:00-05:00");
  c.bottle.tested_at = Instant::parse("2026-06-14T09:02:00-05:00");
  c.bottle.occasion = Occasion::routine;
  c.bottle.sample_temperature = Temperature::celsius(23);
  c.vessel.id = "W-1";
  c.vessel.kind = VesselKind::pool;
  c.vessel.use = VesselUse::household;
  c.vessel.place = Place::outdoor;
  c.vessel.volume = Volume::cubic_metres(50);
  c.vessel.sanitizer = Sanitizer::chlorine;
  for (const auto& [analyte, value] : std::vector<std::pair<std::string, double>>{{"free_chlorine", 3},
                                                                                  {"total_chlorine", 3},
                                                                                  {"ph", 7.5},
                                                                                  {"total_alkalinity", 95},
                                                                                  {"calcium_hardness", 280},
                                                                                  {"cyanuric_acid", 42},
                                                                                  {"iron", 0.02},
                                                                                  {"copper", 0.03},
                                                                                  {"tds", 1150},
                                                                                  {"salt", 600}})
    c.bottle.readings.push_back(read(analyte, value));
  return c;
}

namespace {

Bottle month_before(const Case& c) {
  Bottle b = c.bottle;
  b.taken_at = Instant::parse("2026-05-14T08:10:00-05:00");
  b.tested_at = Instant::parse("2026-05-14T09:10:00-05:00");
  for (Reading& r : b.readings) r.value *= 1.02;
  return b;
}

void bromine(Case& c) {
  c.vessel.sanitizer = Sanitizer::bromine;
  c.drop("total_chlorine");
  c.drop("cyanuric_acid");
}

}  // namespace

ReagentLot& lot(Case& c) {
  c.bottle.readings.front().lot = "L-7";
  ReagentLot good;
  good.lot = "L-7";
  good.expires = Instant::parse("2027-12-31T23:59:59Z");
  good.opened = Instant::parse("2026-05-01T08:00:00Z");
  good.warmest_c = 24;
  c.supplies.lots = {good};
  return c.supplies.lots.front();
}

void checked(Case& c, const char* when, bool passed) {
  for (Reading& r : c.bottle.readings) r.instrument = "photometer 1";
  c.supplies.checks.push_back({"photometer 1", std::nullopt, *Instant::parse(when), passed});
}

std::ostream& operator<<(std::ostream& out, const Fires& f) {
  return out << f.id;
}

const std::vector<Fires>& fires() {
  using V = Verdict;
  static const std::vector<Fires> rows = {
      {"clipped_above", V::dilute,
       [](Case& c) {
         c.drop("free_chlorine");
         c.bottle.readings.push_back(clipped("free_chlorine", 10, Clip::above));
       }},
      {"over_range", V::dilute, [](Case& c) { c.set("copper", 6); }},
      {"clipped_below", V::note,
       [](Case& c) {
         c.drop("iron");
         c.bottle.readings.push_back(clipped("iron", 0.02, Clip::below));
       }},
      {"diluted_too_far", V::note,
       [](Case& c) {
         c.drop("copper");
         c.bottle.readings.push_back(read("copper", 0.3, Method::photometer, 10));
       }},
      {"ph_diluted", V::reject,
       [](Case& c) {
         c.drop("ph");
         c.bottle.readings.push_back(read("ph", 7.4, Method::photometer, 2));
       }},
      {"ph_outside_dye", V::repeat, [](Case& c) { c.set("ph", 8.7); }},
      {"ph_unbelievable", V::repeat, [](Case& c) { c.set("ph", 11.5, Method::probe); }},
      {"unbelievable", V::repeat, [](Case& c) { c.set("calcium_hardness", 2400, Method::drop_titration); }},
      {"method_not_for_analyte", V::note, [](Case& c) { c.set("ph", 7.5, Method::turbidity_tube); }},
      {"repeats_scatter", V::repeat, [](Case& c) { c.bottle.readings.push_back(read("ph", 8.0)); }},
      {"repeat_outlier", V::note,
       [](Case& c) {
         c.bottle.readings.push_back(read("ph", 7.51));
         c.bottle.readings.push_back(read("ph", 8.1));
       }},
      {"methods_disagree", V::repeat,
       [](Case& c) {
         c.bottle.readings.push_back(read("calcium_hardness", 420, Method::drop_titration));
       }},
      {"bleaching_proved", V::note,
       [](Case& c) {
         c.set("free_chlorine", 0);
         c.bottle.readings.push_back(read("free_chlorine", 15, Method::photometer, 5));
         c.drop("total_chlorine");
       }},
      {"bottle_two_hours", V::note,
       [](Case& c) {
         c.bottle.tested_at = Instant::parse("2026-06-14T12:10:00-05:00");
       }},
      {"bottle_six_hours", V::reject,
       [](Case& c) {
         c.bottle.tested_at = Instant::parse("2026-06-14T18:10:00-05:00");
       }},
      {"bottle_day_old", V::fresh_sample,
       [](Case& c) {
         c.bottle.tested_at = Instant::parse("2026-06-15T12:10:00-05:00");
       }},
      {"age_unknown", V::note, [](Case& c) { c.bottle.taken_at.reset(); }},
      {"clocks_contradict", V::note,
       [](Case& c) {
         c.bottle.tested_at = Instant::parse("2026-06-13T12:10:00-05:00");
       }},
      {"time_in_future", V::note, [](Case& c) { c.now = Instant::parse("2026-06-10T12:10:00-05:00"); }},
      {"sample_cold", V::repeat, [](Case& c) { c.bottle.sample_temperature = Temperature::celsius(9); }},
      {"wrong_place", V::fresh_sample, [](Case& c) { c.bottle.sampled_at = SampledAt::inlet; }},
      {"sample_warm", V::repeat, [](Case& c) { c.bottle.sample_temperature = Temperature::celsius(36); }},
      {"just_dosed", V::fresh_sample, [](Case& c) { c.add("hydrochloric_acid", 0.1); }},
      {"after_storm", V::note, [](Case& c) { c.bottle.occasion = Occasion::after_storm; }},
      {"opening_in_layers", V::note, [](Case& c) { c.bottle.occasion = Occasion::opening; }},
      {"free_above_total", V::repeat, [](Case& c) { c.set("total_chlorine", 1.8); }},
      {"combined_not_significant", V::note, [](Case& c) { c.set("total_chlorine", 3.1); }},
      {"bleached", V::dilute,
       [](Case& c) {
         c.set("free_chlorine", 0);
         c.set("total_chlorine", 0);
         c.add("sodium_hypochlorite", 1.0);
       }},
      {"chlorine_near_bleaching", V::note,
       [](Case& c) {
         c.set("free_chlorine", 8);
         c.set("total_chlorine", 8);
       }},
      {"non_chlorine_oxidiser", V::repeat,
       [](Case& c) {
         c.set("total_chlorine", 4.5);
         c.add("potassium_monopersulfate", 1.0);
       }},
      {"manganese_reads_as_chlorine", V::repeat, [](Case& c) { c.set("manganese", 0.6); }},
      {"copper_reads_as_chlorine", V::repeat,
       [](Case& c) {
         c.drop("copper");
         c.bottle.readings.push_back(read("copper", 12, Method::photometer, 5));
       }},
      {"bromine_reads_as_chlorine", V::note,
       [](Case& c) {
         c.vessel.previous_sanitizer = Sanitizer::bromine;
       }},
      {"peroxide_with_chlorine", V::repeat, [](Case& c) { c.set("peroxide", 30); }},
      {"reducer_left_over", V::note,
       [](Case& c) {
         c.set("free_chlorine", 0);
         c.set("total_chlorine", 0);
         c.add("sodium_thiosulfate", 3.0);
       }},
      {"green_in_spite_of_chlorine", V::note,
       [](Case& c) {
         c.drop("copper");
         c.bottle.signs = {Sign::green_water};
       }},
      {"chlorine_counts_as_bromine", V::note, bromine},
      {"bromine_and_chlorine_disagree", V::repeat, [](Case& c) { bromine(c); c.set("total_bromine", 3); }},
      {"stabilizer_in_bromine", V::note, [](Case& c) { bromine(c); c.set("cyanuric_acid", 40); }},
      {"stabilizer_in_biguanide", V::note, [](Case& c) { c.vessel.sanitizer = Sanitizer::biguanide; }},
      {"chlorine_with_biguanide", V::reject,
       [](Case& c) {
         c.vessel.sanitizer = Sanitizer::biguanide;
         c.set("biguanide", 40);
       }},
      {"biguanide_left_over", V::note, [](Case& c) { c.vessel.previous_sanitizer = Sanitizer::biguanide; }},
      {"peroxide_in_chlorine_vessel", V::note, [](Case& c) { c.add("hydrogen_peroxide", 3.0); }},
      {"halogen_spoils_ph", V::repeat,
       [](Case& c) {
         c.set("free_chlorine", 15);
         c.set("total_chlorine", 15);
       }},
      {"halogen_spoils_alkalinity", V::repeat,
       [](Case& c) {
         c.set("free_chlorine", 15);
         c.set("total_chlorine", 15);
       }},
      {"alkalinity_below_stabilizer", V::repeat,
       [](Case& c) {
         c.set("total_alkalinity", 12);
         c.set("cyanuric_acid", 90);
       }},
      {"ph_and_alkalinity_contradict", V::repeat, [](Case& c) { c.set("ph", 4.0, Method::probe); }},
      {"unbuffered_ph", V::note, [](Case& c) { c.set("total_alkalinity", 24); c.drop("cyanuric_acid"); }},
      {"ph_not_read", V::note, [](Case& c) { c.drop("ph"); }},
      {"stabilizer_over_range", V::dilute, [](Case& c) { c.set("cyanuric_acid", 130); }},
      {"stabilizer_below_floor", V::note,
       [](Case& c) {
         c.set("cyanuric_acid", 12, Method::turbidity_tube);
       }},
      {"stabilizer_temperature", V::note,
       [](Case& c) {
         c.bottle.sample_temperature = Temperature::celsius(16);
       }},
      {"stabilizer_in_cloudy_sample", V::repeat, [](Case& c) { c.set("turbidity", 12); }},
      {"stabilizer_indoors", V::note, [](Case& c) { c.vessel.place = Place::indoor; }},
      {"tablets_in_use", V::note, [](Case& c) { c.bottle.signs = {Sign::tablets_in_use}; }},
      {"calcium_above_total", V::repeat, [](Case& c) { c.set("total_hardness", 180); }},
      {"hardness_does_not_add", V::repeat,
       [](Case& c) {
         c.set("total_hardness", 460);
         c.set("magnesium_hardness", 40);
       }},
      {"metals_in_hardness", V::note,
       [](Case& c) {
         c.set("calcium_hardness", 280, Method::drop_titration);
         c.set("copper", 0.8);
       }},
      {"salt_above_solids", V::repeat, [](Case& c) { c.set("salt", 1900); }},
      {"solids_below_ions", V::repeat, [](Case& c) { c.set("tds", 400); }},
      {"solids_and_conductivity", V::repeat, [](Case& c) { c.set("conductivity", 5200, Method::probe); }},
      {"salt_low_for_cell", V::note, [](Case& c) { c.vessel.sanitizer = Sanitizer::salt_chlorine; }},
      {"metals_hidden", V::note, [](Case& c) { c.add("sequestrant", 5.0); }},
      {"stains_without_metal", V::note, [](Case& c) { c.bottle.signs = {Sign::stains}; }},
      {"phosphate_from_sequestrant", V::note,
       [](Case& c) {
         c.set("phosphate", 0.3);
         c.add("sequestrant", 30.0);
       }},
      {"phosphate_unit", V::repeat, [](Case& c) { c.set("phosphate", 350); }},
      {"borate_unit", V::repeat, [](Case& c) { c.set("borate", 280, Method::drop_titration); }},
      {"nitrate_with_chlorine", V::note,
       [](Case& c) {
         c.set("nitrate", 5);
         c.set("free_chlorine", 4);
         c.set("total_chlorine", 4);
       }},
      {"same_as_last_time", V::repeat,
       [](Case& c) {
         c.earlier = {month_before(c)};
         c.earlier[0].readings = c.bottle.readings;
       }},
      {"value_as_last_time", V::note,
       [](Case& c) {
         c.earlier = {month_before(c)};
         c.earlier[0].readings[4] = c.bottle.readings[4];  // hardness: a small step beside its error
       }},
      {"moved_too_far", V::repeat,
       [](Case& c) {
         c.earlier = {month_before(c)};
         for (Reading& r : c.earlier[0].readings) if (r.analyte == "calcium_hardness") r.value = 60;
       }},
      {"fell_alone", V::repeat, [](Case& c) { c.earlier = {month_before(c)}; c.set("cyanuric_acid", 8); }},
      {"earlier_out_of_order", V::note,
       [](Case& c) {
         c.earlier = {month_before(c)};
         c.earlier[0].taken_at = Instant::parse("2026-07-14T08:10:00-05:00");
       }},
      {"public_water", V::note, [](Case& c) { c.vessel.use = VesselUse::public_use; }},
      {"sanitizer_unknown", V::note, [](Case& c) { c.vessel.sanitizer.reset(); }},
      {"sanitizer_not_read", V::note, [](Case& c) { c.drop("free_chlorine"); }},
      {"volume_unknown", V::note, [](Case& c) { c.vessel.volume.reset(); }},
      {"incident_told", V::note, [](Case& c) { c.bottle.incident = Incident::vomit; }},
      {"strips_only", V::note,
       [](Case& c) {
         for (Reading& r : c.bottle.readings) r.method = Method::strip;
       }},
      {"demand_control", V::repeat,
       [](Case& c) {
         c.bottle.demand_test = DemandTest{};
         DemandBottle b;
         b.free_mg_l = 6;
         c.bottle.demand_test->bottles = {b};
       }},
      {"demand_test_due", V::note,
       [](Case& c) {
         c.set("free_chlorine", 0.1);
         c.set("total_chlorine", 0.2);
         c.add("sodium_hypochlorite", 4.0);
       }},
      {"due_not_read", V::note, [](Case& c) { c.drop("copper"); }},
      {"fill_water_wanted", V::note, [](Case& c) { c.bottle.occasion = Occasion::new_fill; }},
      {"reagent_expired", V::repeat,
       [](Case& c) {
         lot(c).expires = Instant::parse("2026-05-31T23:59:59Z");
       }},
      {"reagent_old_opened", V::repeat,
       [](Case& c) {
         lot(c).opened = Instant::parse("2025-08-01T12:00:00Z");
       }},
      {"reagent_kept_hot", V::repeat, [](Case& c) { lot(c).warmest_c = 38; }},
      {"reagent_beside_chlorine", V::repeat, [](Case& c) { lot(c).beside_chlorine = true; }},
      {"instrument_check_failed", V::reject, [](Case& c) { checked(c, "2026-06-12T08:00:00Z", false); }},
      {"instrument_check_overdue", V::note, [](Case& c) { checked(c, "2026-04-01T08:00:00Z", true); }},
      {"vessel_too_hot", V::note,
       [](Case& c) {
         c.vessel.kind = VesselKind::spa;
         c.vessel.water_temperature = Temperature::celsius(42);
       }}};
  return rows;
}

}  // namespace brimline
