// SPDX-License-Identifier: GPL-3.0-or-later
#include "qml/models/card_twin.h"

#include <QCoreApplication>

namespace brimline {
namespace {

const char* word_of(Likeness one) {
  switch (one) {
    case Likeness::phone:
      return QT_TRANSLATE_NOOP("twins", "same phone");
    case Likeness::email:
      return QT_TRANSLATE_NOOP("twins", "same email");
    case Likeness::name_and_street:
      return QT_TRANSLATE_NOOP("twins", "same name and street");
    case Likeness::street:
      return QT_TRANSLATE_NOOP("twins", "same street, a name in common");
    case Likeness::name:
      break;
  }
  return QT_TRANSLATE_NOOP("twins", "same name");
}

}  // namespace

QString likeness_words(const std::vector<Likeness>& by) {
  QStringList out;
  for (const Likeness one : by) out.append(QCoreApplication::translate("twins", word_of(one)));
  return out.join(QStringLiteral(", "));
}

QString card_words(const Customer& card) {
  QStringList out;
  for (const auto& part : {card.name, card.street, card.phone, card.email})
    if (part) out.append(QString::fromStdString(*part));
  return out.join(QStringLiteral(", "));
}

CardTwin::CardTwin(Counter& counter, QObject* parent) : QObject(parent), counter_(counter) {
  connect(&counter_, &Counter::changed, this, &CardTwin::look);
}

void CardTwin::look() {
  const std::optional<Customer> now = counter_.open() ? counter_.visit().customer : std::nullopt;
  if (now == of_) return;
  if (!now || !of_ || now->id != of_->id) gone_.reset();
  of_ = now;
  twin_.reset();
  if (now)
    if (auto found = counter_.records().look_alikes(now->id); !found.empty())
      twin_ = std::move(found.front());
  emit changed();
}

QString CardTwin::line() const {
  return twin_ ? card_words(twin_->other) : QString();
}

QString CardTwin::why() const {
  return twin_ ? likeness_words(twin_->by) : QString();
}

QString CardTwin::joined() const {
  return gone_ ? card_words(*gone_) : QString();
}

bool CardTwin::done(const Records::Kept& kept) {
  emit said(kept ? QString()
                 : QCoreApplication::translate("twins", QT_TRANSLATE_NOOP("twins", "Not done: %1"))
                       .arg(QString::fromStdString(kept.error())));
  return kept.has_value();
}

void CardTwin::show_card() {
  auto card = counter_.records().customer(of_->id);
  of_.reset();  // looked at anew
  if (card) (void)counter_.change([&](Visit& v) { v.customer = *card; });
  look();
}

void CardTwin::join() {
  if (!twin_) return;
  const Customer gone = twin_->other;
  if (!done(counter_.records().join_customers(of_->id, gone.id))) return;
  show_card();
  gone_ = gone;
  emit changed();
}

void CardTwin::leave() {
  if (!twin_ || !done(counter_.records().tell_apart(of_->id, twin_->other.id))) return;
  of_.reset();
  look();
}

void CardTwin::takeApart() {
  if (!gone_ || !done(counter_.records().take_apart(gone_->id))) return;
  gone_.reset();
  show_card();
}

}  // namespace brimline
