// SPDX-License-Identifier: GPL-3.0-or-later
// A store of as many visits as wanted, five a customer, made in bounded time: invented people with
// names as common and as rare as people's are, ten readings a visit, a plan with every fifth.
#pragma once

#include <functional>
#include <random>
#include <string>
#include <vector>

#include "station/store/store.h"

namespace brimline::tests {

// A row: texts as they are, numbers written out, "" for NULL.
using TableRow = std::vector<std::string>;
// Takes the rows of one table after the other; `columns` as in an INSERT.
using TableSink = std::function<void(const char* table, const char* columns, const TableRow& row)>;

// All rows of a shop, in an order in which what is named comes first.
void make_shop(std::int64_t visits, const TableSink& sink);

Customer shop_customer(std::int64_t number);
Visit shop_visit(std::int64_t number);
// What a clerk may type: parts of names, numbers and streets, common words among them.
std::string shop_query(std::mt19937& random, std::int64_t customers);

void fill_sqlite(const std::string& file, std::int64_t visits);
// Through the server's own COPY; `url` as in Store::open.
void fill_postgresql(const std::string& url, std::int64_t visits);

}  // namespace brimline::tests
