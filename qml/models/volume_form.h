// SPDX-License-Identifier: GPL-3.0-or-later
// The vessel's volume worked out at the counter: from its shape, or from a metered fill. What the part
// "Volume" binds to.
#pragma once

#include <qqmlintegration.h>
#include <QObject>
#include <QSet>
#include <QVariantMap>

#include "qml/models/counter.h"
#include "qml/models/volume_form_words.h"

namespace brimline {

class VolumeForm : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("the ticket has it")
  Q_PROPERTY(bool shown READ shown WRITE setShown NOTIFY changed)
  // Choices, {key, word}, and what is chosen. No bottom or gauge is asked where it is metered, no unit where
  // not.
  Q_PROPERTY(QVariantList ways READ ways NOTIFY worded)  // the shapes, and the meter
  Q_PROPERTY(QString way READ way WRITE setWay NOTIFY changed)
  Q_PROPERTY(QVariantList bottoms READ bottoms NOTIFY reshaped)
  Q_PROPERTY(QString bottom READ bottom WRITE setBottom NOTIFY changed)
  Q_PROPERTY(QVariantList gauges READ gauges NOTIFY worded)
  Q_PROPERTY(QString gauge READ gauge WRITE setGauge NOTIFY changed)
  Q_PROPERTY(QVariantList meters READ meters NOTIFY worded)
  Q_PROPERTY(QString meter READ meter WRITE setMeter NOTIFY changed)
  Q_PROPERTY(bool metered READ metered NOTIFY changed)
  Q_PROPERTY(QVariantList asked READ asked NOTIFY changed)   // {key, label, text}, in the customer's units
  Q_PROPERTY(QVariantMap faults READ faults NOTIFY written)  // by key of what is asked
  Q_PROPERTY(QString working READ working NOTIFY written)    // empty: not enough is known
  Q_PROPERTY(QString result READ result NOTIFY written)      // with its sd
  Q_PROPERTY(QString doubts READ doubts NOTIFY written)      // what makes it unlikely
  Q_PROPERTY(QString method READ method NOTIFY written)      // what of it is exact
  Q_PROPERTY(QString trouble READ trouble NOTIFY written)    // why it was not kept
  Q_PROPERTY(bool kept READ kept NOTIFY written)             // the vessel has it, and can have back what was
  Q_PROPERTY(QString keptSays READ keptSays NOTIFY written)

 public:
  explicit VolumeForm(Counter& counter, QObject* parent = nullptr);

  bool shown() const { return shown_; }
  void setShown(bool shown);
  QVariantList ways() const;
  QString way() const { return way_; }
  void setWay(const QString& way);
  QVariantList bottoms() const;
  QString bottom() const;
  void setBottom(const QString& bottom);
  QVariantList gauges() const;
  QString gauge() const { return gauge_; }
  void setGauge(const QString& gauge);
  QVariantList meters() const;
  QString meter() const { return meter_; }
  void setMeter(const QString& meter);
  bool metered() const;
  QVariantList asked() const;
  QVariantMap faults() const;
  QString working() const;
  QString result() const;
  QString doubts() const;
  QString method() const;
  QString trouble() const { return trouble_; }
  bool kept() const;
  QString keptSays() const { return kept() ? kept_says_ : QString(); }
  // How the volume on file is known, where it is by this form: "By its shape, ± 5 %"; else empty.
  QString how() const;

  Q_INVOKABLE void write(const QString& key, const QString& text);   // with every letter
  Q_INVOKABLE void settle(const QString& key, const QString& text);  // once it is written
  Q_INVOKABLE void keep();                                           // or every fault is told at its place
  Q_INVOKABLE void giveBack();

 signals:
  void worded();
  void reshaped();
  void changed();
  void written();

 private:
  struct Found {
    VolumeSheet sheet;
    VolumeAnswer answer;
    QMap<QString, QString> faults;
  };
  std::vector<Measure> measures() const;
  VolumeSheet sheet() const;
  Found found() const;
  void choose(QString& which, const QString& key);
  bool keepVolume(const std::optional<Volume>& volume, const std::optional<double>& relative_sd);
  void onCounterChanged();

  Counter& counter_;
  bool shown_ = false;
  QString way_, bottom_, gauge_, meter_, trouble_, kept_says_;
  QMap<QString, QString> texts_;
  QSet<QString> settled_;      // keys whose faults are told
  std::string of_, language_;  // the vessel they were written for, and the language asked in
  Units units_ = Units::metric;
  std::optional<Vessel> was_, made_;  // before and after the volume was kept
  bool made_by_meter_ = false;
};

}  // namespace brimline
