// SPDX-License-Identifier: GPL-3.0-or-later
// The shop's own shelf: a folder of product files that the Back room writes; until it does, what is built in.
#pragma once

#include "station/shelf/shelf.h"

namespace brimline {

// The shelf of the folder, or the built-in one where the folder holds no product.
tl::expected<Shelf, std::vector<Fault>> shop_shelf(const std::string& folder);

// A product as its file says it.
std::string product_to_toml(const Product& product);

// An id for a product of this name that the shelf does not have yet: "pool_acid_31_45".
std::string new_product_id(const Shelf& shelf, const std::string& name);

// Judges the product as a file would be judged and writes it; the first time the built-in list goes along, so
// that the shop changes a list and does not begin one. A file is whole or as it was.
tl::expected<void, std::vector<Fault>> keep_product(const std::string& folder, const Product& product);
// Takes the product off the shop's shelf; the built-in list goes along as above.
tl::expected<void, std::vector<Fault>> remove_product(const std::string& folder, const std::string& id);

}  // namespace brimline
