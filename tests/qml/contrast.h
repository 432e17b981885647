// SPDX-License-Identifier: GPL-3.0-or-later
// Contrast as WCAG 2.1 defines it.
#pragma once

#include <QColor>

#include <algorithm>
#include <cmath>

namespace brimline::test {

// Of an sRGB colour, 0 to 1: WCAG 2.1, glossary, "relative luminance". Its threshold 0.03928 is a slip for
// 0.04045 (IEC 61966-2-1), and no 8-bit colour lies between them.
inline double relative_luminance(const QColor& colour) {
  const auto linear = [](double c) { return c <= 0.03928 ? c / 12.92 : std::pow((c + 0.055) / 1.055, 2.4); };
  return 0.2126 * linear(colour.redF()) + 0.7152 * linear(colour.greenF()) + 0.0722 * linear(colour.blueF());
}

// 1 to 21: WCAG 2.1, glossary, "contrast ratio".
inline double contrast_ratio(const QColor& one, const QColor& other) {
  const auto [low, high] = std::minmax({relative_luminance(one), relative_luminance(other)});
  return (high + 0.05) / (low + 0.05);
}

}  // namespace brimline::test
