// SPDX-License-Identifier: GPL-3.0-or-later
// Brush, vacuum, filter, and what is dosed by its label once the sanitizer is right.
#include "analysis/findings/edge.h"
#include "analysis/findings/find.h"
#include "analysis/treatment/planner.h"

namespace brimline {

namespace {

bool poured(const Draft& d, std::string_view family) {
  for (const DraftStep& step : d.steps)
    if (step.step.chemical && find_substance(*step.step.chemical)->is(family)) return true;
  return false;
}

// Once the sanitizer holds, and never beside what binds metals or phosphate. Alum is not planned: it wants a
// sand filter and vacuuming to waste, and a visit tells neither.
void clarify(Draft& d) {
  const auto sanitizer = sanitizer_analyte(d.s.vessel);
  const Known* read = sanitizer ? d.s.fresh(*sanitizer) : nullptr;
  const auto aim = sanitizer ? d.aim(*sanitizer) : std::nullopt;
  if (!read || !aim || (aim->range.low && read->value < *aim->range.low) || !d.may_dose()) return;
  if (poured(d, "phosphonate") || poured(d, "phosphate_remover")) return;
  if (const auto product = d.choose({"clarifier"})) d.add_by_label(*product, {{"cloudy"}, "clarify"});
}

}  // namespace

void plan_clearing(Draft& d) {
  const Situation& s = d.s;
  if (s.algae()) {
    d.act(Action::brush, "brush", {"green_water", "slimy_walls"}, 1);
    d.act(Action::filter, "filter_on", {"green_water", "slimy_walls"}, 24);
    d.act(Action::clean_filter, "clean_filter", {"green_water", "slimy_walls"}, 1);
    return;
  }
  if (s.has(Sign::cloudy)) {
    clarify(d);
    d.act(Action::filter, "filter_on", {"cloudy"}, 24);
    d.act(Action::clean_filter, "clean_filter", {"cloudy"}, 1);
  }
  if (s.bottle.occasion == Occasion::after_storm) d.act(Action::clean_filter, "clean_filter", {}, 1);
}

// Leaves and mud use chlorine up: after a storm and before the winter they come out ahead of any dose;
// common practice, no source.
void plan_debris(Draft& d) {
  const bool winter = d.s.bottle.occasion == Occasion::closing && kind_of(d.s.vessel) == VesselKind::pool;
  const bool cleared_later = d.s.algae() || d.s.has(Sign::cloudy);
  if (winter || (d.s.bottle.occasion == Occasion::after_storm && !cleared_later))
    d.act(Action::vacuum, "vacuum", {}, 2);
}

// A closed pool stands for months: filter clean, and an algaecide without copper by its label.
void plan_winter(Draft& d) {
  if (d.s.bottle.occasion != Occasion::closing || kind_of(d.s.vessel) != VesselKind::pool) return;
  d.act(Action::clean_filter, "clean_filter", {}, 1);
  const Known* free = d.s.fresh("free_chlorine");
  if (!d.may_dose() || d.s.vessel.place == Place::indoor || (free && free->value > 5)) return;
  if (const auto product = d.choose({"polyquat"})) d.add_by_label(*product, {{}, "winter_algaecide"});
}

void plan_phosphate(Draft& d) {
  const Known* k = d.s.fresh("phosphate");
  const auto aim = d.aim("phosphate");
  if (!k || !aim || standing(k->measured(), aim->range) != Standing::above || !d.may_dose()) return;
  if (d.s.algae() || d.s.bottle.occasion == Occasion::closing) return;  // after chlorine holds again
  const Known* free = d.s.fresh("free_chlorine");
  if (!free || free->value < 1) return;
  // La : PO4 1:1; phosphate is read as PO4, 94.97 g/mol. Down to a tenth of the limit.
  const double bound = (k->value - 0.1) * 1e-3 / 94.97;
  const auto product = d.choose({"lanthanum_chloride"}, bound * d.kilograms());
  if (product && d.add(*product, bound, {{"phosphate_high"}, "remove_phosphate"}) > 0)
    d.others["phosphate"] = 0.1;
}

}  // namespace brimline
