// SPDX-License-Identifier: GPL-3.0-or-later
// The bench: readings that arrive by themselves, and those typed on the pad.
#pragma once

#include <qqmlintegration.h>
#include <QElapsedTimer>
#include <QObject>
#include <QVariantList>

#include "devices/happening.h"
#include "qml/models/counter.h"
#include "qml/models/row_model.h"

namespace brimline {

class BenchDesk : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("the desk has it")
  Q_PROPERTY(brimline::RowModel* readings READ readings CONSTANT)
  Q_PROPERTY(QString headline READ headline NOTIFY changed)
  Q_PROPERTY(QString trouble READ trouble NOTIFY lineChanged)  // of the instrument; empty: none
  Q_PROPERTY(QString orphan READ orphan NOTIFY orphanChanged)  // a reading of no bottle; empty: there is none
  Q_PROPERTY(
      QString orphanHere READ orphanHere NOTIFY orphanChanged)  // the act's word; empty: no bottle is here
  Q_PROPERTY(QString orphanAll READ orphanAll NOTIFY orphanChanged)      // for several at once
  Q_PROPERTY(QString orphanCount READ orphanCount NOTIFY orphanChanged)  // said elsewhere; empty: none
  Q_PROPERTY(QString instrumentLine READ instrumentLine NOTIFY lineChanged)
  Q_PROPERTY(QString analyteName READ analyteName NOTIFY padChanged)  // of the pad
  Q_PROPERTY(QString unit READ unit NOTIFY padChanged)
  Q_PROPERTY(QString typed READ typed NOTIFY padChanged)
  Q_PROPERTY(QString says READ says NOTIFY padChanged)
  Q_PROPERTY(QVariantList methods READ methods NOTIFY padChanged)
  Q_PROPERTY(QVariantList clips READ clips CONSTANT)
  Q_PROPERTY(QVariantList dilutions READ dilutions NOTIFY padChanged)  // empty where none makes sense
  Q_PROPERTY(QVariantMap how READ how NOTIFY padChanged)               // method, clip, dilution
  Q_PROPERTY(bool canKeep READ canKeep NOTIFY padChanged)
  Q_PROPERTY(bool anyKept READ anyKept NOTIFY changed)
  Q_PROPERTY(bool allKept READ allKept NOTIFY changed)  // that is due
  Q_PROPERTY(
      QString takeBackWord READ takeBackWord NOTIFY changed)  // of the last reading; empty: there is none

 public:
  explicit BenchDesk(Counter& counter, QObject* parent = nullptr);

  RowModel* readings() { return &readings_; }
  QString headline() const;
  QString trouble() const { return trouble_; }
  QString orphan() const;
  QString orphanHere() const;
  QString orphanAll() const;
  QString orphanCount() const;
  QString instrumentLine() const { return instrument_line_; }
  QString analyteName() const;
  QString unit() const;
  QString typed() const { return typed_; }
  QString says() const { return says_; }
  QVariantList methods() const;
  QVariantList clips() const;
  QVariantList dilutions() const;
  QVariantMap how() const { return how_; }
  bool canKeep() const;
  bool anyKept() const { return counter_.open() && !counter_.visit().bottle.readings.empty(); }
  bool allKept() const { return anyKept() && still_due_.empty(); }
  QString waitingLine() const;  // "3 of 8 kept"

  Q_INVOKABLE void choose(const QString& analyte);
  Q_INVOKABLE void press(const QString& key);  // "0" to "9", "point", "back"
  Q_INVOKABLE void setHow(const QString& fact, const QString& key);
  Q_INVOKABLE void keep();
  QString takeBackWord() const;
  Q_INVOKABLE void takeBack();  // the last reading; it stays in the audit trail
  Q_INVOKABLE void settleOrphan(bool into_bottle);
  Q_INVOKABLE void settleOrphans();  // all that name no bottle, into the one on the counter

 public slots:
  void onHappened(const brimline::Happening& happening);
  void setInstrumentLine(const QString& line);

 signals:
  void changed();
  void padChanged();
  void lineChanged();
  void orphanChanged();

 private:
  void refresh();
  void chooseNext();
  size_t nameless_orphans() const;
  void clearPad();
  bool was_for_another();
  void take(const InstrumentReading& reading, const std::string& instrument);
  void keepOrphan(const std::optional<std::string>& sample, const Reading& reading);
  void setTrouble(const QString& sentence);
  void setSays(const QString& sentence);

  Counter& counter_;
  RowModel readings_;
  std::vector<AnalyteId> due_, still_due_;
  AnalyteId analyte_;     // on the pad
  bool by_hand_ = false;  // somebody chose it
  AnalyteId left_;        // the pad left it by itself a moment ago
  QElapsedTimer since_;   // then, or the last key that was meant for it
  QString typed_, says_, trouble_, instrument_line_;
  QVariantMap how_;
  std::string of_;  // the visit the pad was used for
};

}  // namespace brimline
