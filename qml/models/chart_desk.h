// SPDX-License-Identifier: GPL-3.0-or-later
// The Back room's control charts: what is to be checked, one chart, a measurement, a clearance, a new
// standard.
#pragma once

#include <qqmlintegration.h>
#include <QObject>
#include <QVariantList>

#include "devices/happening.h"
#include "qml/models/counter.h"
#include "qml/models/row_model.h"
#include "station/quality/charts.h"

namespace brimline {

class ChartDesk : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("the back room has it")
  // {key, name, detail, standing, waits, here}: one a chart
  Q_PROPERTY(brimline::RowModel* charts READ charts CONSTANT)
  Q_PROPERTY(QString headline READ headline NOTIFY changed)
  Q_PROPERTY(QString story READ story NOTIFY changed)         // how the chosen chart stands
  Q_PROPERTY(QVariantList points READ points NOTIFY changed)  // {at, up: 0..1, out, counts, says}
  Q_PROPERTY(QVariantList limits READ limits CONSTANT)        // {up, weight, word}
  Q_PROPERTY(QString pointsInWords READ pointsInWords NOTIFY changed)
  Q_PROPERTY(QVariantList standards READ standards NOTIFY changed)  // {key, word} of the chosen chart
  Q_PROPERTY(QString standard READ standard WRITE setStandard NOTIFY changed)
  Q_PROPERTY(bool stopped READ stopped NOTIFY changed)
  Q_PROPERTY(bool listening READ listening NOTIFY changed)
  Q_PROPERTY(QString says READ says NOTIFY changed)
  Q_PROPERTY(QString lotsSay READ lotsSay NOTIFY changed)  // of a curve, of two lots compared
  Q_PROPERTY(QVariantList analytes READ analytes CONSTANT)

 public:
  explicit ChartDesk(Counter& counter, QObject* parent = nullptr);

  RowModel* charts() { return &charts_; }
  int waiting() const;  // charts that are due or stopped
  QString headline() const;
  QString story() const;
  QVariantList points() const;
  QVariantList limits() const;
  QString pointsInWords() const;
  QVariantList standards() const;
  QString standard() const { return standard_; }
  void setStandard(const QString& id);
  bool stopped() const;
  bool listening() const { return listening_; }
  QString says() const { return says_; }
  QString lotsSay() const { return lots_say_; }
  QVariantList analytes() const;

  Q_INVOKABLE void choose(const QString& key);
  Q_INVOKABLE bool keepMeasurement(const QString& value);  // typed
  Q_INVOKABLE void listen(bool on);  // the instrument's next reading of the analyte is the measurement
  Q_INVOKABLE bool clearStop(const QString& by, const QString& reason);
  // `points`: "0 0.001; 1 0.197; ..." of amount and absorbance per cm, five or more.
  Q_INVOKABLE bool keepCurve(const QString& lot, const QString& wavelength, const QString& points);
  // `pairs`: "1.02 1.05; ..." of one water with the old and the new lot; two waters or more.
  Q_INVOKABLE bool compareLots(const QString& pairs, const QString& allowed);
  // {instrument, analyte, name, value, sd, days}
  Q_INVOKABLE bool addStandard(const QVariantMap& form);

  // Whether the reading was awaited here; then it is a check and no bottle's.
  bool take(const InstrumentReading& reading, const std::string& instrument);

 signals:
  void changed();

 private:
  void refresh();
  bool say(const QString& sentence);
  bool sayOfLots(const QString& sentence);
  bool measure(double value, bool typed);
  const CheckChart* chart() const;

  Counter& counter_;
  RowModel charts_;
  std::vector<CheckChart> all_;
  QString key_, standard_, says_, lots_say_;
  bool listening_ = false;
};

}  // namespace brimline
