// SPDX-License-Identifier: GPL-3.0-or-later
// Letters and their sizes. Lengths are points (1/72 inch) everywhere in the layout.
#pragma once

#include <QColor>
#include <QFont>
#include <QString>

namespace brimline {

enum class Ink { black, accent, quiet };  // the accent reads as dark grey where there is no colour

struct Type {
  double size = 10;  // points
  bool bold = false;
  Ink ink = Ink::black;
  friend bool operator==(const Type&, const Type&) = default;
};

// Layout and painting count in twentieths of a point, so that a font's pixel size is a whole number.
inline constexpr int kUnitsPerPoint = 20;
inline constexpr int kUnitsPerInch = 72 * kUnitsPerPoint;

// Noto Sans with its letters set 0.1 % apart: Qt then forms no ligatures, which would not extract.
QFont font_of(const Type& type);
QColor colour_of(Ink ink);

// Width, and reach above and below the baseline, in points.
double width_of(const QString& text, const Type& type);
double ascent_of(const Type& type);
double descent_of(const Type& type);

// Distance from baseline to baseline.
inline double leading_of(const Type& type) {
  return type.size * 1.36;
}

}  // namespace brimline
