// SPDX-License-Identifier: GPL-3.0-or-later
// Measures of a vessel and readings of a meter as somebody types them.
#pragma once

#include <QString>

#include <optional>

namespace brimline {

struct TypedMeasure {
  double value = 0;  // in the unit asked for; feet with their inches
  int decimals = 0;  // as typed
  bool inches = false;
};

// With a point or a comma. Nothing: empty, or no number.
std::optional<TypedMeasure> typed_decimal(QString text);
// Also "16 6", "16-6", "16' 6"" or "16 ft 6 in": 16 feet 6 inches.
std::optional<TypedMeasure> typed_feet(const QString& text);
// "15,000" becomes "15000" where a comma before three digits parts thousands, as it does in US units.
QString without_thousands(QString text);
// A meter's digits, parted or not. Where `us`, without_thousands.
std::optional<TypedMeasure> typed_meter(QString text, bool us);

}  // namespace brimline
