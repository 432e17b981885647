// SPDX-License-Identifier: GPL-3.0-or-later
#include "station/wording/statement_words.h"

namespace brimline {

namespace {

class WordsSpeaker : public Speaker {
 public:
  explicit WordsSpeaker(const Words& words) : words_(words) {}
  std::string word(const char* context, const char* text) const override { return words_.say(context, text); }
  std::string number(double value, int decimals) const override { return words_.number(value, decimals); }

 private:
  const Words& words_;
};

}  // namespace

std::string statement_text(const Words& words, const Statement& statement) {
  return spoken(statement, WordsSpeaker(words));
}

std::string check_text(const Words& words, const Check& check) {
  return statement_text(words, check.statement);
}

std::string demand_text(const Words& words, const DemandResult& result) {
  std::string out;
  for (const Statement& statement : result.statements())
    out += (out.empty() ? "" : " ") + statement_text(words, statement);
  return out;
}

}  // namespace brimline
