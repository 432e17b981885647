// SPDX-License-Identifier: GPL-3.0-or-later
// The shelf: products as sold, one TOML file each, built in or read from a folder of the shop's own.
#pragma once

#include <string>
#include <vector>

#include <tl/expected.hpp>

#include "analysis/fields.h"
#include "analysis/treatment/product.h"

namespace brimline {

struct Shelf {
  std::string id;  // "built_in", or the folder's name
  std::vector<Product> products;
  const Product* find(std::string_view product_id) const;  // nullptr: not on the shelf
};

// Holds every chemical that may be dosed.
const Shelf& built_in_shelf();
// Faults of the files built in: none, as a test holds.
std::vector<Fault> shelf_faults();

// Every *.toml of a folder, or all faults of all of them; a folder without one is a fault.
tl::expected<Shelf, std::vector<Fault>> read_shelf(const std::string& folder);
tl::expected<Product, std::vector<Fault>> read_product(std::string_view text, std::string_view file);

}  // namespace brimline
