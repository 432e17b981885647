// SPDX-License-Identifier: GPL-3.0-or-later
// A search among many, where most words are common: against looking at every customer.
#include <set>

#include "station/store/fold.h"
#include "station/store/people.h"
#include "tests/station/store/shared_checks.h"
#include "tests/station/store/workshop.h"

namespace brimline::tests {
namespace {

Customer one_of_crowd(int i) {
  static const char* const firsts[] = {"Anna", "Boris", "Carla", "Dario", "Elin", "Farid", "Anouk"};
  static const char* const lasts[] = {"Streng", "Kovar", "Lund", "Strand", "Abel"};
  Customer out;
  out.id = "crowd-" + std::to_string(i);
  out.name = std::string(firsts[i % 7]) + " " + lasts[i / 7 % 5] + std::to_string(i % 41);
  out.street = std::to_string(i) + (i % 3 == 0 ? " Lane" : " Street");
  return out;
}

enum class Where { begins, anywhere };

// Each word of the query begins one of theirs, or stands anywhere in one.
bool meets(const Customer& customer, const std::string& query, Where where) {
  std::vector<std::string> theirs = folded_words(*customer.name);
  for (const std::string& word : folded_words(*customer.street)) theirs.push_back(word);
  const auto words = query_words(query);
  return std::all_of(words.begin(), words.end(), [&](const std::string& word) {
    return std::any_of(theirs.begin(), theirs.end(), [&](const std::string& one) {
      return where == Where::begins ? one.starts_with(word) : one.find(word) != std::string::npos;
    });
  });
}

}  // namespace

void check_crowd(Store& store) {
  constexpr int kCrowd = 2100;
  constexpr size_t kShown = 20;
  Connection& c = store.connection();
  ASSERT_TRUE(c.transact(Access::write, [&] {
    for (int i = 0; i < kCrowd; ++i) put_customer(c, one_of_crowd(i), Merge::replace);
  }));
  for (const char* query :
       {"street a", "lane str", "a s l", "anna streng street", "boris k lane", "lane anna a",
        "street b kovar12", "lane 300", "e str street 1", "farid abel lane", "street lane"}) {
    size_t all = 0;
    for (int i = 0; i < kCrowd; ++i) all += meets(one_of_crowd(i), query, Where::begins) ? 1 : 0;
    const auto found = store.customers_matching(query);
    ASSERT_TRUE(found) << query << ": " << found.error().text;
    std::set<std::string> ids;
    for (const Found& one : *found) {
      EXPECT_TRUE(meets(one.customer, query, Where::anywhere)) << query << ": " << *one.customer.name;
      ids.insert(one.customer.id);
    }
    EXPECT_EQ(ids.size(), found->size()) << query << ": nobody twice";
    EXPECT_GE(ids.size(), std::min(all, kShown)) << query << ": " << all << " there are";
  }
}

}  // namespace brimline::tests
