// SPDX-License-Identifier: GPL-3.0-or-later
// A number as somebody types it, with a point or a comma.
#pragma once

#include <QLocale>
#include <QString>

#include <optional>

namespace brimline {

// Nothing where the text is empty; `sound` becomes false where it is no number.
inline std::optional<double> typed_number(QString text, bool& sound) {
  text = text.trimmed().replace(',', '.');
  if (text.isEmpty()) return std::nullopt;
  bool is_number = false;
  const double value = text.toDouble(&is_number);
  sound = sound && is_number;
  return value;
}

// A number that was written with a point, as the screen's language writes it.
inline QString with_own_mark(QString number) {
  return number.replace('.', QLocale().decimalPoint());
}

}  // namespace brimline
