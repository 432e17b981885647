// SPDX-License-Identifier: GPL-3.0-or-later
#include "qml/models/bench_desk.h"

#include <QCoreApplication>

#include <algorithm>
#include <set>

#include "analysis/panel/analyte.h"
#include "analysis/panel/names.h"
#include "qml/models/choices.h"
#include "qml/models/clock_face.h"
#include "qml/models/panel_rows.h"
#include "station/wording/plan_words.h"
#include "station/wording/unit_words.h"

namespace brimline {
namespace {

constexpr qint64 kSettling = 700;  // ms in which a key may still be meant for what stood on the pad before

QString q(std::string_view text) {
  return QString::fromUtf8(text.data(), static_cast<int>(text.size()));
}

QString names_in_words(const std::vector<AnalyteId>& analytes) {
  QStringList names;
  for (const AnalyteId& id : analytes)
    if (const AnalyteKind* kind = find_analyte(id))
      names.append(QCoreApplication::translate("analyte", kind->name.c_str()));
  return names.join(QStringLiteral(", "));
}

}  // namespace

BenchDesk::BenchDesk(Counter& counter, QObject* parent)
    : QObject(parent),
      counter_(counter),
      readings_({"analyte", "name", "value", "unit", "how", "standing", "note", "waits", "chosen"}) {
  clearPad();
  connect(&counter_, &Counter::changed, this, &BenchDesk::refresh);
  connect(&counter_, &Counter::changed, this, &BenchDesk::orphanChanged);
  connect(&counter_, &Counter::orphansChanged, this, &BenchDesk::orphanChanged);
}

void BenchDesk::refresh() {
  if (!counter_.open()) return;
  due_ = due_of(counter_);
  still_due_ = still_due(counter_.visit().bottle, due_);
  if (counter_.visit().id != of_) {
    of_ = counter_.visit().id;
    analyte_.clear();
    by_hand_ = false;
    setTrouble({});
  }
  // What is read leaves the pad to what is still due, unless somebody chose it or is typing.
  const bool due = std::find(still_due_.begin(), still_due_.end(), analyte_) != still_due_.end();
  if (analyte_.empty() || (!by_hand_ && !due && typed_.isEmpty())) {
    const AnalyteId was = analyte_;
    chooseNext();
    if (!was.empty() && was != analyte_) {
      left_ = was;
      since_.start();
    }
  }
  readings_.replace(panel_rows(counter_, due_, analyte_));
  emit changed();
  emit padChanged();
}

void BenchDesk::chooseNext() {
  if (still_due_.empty() && !analyte_.empty()) return;
  const AnalyteId next =
      still_due_.empty() ? (due_.empty() ? AnalyteId("ph") : due_.front()) : still_due_.front();
  if (next != analyte_ || by_hand_) choose(q(next));
  by_hand_ = false;
}

QString BenchDesk::waitingLine() const {
  if (!counter_.open()) return {};
  return tr("%1 of %2 kept").arg(due_.size() - still_due_.size()).arg(due_.size());
}

QString BenchDesk::headline() const {
  if (!counter_.open()) return tr("No bottle is on the bench");
  if (due_.empty()) return tr("Nothing is due");
  if (still_due_.empty()) {
    std::set<AnalyteId> read;
    for (const Reading& one : counter_.visit().bottle.readings)
      if (std::find(due_.begin(), due_.end(), one.analyte) == due_.end()) read.insert(one.analyte);
    return read.empty() ? tr("All %1 readings are kept").arg(due_.size())
                        : tr("All %1 due are kept, and %2 more").arg(due_.size()).arg(read.size());
  }
  return tr("%1 of %2 readings kept").arg(due_.size() - still_due_.size()).arg(due_.size());
}

QString BenchDesk::analyteName() const {
  const AnalyteKind* kind = find_analyte(analyte_);
  return kind ? QCoreApplication::translate("analyte", kind->name.c_str()) : QString();
}

QString BenchDesk::unit() const {
  const AnalyteKind* kind = find_analyte(analyte_);
  return kind ? q(unit_words(counter_.words(), *kind)) : QString();
}

QVariantList BenchDesk::methods() const {
  QVariantList out;
  if (const AnalyteKind* kind = find_analyte(analyte_))
    for (const MethodKind& method : kind->methods) {
      const QString key = q(name_of(method.method));
      out.append(QVariantMap{{"key", key}, {"word", word_for("method", key)}});
    }
  return out;
}

QVariantList BenchDesk::clips() const {
  return choices_for("clip");
}

QVariantList BenchDesk::dilutions() const {
  return analyte_ == "ph" ? QVariantList() : choices_for("dilution");
}

bool BenchDesk::canKeep() const {
  bool sound = false;
  typed_.toDouble(&sound);
  return sound && counter_.open() && find_analyte(analyte_);
}

void BenchDesk::clearPad() {
  typed_.clear();
  says_.clear();
  how_ = {{"clip", "inside"}, {"dilution", "1"}};
  const QVariantList all = methods();
  how_.insert("method", all.isEmpty() ? QVariant(QString()) : all.first().toMap().value("key"));
}

void BenchDesk::choose(const QString& analyte) {
  if (!find_analyte(analyte.toStdString())) return;
  analyte_ = analyte.toStdString();
  by_hand_ = true;
  left_.clear();
  clearPad();
  if (counter_.open()) readings_.replace(panel_rows(counter_, due_, analyte_));
  emit padChanged();
}

// Whether a key was still meant for what the pad has just left: a number typed on would be another reading's.
bool BenchDesk::was_for_another() {
  if (left_.empty() || since_.elapsed() >= kSettling) return false;
  since_.start();
  setSays(tr("%1 has come in by itself; the pad is at %2 now.").arg(names_in_words({left_}), analyteName()));
  return true;
}

void BenchDesk::press(const QString& key) {
  if (was_for_another()) return;
  left_.clear();
  if (key == QLatin1String("back"))
    typed_.chop(1);
  else if (key == QLatin1String("point")) {
    if (!typed_.contains('.')) typed_ += typed_.isEmpty() ? "0." : ".";
  } else if (typed_.size() < 7) {
    typed_ += key;
  }
  says_.clear();
  emit padChanged();
}

void BenchDesk::setHow(const QString& fact, const QString& key) {
  how_.insert(fact, key);
  emit padChanged();
}

void BenchDesk::setSays(const QString& sentence) {
  says_ = sentence;
  emit padChanged();
}

void BenchDesk::keep() {
  if (!canKeep()) return;
  const AnalyteKind& kind = *find_analyte(analyte_);
  Reading reading;
  reading.analyte = analyte_;
  reading.dilution = analyte_ == "ph" ? 1.0 : how_.value("dilution").toDouble();
  reading.value = typed_.toDouble() * reading.dilution;
  reading.method = named<Method>(how_.value("method").toString().toStdString());
  reading.clipped = named<Clip>(how_.value("clip").toString().toStdString());
  if (!kind.possible.holds(reading.value))
    return setSays(tr("%1 cannot be %2. Please read it again.")
                       .arg(QCoreApplication::translate("analyte", kind.name.c_str()), typed_));
  if (const auto kept = counter_.add_reading(reading); !kept)
    return setSays(tr("Not kept: %1").arg(q(kept.error())));
  clearPad();
  setTrouble({});
  by_hand_ = false;
  chooseNext();
  refresh();
}

void BenchDesk::setInstrumentLine(const QString& line) {
  instrument_line_ = line;
  emit lineChanged();
}

void BenchDesk::setTrouble(const QString& sentence) {
  trouble_ = sentence;
  emit lineChanged();
}

void BenchDesk::onHappened(const Happening& happening) {
  if (const auto* reading = std::get_if<InstrumentReading>(&happening.what))
    take(*reading, happening.instrument);
  else if (const auto* trouble = std::get_if<Trouble>(&happening.what))
    setTrouble(q(trouble->text));
  else
    setTrouble({});
}

void BenchDesk::take(const InstrumentReading& heard, const std::string& instrument) {
  Reading reading;
  reading.analyte = heard.analyte;
  reading.value = heard.value;
  reading.clipped = heard.clipped;
  reading.sd = heard.sd;
  reading.method = Method::photometer;
  reading.instrument = instrument;
  const QString name = names_in_words({heard.analyte});
  if (!counter_.open() && !heard.sample) return keepOrphan(std::nullopt, reading);
  if (heard.sample && (!counter_.open() || *heard.sample != counter_.visit().bottle.code)) {
    const auto kept = counter_.add_reading_to(*heard.sample, reading);
    if (!kept) return keepOrphan(heard.sample, reading);
    return setTrouble(*kept ? tr("%1 came in for bottle %2 and was kept there.").arg(name, q(*heard.sample))
                            : tr("Not kept: %1").arg(q(kept->error())));
  }
  const auto kept = counter_.add_reading(reading);
  setTrouble(kept ? QString() : tr("%1 was not kept: %2").arg(name, q(kept.error())));
}

void BenchDesk::keepOrphan(const std::optional<std::string>& sample, const Reading& reading) {
  if (const auto kept = counter_.keep_orphan(sample, reading); !kept)
    setTrouble(tr("%1 was not kept: %2").arg(names_in_words({reading.analyte}), q(kept.error())));
}

QString BenchDesk::orphan() const {
  if (counter_.orphans().empty()) return {};
  const OrphanReading& first = counter_.orphans().front();
  const QString what = names_in_words({first.reading.analyte}) + QStringLiteral(" ") +
                       q(reading_in_words(counter_.words(), first.reading.analyte, first.reading.value));
  const QString when = when_words(counter_.now(), first.heard_at);
  QString out = first.sample
                    ? tr("%1 came in %2 for bottle %3, which does not wait here. Whose is it?")
                          .arg(what, when, q(*first.sample))
                    : tr("%1 came in %2 while no bottle was on the counter. Whose is it?").arg(what, when);
  if (const size_t more = counter_.orphans().size() - 1; more > 0)
    out += QStringLiteral(" ") + tr("And %1 more.").arg(more);
  return out;
}

QString BenchDesk::orphanHere() const {
  if (!counter_.open() || counter_.orphans().empty()) return {};
  return tr("Of %1").arg(q(counter_.visit().bottle.code));
}

// How many of the first ones name no bottle.
size_t BenchDesk::nameless_orphans() const {
  const auto& all = counter_.orphans();
  return static_cast<size_t>(
      std::find_if(all.begin(), all.end(), [](const OrphanReading& one) { return one.sample.has_value(); }) -
      all.begin());
}

QString BenchDesk::orphanAll() const {
  if (!counter_.open() || nameless_orphans() < 2) return {};
  return tr("All %1 of %2").arg(nameless_orphans()).arg(q(counter_.visit().bottle.code));
}

QString BenchDesk::orphanCount() const {
  const size_t count = counter_.orphans().size();
  if (count == 0) return {};
  return count == 1 ? tr("A reading has come in that belongs to no bottle yet. It waits at the bench.")
                    : tr("%1 readings have come in that belong to no bottle yet. They wait at the bench.")
                          .arg(count);
}

void BenchDesk::settleOrphans() {
  for (size_t left = nameless_orphans(); left > 0; --left) {
    if (const auto kept = counter_.settle_orphan(true); !kept) return setTrouble(q(kept.error()));
  }
  setTrouble({});
  refresh();
}

QString BenchDesk::takeBackWord() const {
  if (!anyKept()) return {};
  const Reading& last = counter_.visit().bottle.readings.back();
  const AnalyteKind* kind = find_analyte(last.analyte);
  return tr("Take back %1 %2")
      .arg(names_in_words({last.analyte}), q(counter_.words().number(last.value, kind ? kind->decimals : 2)));
}

void BenchDesk::takeBack() {
  const QString what = takeBackWord();
  const auto kept = counter_.take_back_reading();
  setSays(kept ? tr("Done: %1.").arg(what) : q(kept.error()));
}

void BenchDesk::settleOrphan(bool into_bottle) {
  if (counter_.orphans().empty()) return;
  const auto kept = counter_.settle_orphan(into_bottle);
  setTrouble(kept ? QString() : q(kept.error()));
}

}  // namespace brimline
