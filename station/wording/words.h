// SPDX-License-Identifier: GPL-3.0-or-later
// Sentences of the counter in the reader's language. Every sentence that reaches a screen or a
// sheet from C++ goes through here; the English text is its own key.
//
//   words.say("plan", phrase("plan", "Add %1 of %2."), {amount, product})
#pragma once

#include <initializer_list>
#include <memory>
#include <string>
#include <string_view>

#include "analysis/phrase.h"

class QTranslator;

namespace brimline {

enum class Clock { hours_24, hours_12 };

class Words {
 public:
  // "en", "es" or "fr"; a sentence with no translation stays English.
  explicit Words(std::string_view language = "en");

  const std::string& language() const { return language_; }
  // The same words for a reader whose clock has these hours.
  Words with_clock(Clock clock) const;
  Clock clock() const { return clock_; }
  // The sentence with %1, %2 ... replaced in order.
  std::string say(const char* context, const char* text,
                  std::initializer_list<std::string> values = {}) const;
  // A number as the reader writes it ("7.4"; "7,4" in es and fr).
  std::string number(double value, int decimals) const;

 private:
  std::string language_;
  Clock clock_ = Clock::hours_24;
  std::shared_ptr<const QTranslator> translator_;  // copies share it
};

}  // namespace brimline
