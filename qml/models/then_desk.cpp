// SPDX-License-Identifier: GPL-3.0-or-later
#include "qml/models/then_desk.h"

#include "analysis/panel/analyte.h"
#include "qml/models/clock_face.h"

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
      compare_(services.compare) {
  pool_.setMaxThreadCount(1);
  connect(&counter_, &Counter::changed, this, &ThenDesk::refresh);
}

ThenDesk::~ThenDesk() {
  pool_.waitForDone();
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
  if (!visit || counter_.visit().bottle.readings.empty()) {
    changes_.replace({});
    explanations_.replace({});
    emit changed();
    return;
  }
  // The chosen visit and those before it lend what it did not read itself.
  std::vector<Visit> visits;
  for (const Visit& before : counter_.earlier()) {
    visits.push_back(before);
    if (before.id == visit->id) break;
  }
  visits.push_back(counter_.visit());
  pool_.clear();
  pool_.start([this, request, visits = std::move(visits), compare = compare_,
               language = counter_.words().language()] {
    Comparison made = compare(visits, language);
    QMetaObject::invokeMethod(this, [this, request, made = std::move(made)] { show(request, made); });
  });
  emit changed();
}

void ThenDesk::show(int request, const Comparison& comparison) {
  if (request != asked_) return;
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
  emit changed();
}

}  // namespace brimline
