// SPDX-License-Identifier: GPL-3.0-or-later
// A product as sold: which chemical it holds, how strong, how it is measured out. The label's
// percent is one of three things, and reading one for another is a 14 to 20 % error in the dose.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "analysis/treatment/plan.h"
#include "analysis/treatment/substance.h"

namespace brimline {

enum class Strength {
  weight,             // percent of the anhydrous formula by weight
  trade,              // percent available chlorine by volume: grams of Cl2 in 100 mL
  available_chlorine  // percent available chlorine by weight
};

struct Assay {
  double percent = 100;
  Strength strength = Strength::weight;
  friend bool operator==(const Assay&, const Assay&) = default;
};

struct Product {
  std::string id, name;
  std::string substance;  // id of analysis/substances
  Assay assay;
  bool liquid = false;               // measured by volume, else by weight
  bool tablets = false;              // given whole, none broken
  std::optional<double> density;     // kg/L of a liquid; absent: from the assay
  std::optional<double> label_dose;  // mL or g a cubic metre, for what is dosed by label only
  double price = 0;                  // a litre or kilogram, in the shop's money
  std::string source;
  std::vector<double> packs;  // litres or kilograms a pack holds, as it is sold; empty: not said
  std::optional<std::string> barcode;
  std::vector<std::string> cautions;  // of its own label, as printed there
  friend bool operator==(const Product&, const Product&) = default;
};

// "31.45 % by weight", "12.5 % trade", "65 % available chlorine", "99 %"; nothing where no percent stands
// there.
std::optional<Assay> parse_assay(std::string_view label);

// kg/L of a solution of hydrochloric acid, hypochlorite or peroxide of this strength; 1 for others.
double solution_density(const Substance& substance, Assay assay);

// Moles of the anhydrous formula in a litre (liquid) or kilogram of the product; nothing where it is
// dosed by label only or holds none.
std::optional<double> moles_per_unit(const Product& product);

// The amount that holds `mol`, in L or mL (below a litre), kg or g.
std::optional<ProductAmount> amount_of(const Product& product, double mol);
// The label's amount for a volume.
std::optional<ProductAmount> label_amount(const Product& product, Volume volume);

}  // namespace brimline
