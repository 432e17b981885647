// SPDX-License-Identifier: GPL-3.0-or-later
#include "qml/models/twins_form.h"

#include "qml/models/card_twin.h"
#include "qml/models/form_field.h"

namespace brimline {
namespace {

constexpr size_t kMostPairs = 500;

QString q(const std::string& text) {
  return QString::fromStdString(text);
}

}  // namespace

TwinsForm::TwinsForm(Counter& counter, QObject* parent)
    : QObject(parent), counter_(counter), beside_(counter) {
  connect(&beside_, &Beside::moved, this, &TwinsForm::moved);
}

void TwinsForm::shown() {
  found_.clear();
  unread_.clear();
  looked_ = false;
  gone_.clear();
}

void TwinsForm::left() {
  beside_.stop();
}

QList<QVariantMap> TwinsForm::fields() {
  if (found_.empty() && gone_.empty()) return {};
  QVariantList acts;
  const auto add = [&](const char* key, const QString& word) {
    acts.append(QVariantMap{{"key", key}, {"word", word}});
  };
  if (!found_.empty()) {
    add("first", tr("One person: keep the first card"));
    add("second", tr("One person: keep the second card"));
    add("two", tr("Two people"));
  }
  if (!gone_.empty()) add("apart", tr("Take the last join apart"));
  return {form_field("twins_act", tr("What the first pair of the list is"), act_, acts)};
}

QList<QVariantMap> TwinsForm::rows() {
  if (beside_.busy())
    return {{{"name", tr("Looking ...")},
             {"detail", QString()},
             {"number", beside_.percent() > 0 ? tr("%1 %").arg(beside_.percent()) : QString()}}};
  if (!unread_.isEmpty()) return {{{"name", unread_}, {"detail", QString()}, {"number", QString()}}};
  if (looked_ && found_.empty())
    return {{{"name", tr("Nobody")}, {"detail", tr("No two cards look alike.")}, {"number", QString()}}};
  QList<QVariantMap> out;
  for (const LookAlike& pair : found_)
    out.append({{"name", card_words(pair.card)},
                {"detail", card_words(pair.other)},
                {"number", likeness_words(pair.by)}});
  return out;
}

bool TwinsForm::set(const QString& key, const QString& text) {
  if (key == QLatin1String("twins_act")) act_ = text;
  return true;
}

QString TwinsForm::act_word() const {
  if (beside_.busy()) return tr("Stop");
  if (found_.empty() && gone_.empty()) return tr("Look through the cards");
  return act_ == QLatin1String("two")     ? tr("Two people")
         : act_ == QLatin1String("apart") ? tr("Take apart")
                                          : tr("Join the cards");
}

QString TwinsForm::act() {
  if (beside_.busy()) {
    beside_.stop();
    return {};
  }
  if (!found_.empty() || !gone_.empty()) return settle();
  look();
  return {};
}

void TwinsForm::look() {
  unread_.clear();
  beside_.begin<std::vector<LookAlike>>(
      [](Store& store, const Progress& progress) { return all_look_alikes(store, kMostPairs, progress); },
      [this](Stored<std::vector<LookAlike>> found) {
        looked_ = found.has_value();
        if (found)
          found_ = std::move(*found);
        else
          unread_ = tr("The records cannot be read now.");
      });
}

QString TwinsForm::settle() {
  Records& records = counter_.records();
  const auto not_done = [](const Records::Kept& kept) { return tr("Not done: %1").arg(q(kept.error())); };
  if (act_ == QLatin1String("apart")) {
    if (gone_.empty()) return {};
    if (const auto apart = records.take_apart(gone_); !apart) return not_done(apart);
    gone_.clear();
    act_ = QStringLiteral("first");
    emit counter_.changed();
    return tr("Taken apart: both cards are as they were.");
  }
  if (found_.empty()) return {};
  const LookAlike pair = found_.front();
  if (act_ == QLatin1String("two")) {
    if (const auto apart = records.tell_apart(pair.card.id, pair.other.id); !apart) return not_done(apart);
    found_.erase(found_.begin());
    return tr("Two people: %1 is not offered again.").arg(card_words(pair.card));
  }
  const bool first = act_ != QLatin1String("second");
  const Customer &kept = first ? pair.card : pair.other, &gone = first ? pair.other : pair.card;
  if (const auto joined = records.join_customers(kept.id, gone.id); !joined) return not_done(joined);
  gone_ = gone.id;
  std::erase_if(found_,
                [&](const LookAlike& one) { return one.card.id == gone.id || one.other.id == gone.id; });
  emit counter_.changed();
  return tr("Joined: %1.").arg(card_words(records.customer(kept.id).value_or(kept)));
}

}  // namespace brimline
