// SPDX-License-Identifier: GPL-3.0-or-later
#include "qml/models/ticket.h"

#include <QRegularExpression>

#include <algorithm>

#include "qml/models/choices.h"
#include "qml/models/clock_face.h"
#include "qml/models/facts.h"
#include "station/wording/sheet_words.h"

namespace brimline {
namespace {

QString q(const std::string& text) {
  return QString::fromStdString(text);
}
QString q(const std::optional<std::string>& text) {
  return text ? q(*text) : QString();
}

std::optional<std::string> written(const QVariantMap& card, const char* field) {
  const QString text = card.value(field).toString().trimmed();
  if (text.isEmpty()) return std::nullopt;
  return text.toStdString();
}

// One of the answers to how the volume is known.
bool is_usual(double relative_sd) {
  const QVariantList choices = choices_for("volume_how");
  return std::any_of(choices.begin(), choices.end(), [&](const QVariant& choice) {
    return choice.toMap().value("key").toString().toDouble() == relative_sd;
  });
}

QString joined(QStringList parts) {
  parts.removeAll(QString());
  return parts.join(QStringLiteral(", "));
}

}  // namespace

QString vessel_words_of(const Words& words, const Visit& visit) {
  if (visit.vessel.id.empty()) return {};
  return q(vessel_words(words, visit.vessel, units_of(visit)));
}

Ticket::Ticket(Counter& counter, const Settings& settings, QObject* parent)
    : QObject(parent),
      counter_(counter),
      settings_(settings),
      customers_({"customerId", "name", "detail"}),
      twin_(counter),
      volume_(counter) {
  connect(&twin_, &CardTwin::said, this, &Ticket::sayThat);
  connect(&counter_, &Counter::changed, this, &Ticket::onCounterChanged);
}

void Ticket::onCounterChanged() {
  if (counter_.open() && counter_.visit().id != of_) {
    of_ = counter_.visit().id;
    taken_.clear();
    refused_.clear();
    setSearch({});
    sayThat({});
  }
  emit changed();
}

QString Ticket::code() const {
  return counter_.open() ? q(counter_.visit().bottle.code) : QString();
}

QString Ticket::customer() const {
  if (!counter_.open() || !counter_.visit().customer) return {};
  return q(counter_.visit().customer->name);
}

QString Ticket::customerLine() const {
  if (!counter_.open() || !counter_.visit().customer) return {};
  const Customer& c = *counter_.visit().customer;
  return joined({q(c.street), q(c.phone), q(c.email)});
}

QString Ticket::missing() const {
  if (!counter_.open() || !counter_.visit().customer) return {};
  const Vessel& vessel = counter_.visit().vessel;
  QStringList out;
  if (vessel.id.empty()) {
    out.append(tr("the vessel"));
  } else {
    if (!vessel.volume) out.append(tr("its volume"));
    if (!vessel.sanitizer) out.append(tr("what sanitizes it"));
    if (!vessel.kind) out.append(tr("pool or spa"));
  }
  return out.isEmpty() ? QString() : tr("Not said yet: %1.").arg(out.join(QStringLiteral(", ")));
}

QString Ticket::vesselLine() const {
  return counter_.open() ? vessel_words_of(counter_.words(), counter_.visit()) : QString();
}

QString Ticket::takenLine() const {
  if (!counter_.open()) return {};
  const auto& taken = counter_.visit().bottle.taken_at;
  return taken ? tr("Taken %1").arg(when_words(counter_.now(), *taken))
               : tr("When it was taken is not known");
}

QVariantMap Ticket::facts() const {
  if (!counter_.open()) return {};
  QVariantMap facts = facts_of(counter_.visit(), usual());
  if (!taken_.isEmpty()) facts.insert("taken", taken_);
  if (const QString word = howWord(); !word.isEmpty()) facts.insert("volume_how_word", word);
  return facts;
}

QVariantList Ticket::vessels() const {
  QVariantList out;
  if (!counter_.open() || !counter_.visit().customer) return out;
  Visit shown = counter_.visit();
  bool here = false;
  for (const Vessel& vessel : counter_.records().vessels_of(shown.customer->id)) {
    here = here || vessel.id == counter_.visit().vessel.id;
    shown.vessel = vessel;
    out.append(QVariantMap{{"key", q(vessel.id)}, {"word", vessel_words_of(counter_.words(), shown)}});
  }
  if (!here && !counter_.visit().vessel.id.empty())
    out.append(QVariantMap{{"key", q(counter_.visit().vessel.id)}, {"word", tr("A new one")}});
  return out;
}

void Ticket::setSearch(const QString& text) {
  if (text == search_) return;
  search_ = text;
  QList<QVariantMap> rows;
  if (!text.trimmed().isEmpty())
    for (const FoundCustomer& found : counter_.records().customers(text.toStdString())) {
      QStringList parts{q(found.customer.street)};
      Visit shown;
      shown.customer = found.customer;
      for (const Vessel& vessel : found.vessels) {
        shown.vessel = vessel;
        parts.append(vessel_words_of(counter_.words(), shown));
      }
      if (found.last_visit)
        parts.append(tr("last here %1").arg(when_words(counter_.now(), *found.last_visit)));
      rows.append({{"customerId", q(found.customer.id)},
                   {"name", q(found.customer.name)},
                   {"detail", joined(parts)}});
    }
  customers_.replace(rows);
  emit searchChanged();
}

void Ticket::sayThat(const QString& sentence) {
  if (sentence == says_) return;
  says_ = sentence;
  emit saysChanged();
}

void Ticket::say(const Records::Kept& kept) {
  sayThat(kept ? QString() : tr("This could not be kept: %1").arg(q(kept.error())));
}

void Ticket::chooseCustomer(const QString& id) {
  if (id.isEmpty()) {
    say(counter_.change([](Visit& v) {
      v.customer.reset();
      v.vessel = Vessel{};
    }));
    return;
  }
  const std::string searched = search_.toStdString();
  setSearch({});
  for (const FoundCustomer& found : counter_.records().customers(searched))
    if (q(found.customer.id) == id) {
      say(counter_.change([&](Visit& v) {
        v.customer = found.customer;
        v.vessel = found.vessels.size() == 1 ? found.vessels.front() : Vessel{};
      }));
      return;
    }
}

void Ticket::acceptSearch(const QString& text) {
  const std::string label = text.trimmed().toStdString();
  const auto& waiting = counter_.waiting();
  const bool waits = std::any_of(waiting.begin(), waiting.end(),
                                 [&](const Visit& visit) { return visit.bottle.code == label; });
  static const QRegularExpression ours(QStringLiteral("^B-\\w+(/\\d+)?$"));
  if (waits || ours.match(text.trimmed()).hasMatch())
    emit labelRead(text.trimmed());
  else if (customers_.count() == 1)
    chooseCustomer(customers_.row(0).value("customerId").toString());
}

void Ticket::addCustomer(const QVariantMap& card) {
  Customer customer;
  customer.id = counter_.new_id("C");
  customer.name = written(card, "name");
  customer.phone = written(card, "phone");
  customer.street = written(card, "street");
  customer.language = written(card, "language");
  customer.units = card.value("units").toString() == QLatin1String("us") ? Units::us : Units::metric;
  say(counter_.change([&](Visit& v) {
    v.customer = customer;
    v.vessel = Vessel{};
  }));
}

QVariantMap Ticket::beginEdit() {
  if (!counter_.open() || !counter_.visit().customer) return {};
  seen_ = counter_.visit().customer;
  const auto text = [](const std::optional<std::string>& value) { return q(value.value_or("")); };
  return {{"name", text(seen_->name)},
          {"phone", text(seen_->phone)},
          {"street", text(seen_->street)},
          {"email", text(seen_->email)},
          {"language", q(seen_->language.value_or(settings_.language.toStdString()))},
          {"units", seen_->units == Units::us ? "us" : "metric"}};
}

bool Ticket::editCustomer(const QVariantMap& card) {
  if (!seen_) return false;
  Customer now = *seen_;
  now.name = written(card, "name");
  now.phone = written(card, "phone");
  now.street = written(card, "street");
  now.email = written(card, "email");
  now.language = written(card, "language");
  now.units = card.value("units").toString() == QLatin1String("us") ? Units::us : Units::metric;
  const Customer was = *seen_;
  if (!keep_card(now)) return false;
  before_ = was;
  emit changed();
  return true;
}

// Keeps the card edited from what was seen, and shows it on the bottle.
bool Ticket::keep_card(const Customer& now) {
  const auto stands = counter_.records().edit_customer(*seen_, now);
  if (!stands) {
    sayThat(tr("Not kept: %1").arg(q(stands.error())));
    return false;
  }
  if (*stands) {
    seen_ = **stands;
    sayThat(
        tr("Another counter changed this card meanwhile: it stands now as %1. Write it down again to keep "
           "yours, or leave it.")
            .arg(QStringList{q(seen_->name.value_or("")), q(seen_->phone.value_or("")),
                             q(seen_->street.value_or(""))}
                     .join(QStringLiteral(", "))));
    return false;
  }
  seen_ = now;
  const Records::Kept kept = counter_.change([&](Visit& v) { v.customer = now; });
  say(kept);
  return kept.has_value();
}

bool Ticket::edited() const {
  return before_ && counter_.open() && counter_.visit().customer &&
         counter_.visit().customer->id == before_->id;
}

void Ticket::takeBack() {
  if (!edited()) return;
  seen_ = counter_.visit().customer;
  if (keep_card(*before_)) before_.reset();
  emit changed();
}

void Ticket::chooseVessel(const QString& id) {
  if (!counter_.open() || !counter_.visit().customer) return;
  Vessel chosen;
  if (id == QLatin1String("new")) {
    chosen.id = counter_.new_id("W");
    chosen.kind = VesselKind::pool;
    chosen.use = VesselUse::household;
  }
  for (const Vessel& vessel : counter_.records().vessels_of(counter_.visit().customer->id))
    if (q(vessel.id) == id) chosen = vessel;
  if (!chosen.id.empty()) say(counter_.change([&](Visit& v) { v.vessel = chosen; }));
}

void Ticket::setTaken(const QString& key) {
  const std::optional<Instant> at = moment_for(key, counter_.now());
  taken_ = key;
  say(counter_.change([&](Visit& v) { v.bottle.taken_at = at; }));
  emit changed();
}

void Ticket::setFact(const QString& fact, const QString& text) {
  if (fact == QLatin1String("taken")) return setTaken(text);
  std::optional<QString> fault;
  const auto kept = counter_.change([&](Visit& v) {
    const std::optional<Volume> was = v.vessel.volume;
    fault = set_fact(v, fact, text, usual());
    // How well another volume was known says nothing of the one that is typed now.
    if (v.vessel.volume != was && v.vessel.volume_relative_sd && !is_usual(*v.vessel.volume_relative_sd))
      v.vessel.volume_relative_sd.reset();
  });
  if (fault || refused_ == fact) {
    refused_ = fault ? fact : QString();
    refused_why_ = fault.value_or(QString());
  }
  if (!fault) say(kept);
  emit saysChanged();
  if (fault) emit changed();
}

QVariantList Ticket::options(const QString& fact) const {
  QVariantList out = choices_for(fact);
  const QString word = fact == QLatin1String("volume_how") ? howWord() : QString();
  if (!word.isEmpty()) {
    const double sd = *counter_.visit().vessel.volume_relative_sd;
    out.append(QVariantMap{{"key", QString::number(sd)}, {"word", word}});
  }
  return out;
}

QString Ticket::howWord() const {
  if (!counter_.open()) return {};
  const Vessel& vessel = counter_.visit().vessel;
  if (!vessel.volume_relative_sd || is_usual(*vessel.volume_relative_sd)) return {};
  if (QString word = volume_.how(); !word.isEmpty()) return word;
  const QString percent = q(counter_.words().number(100 * *vessel.volume_relative_sd, 0));
  return standing_lesson(vessel) ? tr("From the water’s answers, ± %1 %").arg(percent)
                                 : tr("Known to ± %1 %").arg(percent);
}

QString Ticket::question(const QString& fact) const {
  const QString typed = typed_question(counter_.open() ? counter_.visit() : Visit(), fact, usual());
  return typed.isEmpty() ? question_for(fact) : typed;
}

}  // namespace brimline
