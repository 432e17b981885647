// SPDX-License-Identifier: GPL-3.0-or-later
#include "qml/models/then_desk.h"

#include "analysis/panel/analyte.h"
#include "qml/models/clock_face.h"
#include "qml/models/facts.h"
#include "qml/models/then_numbers.h"
#include "station/compare/plan_answer.h"
#include "station/compare/volume_words.h"

namespace brimline {
namespace {

QString q(std::string_view text) {
  return QString::fromUtf8(text.data(), static_cast<int>(text.size()));
}

const std::optional<Instant>& when_of(const Visit& visit) {
  return visit.bottle.taken_at ? visit.bottle.taken_at : visit.bottle.tested_at;
}

}  // namespace

ThenDesk::ThenDesk(Counter& counter, const Services& services, QObject* parent)
    : QObject(parent),
      counter_(counter),
      changes_({"name", "earlier", "now", "expected", "text"}),
      explanations_({"sentence"}),
      answers_({"verdict", "sentence"}),
      year_(counter, services),
      compare_(services.compare) {
  connect(&counter_, &Counter::changed, this, &ThenDesk::refresh);
}

ThenDesk::~ThenDesk() {
  pool_.wait();
}

const Visit* ThenDesk::shown() const {
  const auto& visits = counter_.earlier();
  for (const Visit& visit : visits)
    if (q(visit.id) == earlier_) return &visit;
  return visits.empty() ? nullptr : &visits.back();
}

QVariantList ThenDesk::earlierVisits() const {
  QVariantList out;
  const auto& visits = counter_.earlier();
  for (auto visit = visits.rbegin(); visit != visits.rend(); ++visit) {
    const auto& when = when_of(*visit);
    out.append(QVariantMap{{"key", q(visit->id)},
                           {"word", when ? when_words(counter_.now(), *when) : q(visit->bottle.code)}});
  }
  return out;
}

void ThenDesk::setEarlier(const QString& id) {
  earlier_ = id;
  refresh();
}

QString ThenDesk::earlierWord() const {
  const Visit* visit = shown();
  return visit && when_of(*visit) ? when_words(counter_.now(), *when_of(*visit)) : tr("Then");
}

QString ThenDesk::title() const {
  if (!counter_.open()) return tr("No bottle is on the counter");
  if (!shown()) return tr("This vessel’s first bottle");
  return tr("Then and now");
}

void ThenDesk::refresh() {
  const int request = ++asked_;
  const Visit* visit = counter_.open() ? shown() : nullptr;
  earlier_ = visit ? q(visit->id) : QString();
  volume_.reset();
  if (!visit || counter_.visit().bottle.readings.empty()) {
    changes_.replace({});
    explanations_.replace({});
    answers_.replace({});
    numbers_.clear();
    emit changed();
    return;
  }
  showAnswers(*visit);
  // The chosen visit and those before it lend what it did not read itself.
  std::vector<Visit> visits;
  for (const Visit& before : counter_.earlier()) {
    visits.push_back(before);
    if (before.id == visit->id) break;
  }
  visits.push_back(counter_.visit());
  // The volume answers over all that was told, whichever visit is looked at.
  std::vector<Visit> all;
  if (visits.size() <= counter_.earlier().size()) {
    all = counter_.earlier();
    all.push_back(counter_.visit());
  }
  pool_.clear();
  pool_.start([this, request, visits = std::move(visits), all = std::move(all), compare = compare_,
               language = counter_.words().language()] {
    Comparison made = compare(visits, language);
    const auto volume = all.empty() ? made.volume : compare(all, language).volume;
    QMetaObject::invokeMethod(
        this, [this, request, made = std::move(made), volume] { show(request, made, volume); });
  });
  emit changed();
}

void ThenDesk::showAnswers(const Visit& then) {
  QList<QVariantMap> rows;
  for (const PlanAnswer& answer : answers_of(then, counter_.visit(), counter_.words()))
    rows.append({{"verdict", q(name_of(answer.verdict))}, {"sentence", q(answer.text)}});
  answers_.replace(rows);
}

QString ThenDesk::volumeSays() const {
  if (!counter_.open() || !volume_) return {};
  return q(
      found_volume_sentence(counter_.words(), *volume_, counter_.visit().vessel, units_of(counter_.visit())));
}

QString ThenDesk::lessonSays() const {
  if (!counter_.open()) return {};
  return q(lesson_sentence(counter_.words(), counter_.visit().vessel, units_of(counter_.visit())));
}

// Only where the water knows it better than the file: one that fits neither is to be measured.
bool ThenDesk::canTakeVolume() const {
  if (!volume_) return false;
  const Vessel& vessel = counter_.visit().vessel;
  return !vessel.volume ||
         volume_->sd < 0.98 * vessel.volume_relative_sd.value_or(0.1) * vessel.volume->cubic_metres();
}

QString ThenDesk::takeWord() const {
  if (!volume_) return {};
  return tr("Plan with %1")
      .arg(q(volume_words(counter_.words(), volume_->m3, volume_->sd, units_of(counter_.visit()))));
}

void ThenDesk::keepVessel(const Vessel& vessel) {
  const auto kept = counter_.change([&](Visit& visit) { visit.vessel = vessel; });
  trouble_ = kept ? QString() : q(kept.error());
  emit changed();
}

void ThenDesk::takeVolume() {
  if (!canTakeVolume()) return;
  keepVessel(
      with_volume(counter_.visit().vessel, *volume_, when_of(counter_.visit()).value_or(counter_.now())));
}

void ThenDesk::giveVolumeBack() {
  if (counter_.open()) keepVessel(without_lesson(counter_.visit().vessel));
}

void ThenDesk::show(int request, const Comparison& comparison, const std::optional<VolumeFound>& volume) {
  if (request != asked_) return;
  volume_ = volume;
  QList<QVariantMap> rows;
  for (const ReadingChange& change : comparison.changes) {
    const AnalyteKind* kind = find_analyte(change.analyte);
    if (!kind) continue;
    const Words& words = counter_.words();
    const auto number = [&](double value) { return q(words.number(value, kind->decimals)); };
    rows.append({{"name", q(words.say("analyte", kind->name.c_str()))},
                 {"earlier", number(change.earlier)},
                 {"now", number(change.later)},
                 {"expected", number(change.expected)},
                 {"text", q(change.text)}});
  }
  changes_.replace(rows);
  QList<QVariantMap> sentences;
  for (const Explanation& explanation : comparison.explanations)
    sentences.append({{"sentence", q(explanation.text)}});
  explanations_.replace(sentences);
  numbers_ = then_number_rows(counter_.words(), comparison, volume, counter_.visit());
  emit changed();
}

}  // namespace brimline
