// SPDX-License-Identifier: GPL-3.0-or-later
#include "qml/models/typed_measure.h"

#include <QRegularExpression>

#include <cmath>

namespace brimline {

std::optional<TypedMeasure> typed_decimal(QString text) {
  text = text.trimmed().replace(',', '.');
  bool sound = false;
  const double value = text.toDouble(&sound);
  if (!sound || !std::isfinite(value)) return std::nullopt;
  const auto point = text.indexOf('.');
  return TypedMeasure{value, point < 0 ? 0 : static_cast<int>(text.size() - point) - 1, false};
}

std::optional<TypedMeasure> typed_feet(const QString& text) {
  static const QRegularExpression kFeetAndInches(QStringLiteral(
      R"(^\s*(\d+)\s*(?:ft|feet|foot|['’′]|-|\s)\s*(?:(\d{1,2}(?:[.,]\d+)?)\s*(?:in|inches|"|”|″|'')?)?\s*$)"));
  const auto match = kFeetAndInches.match(text.trimmed() + QLatin1Char(' '));
  if (!match.hasMatch() || match.captured(2).isEmpty()) {
    QString feet = text.trimmed();
    feet.remove(QRegularExpression(QStringLiteral(R"(\s*(ft|feet|foot|['’′])$)")));
    return typed_decimal(feet);
  }
  const double inches = match.captured(2).replace(',', '.').toDouble();
  if (inches >= 12) return std::nullopt;
  return TypedMeasure{match.captured(1).toDouble() + inches / 12, 2, true};
}

QString without_thousands(QString text) {
  static const QRegularExpression kThousands(QStringLiteral(R"(^\s*\d{1,3}(,\d{3})+(\.\d+)?\s*$)"));
  if (kThousands.match(text).hasMatch()) text.remove(',');
  return text;
}

std::optional<TypedMeasure> typed_meter(QString text, bool us) {
  text.remove(QRegularExpression(QStringLiteral(R"(\s)")));
  return typed_decimal(us ? without_thousands(text) : text);
}

}  // namespace brimline
