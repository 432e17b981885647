// SPDX-License-Identifier: GPL-3.0-or-later
#include "analysis/treatment/hand.h"

#include <algorithm>
#include <cmath>

#include "analysis/water/doses.h"

namespace brimline {

namespace {

constexpr double kHarmLimit = 0.01;  // of the contract

// Of one kind: floc and persulfate are sour too, and neither is to be poured for acid. These families only
// say what must not meet.
bool same_kind(const std::string& from, const std::string& to) {
  constexpr std::string_view kNoKind[] = {"acid", "alkali", "granular_acid", "oxidiser", "label_only"};
  const Substance *a = find_substance(from), *b = find_substance(to);
  return a && b && std::any_of(a->families.begin(), a->families.end(), [&](const std::string& family) {
           return b->is(family) &&
                  std::find(std::begin(kNoKind), std::end(kNoKind), family) == std::end(kNoKind);
         });
}

// A mole of `to` that does the work of how many of `from`: by chlorine, else alkalinity, calcium, bromine.
std::optional<double> moles_for(const std::string& from, const std::string& to) {
  if (from == to) return 1;
  if (!same_kind(from, to)) return std::nullopt;
  const auto a = dose_vector(from), b = dose_vector(to);
  if (!a || !b) return std::nullopt;
  for (const auto member :
       {&Totals::chlorine, &Totals::bromine, &Totals::calcium, &Totals::borate, &Totals::alkalinity})
    if ((*a).*member != 0)
      return (*b).*member / (*a).*member > 0 ? std::optional((*a).*member / (*b).*member) : std::nullopt;
  return std::nullopt;
}

class Hand {
 public:
  Hand(Draft& d, std::span<const HandOrder> orders) : d_(d), orders_(orders) {}

  // Nothing where all went down.
  std::optional<HandRefusal> put_down(const DraftedPlan& drafted) {
    for (const HandOrder& o : orders_) {
      if (o.reason.empty() || o.staff.empty()) return HandRefusal{o.step, "no_reason"};
      if (o.step < 1 || o.step > static_cast<int>(drafted.steps.size()))
        return HandRefusal{o.step, "no_such_step"};
    }
    for (const DraftStep& told : drafted.steps)
      if (auto refused = step(told)) return refused;
    return std::nullopt;
  }

 private:
  std::optional<HandRefusal> step(const DraftStep& told) {
    const int order = told.step.order;
    double share = 1;
    int supply = told.supply;
    for (const HandOrder& o : orders_) {
      if (o.step != order) continue;
      if (o.what == HandOrder::What::leave_out) return std::nullopt;
      if (told.step.action != Action::add) return HandRefusal{order, "not_a_dose"};
      if (o.what == HandOrder::What::dose) share = o.share;
      if (o.what == HandOrder::What::product) {
        const auto found = std::find_if(d_.supplies().begin(), d_.supplies().end(),
                                        [&](const Supply& x) { return x.product.id == o.product; });
        if (found == d_.supplies().end()) return HandRefusal{order, "not_on_shelf"};
        supply = static_cast<int>(found - d_.supplies().begin());
      }
    }
    if (told.step.action == Action::add) return dose(told, supply, share);
    d_.act(told.step.action, told.note, told.step.for_findings, told.step.wait_h, told.change);
    if (told.step.action == Action::retest) d_.ends = true;
    return std::nullopt;
  }

  std::optional<HandRefusal> dose(const DraftStep& told, int supply, double share) {
    const int order = told.step.order;
    if (!d_.may_pour(d_.supplies()[supply].product)) return HandRefusal{order, "never_here"};
    const AddOptions how{told.step.for_findings, told.note, told.whole};
    if (!told.step.active_mol) {  // the label decides, not the hand
      const bool same = d_.supplies()[supply].product.substance == *told.step.chemical;
      if (share != 1 || !same) return HandRefusal{order, "label_decides"};
      d_.add_by_label(supply, how, told.label_dose);
      return std::nullopt;
    }
    const std::string& chemical = d_.supplies()[supply].product.substance;
    const auto ratio = moles_for(*told.step.chemical, chemical);
    if (!ratio || share <= 0 || !std::isfinite(share)) return HandRefusal{order, "not_a_dose"};
    const double wanted = *told.step.active_mol / d_.kilograms() * *ratio * share;
    const bool changed = share != 1 || supply != told.supply;
    if (changed && !told.whole && d_.capped(*find_substance(chemical), wanted) < 0.995 * wanted)
      return HandRefusal{order, "over_cap"};
    if (changed && told.whole && share > 1.1) return HandRefusal{order, "over_cap"};
    d_.add(supply, wanted, how);
    return std::nullopt;
  }

  Draft& d_;
  std::span<const HandOrder> orders_;
};

}  // namespace

bool can_stand_for(const std::string& substitute, const std::string& chemical) {
  return moles_for(chemical, substitute).has_value();
}

tl::expected<DraftedPlan, HandRefusal> change_by_hand(const Situation& s, const TargetSet& targets,
                                                      std::span<const Product> shelf,
                                                      const DraftedPlan& drafted,
                                                      std::span<const HandOrder> orders,
                                                      const PlanOptions& options) {
  Draft d(s, targets, shelf);
  if (!drafted.home_plan) return tl::unexpected(HandRefusal{0, "no_such_step"});
  if (auto refused = Hand(d, orders).put_down(drafted)) return tl::unexpected(*refused);
  DraftedPlan out;
  out.findings = drafted.findings;
  out.cautions = drafted.cautions;
  const ProofResult proof = finish_plan(out, d, options);
  if (proof.proof.harm > kHarmLimit && proof.proof.harm > (drafted.proof ? drafted.proof->harm : 0)) {
    const auto worst = std::max_element(proof.harm_by_step.begin(), proof.harm_by_step.end());
    const int at = static_cast<int>(worst - proof.harm_by_step.begin()) + 1;
    return tl::unexpected(HandRefusal{at, "harm", proof.proof.harm});
  }
  return out;
}

}  // namespace brimline
