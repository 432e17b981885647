// SPDX-License-Identifier: GPL-3.0-or-later
// The bottle's ticket: whose it is, which vessel, how it came. What the place "Bottle" binds to.
#pragma once

#include <qqmlintegration.h>
#include <QObject>
#include <QVariantMap>

#include "qml/models/card_twin.h"
#include "qml/models/counter.h"
#include "qml/models/row_model.h"
#include "qml/models/settings.h"
#include "qml/models/volume_form.h"

namespace brimline {

class Ticket : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("the desk has it")
  Q_PROPERTY(QString code READ code NOTIFY changed)
  Q_PROPERTY(QString customer READ customer NOTIFY changed)          // name; empty: nobody chosen
  Q_PROPERTY(QString customerLine READ customerLine NOTIFY changed)  // street, phone
  Q_PROPERTY(bool edited READ edited NOTIFY changed)                 // the card, and it can be taken back
  Q_PROPERTY(QString vesselLine READ vesselLine NOTIFY changed)
  Q_PROPERTY(QString takenLine READ takenLine NOTIFY changed)
  Q_PROPERTY(QVariantMap facts READ facts NOTIFY changed)
  Q_PROPERTY(QVariantList vessels READ vessels NOTIFY changed)  // {key, word}, the customer's
  Q_PROPERTY(QString says READ says NOTIFY saysChanged)         // what could not be taken, or kept
  Q_PROPERTY(QString refusedWhy READ refusedWhy NOTIFY saysChanged)
  Q_PROPERTY(QString refused READ refused NOTIFY saysChanged)  // the fact that was not taken; empty: none
  Q_PROPERTY(QString missing READ missing NOTIFY changed)      // what a plan will ask for
  Q_PROPERTY(QString search READ search WRITE setSearch NOTIFY searchChanged)
  Q_PROPERTY(brimline::RowModel* customers READ customers CONSTANT)
  Q_PROPERTY(brimline::CardTwin* twin READ twin CONSTANT)
  Q_PROPERTY(brimline::VolumeForm* volume READ volume CONSTANT)
  Q_PROPERTY(QString usualUnits READ usualUnits NOTIFY changed)
  Q_PROPERTY(QString usualLanguage READ usualLanguage NOTIFY changed)

 public:
  Ticket(Counter& counter, const Settings& settings, QObject* parent = nullptr);

  QString code() const;
  QString customer() const;
  QString customerLine() const;
  QString vesselLine() const;
  QString takenLine() const;
  QVariantMap facts() const;
  QVariantList vessels() const;
  QString says() const { return says_; }
  QString refused() const { return refused_; }
  QString refusedWhy() const { return refused_why_; }
  QString missing() const;
  QString search() const { return search_; }
  void setSearch(const QString& text);
  RowModel* customers() { return &customers_; }
  CardTwin* twin() { return &twin_; }
  VolumeForm* volume() { return &volume_; }
  QString usualUnits() const { return settings_.units; }
  QString usualLanguage() const { return settings_.language; }

  Q_INVOKABLE void chooseCustomer(const QString& id);  // empty: nobody
  // Enter behind what is searched for: a bottle's label is read as one, the only customer found is chosen.
  Q_INVOKABLE void acceptSearch(const QString& text);
  Q_INVOKABLE void addCustomer(const QVariantMap& card);
  // The card as it is now, to be edited: name, phone, street, email, language, units.
  Q_INVOKABLE QVariantMap beginEdit();
  // False: not kept, and `says` tells why; the card seen is then the one that stands, so that a second
  // writing is meant.
  Q_INVOKABLE bool editCustomer(const QVariantMap& card);
  bool edited() const;
  Q_INVOKABLE void takeBack();                       // the card as it was before the last edit
  Q_INVOKABLE void chooseVessel(const QString& id);  // "new": one not written down yet
  Q_INVOKABLE void setFact(const QString& fact, const QString& text);
  Q_INVOKABLE QVariantList options(const QString& fact) const;
  Q_INVOKABLE QString question(const QString& fact) const;

 signals:
  void changed();
  void saysChanged();
  void searchChanged();
  void labelRead(const QString& label);

 private:
  bool keep_card(const Customer& now);
  QString howWord() const;  // how the volume is known, where that is none of the usual answers; else empty
  void say(const Records::Kept& kept);
  void sayThat(const QString& sentence);
  void setTaken(const QString& key);
  Units usual() const { return settings_.units == QLatin1String("us") ? Units::us : Units::metric; }
  void onCounterChanged();

  Counter& counter_;
  const Settings& settings_;
  RowModel customers_;
  CardTwin twin_;
  VolumeForm volume_;
  QString search_, says_, refused_, refused_why_;
  std::optional<Customer> seen_;    // the card that is being edited, as it was read
  std::optional<Customer> before_;  // the last edit
  QString taken_;                   // the choice made, for this bottle
  std::string of_;                  // the visit it was made for
};

// "outdoor pool, 56.8 m³, chlorine": what is known, in the customer's units.
QString vessel_words_of(const Words& words, const Visit& visit);

}  // namespace brimline
