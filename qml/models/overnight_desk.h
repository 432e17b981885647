// SPDX-License-Identifier: GPL-3.0-or-later
// The overnight test of the bottle on the counter, page after page: bottles, stock, pouring, then the
// readings of an hour and a day later, then the result. Everything is kept as it is chosen or typed.
#pragma once

#include <qqmlintegration.h>
#include <QObject>
#include <QVariantMap>

#include <map>

#include "analysis/panel/demand.h"
#include "devices/happening.h"
#include "qml/models/back_pool.h"
#include "qml/models/overnight_rows.h"
#include "qml/models/row_model.h"
#include "qml/models/services.h"
#include "qml/models/settings.h"

namespace brimline {

class OvernightDesk : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("the desk has it")
  Q_PROPERTY(bool shown READ shown WRITE setShown NOTIFY changed)  // in place of the bench's readings
  Q_PROPERTY(bool mayTest READ mayTest NOTIFY changed)
  Q_PROPERTY(QString openWord READ openWord NOTIFY changed)  // what the button to this page says
  Q_PROPERTY(QString offer READ offer NOTIFY changed)        // why a test is wanted; empty: it is not
  Q_PROPERTY(QString stage READ stage NOTIFY changed)        // empty: no test goes on
  Q_PROPERTY(QString title READ title NOTIFY changed)
  Q_PROPERTY(QString dueLine READ dueLine NOTIFY changed)
  Q_PROPERTY(QStringList steps READ steps NOTIFY changed)
  Q_PROPERTY(QStringList cautions READ cautions NOTIFY changed)
  Q_PROPERTY(QVariantMap choices READ choices NOTIFY changed)
  Q_PROPERTY(QString reason READ reason NOTIFY changed)          // of the doses advised
  Q_PROPERTY(QString arithmetic READ arithmetic NOTIFY changed)  // of the stock
  Q_PROPERTY(QString checkLine READ checkLine NOTIFY changed)
  Q_PROPERTY(brimline::RowModel* bottles READ bottles CONSTANT)
  Q_PROPERTY(QStringList result READ result NOTIFY changed)
  Q_PROPERTY(bool canGoOn READ canGoOn NOTIFY changed)
  Q_PROPERTY(QString goOnWord READ goOnWord NOTIFY changed)
  Q_PROPERTY(bool canUndo READ canUndo NOTIFY changed)
  Q_PROPERTY(bool canTakeUp READ canTakeUp NOTIFY changed)  // what was put away last, by touch
  Q_PROPERTY(bool busy READ busy NOTIFY changed)
  Q_PROPERTY(QString says READ says NOTIFY changed)
  Q_PROPERTY(QString phone READ phone NOTIFY changed)
  Q_PROPERTY(QString padName READ padName NOTIFY changed)
  Q_PROPERTY(QString typed READ typed NOTIFY changed)
  Q_PROPERTY(QVariantMap how READ how NOTIFY changed)  // clip, dilution
  Q_PROPERTY(bool canKeep READ canKeep NOTIFY changed)

 public:
  OvernightDesk(Counter& counter, const Settings& settings, Services services, QObject* parent = nullptr);
  ~OvernightDesk() override;

  bool shown() const { return shown_; }
  void setShown(bool shown);
  bool mayTest() const;
  QString openWord() const;
  QString offer() const;
  QString stage() const;
  QString title() const;
  QString dueLine() const;
  QStringList steps() const;
  QStringList cautions() const;
  QVariantMap choices() const;
  QString reason() const;
  QString arithmetic() const;
  QString checkLine() const;
  RowModel* bottles() { return &bottles_; }
  QStringList result() const;
  bool canGoOn() const;
  QString goOnWord() const;
  bool canUndo() const;
  bool canTakeUp() const;
  bool busy() const { return busy_; }
  QString says() const { return says_; }
  QString phone() const;
  QString padName() const;
  QString typed() const;
  QVariantMap how() const;
  bool canKeep() const;

  Q_INVOKABLE void begin();  // sets a test up for the bottle on the counter
  Q_INVOKABLE QVariantList options(const QString& fact) const;
  Q_INVOKABLE void choose(const QString& fact, const QString& key);
  Q_INVOKABLE void goOn();    // to the next page; from the pouring on, the clock runs
  Q_INVOKABLE void goBack();  // to the page before, where nothing has begun that cannot be taken back
  Q_INVOKABLE void mark(int bottle, const QString& due, const QString& analyte);
  Q_INVOKABLE void press(const QString& key);  // as at the bench
  Q_INVOKABLE void setHow(const QString& fact, const QString& key);
  Q_INVOKABLE void keep();
  Q_INVOKABLE void undo();
  Q_INVOKABLE void giveUp();  // or told: put away
  Q_INVOKABLE void takeUp();  // as it was before that
  Q_INVOKABLE void makeLabels(bool print);

  // A reading of the instrument that belongs to an overnight test: by its label, or because this page is
  // shown. False: it is the bench's.
  bool take(const InstrumentReading& heard, const std::string& instrument);
  // The bottle of a label such as "B-1012/3", from 0; marked where it is the counter's.
  void markLabel(const QString& label);

 public slots:
  void refresh();

 signals:
  void changed();
  void labelsMade(const QString& where);

 private:
  // What is on the pad, for each visit: a clerk who turns to another bottle finds it again.
  struct Pad {
    OvernightCell cell;
    QString typed;
    QVariantMap how{{"clip", "inside"}, {"dilution", "1"}};
  };
  Pad& pad();
  const Pad* pad() const;
  const OvernightTest* test() const { return counter_.overnight(); }
  bool reads() const;  // bottles are being read
  Records::Kept edit(const std::function<void(OvernightTest&)>& change);
  Records::Kept keepReading(const OvernightTest& test, const OvernightReading& reading);
  void keepCheck(double value);
  void markNext();
  void markCell(const OvernightCell& cell);
  void finish();
  void say(const QString& sentence);
  void sayKept(const Records::Kept& kept);

  Counter& counter_;
  const Settings& settings_;
  Services services_;
  RowModel bottles_;
  std::map<std::string, Pad> pads_;
  std::string of_;
  std::optional<OvernightTest> put_away_;  // as it was before
  QString says_;
  bool shown_ = false, busy_ = false;
  BackPool labels_;
};

}  // namespace brimline
