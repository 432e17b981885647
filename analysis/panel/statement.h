// SPDX-License-Identifier: GPL-3.0-or-later
// A sentence of the counter before it is spoken: an English pattern, the key of its translation, and what
// fills its places. Spoken here in English; station/wording speaks it in the customer's language.
//
//   Statement{"check", phrase("check", "pH was %1."), {amount("ph", 7.6)}}.text()   -> "pH was 7.60."
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include "analysis/panel/reading.h"
#include "analysis/panel/uncertainty.h"
#include "analysis/phrase.h"

namespace brimline {

struct NumberTerm {
  double value = 0;
  int decimals = 0;
};
struct AmountTerm {  // with the analyte's decimals and unit: "7.60", "100 mg/L CaCO3"
  AnalyteId analyte;
  double value = 0;
};
struct MeasuredTerm {  // "7.9 +/- 0.1", without a unit
  Measured measured;
};
struct NameTerm {  // an analyte's name: "free chlorine", at a sentence's beginning "Free chlorine"
  AnalyteId analyte;
  bool begins = false;
};
struct MethodTerm {
  std::optional<Method> method;  // "drop titration"; "method" where not told
};
struct PhraseTerm {  // words with a translation of their own
  const char* context = "";
  const char* text = "";
};
// Words of the visit, never translated: a lot, a time.
using StatementTerm = std::variant<std::string, NumberTerm, AmountTerm, MeasuredTerm, NameTerm, MethodTerm,
                                   PhraseTerm, std::vector<NameTerm>, std::vector<AmountTerm>>;

// How a language is spoken; this one speaks English.
class Speaker {
 public:
  virtual ~Speaker() = default;
  virtual std::string word(const char* context, const char* text) const;  // a pattern or a word
  virtual std::string number(double value, int decimals) const;
};

struct Statement {
  const char* context = "";
  const char* pattern = "";  // English, with %1, %2 ...; made by phrase(), lives as long as the program
  std::vector<StatementTerm> terms;  // for %1, %2 ...; at most nine
  std::string text() const;          // in English
};

std::string spoken(const Statement& statement, const Speaker& speaker);

// Terms, for short.
StatementTerm amount(std::string_view analyte, double value);
StatementTerm number(double value, int decimals);
StatementTerm name_of_analyte(std::string_view analyte);         // within a sentence
StatementTerm name_at_beginning(std::string_view analyte);       // at its beginning
StatementTerm names_of(const std::vector<AnalyteId>& analytes);  // "free chlorine, pH and iron"
StatementTerm method_name(std::optional<Method> method);

}  // namespace brimline
