// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>

#include "analysis/treatment/draft.h"

namespace brimline {

namespace {

double base_amount(const AtHome& have) {
  const double v = have.amount.value_or(0);
  return have.unit == "mL" || have.unit == "g" ? v / 1000 : v;
}

Supply supply_at_home(Product product, const AtHome& have) {
  Supply out{std::move(product), true, {}, {}};
  if (!have.amount) return out;
  if (const auto per_unit = moles_per_unit(out.product))
    out.stock_mol = base_amount(have) * *per_unit;
  else
    out.stock_label = base_amount(have);
  return out;
}

}  // namespace

double Supply::price_a_mol() const {
  const auto per_unit = moles_per_unit(product);
  return per_unit && *per_unit > 0 ? product.price / *per_unit : 0;
}

std::vector<Supply> supplies_at_home(const Situation& s, std::span<const Product> shelf) {
  std::vector<Supply> out;
  for (const AtHome& have : s.bottle.at_home) {
    const Substance* sub = find_substance(have.chemical);
    const auto assay = have.assay ? parse_assay(*have.assay) : std::nullopt;
    if (!sub || (have.assay && !assay)) continue;  // a label that cannot be read is not dosed from
    const bool liquid = have.unit && (*have.unit == "L" || *have.unit == "mL");
    const auto same = std::find_if(shelf.begin(), shelf.end(), [&](const Product& p) {
      return p.substance == have.chemical && (!assay || p.assay == *assay) &&
             (!have.unit || p.liquid == liquid);
    });
    if (same != shelf.end()) {
      out.push_back(supply_at_home(*same, have));
    } else if (assay && have.unit) {
      Product own;
      own.name = sub->name + ", " + *have.assay;
      own.substance = have.chemical;
      own.assay = *assay;
      own.liquid = liquid;
      own.source = "label at home";
      if (moles_per_unit(own)) out.push_back(supply_at_home(std::move(own), have));
    }
  }
  return out;
}

}  // namespace brimline
