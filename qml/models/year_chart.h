// SPDX-License-Identifier: GPL-3.0-or-later
// Then and now: a year of one reading of the vessel on the counter, as a picture and in words.
#pragma once

#include <qqmlintegration.h>
#include <QObject>
#include <QVariantList>

#include "qml/models/back_pool.h"
#include "qml/models/counter.h"
#include "qml/models/services.h"
#include "station/compare/year.h"

namespace brimline {

class YearChart : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("then and now has it")
  Q_PROPERTY(QVariantList readings READ readings NOTIFY changed)  // {key, word}: read twice or more
  Q_PROPERTY(QString reading READ reading WRITE setReading NOTIFY changed)
  // Of the picture, `up` from 0 at its foot to 1 and `at` from 0 at its left to 1 (parts/ChartPicture.qml).
  Q_PROPERTY(QVariantList rules READ rules NOTIFY changed)    // {up, word, weight}
  Q_PROPERTY(QVariantMap band READ band NOTIFY changed)       // {low, high}; empty: no target
  Q_PROPERTY(QVariantList points READ points NOTIFY changed)  // {at, up, half, out, counts}
  Q_PROPERTY(QVariantList ticks READ ticks NOTIFY changed)    // {at, tall}
  Q_PROPERTY(QVariantList dates READ dates NOTIFY changed)    // {at, word}
  Q_PROPERTY(QString says READ says NOTIFY changed)           // the year in two sentences
  Q_PROPERTY(QString inWords READ inWords NOTIFY changed)     // and its readings one by one, newest first

 public:
  YearChart(Counter& counter, const Services& services, QObject* parent = nullptr);
  ~YearChart() override;

  QVariantList readings() const;
  QString reading() const;
  void setReading(const QString& analyte);
  QVariantList rules() const;
  QVariantMap band() const;
  QVariantList points() const;
  QVariantList ticks() const;
  QVariantList dates() const;
  QString says() const;
  QString inWords() const;

 signals:
  void changed();

 private:
  struct Scale {
    double low = 0, high = 1, step = 1;  // in the analyte's unit
    double up(double value) const { return (value - low) / (high - low); }
  };

  void refresh();
  const YearOfReading* shown() const;  // null: nothing was read twice
  Target target() const;
  Scale scale() const;
  bool outside(const YearPoint& point) const;
  QString value_words(double value) const;

  Counter& counter_;
  decltype(Services::targets) targets_of_;
  VesselYear year_;
  std::map<AnalyteId, Target> targets_;
  std::string reading_;
  int asked_ = 0;
  BackPool pool_;
};

}  // namespace brimline
