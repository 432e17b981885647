// SPDX-License-Identifier: GPL-3.0-or-later
// Brush, vacuum, filter, and what is dosed by its label once the sanitizer is right.
#include "analysis/treatment/planner.h"

namespace brimline {

void plan_clearing(Draft& d) {
  const Situation& s = d.s;
  if (s.algae()) {
    d.act(Action::brush, "brush", {"green_water", "slimy_walls"}, 1);
    d.act(Action::filter, "filter_on", {"green_water", "slimy_walls"}, 24);
    d.act(Action::clean_filter, "clean_filter", {"green_water", "slimy_walls"}, 1);
    return;
  }
  if (s.has(Sign::cloudy)) {
    d.act(Action::filter, "filter_on", {"cloudy"}, 24);
    d.act(Action::clean_filter, "clean_filter", {"cloudy"}, 1);
  }
  if (s.bottle.occasion == Occasion::after_storm) {
    d.act(Action::vacuum, "vacuum", {}, 2);
    d.act(Action::clean_filter, "clean_filter", {}, 1);
  }
}

void plan_phosphate(Draft& d) {
  const Known* k = d.s.fresh("phosphate");
  const auto aim = d.aim("phosphate");
  if (!k || !aim || !aim->range.high || k->value <= *aim->range.high || !d.may_dose()) return;
  if (d.s.algae() || d.s.bottle.occasion == Occasion::closing) return;  // after chlorine holds again
  const Known* free = d.s.fresh("free_chlorine");
  if (!free || free->value < 1) return;
  const auto product = d.choose({"lanthanum_chloride"});
  // La : PO4 1:1; phosphate is read as PO4, 94.97 g/mol. Down to a tenth of the limit.
  if (product &&
      d.add(*product, (k->value - 0.1) * 1e-3 / 94.97, {{"phosphate_high"}, "remove_phosphate"}) > 0)
    d.others["phosphate"] = 0.1;
}

}  // namespace brimline
