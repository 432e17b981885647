// SPDX-License-Identifier: GPL-3.0-or-later
#include "analysis/findings/find.h"

#include <algorithm>
#include <cmath>

#include "analysis/findings/edge.h"
#include "analysis/panel/analyte.h"
#include "analysis/treatment/errors.h"

namespace brimline {

namespace {

struct Judged {
  const char* analyte;
  const char* low_id;
  Concern low;
  const char* high_id;
  Concern high;
};

constexpr Judged kJudged[] = {
    {"free_chlorine", "free_chlorine_low", Concern::health, "free_chlorine_high", Concern::health},
    {"total_bromine", "total_bromine_low", Concern::health, "total_bromine_high", Concern::health},
    {"biguanide", "biguanide_low", Concern::health, "biguanide_high", Concern::comfort},
    {"peroxide", "peroxide_low", Concern::clarity, "peroxide_high", Concern::comfort},
    {"ph", "ph_low", Concern::equipment, "ph_high", Concern::surface},
    {"total_alkalinity", "total_alkalinity_low", Concern::equipment, "total_alkalinity_high",
     Concern::surface},
    {"calcium_hardness", "calcium_hardness_low", Concern::surface, "calcium_hardness_high", Concern::surface},
    {"cyanuric_acid", "cyanuric_acid_low", Concern::upkeep, "cyanuric_acid_high", Concern::health},
    {"salt", "salt_low", Concern::equipment, "salt_high", Concern::equipment},
    {"tds", nullptr, Concern::upkeep, "tds_high", Concern::clarity},
    {"sulfate", nullptr, Concern::upkeep, "sulfate_high", Concern::surface},
    {"iron", nullptr, Concern::upkeep, "iron_high", Concern::surface},
    {"copper", nullptr, Concern::upkeep, "copper_high", Concern::surface},
    {"manganese", nullptr, Concern::upkeep, "manganese_high", Concern::surface},
    {"phosphate", nullptr, Concern::upkeep, "phosphate_high", Concern::upkeep},
    {"nitrate", nullptr, Concern::upkeep, "nitrate_high", Concern::upkeep},
    {"borate", nullptr, Concern::upkeep, "borate_high", Concern::upkeep},
    {"turbidity", nullptr, Concern::upkeep, "turbidity_high", Concern::clarity},
};

struct SignRow {
  Sign sign;
  const char* id;
  Concern concern;
};
constexpr SignRow kSigns[] = {
    {Sign::chemicals_mixed_or_fuming, "chemicals_mixed_or_fuming", Concern::health},
    {Sign::drain_not_visible, "drain_not_visible", Concern::health},
    {Sign::green_water, "green_water", Concern::health},
    {Sign::slimy_walls, "slimy_walls", Concern::health},
    {Sign::eye_irritation, "eye_irritation", Concern::comfort},
    {Sign::strong_smell, "strong_smell", Concern::comfort},
    {Sign::cloudy, "cloudy", Concern::clarity},
    {Sign::foam, "foam", Concern::clarity},
    {Sign::stains, "stains", Concern::surface},
    {Sign::scale, "scale", Concern::surface},
    {Sign::green_hair, "green_hair", Concern::comfort},
    {Sign::tablets_in_use, "tablets_in_use", Concern::upkeep},
};

struct Ranked {
  Finding finding;
  double severity = 0;
};

class Finder {
 public:
  Finder(const Situation& s, const TargetSet& targets) : s_(s), targets_(targets) {}

  std::vector<Finding> all() {
    for (const Judged& row : kJudged) judge(row);
    combined();
    stabilizer_ratio();
    saturation();
    temperature();
    for (const SignRow& row : kSigns)
      if (s_.has(row.sign)) add(row.id, row.concern, 1);
    if (s_.bottle.incident) add("incident", Concern::health, 10);
    readings();
    return ranked();
  }

 private:
  void add(std::string id, Concern concern, double severity, std::optional<AnalyteId> analyte = {},
           std::optional<double> value = {}, std::optional<Target> target = {},
           std::optional<double> sd = {}) {
    out_.push_back({Finding{std::move(id), 0, concern, std::move(analyte), value, target, "", sd}, severity});
  }

  // Outside, but within the reading's error: to be read again.
  void add_edge(const AnalyteId& what, std::optional<AnalyteId> analyte, const Measured& m, const Target& t) {
    add(what + "_edge", Concern::reading, 0, std::move(analyte), m.value, t, m.sd);
  }

  void judge(const Judged& row) {
    const Known* k = s_.usable(row.analyte);
    const auto aim = targets_.find(row.analyte, s_.where);
    if (!k || !aim || (k->from_earlier && std::string_view(row.analyte) != "cyanuric_acid")) return;
    Target t = aim->range;
    // No regime lets anybody in above the label's re-entry level.
    if (std::string_view(row.analyte) == "free_chlorine" && t.high)
      t.high = std::min(*t.high, s_.is_spa() ? 5.0 : 4.0);
    const double width =
        std::max(1e-9, t.low && t.high ? *t.high - *t.low : std::abs(t.high.value_or(1)) + 0.1);
    const bool is_ph = std::string_view(row.analyte) == "ph";
    const Standing found = standing(k->measured(), t);
    const bool low = found == Standing::low_edge || found == Standing::below;
    if (found == Standing::inside || (low && !row.low_id)) return;
    // Perhaps bleached: that it cannot be believed is what counts, and closes the water too.
    if (low && k->doubtful && sanitizer_analyte(s_.vessel) == row.analyte) return;
    // What keeps everybody out does so without waiting to be sure.
    const bool corrosive = is_ph && low && k->value <= 7.0, closing = is_ph && !low && k->value > 8.0;
    const bool safe_side = corrosive || closing || closes_water(low ? row.low_id : row.high_id);
    if (!safe_side && found != Standing::below && found != Standing::above)
      return add_edge(row.analyte, row.analyte, k->measured(), t);
    if (low)
      add(row.low_id, corrosive ? Concern::health : row.low, (*t.low - k->value) / width, row.analyte,
          k->value, t, k->sd);
    else
      add(row.high_id, closing ? Concern::health : row.high, (k->value - *t.high) / width, row.analyte,
          k->value, t, k->sd);
  }

  void combined() {
    const auto cc = s_.combined_chlorine();
    const auto aim = targets_.find("combined_chlorine", s_.where);
    if (!cc || !aim || !aim->range.high || !s_.chlorine()) return;
    const Standing found = standing(*cc, aim->range);
    if (found == Standing::inside) return;
    const double free = s_.fresh("free_chlorine")->value;
    const Measured total{free + cc->value, cc->sd};
    const Target most{std::nullopt, free + *aim->range.high};
    if (found != Standing::above) return add_edge("combined_chlorine", "total_chlorine", total, most);
    add("combined_chlorine_high", Concern::health, cc->value - *aim->range.high, "total_chlorine",
        total.value, most, total.sd);
  }

  // Above 45 to 1 a pool is closed (CDC MAHC, 4th edition 2023).
  void stabilizer_ratio() {
    const Known* free = s_.fresh("free_chlorine");
    const Known* cyanuric = s_.usable("cyanuric_acid");
    if (!s_.chlorine() || !free || !cyanuric || cyanuric->value <= 0 || cyanuric->value <= 45 * free->value)
      return;
    add("stabilizer_ratio", Concern::health, 1, "cyanuric_acid", cyanuric->value,
        Target{std::nullopt, 45 * free->value});
  }

  void saturation() {
    const auto aim = targets_.find("si_calcite", s_.where);
    const auto si = aim ? saturation_of(s_) : std::nullopt;
    if (!si) return;
    const Standing found = standing(*si, aim->range);
    if (found == Standing::below)
      add("si_low", Concern::surface, *aim->range.low - si->value, {}, si->value, aim->range, si->sd);
    else if (found == Standing::above)
      add("si_high", Concern::surface, si->value - *aim->range.high, {}, si->value, aim->range, si->sd);
    else if (found != Standing::inside)
      add_edge("si", {}, *si, aim->range);
  }

  void temperature() {
    const auto aim = targets_.find("water_temperature", s_.where);
    if (!s_.where.celsius || !aim || !aim->range.high || *s_.where.celsius <= *aim->range.high) return;
    add("too_hot", Concern::health, *s_.where.celsius - *aim->range.high, {}, *s_.where.celsius, aim->range);
  }

  void readings() {
    for (const auto& [analyte, k] : s_.known)
      if (!k.usable)
        add("reading_" + std::string(k.clipped ? "clipped" : "rejected"), Concern::reading, 1, analyte,
            k.value, {}, k.sd);
    for (const AnalyteId& analyte : s_.must_repeat) {
      const Known& k = s_.known.find(analyte)->second;
      add("reading_repeat", Concern::reading, 2, analyte, k.value, {}, k.sd);
    }
    const auto sanitizer = sanitizer_analyte(s_.vessel);
    const bool read = sanitizer && s_.known.contains(*sanitizer);
    if (sanitizer && !s_.fresh(*sanitizer))
      add(read ? "sanitizer_doubtful" : "sanitizer_not_read", Concern::reading, 5, *sanitizer);
    if (!sanitizer) add("sanitizer_unknown", Concern::reading, 6);
    if (s_.vessel.use == VesselUse::public_use) add("public_vessel", Concern::upkeep, 1);
    if (s_.demand_dose_mg_l && *s_.demand_dose_mg_l > 0)
      add("chlorine_demand", Concern::health, 2, "free_chlorine", *s_.demand_dose_mg_l);
    if (s_.demand_open) add("demand_not_found", Concern::health, 2);
    if (!s_.vessel.volume) add("volume_unknown", Concern::reading, 3);
    if (s_.refusal) add("readings_contradict", Concern::reading, 4);
  }

  std::vector<Finding> ranked() {
    std::stable_sort(out_.begin(), out_.end(), [](const Ranked& a, const Ranked& b) {
      if (a.finding.concern != b.finding.concern) return a.finding.concern < b.finding.concern;
      return a.severity > b.severity;
    });
    std::vector<Finding> findings;
    for (Ranked& r : out_) {
      r.finding.rank = static_cast<int>(findings.size()) + 1;
      findings.push_back(std::move(r.finding));
    }
    return findings;
  }

  const Situation& s_;
  const TargetSet& targets_;
  std::vector<Ranked> out_;
};

}  // namespace

std::optional<AnalyteId> sanitizer_analyte(const Vessel& v) {
  if (!v.sanitizer) return std::nullopt;
  if (*v.sanitizer == Sanitizer::bromine) return "total_bromine";
  if (*v.sanitizer == Sanitizer::biguanide) return "biguanide";
  return "free_chlorine";
}

std::vector<Finding> find_all(const Situation& s, const TargetSet& targets) {
  return Finder(s, targets).all();
}

bool has_finding(const std::vector<Finding>& findings, std::string_view id) {
  return std::any_of(findings.begin(), findings.end(), [&](const Finding& f) { return f.id == id; });
}

bool closes_water(std::string_view id) {
  static constexpr std::string_view ids[] = {"free_chlorine_low",  "free_chlorine_high",
                                             "total_bromine_low",  "total_bromine_high",
                                             "biguanide_low",      "combined_chlorine_high",
                                             "stabilizer_ratio",   "too_hot",
                                             "green_water",        "slimy_walls",
                                             "drain_not_visible",  "chemicals_mixed_or_fuming",
                                             "incident",           "chlorine_demand",
                                             "demand_not_found",   "sanitizer_not_read",
                                             "sanitizer_doubtful", "sanitizer_unknown"};
  return std::find(std::begin(ids), std::end(ids), id) != std::end(ids);
}

}  // namespace brimline
