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

class Words {
 public:
  // "en", "es" or "fr"; a sentence with no translation stays English.
  explicit Words(std::string_view language = "en");
  ~Words();
  Words(Words&&) noexcept;
  Words& operator=(Words&&) noexcept;

  const std::string& language() const { return language_; }
  // The sentence with %1, %2 ... replaced in order.
  std::string say(const char* context, const char* text,
                  std::initializer_list<std::string> values = {}) const;
  // A number as the reader writes it ("7.4"; "7,4" in es and fr).
  std::string number(double value, int decimals) const;

 private:
  std::string language_;
  std::unique_ptr<QTranslator> translator_;
};

}  // namespace brimline
