// SPDX-License-Identifier: GPL-3.0-or-later
#include "printing/type.h"

#include <QFontMetricsF>
#include <cmath>

namespace brimline {

QFont font_of(const Type& type) {
  QFont font(QStringLiteral("Noto Sans"));
  font.setPixelSize(static_cast<int>(std::lround(type.size * kUnitsPerPoint)));
  font.setBold(type.bold);
  font.setLetterSpacing(QFont::PercentageSpacing, 100.1);
  font.setHintingPreference(QFont::PreferNoHinting);
  return font;
}

QColor colour_of(Ink ink) {
  switch (ink) {
    case Ink::accent:
      return QColor(0x0b, 0x46, 0x5c);  // contrast 10:1 on white
    case Ink::quiet:
      return QColor(0x50, 0x50, 0x50);  // contrast 8:1 on white
    case Ink::black:
      break;
  }
  return QColor(Qt::black);
}

double width_of(const QString& text, const Type& type) {
  return QFontMetricsF(font_of(type)).horizontalAdvance(text) / kUnitsPerPoint;
}

// Of letters with accents rather than of the font's tallest glyph: Noto's own ascent leaves room
// for stacked marks that no sheet has.
double ascent_of(const Type& type) {
  return type.size * 0.95;
}
double descent_of(const Type& type) {
  return type.size * 0.26;
}

}  // namespace brimline
