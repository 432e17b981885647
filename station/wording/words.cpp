// SPDX-License-Identifier: GPL-3.0-or-later
#include "station/wording/words.h"

#include <QLocale>
#include <QString>
#include <QTranslator>

namespace brimline {

Words::Words(std::string_view language) : language_(language) {
  if (language_ == "en") return;
  auto translator = std::make_shared<QTranslator>();
  if (translator->load(":/i18n/kiosk_" + QString::fromStdString(language_) + ".qm"))
    translator_ = std::move(translator);
}

Words Words::with_clock(Clock clock) const {
  Words out = *this;
  out.clock_ = clock;
  return out;
}

std::string Words::say(const char* context, const char* text,
                       std::initializer_list<std::string> values) const {
  QString sentence;
  if (translator_) sentence = translator_->translate(context, text);
  if (sentence.isEmpty()) sentence = QString::fromUtf8(text);
  // One pass, so that a value holding "%1" is left alone.
  QString out;
  for (qsizetype i = 0; i < sentence.size(); ++i) {
    if (sentence[i] == u'%' && i + 1 < sentence.size() && sentence[i + 1].isDigit()) {
      const auto index = static_cast<size_t>(sentence[i + 1].digitValue());
      if (index >= 1 && index <= values.size()) {
        out += QString::fromStdString(*(values.begin() + (index - 1)));
        ++i;
        continue;
      }
    }
    out += sentence[i];
  }
  return out.toStdString();
}

std::string Words::number(double value, int decimals) const {
  // Figures go with the sentence around them: where that is English, so are they.
  const bool translated = translator_ != nullptr;
  QLocale locale(translated && language_ == "es"   ? QLocale::Spanish
                 : translated && language_ == "fr" ? QLocale::French
                                                   : QLocale::C);
  locale.setNumberOptions(QLocale::OmitGroupSeparator);
  return locale.toString(value, 'f', decimals).toStdString();
}

}  // namespace brimline
