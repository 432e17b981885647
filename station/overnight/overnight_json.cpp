// SPDX-License-Identifier: GPL-3.0-or-later
#include "station/overnight/overnight_json.h"

#include <nlohmann/json.hpp>

#include "station/json_fields.h"
#include "station/visit_json.h"

namespace brimline {

using nlohmann::ordered_json;

namespace {

constexpr std::string_view kFormat = "brimline-overnight/1";
constexpr Bounds kRoomCelsius{0, 50, "a room's temperature in degrees Celsius"};
constexpr int kMostBottles = 100, kMostTests = 1000000;

ordered_json bleach_to_json(const Bleach& bleach) {
  ordered_json out = {{"available_g_l", number_to_json(bleach.available_g_l)}};
  if (!bleach.product.empty()) out["product"] = bleach.product;
  return out;
}

ordered_json reading_to_json(const OvernightReading& reading) {
  ordered_json out = {{"at", reading.at.text()},
                      {"bottle", reading.bottle},
                      {"due", name_of(reading.due)},
                      {"analyte", reading.analyte},
                      {"value", number_to_json(reading.value)}};
  if (reading.dilution != 1) out["dilution"] = number_to_json(reading.dilution);
  if (reading.clipped) out["clipped"] = name_of(*reading.clipped);
  if (reading.instrument) out["instrument"] = *reading.instrument;
  if (reading.withdrawn) out["withdrawn"] = true;
  return out;
}

OvernightReading read_reading_object(JsonFields& from) {
  OvernightReading out;
  if (const auto at = from.instant_if("at"))
    out.at = *at;
  else
    from.fault("at", "`at` is missing", "when it was read");
  out.bottle = from.whole("bottle", 0, kMostBottles);
  out.due = from.choice<OvernightDue>("due");
  out.analyte = from.text("analyte");
  if (out.analyte != "free_chlorine" && out.analyte != "total_chlorine")
    from.fault("analyte", "unknown analyte \"" + out.analyte + "\"", "free_chlorine or total_chlorine");
  out.value = from.number("value", kNotNegative);
  out.dilution = from.number_if("dilution", kPositive).value_or(1);
  out.clipped = from.choice_if<Clip>("clipped");
  out.instrument = from.text_if("instrument");
  out.withdrawn = from.flag_if("withdrawn").value_or(false);
  return out;
}

OvernightTest read_overnight_object(JsonFields& from) {
  OvernightTest out;
  if (const std::string format = from.text("format"); !format.empty() && format != kFormat)
    from.fault("format", "`format` is \"" + format + "\"", std::string(kFormat));
  out.visit = from.id("visit");
  out.number = from.whole("number", 1, kMostTests);
  out.stage = from.choice<OvernightStage>("stage");
  out.reach = from.choice<DemandReach>("reach");
  out.sample_ml = from.number("sample_ml", kPositive);
  if (auto bleach = from.object_if("bleach"))
    out.bleach = Bleach{bleach->text_if("product").value_or(""), bleach->number("available_g_l", kPositive)};
  if (const auto t = from.number_if("temperature_c", kRoomCelsius))
    out.temperature = Temperature::celsius(*t);
  out.check_mg_l = from.number_if("check_mg_l", kNotNegative);
  out.started_at = from.instant_if("started_at");
  if (auto list = from.objects_if("bottles"))
    for (JsonFields& item : *list)
      out.bottles.push_back({item.number("aimed_mg_l", kNotNegative), item.number("stock_ml", kNotNegative)});
  if (auto list = from.objects_if("readings"))
    for (JsonFields& item : *list) out.readings.push_back(read_reading_object(item));
  out.given_up = from.flag_if("given_up").value_or(false);
  return out;
}

}  // namespace

ordered_json overnight_to_json(const OvernightTest& test) {
  ordered_json out = {{"format", kFormat},
                      {"visit", test.visit},
                      {"number", test.number},
                      {"stage", name_of(test.stage)},
                      {"reach", name_of(test.reach)},
                      {"sample_ml", number_to_json(test.sample_ml)}};
  if (test.bleach) out["bleach"] = bleach_to_json(*test.bleach);
  if (test.temperature) out["temperature_c"] = number_to_json(test.temperature->celsius());
  if (test.check_mg_l) out["check_mg_l"] = number_to_json(*test.check_mg_l);
  if (test.started_at) out["started_at"] = test.started_at->text();
  for (const OvernightBottle& bottle : test.bottles)
    out["bottles"].push_back(
        {{"aimed_mg_l", number_to_json(bottle.aimed_mg_l)}, {"stock_ml", number_to_json(bottle.stock_ml)}});
  for (const OvernightReading& reading : test.readings) out["readings"].push_back(reading_to_json(reading));
  if (test.given_up) out["given_up"] = true;
  return out;
}

tl::expected<OvernightTest, std::vector<Fault>> read_overnight(std::string_view json, std::string_view file) {
  auto root = JsonFields::parse(json, file, 1, "an overnight test (brimline-overnight/1)");
  if (!root) return tl::unexpected(root.error());
  OvernightTest out = read_overnight_object(*root);
  auto faults = root->finish();
  if (!faults.empty()) return tl::unexpected(std::move(faults));
  return out;
}

}  // namespace brimline
