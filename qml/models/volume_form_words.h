// SPDX-License-Identifier: GPL-3.0-or-later
// What is said while a vessel's volume is worked out: questions, faults, the working, what to mind.
#pragma once

#include <QMap>
#include <QString>
#include <QVariantList>

#include "analysis/panel/vessel.h"
#include "analysis/panel/vessel_volume.h"
#include "qml/models/typed_measure.h"
#include "station/visit.h"
#include "station/wording/words.h"

namespace brimline {

enum class MeterUnit { cubic_metres, us_gallons, cubic_feet };

// What was asked for and typed.
struct VolumeSheet {
  bool metered = false;
  Shape shape = Shape::rectangle;
  Bottom bottom = Bottom::level;
  MeterUnit meter = MeterUnit::cubic_metres;
  Units units = Units::metric;
  std::map<Measure, TypedMeasure> typed;
};

const char* key_of(Measure measure);
QString measure_question(const VolumeSheet& sheet, Measure measure);  // with its unit
QString no_number_words(const VolumeSheet& sheet, Measure measure, const QString& text);
QString fault_words(const VolumeSheet& sheet, const VolumeFault& fault);

// "6.0 m × 3.0 m × 1.4 m = 25.2 m³ = 25,200 L".
QString working_words(const Words& words, const VolumeSheet& sheet, const VolumeMeasured& found);
// Which of it is geometry and which is habit.
QString method_words(const VolumeSheet& sheet);
// What makes the volume found unlikely; empty where nothing does.
QStringList doubt_words(const Words& words, const VolumeSheet& sheet, const VolumeMeasured& found,
                        const Vessel& vessel);

}  // namespace brimline
