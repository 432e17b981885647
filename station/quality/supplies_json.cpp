// SPDX-License-Identifier: GPL-3.0-or-later
#include "station/quality/supplies_json.h"

#include "analysis/panel/analyte.h"
#include "station/json_fields.h"

namespace brimline {

namespace {

constexpr std::string_view kFormat = "brimline-supplies/1";

std::optional<AnalyteId> analyte_in(JsonFields& fields) {
  auto id = fields.text_if("analyte");
  if (id && !find_analyte(*id)) fields.fault("analyte", "unknown analyte \"" + *id + "\"", "an analyte's id");
  return id;
}

ReagentLot lot_in(JsonFields& fields) {
  ReagentLot lot;
  lot.lot = fields.id("lot");
  lot.analyte = analyte_in(fields);
  lot.expires = fields.instant_if("expires");
  lot.opened = fields.instant_if("opened");
  lot.warmest_c = fields.number_if("warmest_c", {-50, 100, "-50 to 100"});
  if (const auto tests = fields.number_if("tests", {1, 100000, "1 to 100000"}))
    lot.tests = static_cast<int>(*tests);
  lot.beside_chlorine = fields.flag_if("beside_chlorine").value_or(false);
  lot.gone = fields.flag_if("gone").value_or(false);
  return lot;
}

InstrumentCheck check_in(JsonFields& fields) {
  InstrumentCheck check;
  check.instrument = fields.id("instrument");
  check.analyte = analyte_in(fields);
  if (const auto at = fields.instant_if("at"))
    check.at = *at;
  else if (!fields.has("at"))
    fields.fault("at", "`at` is missing", "when it was checked");
  check.passed = fields.flag("passed");
  return check;
}

}  // namespace

tl::expected<Supplies, std::vector<Fault>> read_supplies(std::string_view json, std::string_view file) {
  auto root = JsonFields::parse(json, file, 1, "reagents and checks (brimline-supplies/1)");
  if (!root) return tl::unexpected(root.error());
  Supplies out;
  if (const std::string format = root->text("format"); format != kFormat)
    root->fault("format", "unknown `format` \"" + format + "\"", std::string(kFormat));
  if (auto lots = root->objects_if("lots"))
    for (JsonFields& lot : *lots) out.lots.push_back(lot_in(lot));
  if (auto checks = root->objects_if("checks"))
    for (JsonFields& check : *checks) out.checks.push_back(check_in(check));
  out.check_every_days = root->number_if("check_every_days", kPositive).value_or(out.check_every_days);
  out.good_once_opened_days =
      root->number_if("good_once_opened_days", kPositive).value_or(out.good_once_opened_days);
  out.warm_c = root->number_if("warm_c", {0, 100, "0 to 100"}).value_or(out.warm_c);
  auto faults = root->finish();
  if (!faults.empty()) return tl::unexpected(std::move(faults));
  return out;
}

}  // namespace brimline
