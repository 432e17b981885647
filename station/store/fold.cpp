// SPDX-License-Identifier: GPL-3.0-or-later
#include "station/store/fold.h"

#include <algorithm>

#include <QString>

namespace brimline {

namespace {

struct Neighbour {
  char16_t letter;
  const char* plain;
};
// Letters that Unicode does not decompose into a base letter and a mark (after case folding).
constexpr Neighbour kNeighbours[] = {{u'ø', "o"}, {u'æ', "ae"}, {u'œ', "oe"}, {u'ß', "ss"}, {u'đ', "d"},
                                     {u'ð', "d"}, {u'ł', "l"},  {u'ħ', "h"},  {u'ı', "i"},  {u'ŋ', "n"},
                                     {u'ŧ', "t"}, {u'þ', "th"}, {u'ĸ', "k"}};

bool is_apostrophe(QChar c) {
  return c == u'\'' || c == u'\u2019' || c == u'\u2018' || c == u'\u02bc' || c == u'`' || c == u'\u00b4';
}

void append_folded(QString& out, QChar c) {
  for (const Neighbour& n : kNeighbours)
    if (c == n.letter) {
      out += QLatin1String(n.plain);
      return;
    }
  out += c;
}

}  // namespace

std::vector<std::string> folded_words(std::string_view text) {
  QString given = QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size()));
  given.removeIf(is_apostrophe);
  const QString plain = given.normalized(QString::NormalizationForm_KD).toCaseFolded();
  std::vector<std::string> out;
  QString word;
  const auto end_word = [&] {
    if (!word.isEmpty()) out.push_back(word.toStdString());
    word.clear();
  };
  for (const QChar c : plain) {
    if (c.isMark()) continue;
    if (c.isLetterOrNumber() || c.isSurrogate())
      append_folded(word, c);
    else
      end_word();
  }
  end_word();
  return out;
}

std::vector<std::string> folded_number(std::string_view text) {
  std::vector<std::string> out;
  std::string digits;
  std::vector<size_t> starts;
  bool inside = false;
  for (const char c : text) {
    const bool digit = c >= '0' && c <= '9';
    if (digit && !inside) starts.push_back(digits.size());
    if (digit) digits += c;
    inside = digit;
  }
  for (const size_t start : starts) out.push_back(digits.substr(start));
  return out;
}

std::vector<std::string> query_words(std::string_view text) {
  const bool number = text.find_first_not_of("0123456789+-()/. \t") == std::string_view::npos;
  const auto groups = folded_number(text);
  if (number && groups.size() > 1) return {groups.front()};
  return folded_words(text);
}

}  // namespace brimline
