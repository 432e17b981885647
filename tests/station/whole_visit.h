// SPDX-License-Identifier: GPL-3.0-or-later
// A visit with every field of the contract set, each to another value: an invented one.
#pragma once

#include <string>

namespace brimline::tests {

inline const std::string kWholeVisit = R"({"format":"brimline-visit/1","id":"V-1","bottle":"B-0001",
"taken_at":"2026-06-14T08:10:00-05:00","tested_at":"2026-06-14T09:02:00-05:00","home_at":"2026-06-14T17:30:00-05:00",
"sampled_at":"elbow_deep","occasion":"after_storm",
"customer":{"id":"C-1","name":"Ines Ørsted","phone":"555-0101","street":"9 Example Lane","email":"ines@example.org","language":"es","units":"metric"},
"vessel":{"id":"W-1","kind":"swim_spa","use":"public","place":"indoor","in_ground":true,"surface":"fibreglass","plaster_age_days":400,
"volume_m3":56.8,"volume_relative_sd":0.1,"learnt_volume_m3":56.8,"learnt_until":"2026-05-14T08:10:00-05:00","volume_before_m3":61,"volume_before_relative_sd":0.25,"sanitizer":"salt_chlorine","previous_sanitizer":"biguanide","water_temperature_c":27.123456789012345,"turnover_h":8},
"readings":[{"analyte":"ph","value":7.9,"method":"photometer","sd":0.05,"instrument":"bench 1","lot":"L-7"},
{"analyte":"free_chlorine","value":0.1,"method":"drop_titration","dilution":2,"clipped":"above"},
{"analyte":"ph","value":7.8000000000000007,"method":"probe","repeat_of":0},
{"analyte":"calcium_hardness","value":0,"method":"strip","clipped":"below"}],
"sample_temperature_c":22,
"demand_test":{"hours":24.5,"temperature_c":21,"bottles":[{"dose_mg_l":0,"total_mg_l":0.3},
{"dose_mg_l":5.5,"stock_share":0.01,"free_mg_l":0.0,"total_mg_l":0.3,"clipped":"above","dilution":3,"later":[{"hours":1,"free_mg_l":0.1,"total_mg_l":0.4},{"hours":2}]}]},
"signs":["cloudy","drain_not_visible","tablets_in_use"],
"incident":"dead_animal",
"additions_since":[{"chemical":"sodium_bicarbonate","active_mol":40.0,"days_before":20},{"chemical":"copper_sulfate"}],
"at_home":[{"chemical":"hydrochloric_acid","assay":"31.45 % by weight","amount":{"value":3.8,"unit":"L"}},{"chemical":"trichlor"}],
"fill_water":{"readings":[{"analyte":"ph","value":8.1,"method":"comparator"}]},
"plan_as_told":{"format":"brimline-plan/1","home_plan":true,"why_not":null,
"swim":{"now":"no","because":["ph_high"],"after_step":3,"not_before_h":18},
"findings":[{"id":"ph_high","rank":1,"concern":"comfort","analyte":"ph","value":7.9,"target":[7.2,null],"text":"pH is high."},
{"id":"cloudy","rank":2,"concern":"clarity","analyte":null,"value":null,"target":null,"text":"Cloudy."}],
"steps":[{"order":1,"action":"add","chemical":"hydrochloric_acid","product":"acid-31","active_mol":5.3,
"amount":{"value":0.53,"unit":"L"},"amount_household":"2 cups","portions":2,"portion_gap_h":4,"start_h":0.5,"wait_h":4,"fraction":null,"for":["ph_high"],"text":"Pour slowly.","cautions":["Wear goggles."],
"after":{"ph":7.5,"total_alkalinity":91.7,"vessel":{"hocl":0.03,"ph":7.46,"si_calcite":-0.03}}},
{"order":2,"action":"drain_refill","chemical":null,"product":null,"active_mol":null,"amount":null,"amount_household":null,"portions":1,"portion_gap_h":0,"start_h":9,"wait_h":0,"fraction":0.33,"for":[],"text":"Drain a third.","cautions":[],"after":null}],
"predicted":{"ph":{"value":7.5,"sd":0.08}},"proof":{"draws":1000,"in_target":0.97,"harm":0.004},
"retest":{"after_h":24,"analytes":["ph"]},"cautions":["Keep out of reach."],
"basis":{"program":"0.1","targets":"household","shelf":"built-in"}}})";

}  // namespace brimline::tests
