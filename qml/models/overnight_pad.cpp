// SPDX-License-Identifier: GPL-3.0-or-later
// The pad of the overnight test: numbers typed, numbers heard from the instrument, one taken back.
#include <algorithm>

#include "analysis/panel/analyte.h"
#include "qml/models/overnight_desk.h"
#include "station/overnight/overnight_result.h"

namespace brimline {
namespace {

constexpr qsizetype kMostDigits = 6;

QString q(const std::string& text) {
  return QString::fromStdString(text);
}

bool is_chlorine_reading(const AnalyteId& analyte) {
  return analyte == "free_chlorine" || analyte == "total_chlorine";
}

// "B-1012/3" is bottle 2, from 0, of B-1012; nothing for another form.
std::optional<std::pair<std::string, int>> label_parts(const std::string& label) {
  const size_t slash = label.rfind('/');
  if (slash == std::string::npos) return std::nullopt;
  bool whole = false;
  const int number = q(label.substr(slash + 1)).toInt(&whole);
  if (!whole || number < 1) return std::nullopt;
  return std::make_pair(label.substr(0, slash), number - 1);
}

}  // namespace

QString OvernightDesk::padName() const {
  if (!test()) return {};
  if (test()->stage == OvernightStage::stock) return tr("Strength check: free chlorine");
  return reads() && pad() ? cell_words(*test(), pad()->cell) : QString();
}

QString OvernightDesk::typed() const {
  return pad() ? pad()->typed : QString();
}

QVariantMap OvernightDesk::how() const {
  return pad() ? pad()->how : Pad{}.how;
}

bool OvernightDesk::canKeep() const {
  bool sound = false;
  typed().toDouble(&sound);
  return sound && test() && (reads() || test()->stage == OvernightStage::stock);
}

void OvernightDesk::press(const QString& key) {
  if (!test()) return;
  QString& typed = pad().typed;
  if (key == QLatin1String("back"))
    typed.chop(1);
  else if (key == QLatin1String("point"))
    typed += typed.contains('.') ? "" : typed.isEmpty() ? "0." : ".";
  else if (typed.size() < kMostDigits)
    typed += key;
  say({});
}

void OvernightDesk::setHow(const QString& fact, const QString& key) {
  pad().how.insert(fact, key);
  emit changed();
}

void OvernightDesk::markCell(const OvernightCell& cell) {
  pads_.erase(of_);
  Pad& pad = this->pad();
  pad.cell = cell;
  pad.how.insert("dilution", dilution_for(*test(), cell, free_now_of(counter_.visit()).value));
}

void OvernightDesk::markNext() {
  if (!reads()) return;
  const OvernightDue due = due_for(*test(), counter_.now());
  if (const auto next = next_cell(*test(), due, pad().cell)) markCell(*next);
}

void OvernightDesk::mark(int bottle, const QString& due, const QString& analyte) {
  const auto chosen = named<OvernightDue>(due.toStdString());
  if (!reads() || !chosen || bottle < 0 || bottle >= static_cast<int>(test()->bottles.size())) return;
  const OvernightCell cell{bottle, *chosen, analyte.toStdString()};
  if (pad().cell != cell) markCell(cell);
  say({});
}

void OvernightDesk::markLabel(const QString& label) {
  const auto parts = label_parts(label.toStdString());
  if (!parts || !reads() || parts->first != counter_.visit().bottle.code) return;
  mark(parts->second, q(std::string(name_of(due_for(*test(), counter_.now())))),
       QStringLiteral("free_chlorine"));
}

void OvernightDesk::keepCheck(double value) {
  const auto kept = edit([&](OvernightTest& test) { test.check_mg_l = value; });
  if (kept) pads_.erase(of_);
  sayKept(kept);
}

Records::Kept OvernightDesk::keepReading(const OvernightTest& test, const OvernightReading& reading) {
  return counter_.change_overnight(test.visit, [&](OvernightTest& t) { t.readings.push_back(reading); });
}

void OvernightDesk::keep() {
  if (!canKeep()) return;
  const double typed = this->typed().toDouble();
  if (!reads()) return keepCheck(typed);
  const Pad& pad = this->pad();
  OvernightReading reading;
  reading.at = counter_.now();
  reading.bottle = pad.cell.bottle;
  reading.due = pad.cell.due;
  reading.analyte = pad.cell.analyte;
  reading.dilution = pad.how.value("dilution").toDouble();
  reading.value = typed * reading.dilution;
  reading.clipped = named<Clip>(pad.how.value("clip").toString().toStdString());
  const AnalyteKind* kind = find_analyte(reading.analyte);
  if (kind && !kind->possible.holds(reading.value))
    return say(tr("%1 cannot be %2. Please read it again.").arg(q(kind->name), this->typed()));
  const auto kept = keepReading(*test(), reading);
  if (!kept) return sayKept(kept);
  this->pad().typed.clear();
  markNext();
  say({});
}

void OvernightDesk::undo() {
  if (!reads()) return;
  const auto& all = test()->readings;
  const auto last = std::find_if(all.rbegin(), all.rend(), [](const auto& r) { return !r.withdrawn; });
  if (last == all.rend()) return;
  const OvernightCell cell{last->bottle, last->due, last->analyte};
  const auto kept = edit([](OvernightTest& test) { withdraw_last(test); });
  if (kept) markCell(cell);
  sayKept(kept);
}

bool OvernightDesk::take(const InstrumentReading& heard, const std::string& instrument) {
  if (!is_chlorine_reading(heard.analyte)) return false;
  const auto label = heard.sample ? label_parts(*heard.sample) : std::nullopt;
  const OvernightTest* test = nullptr;
  if (label)
    for (const Overnight& overnight : counter_.overnights())
      if (overnight.visit.bottle.code == label->first) test = &overnight.test;
  const bool here =
      shown_ && counter_.open() && (!heard.sample || *heard.sample == counter_.visit().bottle.code);
  if (!test && here) test = this->test();
  if (!test) return false;
  if (test->stage == OvernightStage::stock && here && heard.analyte == "free_chlorine") {
    keepCheck(heard.value);
    return true;
  }
  if (test->stage != OvernightStage::running) return false;
  if (label && label->second >= static_cast<int>(test->bottles.size())) return false;
  const Instant now = counter_.now();
  const bool on_pad = counter_.open() && test->visit == counter_.visit().id;
  OvernightReading reading;
  reading.at = now;
  reading.bottle = label ? label->second : pad().cell.bottle;
  reading.due = on_pad && !label ? pad().cell.due : due_for(*test, now);
  reading.analyte = heard.analyte;
  const OvernightCell cell{reading.bottle, reading.due, reading.analyte};
  const bool marked = on_pad && pad().cell.bottle == cell.bottle;
  reading.dilution =
      marked ? pad().how.value("dilution").toDouble() : dilution_for(*test, cell, 0).toDouble();
  reading.value = heard.value * reading.dilution;
  reading.clipped = heard.clipped;
  reading.instrument = instrument;
  const auto kept = keepReading(*test, reading);
  if (!on_pad) return true;
  if (kept && pad().typed.isEmpty()) markNext();
  sayKept(kept);
  return true;
}

}  // namespace brimline
