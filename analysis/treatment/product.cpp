// SPDX-License-Identifier: GPL-3.0-or-later
#include "analysis/treatment/product.h"

#include <charconv>
#include <span>

#include "analysis/water/doses.h"

namespace brimline {

namespace {

struct DensityPoint {
  double percent, kg_per_litre;
};

double between(std::span<const DensityPoint> points, double percent) {
  for (size_t i = 1; i < points.size(); ++i)
    if (percent <= points[i].percent || i + 1 == points.size()) {
      const DensityPoint a = points[i - 1], b = points[i];
      return a.kg_per_litre +
             (b.kg_per_litre - a.kg_per_litre) * (percent - a.percent) / (b.percent - a.percent);
    }
  return 1;
}

// Percent HCl by weight; 20 degrees Baume is 31.45 % and 1.160, 14.5 % is 1.070.
constexpr DensityPoint kAcid[] = {{0, 0.998}, {14.5, 1.070}, {28, 1.141}, {31.45, 1.160}, {38, 1.189}};
// Percent NaOCl by weight: household 6 and 8.25 %, 12.5 % pool strength.
constexpr DensityPoint kHypochlorite[] = {{0, 0.998}, {6, 1.08}, {8.25, 1.11}, {12.5, 1.20}};
// Percent H2O2 by weight; 27 % is 1.10.
constexpr DensityPoint kPeroxide[] = {{0, 0.998}, {27, 1.10}, {50, 1.20}};

double chlorine_a_mole(const Substance& s) {
  const DoseRow* row = find_dose(s.id);
  return row ? row->per_mole.chlorine : 0;
}

ProductAmount in_handy_unit(double litres_or_kilograms, bool liquid) {
  if (litres_or_kilograms < 1) return {litres_or_kilograms * 1000, liquid ? "mL" : "g"};
  return {litres_or_kilograms, liquid ? "L" : "kg"};
}

}  // namespace

std::optional<Assay> parse_assay(std::string_view label) {
  const size_t digit = label.find_first_of("0123456789");
  if (digit == std::string_view::npos || label.find('%') == std::string_view::npos) return std::nullopt;
  Assay out;
  const auto [end, error] = std::from_chars(label.data() + digit, label.data() + label.size(), out.percent);
  if (error != std::errc{} || out.percent <= 0 || out.percent > 100) return std::nullopt;
  if (label.find("trade") != std::string_view::npos)
    out.strength = Strength::trade;
  else if (label.find("available") != std::string_view::npos)
    out.strength = Strength::available_chlorine;
  return out;
}

double solution_density(const Substance& s, Assay assay) {
  if (s.id == "hydrochloric_acid") return between(kAcid, assay.percent);
  if (s.id == "hydrogen_peroxide") return between(kPeroxide, assay.percent);
  if (s.id == "sodium_hypochlorite")
    return between(kHypochlorite, assay.strength == Strength::weight ? assay.percent : assay.percent * 1.05);
  return 1;
}

std::optional<double> moles_per_unit(const Product& p) {
  const Substance* s = find_substance(p.substance);
  if (!s || !s->molar_mass) return std::nullopt;
  const double chlorine = chlorine_a_mole(*s);
  const double share = p.assay.percent / 100;
  const double density = p.liquid ? p.density.value_or(solution_density(*s, p.assay)) : 1;
  switch (p.assay.strength) {
    case Strength::weight:
      return share * 1000 * density / *s->molar_mass;
    case Strength::trade:
      if (!p.liquid || chlorine <= 0) return std::nullopt;
      return share * 1000 / (weight::kChlorine * chlorine);
    case Strength::available_chlorine:
      if (chlorine <= 0) return std::nullopt;
      return share * 1000 * density / (weight::kChlorine * chlorine);
  }
  return std::nullopt;
}

std::optional<ProductAmount> amount_of(const Product& p, double mol) {
  const auto per_unit = moles_per_unit(p);
  if (!per_unit || *per_unit <= 0) return std::nullopt;
  return in_handy_unit(mol / *per_unit, p.liquid);
}

std::optional<ProductAmount> label_amount(const Product& p, Volume volume) {
  if (!p.label_dose) return std::nullopt;
  return in_handy_unit(*p.label_dose * volume.cubic_metres() / 1000, p.liquid);
}

}  // namespace brimline
