// SPDX-License-Identifier: GPL-3.0-or-later
#include "qml/models/absorbance_edge.h"

#include <QCoreApplication>

#include <cmath>

#include "qml/models/chart_words.h"
#include "station/quality/supplies_of.h"

namespace brimline {
namespace {

constexpr double kSameBandNm = 5;       // filters of one nominal wavelength; common practice, no source
constexpr double kColoursApartS = 120;  // the two colours are of one cell; common practice, no source
constexpr double kRoomC = 25;           // of a bottle whose temperature is not told

QString say(const char* text) {
  return QCoreApplication::translate("absorbance", text);
}

Happening trouble(const Happening& happening, TroubleKind kind, const QString& sentence) {
  return {happening.at, happening.instrument, Trouble{kind, sentence.toStdString()}};
}

const InstrumentReading& reading_of(const Happening& happening) {
  return std::get<InstrumentReading>(happening.what);
}

Happening amount(const Happening& happening, const AmountRead& read) {
  Happening out = happening;
  auto& reading = std::get<InstrumentReading>(out.what);
  reading.value = read.amount.value;
  reading.sd = read.amount.sd > 0 ? std::optional(read.amount.sd) : std::nullopt;
  if (read.clipped) reading.clipped = read.clipped;
  reading.absorbance.reset();
  return out;
}

bool band(const InstrumentReading& reading, double wavelength_nm) {
  return std::abs(reading.absorbance->wavelength_nm - wavelength_nm) <= kSameBandNm;
}

}  // namespace

std::optional<Happening> AbsorbanceEdge::colour(const Happening& happening, double temperature_c) {
  const InstrumentReading& reading = reading_of(happening);
  const Indicator& red = phenol_red();
  const bool base = band(reading, red.base_nm);
  if (!base && !band(reading, red.acid_nm))
    return trouble(happening, TroubleKind::unknown_method,
                   say(QT_TRANSLATE_NOOP("absorbance",
                                         "pH came in at a wavelength that is not phenol red’s. It "
                                         "was not kept.")));
  const bool pairs = first_ && first_->instrument == happening.instrument &&
                     reading_of(*first_).sample == reading.sample &&
                     band(reading_of(*first_), base ? red.acid_nm : red.base_nm) &&
                     std::abs(hours_between(first_->at, happening.at)) * 3600 <= kColoursApartS;
  if (!pairs) {
    first_ = happening;
    return std::nullopt;
  }
  const double other = reading_of(*first_).value;
  first_.reset();
  const auto read = ph_of(red, base ? other : reading.value, base ? reading.value : other, temperature_c,
                          reading.sd.value_or(0));
  if (read) return amount(happening, *read);
  return trouble(happening, TroubleKind::out_of_range,
                 say(QT_TRANSLATE_NOOP("absorbance",
                                       "No colour came in for pH: is the indicator in? It was not kept.")));
}

std::optional<Happening> AbsorbanceEdge::pass(const Happening& happening, const Counter& counter) {
  const auto* reading = std::get_if<InstrumentReading>(&happening.what);
  if (!reading || !reading->absorbance) return happening;
  const QString name = analyte_words(reading->analyte);
  if (reading->clipped)
    return trouble(happening, TroubleKind::out_of_range,
                   say(QT_TRANSLATE_NOOP("absorbance",
                                         "%1 was beyond what the instrument can see: dilute the "
                                         "sample and read it again."))
                       .arg(name));
  if (reading->analyte == "ph") return colour(happening, kRoomC);
  const auto curve = calibration_in_use(counter.supplies(), counter.quality(), reading->analyte,
                                        reading->absorbance->wavelength_nm, happening.at);
  if (!curve)
    return trouble(happening, TroubleKind::unknown_method,
                   say(QT_TRANSLATE_NOOP("absorbance",
                                         "%1 came in as an absorbance, but the lot in use has no calibration "
                                         "at %2 nm. It was not kept."))
                       .arg(name, QString::number(reading->absorbance->wavelength_nm)));
  AbsorbanceTaken taken;
  taken.sample = reading->value;
  taken.path_cm = reading->absorbance->path_cm;
  const auto read = amount_of(*curve, taken);
  if (read) return amount(happening, *read);
  return trouble(happening, TroubleKind::out_of_range,
                 say(QT_TRANSLATE_NOOP("absorbance",
                                       "%1 cannot be read from its calibration curve. It was not "
                                       "kept."))
                     .arg(name));
}

}  // namespace brimline
