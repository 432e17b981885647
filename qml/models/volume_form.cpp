// SPDX-License-Identifier: GPL-3.0-or-later
#include "qml/models/volume_form.h"

#include <cmath>

#include "qml/models/facts.h"
#include "station/compare/volume_words.h"

namespace brimline {
namespace {

QString q(const std::string& text) {
  return QString::fromStdString(text);
}

QVariantMap one(const char* key, const QString& word) {
  return {{"key", key}, {"word", word}};
}

constexpr std::pair<const char*, Shape> kShapes[] = {
    {"rectangle", Shape::rectangle},       {"round", Shape::round},   {"oval", Shape::oval},
    {"rounded_ends", Shape::rounded_ends}, {"kidney", Shape::kidney}, {"freeform", Shape::freeform}};
constexpr std::pair<const char*, Bottom> kBottoms[] = {
    {"level", Bottom::level}, {"sloping", Bottom::sloping}, {"two_parts", Bottom::two_parts}};
constexpr std::pair<const char*, MeterUnit> kMeters[] = {
    {"m3", MeterUnit::cubic_metres}, {"gallons", MeterUnit::us_gallons}, {"ft3", MeterUnit::cubic_feet}};

template <class E, size_t N>
E named_in(const std::pair<const char*, E> (&rows)[N], const QString& key) {
  for (const auto& [name, value] : rows)
    if (key == QLatin1String(name)) return value;
  return rows[0].second;
}

Volume in_unit(double value, MeterUnit unit) {
  return unit == MeterUnit::cubic_metres ? Volume::cubic_metres(value)
         : unit == MeterUnit::us_gallons ? Volume::us_gallons(value)
                                         : Volume::cubic_feet(value);
}

VolumeAnswer answer_of(const VolumeSheet& sheet, Gauge gauge, bool seats) {
  const bool us = sheet.units == Units::us;
  if (sheet.metered) {
    MeteredFill fill;
    int decimals = 0;
    for (const auto& [measure, typed] : sheet.typed) {
      (measure == Measure::before ? fill.before : fill.after) = in_unit(typed.value, sheet.meter);
      decimals = std::max(decimals, typed.decimals);
    }
    fill.step = in_unit(std::pow(10, -decimals), sheet.meter);
    return metered_volume(fill);
  }
  ShapeMeasures m;
  m.shape = sheet.shape;
  m.bottom = sheet.bottom;
  m.gauge = gauge;
  m.seats = seats;
  for (const auto& [measure, typed] : sheet.typed) {
    if (measure == Measure::area)
      m.area = us ? Area::square_feet(typed.value) : Area::square_metres(typed.value);
    else
      m.lengths[measure] = us ? Length::feet(typed.value) : Length::metres(typed.value);
  }
  return volume_of(m);
}

}  // namespace

VolumeForm::VolumeForm(Counter& counter, QObject* parent) : QObject(parent), counter_(counter) {
  connect(&counter_, &Counter::changed, this, &VolumeForm::onCounterChanged);
}

// What was written for one vessel, or in one unit, is no other's.
void VolumeForm::onCounterChanged() {
  const std::string vessel = counter_.open() ? counter_.visit().vessel.id : std::string();
  const Units units = counter_.open() ? units_of(counter_.visit()) : Units::metric;
  const std::string& language = counter_.words().language();
  const bool begins = vessel != of_ || units != units_ || way_.isEmpty();
  const bool speaks = language != language_;
  of_ = vessel;
  units_ = units;
  language_ = language;
  if (begins) {
    shown_ = false;
    way_ = QStringLiteral("rectangle");
    bottom_ = QStringLiteral("level");
    gauge_ = QStringLiteral("tape");
    meter_ = units == Units::us ? QStringLiteral("gallons") : QStringLiteral("m3");
    texts_.clear();
    settled_.clear();
    trouble_.clear();
  }
  if (made_ && made_->id != vessel) {
    was_.reset();
    made_.reset();
  }
  if (speaks) emit worded();
  if (begins || speaks) {
    emit reshaped();
    emit changed();
  }
  emit written();
}

QVariantList VolumeForm::ways() const {
  return {one("rectangle", tr("Rectangle")), one("round", tr("Round")),
          one("oval", tr("Oval")),           one("rounded_ends", tr("Rounded ends")),
          one("kidney", tr("Kidney")),       one("freeform", tr("Other, by area")),
          one("meter", tr("Water meter"))};
}

QVariantList VolumeForm::bottoms() const {
  QVariantList out{one("level", tr("One depth")), one("sloping", tr("Sloping"))};
  if (can_have_two_parts(named_in(kShapes, way_)))
    out.append(one("two_parts", tr("A shallow and a deep part")));
  return out;
}

QVariantList VolumeForm::gauges() const {
  return {one("tape", tr("With a tape")), one("eye", tr("By eye, or from memory"))};
}

QVariantList VolumeForm::meters() const {
  return {one("m3", QStringLiteral("m³")), one("gallons", tr("US gallons")), one("ft3", tr("Cubic feet"))};
}

bool VolumeForm::metered() const {
  return way_ == QLatin1String("meter");
}

QString VolumeForm::bottom() const {
  const bool parts = bottom_ == QLatin1String("two_parts");
  return parts && !can_have_two_parts(named_in(kShapes, way_)) ? QStringLiteral("sloping") : bottom_;
}

void VolumeForm::setShown(bool shown) {
  shown_ = shown;
  settled_.clear();
  trouble_.clear();
  emit changed();
  emit written();
}

void VolumeForm::choose(QString& which, const QString& key) {
  which = key;
  settled_.clear();
  emit changed();
  emit written();
}

void VolumeForm::setWay(const QString& way) {
  way_ = way;
  emit reshaped();
  choose(way_, way);
}
void VolumeForm::setBottom(const QString& bottom) {
  choose(bottom_, bottom);
}
void VolumeForm::setGauge(const QString& gauge) {
  choose(gauge_, gauge);
}
void VolumeForm::setMeter(const QString& meter) {
  choose(meter_, meter);
}

std::vector<Measure> VolumeForm::measures() const {
  if (metered()) return {Measure::before, Measure::after};
  return measures_of(named_in(kShapes, way_), named_in(kBottoms, bottom()));
}

VolumeSheet VolumeForm::sheet() const {
  VolumeSheet out;
  out.metered = metered();
  out.shape = named_in(kShapes, way_);
  out.bottom = named_in(kBottoms, bottom());
  out.meter = named_in(kMeters, meter_);
  out.units = units_;
  return out;
}

QVariantList VolumeForm::asked() const {
  QVariantList out;
  const VolumeSheet form = sheet();
  for (const Measure measure : measures()) {
    const char* key = key_of(measure);
    out.append(
        QVariantMap{{"key", key}, {"label", measure_question(form, measure)}, {"text", texts_.value(key)}});
  }
  return out;
}

VolumeForm::Found VolumeForm::found() const {
  Found out{sheet(), {}, {}};
  for (const Measure measure : measures()) {
    const QString text = texts_.value(key_of(measure));
    const bool feet = units_ == Units::us && measure != Measure::area;
    const auto typed = metered() ? typed_meter(text, units_ == Units::us)
                       : feet    ? typed_feet(text)
                                 : typed_decimal(text);
    if (typed)
      out.sheet.typed[measure] = *typed;
    else if (!text.trimmed().isEmpty())
      out.faults[key_of(measure)] = no_number_words(out.sheet, measure, text);
  }
  const VesselKind kind = counter_.open() ? kind_of(counter_.visit().vessel) : VesselKind::pool;
  out.answer = answer_of(out.sheet, gauge_ == QLatin1String("eye") ? Gauge::eye : Gauge::tape,
                         kind == VesselKind::spa || kind == VesselKind::swim_spa);
  if (!out.answer)
    for (const VolumeFault& fault : out.answer.error())
      if (!out.faults.contains(key_of(fault.at)))
        out.faults[key_of(fault.at)] = fault_words(out.sheet, fault);
  return out;
}

QVariantMap VolumeForm::faults() const {
  QVariantMap out;
  const Found all = found();
  for (const QString& key : settled_)
    if (all.faults.contains(key)) out[key] = all.faults[key];
  return out;
}

QString VolumeForm::working() const {
  const Found all = found();
  return all.answer ? working_words(counter_.words(), all.sheet, *all.answer) : QString();
}

QString VolumeForm::result() const {
  const Found all = found();
  if (!all.answer) return {};
  const std::string volume = volume_and_sd_words(counter_.words(), all.answer->volume.cubic_metres(),
                                                 all.answer->sd.cubic_metres(), units_);
  return tr("%1, the ± being one standard deviation.").arg(q(volume));
}

QString VolumeForm::doubts() const {
  const Found all = found();
  if (!all.answer || !counter_.open()) return {};
  return doubt_words(counter_.words(), all.sheet, *all.answer, counter_.visit().vessel)
      .join(QLatin1Char(' '));
}

QString VolumeForm::method() const {
  const Found all = found();
  return all.answer ? method_words(all.sheet) : QString();
}

bool VolumeForm::kept() const {
  if (!counter_.open() || !was_ || !made_) return false;
  const Vessel& now = counter_.visit().vessel;
  return now.id == made_->id && now.volume == made_->volume &&
         now.volume_relative_sd == made_->volume_relative_sd;
}

QString VolumeForm::how() const {
  if (!kept()) return {};
  const QString percent = q(counter_.words().number(100 * *made_->volume_relative_sd, 0));
  return made_by_meter_ ? tr("By meter, ± %1 %").arg(percent) : tr("By its shape, ± %1 %").arg(percent);
}

void VolumeForm::write(const QString& key, const QString& text) {
  texts_[key] = text;
  emit written();
}

void VolumeForm::settle(const QString& key, const QString& text) {
  texts_[key] = text;
  if (text.trimmed().isEmpty())
    settled_.remove(key);
  else
    settled_.insert(key);
  emit written();
}

bool VolumeForm::keepVolume(const std::optional<Volume>& volume, const std::optional<double>& relative_sd) {
  const auto kept = counter_.change([&](Visit& visit) {
    visit.vessel.volume = volume;
    visit.vessel.volume_relative_sd = relative_sd;
  });
  trouble_ = kept ? QString() : tr("This could not be kept: %1").arg(q(kept.error()));
  return kept.has_value();
}

void VolumeForm::keep() {
  if (!counter_.open()) return;
  const Found all = found();
  if (!all.answer) {
    for (const Measure measure : measures()) settled_.insert(key_of(measure));
    emit written();
    return;
  }
  const Vessel before = kept() ? *was_ : counter_.visit().vessel;
  Vessel after = before;
  after.volume = all.answer->volume;
  after.volume_relative_sd = all.answer->relative_sd();
  const QString now = working();
  // Known before it is kept: whoever hears of the change asks how the volume is known.
  const auto was = std::exchange(was_, before), made = std::exchange(made_, after);
  made_by_meter_ = metered();
  if (!keepVolume(after.volume, after.volume_relative_sd)) {
    was_ = was;
    made_ = made;
    emit written();
    return;
  }
  kept_says_ =
      before.volume
          ? tr("Taken: %1. Before, it was %2.")
                .arg(now, q(volume_words(counter_.words(), before.volume->cubic_metres(), 0, units_)))
          : tr("Taken: %1.").arg(now);
  setShown(false);
}

void VolumeForm::giveBack() {
  if (!kept()) return;
  const Vessel before = *was_;
  if (keepVolume(before.volume, before.volume_relative_sd)) {
    was_.reset();
    made_.reset();
  }
  emit written();
}

}  // namespace brimline
