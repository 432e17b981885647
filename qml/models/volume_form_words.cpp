// SPDX-License-Identifier: GPL-3.0-or-later
#include "qml/models/volume_form_words.h"

#include <QCoreApplication>

#include <cmath>

#include "station/compare/expectation.h"
#include "station/compare/volume_words.h"

namespace brimline {
namespace {

QString say(const char* text) {
  return QCoreApplication::translate("volume", text);
}
QString q(const std::string& text) {
  return QString::fromStdString(text);
}

bool us(const VolumeSheet& sheet) {
  return sheet.units == Units::us;
}

struct MeasureRow {
  Measure measure;
  const char* key;
  const char* question;
};
constexpr MeasureRow kMeasures[] = {
    {Measure::length, "length", QT_TRANSLATE_NOOP("volume", "Length")},
    {Measure::width, "width", QT_TRANSLATE_NOOP("volume", "Width")},
    {Measure::other_width, "other_width", QT_TRANSLATE_NOOP("volume", "Width of the narrow end")},
    {Measure::area, "area", QT_TRANSLATE_NOOP("volume", "Area of the water")},
    {Measure::depth, "depth", QT_TRANSLATE_NOOP("volume", "Depth of the water")},
    {Measure::deep_depth, "deep_depth", QT_TRANSLATE_NOOP("volume", "Deepest")},
    {Measure::deep_length, "deep_length",
     QT_TRANSLATE_NOOP("volume", "Length of the deep part, to the middle of the slope")},
    {Measure::before, "before", QT_TRANSLATE_NOOP("volume", "Meter before")},
    {Measure::after, "after", QT_TRANSLATE_NOOP("volume", "Meter after")},
};

const MeasureRow& row_of(Measure measure) {
  for (const MeasureRow& row : kMeasures)
    if (row.measure == measure) return row;
  return kMeasures[0];
}

// The question where the shape or the bottom asks it otherwise; null: as in the table.
const char* other_question(const VolumeSheet& sheet, Measure measure) {
  if (measure == Measure::length && sheet.shape == Shape::round) return QT_TRANSLATE_NOOP("volume", "Across");
  if (measure == Measure::width && sheet.shape == Shape::kidney)
    return QT_TRANSLATE_NOOP("volume", "Width of the wide end");
  if (measure == Measure::depth && sheet.bottom != Bottom::level)
    return QT_TRANSLATE_NOOP("volume", "Shallowest");
  return nullptr;
}

QString meter_unit(MeterUnit unit) {
  return unit == MeterUnit::cubic_metres ? QStringLiteral("m³")
         : unit == MeterUnit::us_gallons ? say(QT_TRANSLATE_NOOP("volume", "US gallons"))
                                         : say(QT_TRANSLATE_NOOP("volume", "cubic feet"));
}

QString unit_of(const VolumeSheet& sheet, Measure measure) {
  if (sheet.metered) return meter_unit(sheet.meter);
  if (measure == Measure::area)
    return us(sheet) ? say(QT_TRANSLATE_NOOP("volume", "square feet")) : QStringLiteral("m²");
  return us(sheet) ? say(QT_TRANSLATE_NOOP("volume", "feet")) : QStringLiteral("m");
}

// "6.0 m", "16 ft 6 in", as it was typed.
QString shown(const Words& words, const VolumeSheet& sheet, Measure measure) {
  const TypedMeasure& typed = sheet.typed.at(measure);
  if (typed.inches) {
    const double feet = std::floor(typed.value + 1e-9), inches = 12 * (typed.value - feet);
    const int decimals = std::abs(inches - std::round(inches)) < 1e-6 ? 0 : 1;
    return say(QT_TRANSLATE_NOOP("volume", "%1 ft %2 in"))
        .arg(q(words.number(feet, 0)), q(words.number(std::abs(inches), decimals)));
  }
  const QString number = q(words.number(typed.value, std::min(typed.decimals, 3)));
  const QString unit = sheet.metered ? meter_unit(sheet.meter)
                       : measure == Measure::area
                           ? (us(sheet) ? say(QT_TRANSLATE_NOOP("volume", "sq ft")) : QStringLiteral("m²"))
                       : us(sheet) ? say(QT_TRANSLATE_NOOP("volume", "ft"))
                                   : QStringLiteral("m");
  return number + QStringLiteral("\u00a0") + unit;
}

QString area_working(const Words& words, const VolumeSheet& sheet) {
  const auto at = [&](Measure measure) { return shown(words, sheet, measure); };
  switch (sheet.shape) {
    case Shape::rectangle:
      return QStringLiteral("%1 × %2").arg(at(Measure::length), at(Measure::width));
    case Shape::round:
      return QStringLiteral("π ÷ 4 × %1 × %1").arg(at(Measure::length));
    case Shape::oval:
      return QStringLiteral("π ÷ 4 × %1 × %2").arg(at(Measure::length), at(Measure::width));
    case Shape::kidney:
      return QStringLiteral("%1 × (%2 + %3) × %4")
          .arg(q(words.number(0.45, 2)), at(Measure::width), at(Measure::other_width), at(Measure::length));
    case Shape::rounded_ends:
      return QStringLiteral("(%1 × (%2 − %1) + π ÷ 4 × %1 × %1)")
          .arg(at(Measure::width), at(Measure::length));
    case Shape::freeform:
      break;
  }
  return at(Measure::area);
}

QString depth_working(const Words& words, const VolumeSheet& sheet, const VolumeMeasured& found) {
  const auto at = [&](Measure measure) { return shown(words, sheet, measure); };
  if (sheet.bottom == Bottom::level) return at(Measure::depth);
  if (!found.deep_share)
    return QStringLiteral("(%1 + %2) ÷ 2").arg(at(Measure::depth), at(Measure::deep_depth));
  const auto percent = [&](double share) {
    return q(words.number(100 * share, 0)) + QStringLiteral("\u00a0%");
  };
  return QStringLiteral("(%1 × %2 + %3 × %4)")
      .arg(percent(1 - *found.deep_share), at(Measure::depth), percent(*found.deep_share),
           at(Measure::deep_depth));
}

// What a meter's or an outline's unit is multiplied with to be the customer's; empty: it is that.
QString factor(const Words& words, const VolumeSheet& sheet) {
  const auto times = [&](double by, int decimals) {
    return QStringLiteral(" × ") + q(words.number(by, decimals));
  };
  const MeterUnit own = sheet.metered ? sheet.meter
                        : us(sheet)   ? MeterUnit::cubic_feet
                                      : MeterUnit::cubic_metres;
  const Volume one = own == MeterUnit::cubic_metres ? Volume::cubic_metres(1)
                     : own == MeterUnit::us_gallons ? Volume::us_gallons(1)
                                                    : Volume::cubic_feet(1);
  if (us(sheet)) return own == MeterUnit::us_gallons ? QString() : times(one.us_gallons(), 2);
  if (own == MeterUnit::cubic_metres) return {};
  return times(one.cubic_metres(), own == MeterUnit::us_gallons ? 6 : 5);
}

// Larger or smaller than vessels of the kind are (common practice, no source), m3.
bool is_unlike(VesselKind kind, double m3) {
  switch (kind) {
    case VesselKind::spa:
      return m3 > 8;
    case VesselKind::plunge:
      return m3 > 20;
    case VesselKind::swim_spa:
      return m3 < 2 || m3 > 40;
    case VesselKind::pool:
      break;
  }
  return m3 < 2 || m3 > 600;
}

// Over 3 m on the average, which a home's vessel hardly is (common practice, no source): often feet.
bool is_too_deep(const VolumeSheet& sheet) {
  const auto at = [&](Measure measure) {
    const auto typed = sheet.typed.find(measure);
    return typed == sheet.typed.end() ? 0 : typed->second.value;
  };
  const double mean =
      sheet.bottom == Bottom::level ? at(Measure::depth) : (at(Measure::depth) + at(Measure::deep_depth)) / 2;
  return !sheet.metered && (us(sheet) ? Length::feet(mean) : Length::metres(mean)) > Length::metres(3);
}

}  // namespace

const char* key_of(Measure measure) {
  return row_of(measure).key;
}

QString measure_question(const VolumeSheet& sheet, Measure measure) {
  const char* other = other_question(sheet, measure);
  return say(other ? other : row_of(measure).question) + QStringLiteral(", ") + unit_of(sheet, measure);
}

QString no_number_words(const VolumeSheet& sheet, Measure measure, const QString& text) {
  if (us(sheet) && !sheet.metered && measure != Measure::area)
    return say(QT_TRANSLATE_NOOP("volume", "“%1” cannot be read: write 16.5, or 16 6 for 16 feet 6 inches."))
        .arg(text.trimmed());
  return say(QT_TRANSLATE_NOOP("volume", "“%1” cannot be read: write a number.")).arg(text.trimmed());
}

QString fault_words(const VolumeSheet& sheet, const VolumeFault& fault) {
  switch (fault.wrong) {
    case Wrong::missing:
      return say(QT_TRANSLATE_NOOP("volume", "This is wanted too."));
    case Wrong::not_above_zero:
      return sheet.metered ? say(QT_TRANSLATE_NOOP("volume", "A meter never stands below zero."))
                           : say(QT_TRANSLATE_NOOP("volume", "A number above zero is wanted."));
    case Wrong::too_small:
      return sheet.metered
                 ? say(QT_TRANSLATE_NOOP(
                       "volume", "Hardly anything went through: look at the digits and the unit again."))
                 : say(QT_TRANSLATE_NOOP("volume", "Too small for a vessel: look at the unit again."));
    case Wrong::too_large:
      return say(
          QT_TRANSLATE_NOOP("volume", "Too large for a vessel: look at the digits and the unit again."));
    case Wrong::not_deeper:
      return say(QT_TRANSLATE_NOOP("volume", "This has to be deeper than the shallowest."));
    case Wrong::not_shorter:
      return say(QT_TRANSLATE_NOOP("volume", "A part has to be shorter than the whole length."));
    case Wrong::wider_than_long:
      return say(
          QT_TRANSLATE_NOOP("volume", "This cannot be more than the length: the round ends close it."));
    case Wrong::meter_fell:
      return say(
          QT_TRANSLATE_NOOP("volume",
                            "Lower than before. If the meter went past its last digit, write a 1 before "
                            "all of its digits."));
    case Wrong::meter_stood:
      break;
  }
  return say(QT_TRANSLATE_NOOP("volume", "The same as before: nothing went through."));
}

QString working_words(const Words& words, const VolumeSheet& sheet, const VolumeMeasured& found) {
  const double m3 = found.volume.cubic_metres();
  QString out = sheet.metered
                    ? QStringLiteral("%1 − %2").arg(shown(words, sheet, Measure::after),
                                                    shown(words, sheet, Measure::before))
                    : area_working(words, sheet) + QStringLiteral(" × ") + depth_working(words, sheet, found);
  if (const QString times = factor(words, sheet); !times.isEmpty())
    out = (sheet.metered ? QStringLiteral("(%1)").arg(out) : out) + times;
  out += QStringLiteral(" = ") + q(volume_words(words, m3, 0, sheet.units));
  if (!us(sheet)) out += QStringLiteral(" = ") + q(litre_words(words, m3, 0));
  return out;
}

QString method_words(const VolumeSheet& sheet) {
  if (sheet.metered)
    return say(
        QT_TRANSLATE_NOOP("volume",
                          "Right only where the vessel was empty and nothing else ran through the "
                          "meter. A meter may be 2 % off; the level it was filled to counts for 3 %."));
  QString out =
      sheet.shape == Shape::kidney
          ? say(QT_TRANSLATE_NOOP("volume",
                                  "A kidney’s area by rule of thumb, 0.45 × both widths × length: common "
                                  "practice, no source; taken as right within 8 %."))
      : sheet.shape == Shape::freeform
          ? say(QT_TRANSLATE_NOOP("volume", "The area as it was told, times the depth."))
          : say(QT_TRANSLATE_NOOP("volume", "The area is exact geometry, where the shape is true."));
  if (sheet.bottom == Bottom::sloping)
    out += QLatin1Char(' ') +
           say(QT_TRANSLATE_NOOP("volume", "The mean depth is exact where the bottom falls evenly."));
  return out;
}

QStringList doubt_words(const Words& words, const VolumeSheet& sheet, const VolumeMeasured& found,
                        const Vessel& vessel) {
  QStringList out;
  const double m3 = found.volume.cubic_metres(), sd = found.sd.cubic_metres();
  const VesselKind kind = kind_of(vessel);
  if (is_unlike(kind, m3))
    out.append(say(QT_TRANSLATE_NOOP("volume", "Hardly any vessel of this kind holds that: measure again.")));
  if (is_too_deep(sheet))
    out.append(say(QT_TRANSLATE_NOOP("volume", "That deep is rare at a home: look at the unit again.")));
  if (!sheet.metered && (kind == VesselKind::spa || kind == VesselKind::swim_spa))
    out.append(
        say(QT_TRANSLATE_NOOP("volume",
                              "Seats take room that the outline does not show: the maker’s figure is nearer, "
                              "where there is one.")));
  if (!vessel.volume) return out;
  const double on_file = vessel.volume->cubic_metres();
  const double file_sd = on_file * relative_volume_sd(vessel);
  if (std::abs(m3 - on_file) > 1.96 * std::hypot(sd, file_sd))
    out.append(
        say(QT_TRANSLATE_NOOP(
                "volume", "On file: %1. Both cannot be right within their errors: ask before it is taken."))
            .arg(q(volume_words(words, on_file, file_sd, sheet.units))));
  return out;
}

}  // namespace brimline
