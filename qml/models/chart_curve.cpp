// SPDX-License-Identifier: GPL-3.0-or-later
// The absorbance curve of a reagent lot, as the Back room writes it down.
#include <algorithm>

#include "analysis/calibration/curve.h"
#include "analysis/quality/lots.h"
#include "qml/models/chart_desk.h"

namespace brimline {
namespace {

constexpr size_t kFewest = 5;  // standards of a curve: ISO 8466-1:1990 asks for five to ten (from memory)

// "0 0.001; 1 0.197": nothing unless every pair is two numbers.
std::optional<std::vector<CalibrationPoint>> points_in(const QString& text) {
  std::vector<CalibrationPoint> out;
  for (const QString& pair : text.split(';', Qt::SkipEmptyParts)) {
    const QStringList parts = pair.simplified().replace(',', '.').split(' ', Qt::SkipEmptyParts);
    bool amount = false, signal = false;
    if (parts.size() == 2) out.push_back({parts[0].toDouble(&amount), parts[1].toDouble(&signal)});
    if (!amount || !signal) return std::nullopt;
  }
  return out;
}

}  // namespace

bool ChartDesk::sayOfLots(const QString& sentence) {
  lots_say_ = sentence;
  emit changed();
  return false;
}

bool ChartDesk::compareLots(const QString& pairs, const QString& allowed) {
  const auto points = points_in(pairs);
  if (!points) return sayOfLots(tr("Two numbers a water are wanted, as “1.02 1.05; 2.10 2.08”."));
  std::vector<LotPair> waters;
  for (const CalibrationPoint& p : *points) waters.push_back({p.amount, p.signal});
  const auto found = compare_lots(waters, allowed.trimmed().replace(',', '.').toDouble());
  if (!found)
    return sayOfLots(found.error() == LotFault::no_allowance
                         ? tr("Write the difference that may be: a number above zero.")
                         : tr("Read two waters or more with both lots."));
  const QString numbers = tr("%1 waters: the new lot reads %2 more (95 %: %3 to %4).")
                              .arg(QString::number(found->pairs), QString::number(found->difference, 'g', 3),
                                   QString::number(found->low, 'g', 3), QString::number(found->high, 'g', 3));
  const QString verdict = found->verdict == LotVerdict::alike ? tr("The lots are alike.")
                          : found->verdict == LotVerdict::differs
                              ? tr("The lots differ: do not use the new one before its curve or "
                                   "its supplier has been asked.")
                              : tr("That does not tell: read more waters with both.");
  sayOfLots(numbers + QLatin1Char(' ') + verdict);
  return found->verdict == LotVerdict::alike;
}

bool ChartDesk::keepCurve(const QString& lot, const QString& wavelength, const QString& points) {
  LotCurve curve;
  curve.id = counter_.new_id("U");
  curve.lot = lot.trimmed().toStdString();
  curve.at = counter_.now();
  const auto& lots = counter_.written_supplies().lots;
  if (std::none_of(lots.begin(), lots.end(), [&](const ReagentLot& one) { return one.lot == curve.lot; }))
    return sayOfLots(tr("Not kept: lot “%1” is not written down under Reagents.").arg(lot));
  bool sound = false;
  curve.wavelength_nm = wavelength.trimmed().replace(',', '.').toDouble(&sound);
  if (!sound || curve.wavelength_nm < 190 || curve.wavelength_nm > 1100)
    return sayOfLots(tr("Not kept: the wavelength is to be 190 to 1100 nm."));
  auto pairs = points_in(points);
  if (!pairs || pairs->size() < kFewest)
    return sayOfLots(tr("Not kept: five standards or more, as “0 0.001; 1 0.197; 2 0.394”."));
  curve.points = std::move(*pairs);
  const auto fitted = fit_best(curve.points);
  if (!fitted) return sayOfLots(tr("Not kept: the absorbances do not follow the standards."));
  if (const auto kept = counter_.add_curve(curve); !kept)
    return sayOfLots(tr("Not kept: %1").arg(QString::fromStdString(kept.error())));
  const QString shape = fitted->degree == 1 ? tr("a straight line") : tr("a parabola");
  sayOfLots(tr("The curve of lot %1 is kept: %2 from %3 to %4, spread of the method %5.")
                .arg(lot.trimmed(), shape, QString::number(fitted->low, 'g', 4),
                     QString::number(fitted->high, 'g', 4), QString::number(fitted->method_sd(), 'g', 2)));
  return true;
}

}  // namespace brimline
