// SPDX-License-Identifier: GPL-3.0-or-later
#include "station/wording/fault_words.h"

#include <array>
#include <span>

#include "analysis/phrase.h"

namespace brimline {
namespace {

constexpr const char* kContext = "fault";

constexpr const char* kSentences[] = {
    // of any table
    phrase("fault", "a NUL byte"),
    phrase("fault", "a text file in UTF-8"),
    phrase("fault", "a line of over %1 bytes"),
    phrase("fault", "a table"),
    phrase("fault", "more than %1 columns"),
    phrase("fault", "a quotation mark is not closed"),
    phrase("fault", "its end, before the end of the file"),
    phrase("fault", "text after a closing quotation mark"),
    phrase("fault", "a \"%1\" or the line's end"),
    phrase("fault", "bytes that are not UTF-8"),
    phrase("fault", "a table saved as UTF-8 (\"CSV UTF-8\")"),
    phrase("fault", "the file cannot be read"),
    phrase("fault", "the file cannot be read further"),
    phrase("fault", "a file that can be read"),
    phrase("fault", "a file that can be written"),
    phrase("fault", "cannot be made"),
    phrase("fault", "the file is empty"),
    phrase("fault", "a line of column names"),
    phrase("fault", "column `%1` stands twice"),
    phrase("fault", "it once"),
    phrase("fault", "column `%1` is not known and is left out"),
    phrase("fault", "a known column"),
    phrase("fault", "1 field"),
    phrase("fault", "%1 fields"),
    phrase("fault", "%1 as in the header"),
    // of any value
    phrase("fault", "`%1` is missing"),
    phrase("fault", "`%1` is %2"),
    phrase("fault", "`%1` is in `%2`"),
    phrase("fault", "`%1` is empty"),
    phrase("fault", "`%1` is not known"),
    phrase("fault", "`%1` is not known here"),
    phrase("fault", "`%1` is there twice"),
    phrase("fault", "`%1` is negative"),
    phrase("fault", "`%1` holds a control character"),
    phrase("fault", "an item of `%1` is %2"),
    phrase("fault", "text holds a null character"),
    phrase("fault", "text that is not UTF-8"),
    phrase("fault", "it to be there"),
    phrase("fault", "each key once"),
    phrase("fault", "text"),
    phrase("fault", "text on one line"),
    phrase("fault", "text without it"),
    phrase("fault", "a number"),
    phrase("fault", "a number of 0 or more"),
    phrase("fault", "a number above 0"),
    phrase("fault", "a whole number"),
    phrase("fault", "a whole number from %1 up"),
    phrase("fault", "a whole number from %1 to %2"),
    phrase("fault", "a list"),
    phrase("fault", "an object"),
    phrase("fault", "a date or time"),
    phrase("fault", "null"),
    phrase("fault", "true or false"),
    phrase("fault", "yes or no"),
    phrase("fault", "one of %1"),
    phrase("fault", "0 or more"),
    phrase("fault", "zero or more"),
    phrase("fault", "1 or more"),
    phrase("fault", "1 or more: (sample + water) / sample"),
    phrase("fault", "a share from 0 to 1"),
    phrase("fault", "a pH from 0 to 14"),
    phrase("fault", "an amount that can be"),
    phrase("fault", "a temperature of liquid water in degrees Celsius"),
    phrase("fault", "a time with its offset, like 2026-06-14T08:10:00-05:00"),
    // of customers and vessels
    phrase("fault", "a name, or the id of a customer that is known"),
    phrase("fault", "en, es or fr"),
    phrase("fault", "m3, L, gal (US) or gal_imp"),
    phrase("fault", "the moment until which the volume was learnt, ISO 8601"),
    phrase("fault", "the volume that was learnt"),
    phrase("fault", "half of a learnt volume"),
    phrase("fault", "`%1` and `%2`"),
    phrase("fault", "vessel %1 is another customer's"),
    phrase("fault", "an id of its own"),
    phrase("fault", "customer %1 was erased and is left out"),
    phrase("fault", "a customer"),
    phrase("fault", "customer %1 is written otherwise in the records or above"),
    phrase("fault", "the same; what is there stays"),
    phrase("fault", "vessel %1 is written otherwise in the records or above"),
    phrase("fault", "the same, or a `vessel_id` for each; what is there stays"),
    phrase("fault", "the name of a customer that is known, or `customer_id`"),
    phrase("fault", "one of several customers of that name: `phone` or `customer_id`"),
    phrase("fault", "a customer, a name, or a vessel that is known"),
    phrase("fault", "the id of a customer that is known"),
    phrase("fault", "a vessel of this customer"),
    phrase("fault", "one of the customer's %1 vessels"),
    // of readings
    phrase("fault", "no column of readings"),
    phrase("fault", "`analyte` and `value`, or columns such as `ph` and `free_chlorine`"),
    phrase("fault", "a day or moment as ISO 8601, 2026-06-14 or 2026-06-14T08:10:00-05:00"),
    phrase("fault", "one bottle's: the same customer, vessel and moment as above"),
    phrase("fault", "the same reading of %1 stands above"),
    phrase("fault", "it once; it is kept once"),
    phrase("fault", "the customer was erased: visit %1 is left out"),
    phrase("fault", "visit %1 is in the records with other readings"),
    // of products and targets
    phrase("fault", "a chemical's id"),
    phrase("fault", "mL or g a cubic metre"),
    phrase("fault", "the strength does not fit the chemical"),
    phrase("fault", "`percent` is no percent"),
    phrase("fault", "above 0, at most 100"),
    phrase("fault", "a pack holds nothing"),
    phrase("fault", "litres or kilograms above 0"),
    phrase("fault", "the product's name"),
    phrase("fault", "one of the keys this file may have"),
    phrase("fault", "`id` is no name for a product"),
    phrase("fault", "small letters, digits and _"),
    phrase("fault", "it is the last product"),
    phrase("fault", "a shelf with something on it"),
    phrase("fault", "neither `low` nor `high` is there"),
    phrase("fault", "one of them"),
    phrase("fault", "`low` is above `high`"),
    phrase("fault", "low up to high"),
    phrase("fault", "`aim` is outside the target"),
    phrase("fault", "a value between low and high"),
    phrase("fault", "has no such row"),
    phrase("fault", "a row of the list"),
};

// What stands where a sentence has %1 and %2.
struct Match {
  const char* sentence = nullptr;
  size_t letters = 0;  // of the sentence's own
  std::array<std::string, 2> values;
};

std::optional<Match> matched(const char* sentence, std::string_view text) {
  Match out{sentence, 0, {}};
  std::string_view rest = sentence;
  size_t at = 0;
  std::string* open = nullptr;  // the value that goes on until the sentence's next own letters
  for (;;) {
    const size_t mark = rest.find('%');
    const std::string_view own = rest.substr(0, mark);
    const bool last = mark == std::string_view::npos;
    size_t found = at;
    if (open)
      found = !last                           ? text.find(own, at)
              : text.size() < at + own.size() ? text.npos
                                              : text.size() - own.size();
    if (found == text.npos || text.substr(found, own.size()) != own) return std::nullopt;
    if (open) *open = text.substr(at, found - at);
    at = found + own.size();
    out.letters += own.size();
    if (last) break;
    open = &out.values[static_cast<size_t>(rest[mark + 1] - '1')];
    rest.remove_prefix(mark + 2);
  }
  return at == text.size() ? std::optional(out) : std::nullopt;
}

// The sentence that is all of the text; null: none.
const char* whole_sentence(std::string_view text) {
  for (const char* sentence : kSentences)
    if (sentence == text) return sentence;
  return nullptr;
}

// What was found is a kind of value, one quoted, or a number: "`low` is text", "is `1,5`", "is -3".
constexpr std::string_view kFound = " is %2";

bool may_be_found(const std::string& value) {
  return whole_sentence(value) ||
         (!value.empty() && std::string_view("`\"-0123456789").find(value[0]) != std::string_view::npos);
}

// The sentence with the most letters of its own.
std::optional<Match> best_of(std::string_view text) {
  std::optional<Match> best;
  for (const char* sentence : kSentences) {
    auto match = matched(sentence, text);
    if (!match || (best && match->letters <= best->letters)) continue;
    if (std::string_view(sentence).ends_with(kFound) && !may_be_found(match->values[1])) continue;
    best = std::move(match);
  }
  return best;
}

}  // namespace

std::optional<std::string> fault_sentence(const Words& words, std::string_view english) {
  if (english == "-") return std::string(english);
  const auto match = best_of(english);
  if (!match) return std::nullopt;
  std::string found = match->values[1];
  if (const char* kind = whole_sentence(found); kind && std::string_view(match->sentence).ends_with(kFound))
    found = words.say(kContext, kind);
  return words.say(kContext, match->sentence, {match->values[0], found});
}

std::string fault_words(const Words& words, const Fault& fault) {
  const auto what = fault_sentence(words, fault.what), expected = fault_sentence(words, fault.expected);
  if (!what || !expected) return fault.text();  // rather than half of it
  if (*expected == "-")
    return words.say(kContext, phrase("fault", "%1, line %2: %3"),
                     {fault.file, std::to_string(fault.line), *what});
  return words.say(kContext, phrase("fault", "%1, line %2: %3; expected %4"),
                   {fault.file, std::to_string(fault.line), *what, *expected});
}

}  // namespace brimline
