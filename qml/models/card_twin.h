// SPDX-License-Identifier: GPL-3.0-or-later
// A second card of the customer whose bottle it is: shown, joined with theirs, taken apart again.
#pragma once

#include <qqmlintegration.h>
#include <QObject>

#include "qml/models/counter.h"

namespace brimline {

// "same phone, same email".
QString likeness_words(const std::vector<Likeness>& by);
// "Name, street, phone".
QString card_words(const Customer& card);

class CardTwin : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("the ticket has it")
  Q_PROPERTY(QString line READ line NOTIFY changed)      // the other card; empty: there is none
  Q_PROPERTY(QString why READ why NOTIFY changed)        // what they have in common
  Q_PROPERTY(QString joined READ joined NOTIFY changed)  // the card that was joined just now; empty: none

 public:
  explicit CardTwin(Counter& counter, QObject* parent = nullptr);
  QString line() const;
  QString why() const;
  QString joined() const;

  Q_INVOKABLE void join();       // this bottle's card stays
  Q_INVOKABLE void leave();      // they are two people
  Q_INVOKABLE void takeApart();  // what was joined last

 signals:
  void changed();
  void said(const QString& sentence);  // what could not be done; empty: it was

 private:
  void look();  // at the records, where the customer is another or their card
  bool done(const Records::Kept& kept);
  void show_card();  // as it stands now, on the bottle

  Counter& counter_;
  std::optional<Customer> of_;  // whom was looked for
  std::optional<LookAlike> twin_;
  std::optional<Customer> gone_;  // joined with `of_` at this bottle
};

}  // namespace brimline
