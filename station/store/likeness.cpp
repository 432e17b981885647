// SPDX-License-Identifier: GPL-3.0-or-later
#include "station/store/likeness.h"

#include <algorithm>
#include <set>

#include "station/store/fold.h"

namespace brimline {

namespace {

constexpr size_t kShortestName = 3;  // bytes; an initial is no name in common

// A card as it is compared.
struct Folded {
  std::set<std::string> name, street;
  std::string phone, email;
};

std::set<std::string> words_of(const std::optional<std::string>& text) {
  const auto words = folded_words(text.value_or(""));
  return {words.begin(), words.end()};
}

std::string joined(const std::set<std::string>& words) {
  std::string out;
  for (const std::string& word : words) out.append(word).append(" ");
  return out;
}

// The last digits of the first number written, where there are enough of them.
std::string phone_end(const std::optional<std::string>& phone) {
  const auto groups = folded_number(phone.value_or(""));
  if (groups.empty() || groups.front().size() < kPhoneDigits) return {};
  return groups.front().substr(groups.front().size() - kPhoneDigits);
}

Folded folded(const Customer& card) {
  Folded out{words_of(card.name), words_of(card.street), phone_end(card.phone), {}};
  for (const std::string& word : folded_words(card.email.value_or(""))) out.email.append(word).append(" ");
  return out;
}

bool share_a_name(const Folded& a, const Folded& b) {
  return std::any_of(a.name.begin(), a.name.end(), [&](const std::string& word) {
    return word.size() >= kShortestName && b.name.contains(word);
  });
}

bool against(const std::string& a, const std::string& b) {
  return !a.empty() && !b.empty() && a != b;
}

}  // namespace

std::vector<Likeness> likeness(const Customer& one, const Customer& other) {
  const Folded a = folded(one), b = folded(other);
  std::vector<Likeness> out;
  if (!a.phone.empty() && a.phone == b.phone) out.push_back(Likeness::phone);
  if (!a.email.empty() && a.email == b.email) out.push_back(Likeness::email);
  const bool same_name = !a.name.empty() && a.name == b.name;
  const bool same_street = a.street.size() >= 2 && a.street == b.street;
  if (same_name && same_street)
    out.push_back(Likeness::name_and_street);
  else if (same_street && share_a_name(a, b))
    out.push_back(Likeness::street);
  if (out.empty() && same_name && a.name.size() >= 2 && !against(a.phone, b.phone) &&
      !against(a.email, b.email) && !against(joined(a.street), joined(b.street)))
    out.push_back(Likeness::name);
  return out;
}

std::vector<std::string> likeness_keys(const Customer& card) {
  const Folded a = folded(card);
  std::vector<std::string> out;
  if (!a.phone.empty()) out.push_back("p" + a.phone);
  if (!a.email.empty()) out.push_back("e" + a.email);
  if (a.street.size() >= 2) out.push_back("s" + joined(a.street));
  if (a.name.size() >= 2) out.push_back("n" + joined(a.name));
  return out;
}

}  // namespace brimline
