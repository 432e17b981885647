// SPDX-License-Identifier: GPL-3.0-or-later
#include "printing/paragraph.h"

#include <QStringList>
#include <QTextBoundaryFinder>
#include <algorithm>
#include <cmath>

namespace brimline {
namespace {

// A word, or a waterline that stands like one, with whether a space stands before it.
struct Token {
  QString text;
  Type type;
  std::optional<Waterline> picture;
  double width = 0;
  bool spaced = false;  // a space may become a line's end
  bool glued = false;   // the space before it is never broken at
};

bool is_number(const QString& word) {
  return !word.isEmpty() && word.front().isDigit() && word.back().isDigit();
}

// "20:00": never parted from the day before it.
bool is_clock(const QString& word) {
  return word.size() >= 5 && word[2] == ':' && word[0].isDigit() && word[4].isDigit();
}

// A blank at which a line may end; not those that glue (UAX #14, class GL): French sets one before "?" and
// ":".
bool parts_words(QChar c) {
  return c.isSpace() && c != QChar::Nbsp && c != QChar(0x202F) && c != QChar(0x2007);
}

void add_words(std::vector<Token>& out, const Run& run, bool& space_waits) {
  const QString text = QString::fromStdString(run.text);
  for (qsizetype at = 0; at < text.size();) {
    if (parts_words(text[at])) {
      space_waits = true;
      ++at;
      continue;
    }
    qsizetype end = at;
    while (end < text.size() && !parts_words(text[end])) ++end;
    Token token{text.mid(at, end - at), run.type, std::nullopt, 0, space_waits && !out.empty(), false};
    token.width = width_of(token.text, token.type);
    const bool after_word = token.spaced && !out.back().picture;
    token.glued =
        after_word &&
        ((is_number(out.back().text) && (token.text.front().isLetter() || token.text.front() == u'%')) ||
         is_clock(token.text));
    out.push_back(std::move(token));
    space_waits = false;
    at = end;
  }
}

std::vector<Token> tokens_of(const std::vector<std::variant<Run, Waterline>>& pieces, const Type& type) {
  std::vector<Token> out;
  bool space_waits = false;
  for (const auto& piece : pieces) {
    if (const auto* run = std::get_if<Run>(&piece)) {
      add_words(out, *run, space_waits);
    } else {
      const bool first = out.empty();
      out.push_back({{}, type, std::get<Waterline>(piece), waterline_width(type), !first, !first});
      space_waits = true;
    }
  }
  return out;
}

// Splits a word that is wider than a line into pieces that fit, between whole characters.
std::vector<Token> fitted(const Token& token, double width) {
  if (token.picture || token.width <= width) return {token};
  std::vector<Token> out;
  QTextBoundaryFinder finder(QTextBoundaryFinder::Grapheme, token.text);
  qsizetype start = 0, last = 0;
  const auto cut = [&](qsizetype end) {
    Token part = token;
    part.text = token.text.mid(start, end - start);
    part.width = width_of(part.text, part.type);
    part.spaced = out.empty() && token.spaced;
    part.glued = false;
    out.push_back(std::move(part));
    start = end;
  };
  for (qsizetype at = finder.toNextBoundary(); at != -1; at = finder.toNextBoundary()) {
    if (last > start && width_of(token.text.mid(start, at - start), token.type) > width) cut(last);
    last = at;
  }
  cut(token.text.size());
  return out;
}

// Tokens that must stay together, from `at`: a number with its unit, a word with the point after it.
size_t group_end(const std::vector<Token>& tokens, size_t at, double width) {
  double total = tokens[at].width;
  size_t end = at + 1;
  while (end < tokens.size() && (tokens[end].glued || !tokens[end].spaced)) {
    total += tokens[end].width + (tokens[end].spaced ? width_of(" ", tokens[end].type) : 0);
    if (total > width) break;
    ++end;
  }
  return end;
}

void add_word(TextLine& line, const Token& token, const QString& space) {
  TextItem* before = line.items.empty() ? nullptr : std::get_if<TextItem>(&line.items.back());
  if (before && before->type == token.type) {
    before->text += space + token.text;
    before->width = width_of(before->text, before->type);
    line.width = before->x + before->width;
  } else {
    const double start = line.width + width_of(space, token.type);
    line.items.push_back(text_at(start, 0, token.text, token.type));
    line.width = start + token.width;
  }
}

TextLine set_line(const std::vector<Token>& tokens, size_t from, size_t to) {
  TextLine line;
  for (size_t i = from; i < to; ++i) {
    const Token& token = tokens[i];
    const QString space = i > from && token.spaced ? QStringLiteral(" ") : QString();
    if (!token.picture) {
      add_word(line, token, space);
      continue;
    }
    const double start = line.width + width_of(space, token.type);
    add_moved(line.items, waterline_items(*token.picture, token.type), start, 0);
    line.width = start + token.width;
  }
  return line;
}

}  // namespace

std::vector<TextLine> break_lines(const std::vector<std::variant<Run, Waterline>>& pieces, double width,
                                  const Type& type) {
  std::vector<Token> tokens;
  for (const Token& token : tokens_of(pieces, type))
    for (Token& part : fitted(token, width)) tokens.push_back(std::move(part));
  std::vector<TextLine> lines;
  size_t from = 0;
  double used = 0;
  for (size_t at = 0; at < tokens.size();) {
    const size_t end = group_end(tokens, at, width);
    double group = 0;
    for (size_t i = at; i < end; ++i)
      group += tokens[i].width + (tokens[i].spaced && i > from ? width_of(" ", tokens[i].type) : 0);
    if (at > from && used + group > width) {
      lines.push_back(set_line(tokens, from, at));
      if (tokens[at].spaced) group -= width_of(" ", tokens[at].type);
      from = at;
      used = 0;
    }
    used += group;
    at = end;
  }
  lines.push_back(set_line(tokens, from, tokens.size()));
  return lines;
}

std::vector<TextLine> break_lines(const std::string& text, double width, const Type& type) {
  return break_lines({Run{text, type}}, width, type);
}

std::vector<TextLine> break_lines(const Sentence& sentence, double width, const Type& type) {
  std::vector<std::variant<Run, Waterline>> pieces{Run{plain(sentence), type}};
  for (const Piece& piece : sentence)
    if (const auto* line = std::get_if<Waterline>(&piece)) pieces.emplace_back(*line);
  return break_lines(pieces, width, type);
}

std::vector<TextLine> balanced_lines(const std::string& text, double width, const Type& type) {
  std::vector<TextLine> best = break_lines(text, width, type);
  for (int step = 1; width - 4 * step > width / 2; ++step) {
    std::vector<TextLine> lines = break_lines(text, width - 4 * step, type);
    if (lines.size() > best.size()) break;
    best = std::move(lines);
  }
  return best;
}

double waterline_width(const Type& type) {
  return type.size * 7;
}

std::vector<Item> waterline_items(const Waterline& line, const Type& type) {
  const double full = waterline_width(type), pad = type.size * 0.12;
  const double width = full - 2 * pad, middle = type.size * -0.27;
  const double half = type.size * 0.30;  // height of a bracket above and below the rule
  const double span = line.high > line.low ? line.high - line.low : 1;
  const auto x_of = [&](double v) { return pad + width * std::clamp((v - line.low) / span, 0.0, 1.0); };
  std::vector<Item> out{LineItem{pad, middle, pad + width, middle, 0.45}};
  const auto bracket = [&](double x, double inwards) {
    out.push_back(LineItem{x, middle - half, x, middle + half, 0.7});
    for (const double y : {middle - half, middle + half}) out.push_back(LineItem{x, y, x + inwards, y, 0.7});
  };
  const double hook = type.size * 0.13;
  if (line.target.low) bracket(x_of(*line.target.low), hook);
  if (line.target.high) bracket(x_of(*line.target.high), -hook);
  // A ring, as on the screen; taller than the dark mark over it, so that it shows where they meet.
  if (line.last) out.push_back(MarkItem{x_of(*line.last), middle, type.size * 0.27, false});
  const double mark = type.size * 0.17;  // half the height of a mark
  const double left = x_of(line.value - line.half_width), right = x_of(line.value + line.half_width);
  const double least = type.size * 0.16;
  const double wide = std::max(right - left, least);
  const double start = std::clamp((left + right - wide) / 2, pad, pad + width - wide);
  out.push_back(BoxItem{QRectF(start, middle - mark, wide, 2 * mark), 0, true});
  return out;
}

}  // namespace brimline
