// SPDX-License-Identifier: GPL-3.0-or-later
#include "station/visit_json.h"

#include <cmath>

#include <nlohmann/json.hpp>

#include "analysis/panel/analyte.h"
#include "station/json_fields.h"
#include "station/json_object.h"
#include "station/known_ids.h"
#include "station/plan_json.h"

namespace brimline {

using nlohmann::ordered_json;

namespace {

constexpr std::string_view kFormat = "brimline-visit/1";
constexpr Bounds kDilution{1, 1e6, "1 or more: (sample + water) / sample"};
constexpr Bounds kShare{0, 1, "a share from 0 to 1"};
// Liquid water; the strongest brines of the trade freeze some degrees below zero.
constexpr Bounds kWaterCelsius{-10, 100, "a temperature of liquid water in degrees Celsius"};

std::string read_chemical(JsonFields& from) {
  std::string id = from.text("chemical");
  if (!id.empty() && !is_chemical(id))
    from.fault("chemical", "unknown chemical \"" + id + "\"", "one of " + list_of_chemicals());
  return id;
}

Reading read_reading_object(JsonFields& from) {
  Reading out;
  out.analyte = from.text("analyte");
  const AnalyteKind* kind = find_analyte(out.analyte);
  if (!kind && !out.analyte.empty())
    from.fault("analyte", "unknown analyte \"" + out.analyte + "\"", "one of " + list_of_analytes());
  out.value =
      from.number("value", kind ? Bounds{kind->possible.low, kind->possible.high,
                                         kind->id == "ph" ? "a pH from 0 to 14" : "an amount that can be"}
                                : kNotNegative);
  out.method = from.choice_if<Method>("method");
  out.dilution = from.number_if("dilution", kDilution).value_or(1);
  out.clipped = from.choice_if<Clip>("clipped");
  out.repeat_of = from.whole_if("repeat_of", 0, std::numeric_limits<int>::max());
  out.sd = from.number_if("sd", kNotNegative);
  out.instrument = from.text_if("instrument");
  out.lot = from.text_if("lot");
  return out;
}

std::vector<Reading> read_readings(JsonFields& from) {
  std::vector<Reading> out;
  auto list = from.objects_if("readings");
  if (!list) return out;
  for (JsonFields& item : *list) {
    out.push_back(read_reading_object(item));
    const auto first = out.back().repeat_of;
    if (!first) continue;
    const size_t self = out.size() - 1;
    if (static_cast<size_t>(*first) >= self)
      item.fault("repeat_of",
                 "`repeat_of` is " + std::to_string(*first) + " in reading " + std::to_string(self),
                 "the index, from 0, of an earlier reading");
    else if (out[static_cast<size_t>(*first)].analyte != out.back().analyte)
      item.fault("repeat_of",
                 "`repeat_of` points at a reading of " + out[static_cast<size_t>(*first)].analyte,
                 "a reading of " + out.back().analyte);
  }
  return out;
}

DemandBottle read_demand_bottle(JsonFields& from) {
  DemandBottle out;
  out.dose_mg_l = from.number("dose_mg_l", kNotNegative);
  out.stock_share = from.number_if("stock_share", kShare).value_or(0);
  out.free_mg_l = from.number_if("free_mg_l", kNotNegative);
  out.total_mg_l = from.number_if("total_mg_l", kNotNegative);
  out.clipped = from.choice_if<Clip>("clipped");
  out.dilution = from.number_if("dilution", kDilution).value_or(1);
  if (auto list = from.objects_if("later"))
    for (JsonFields& item : *list)
      out.later.push_back({item.number("hours", kNotNegative), item.number_if("free_mg_l", kNotNegative),
                           item.number_if("total_mg_l", kNotNegative)});
  return out;
}

DemandTest read_demand_test(JsonFields& from) {
  DemandTest out;
  out.hours = from.number_if("hours", kNotNegative).value_or(out.hours);
  if (auto list = from.objects_if("bottles"))
    for (JsonFields& item : *list) out.bottles.push_back(read_demand_bottle(item));
  if (const auto t = from.number_if("temperature_c", kWaterCelsius))
    out.temperature = Temperature::celsius(*t);
  return out;
}

AtHome read_at_home(JsonFields& from) {
  AtHome out;
  out.chemical = read_chemical(from);
  out.assay = from.text_if("assay");
  auto amount = from.object_if("amount");
  if (!amount) return out;
  out.amount = amount->number("value", kNotNegative);
  out.unit = amount->text("unit");
  if (!out.unit->empty() && !is_product_unit(*out.unit))
    amount->fault("unit", "unknown unit \"" + *out.unit + "\"", "L, mL, kg or g");
  return out;
}

Customer read_customer_object(JsonFields& from) {
  Customer out;
  out.id = from.id("id");
  out.name = from.text_if("name");
  out.phone = from.text_if("phone");
  out.street = from.text_if("street");
  out.email = from.text_if("email");
  out.language = from.text_if("language");
  out.units = from.choice_if<Units>("units");
  return out;
}

// All of it or none: the volume and until when; what stood before may be missing.
std::optional<LearntVolume> read_learnt_volume(JsonFields& from) {
  const auto volume = from.number_if("learnt_volume_m3", kPositive);
  const auto until = from.instant_if("learnt_until");
  const auto before = from.number_if("volume_before_m3", kPositive);
  const auto before_sd = from.number_if("volume_before_relative_sd", kNotNegative);
  if (!volume || !until) {
    if (volume || until || before || before_sd)
      from.fault("learnt_volume_m3", "half of a learnt volume", "`learnt_volume_m3` and `learnt_until`");
    return std::nullopt;
  }
  LearntVolume out{Volume::cubic_metres(*volume), *until, std::nullopt, before_sd};
  if (before) out.before = Volume::cubic_metres(*before);
  return out;
}

Vessel read_vessel_object(JsonFields& from) {
  Vessel out;
  out.id = from.id("id");
  out.kind = from.choice_if<VesselKind>("kind");
  out.use = from.choice_if<VesselUse>("use");
  out.place = from.choice_if<Place>("place");
  out.in_ground = from.flag_if("in_ground");
  out.surface = from.choice_if<Surface>("surface");
  out.plaster_age_days = from.number_if("plaster_age_days", kNotNegative);
  if (const auto v = from.number_if("volume_m3", kPositive)) out.volume = Volume::cubic_metres(*v);
  out.volume_relative_sd = from.number_if("volume_relative_sd", kNotNegative);
  out.learnt_volume = read_learnt_volume(from);
  out.sanitizer = from.choice_if<Sanitizer>("sanitizer");
  out.previous_sanitizer = from.choice_if<Sanitizer>("previous_sanitizer");
  if (const auto t = from.number_if("water_temperature_c", kWaterCelsius))
    out.water_temperature = Temperature::celsius(*t);
  out.turnover_h = from.number_if("turnover_h", kPositive);
  return out;
}

std::vector<Sign> read_signs(JsonFields& from) {
  std::vector<Sign> out;
  const auto names = from.texts_if("signs");
  for (size_t i = 0; i < names.size(); ++i) {
    if (const auto sign = named<Sign>(names[i]))
      out.push_back(*sign);
    else
      from.fault("signs", "unknown sign \"" + names[i] + "\"", choices<Sign>(), i);
  }
  return out;
}

Bottle read_bottle(JsonFields& from) {
  Bottle out;
  out.code = from.text_if("bottle").value_or("");
  out.taken_at = from.instant_if("taken_at");
  out.tested_at = from.instant_if("tested_at");
  out.sampled_at = from.choice_if<SampledAt>("sampled_at");
  out.occasion = from.choice_if<Occasion>("occasion");
  out.readings = read_readings(from);
  if (const auto t = from.number_if("sample_temperature_c", kWaterCelsius))
    out.sample_temperature = Temperature::celsius(*t);
  if (auto test = from.object_if("demand_test")) out.demand_test = read_demand_test(*test);
  out.signs = read_signs(from);
  out.incident = from.choice_if<Incident>("incident");
  if (auto list = from.objects_if("additions_since"))
    for (JsonFields& item : *list)
      out.additions_since.push_back({read_chemical(item), item.number_if("active_mol", kNotNegative),
                                     item.number_if("days_before", kNotNegative)});
  if (auto list = from.objects_if("at_home"))
    for (JsonFields& item : *list) out.at_home.push_back(read_at_home(item));
  if (auto fill = from.object_if("fill_water")) out.fill_water = read_readings(*fill);
  return out;
}

Visit read_visit_object(JsonFields& from) {
  Visit out;
  if (const std::string format = from.text("format"); !format.empty() && format != kFormat)
    from.fault("format", "`format` is \"" + format + "\"", std::string(kFormat));
  out.id = from.id("id");
  out.bottle = read_bottle(from);
  if (auto customer = from.object_if("customer")) out.customer = read_customer_object(*customer);
  if (auto vessel = from.object_if("vessel"); vessel && !vessel->empty())
    out.vessel = read_vessel_object(*vessel);
  out.home_at = from.instant_if("home_at");
  // An empty object stands where no plan was told.
  if (auto plan = from.object_if("plan_as_told"); plan && !plan->empty()) out.plan_as_told = read_plan(*plan);
  return out;
}

// Writing: what is absent is left out. No key is written twice.
void put(ordered_json& to, const char* key, const std::optional<std::string>& value) {
  if (value) json_add(to, key, *value);
}
void put(ordered_json& to, const char* key, const std::optional<double>& value) {
  if (value) json_add(to, key, number_to_json(*value));
}
void put(ordered_json& to, const char* key, const std::optional<bool>& value) {
  if (value) json_add(to, key, *value);
}
void put(ordered_json& to, const char* key, const std::optional<Instant>& value) {
  if (value) json_add(to, key, value->text());
}
template <class E>
requires std::is_enum_v<E>
void put(ordered_json& to, const char* key, const std::optional<E>& value) {
  if (value) json_add(to, key, name_of(*value));
}
void put_list(ordered_json& to, const char* key, ordered_json list) {
  if (!list.empty()) json_add(to, key, std::move(list));
}

ordered_json demand_bottle_to_json(const DemandBottle& bottle) {
  ordered_json out = json_object("dose_mg_l", number_to_json(bottle.dose_mg_l));
  if (bottle.stock_share != 0) json_add(out, "stock_share", number_to_json(bottle.stock_share));
  put(out, "free_mg_l", bottle.free_mg_l);
  put(out, "total_mg_l", bottle.total_mg_l);
  put(out, "clipped", bottle.clipped);
  if (bottle.dilution != 1) json_add(out, "dilution", number_to_json(bottle.dilution));
  put_list(out, "later", list_to_json(bottle.later, [](const DemandLater& later) {
             ordered_json item = json_object("hours", number_to_json(later.hours));
             put(item, "free_mg_l", later.free_mg_l);
             put(item, "total_mg_l", later.total_mg_l);
             return item;
           }));
  return out;
}

ordered_json demand_test_to_json(const DemandTest& test) {
  ordered_json out = json_object("hours", number_to_json(test.hours));
  if (test.temperature) json_add(out, "temperature_c", number_to_json(test.temperature->celsius()));
  json_add(out, "bottles", list_to_json(test.bottles, demand_bottle_to_json));
  return out;
}

ordered_json addition_to_json(const Addition& addition) {
  ordered_json out = json_object("chemical", addition.chemical);
  put(out, "active_mol", addition.active_mol);
  put(out, "days_before", addition.days_before);
  return out;
}

ordered_json at_home_to_json(const AtHome& product) {
  ordered_json out = json_object("chemical", product.chemical);
  put(out, "assay", product.assay);
  if (product.amount && product.unit)
    json_add(out, "amount", json_object("value", number_to_json(*product.amount), "unit", *product.unit));
  return out;
}

}  // namespace

ordered_json number_to_json(double value) {
  constexpr double kExact = 9007199254740992.0;  // 2^53: whole doubles below are exact integers
  if (value == std::floor(value) && std::abs(value) < kExact && !std::signbit(value))
    return static_cast<std::int64_t>(value);
  return value;
}

ordered_json reading_to_json(const Reading& reading) {
  ordered_json out = json_object("analyte", reading.analyte, "value", number_to_json(reading.value));
  put(out, "method", reading.method);
  if (reading.dilution != 1) json_add(out, "dilution", number_to_json(reading.dilution));
  put(out, "clipped", reading.clipped);
  if (reading.repeat_of) json_add(out, "repeat_of", *reading.repeat_of);
  put(out, "sd", reading.sd);
  put(out, "instrument", reading.instrument);
  put(out, "lot", reading.lot);
  return out;
}

ordered_json customer_to_json(const Customer& customer) {
  ordered_json out = json_object("id", customer.id);
  put(out, "name", customer.name);
  put(out, "phone", customer.phone);
  put(out, "street", customer.street);
  put(out, "email", customer.email);
  put(out, "language", customer.language);
  put(out, "units", customer.units);
  return out;
}

ordered_json vessel_to_json(const Vessel& vessel) {
  ordered_json out = json_object_of(18);
  if (!vessel.id.empty()) json_add(out, "id", vessel.id);
  put(out, "kind", vessel.kind);
  put(out, "use", vessel.use);
  put(out, "place", vessel.place);
  put(out, "in_ground", vessel.in_ground);
  put(out, "surface", vessel.surface);
  put(out, "plaster_age_days", vessel.plaster_age_days);
  if (vessel.volume) json_add(out, "volume_m3", number_to_json(vessel.volume->cubic_metres()));
  put(out, "volume_relative_sd", vessel.volume_relative_sd);
  if (const auto& learnt = vessel.learnt_volume) {
    json_add(out, "learnt_volume_m3", number_to_json(learnt->volume.cubic_metres()));
    json_add(out, "learnt_until", learnt->until.text());
    if (learnt->before) json_add(out, "volume_before_m3", number_to_json(learnt->before->cubic_metres()));
    put(out, "volume_before_relative_sd", learnt->before_relative_sd);
  }
  put(out, "sanitizer", vessel.sanitizer);
  put(out, "previous_sanitizer", vessel.previous_sanitizer);
  if (vessel.water_temperature)
    json_add(out, "water_temperature_c", number_to_json(vessel.water_temperature->celsius()));
  put(out, "turnover_h", vessel.turnover_h);
  return out;
}

ordered_json visit_to_json(const Visit& visit) {
  const Bottle& bottle = visit.bottle;
  ordered_json out = json_object("format", kFormat, "id", visit.id);
  if (!bottle.code.empty()) json_add(out, "bottle", bottle.code);
  put(out, "taken_at", bottle.taken_at);
  put(out, "tested_at", bottle.tested_at);
  put(out, "home_at", visit.home_at);
  put(out, "sampled_at", bottle.sampled_at);
  put(out, "occasion", bottle.occasion);
  if (visit.customer) json_add(out, "customer", customer_to_json(*visit.customer));
  if (auto vessel = vessel_to_json(visit.vessel); !vessel.empty()) json_add(out, "vessel", std::move(vessel));
  json_add(out, "readings", list_to_json(bottle.readings, reading_to_json));
  if (bottle.sample_temperature)
    json_add(out, "sample_temperature_c", number_to_json(bottle.sample_temperature->celsius()));
  if (bottle.demand_test) json_add(out, "demand_test", demand_test_to_json(*bottle.demand_test));
  put_list(out, "signs", list_to_json(bottle.signs, [](Sign sign) { return ordered_json(name_of(sign)); }));
  put(out, "incident", bottle.incident);
  put_list(out, "additions_since", list_to_json(bottle.additions_since, addition_to_json));
  put_list(out, "at_home", list_to_json(bottle.at_home, at_home_to_json));
  if (bottle.fill_water)
    json_add(out, "fill_water", json_object("readings", list_to_json(*bottle.fill_water, reading_to_json)));
  if (visit.plan_as_told) json_add(out, "plan_as_told", plan_to_json(*visit.plan_as_told));
  return out;
}

namespace {
template <class Read>
using ReadBy = tl::expected<std::invoke_result_t<Read, JsonFields&>, std::vector<Fault>>;

// One thing read by `read` from the whole of a document.
template <class Read>
ReadBy<Read> read_whole(tl::expected<JsonFields, std::vector<Fault>> root, Read read) {
  if (!root) return tl::unexpected(std::move(root.error()));
  auto out = read(*root);
  auto faults = root->finish();
  if (!faults.empty()) return tl::unexpected(std::move(faults));
  return out;
}

constexpr const char* kVisit = "a visit (brimline-visit/1)";
constexpr const char* kReading = "a reading";
}  // namespace

tl::expected<Visit, std::vector<Fault>> read_visit(std::string_view json, std::string_view file,
                                                   int first_line) {
  return read_whole(JsonFields::parse(json, file, first_line, kVisit), read_visit_object);
}
tl::expected<Reading, std::vector<Fault>> read_reading(std::string_view json, std::string_view file) {
  return read_whole(JsonFields::parse(json, file, 1, kReading), read_reading_object);
}

tl::expected<Visit, std::vector<Fault>> visit_from(const ordered_json& form, std::string_view file) {
  return read_whole(JsonFields::of(form, file, kVisit), read_visit_object);
}
tl::expected<Reading, std::vector<Fault>> reading_from(const ordered_json& form, std::string_view file) {
  return read_whole(JsonFields::of(form, file, kReading), read_reading_object);
}
tl::expected<Customer, std::vector<Fault>> customer_from(const ordered_json& form, std::string_view file) {
  return read_whole(JsonFields::of(form, file, "a customer"), read_customer_object);
}
tl::expected<Vessel, std::vector<Fault>> vessel_from(const ordered_json& form, std::string_view file) {
  return read_whole(JsonFields::of(form, file, "a vessel"), read_vessel_object);
}

}  // namespace brimline
