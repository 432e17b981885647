// SPDX-License-Identifier: GPL-3.0-or-later
// Then and now: an earlier visit of the same vessel beside the one on the counter.
#pragma once

#include <qqmlintegration.h>
#include <QObject>
#include <QThreadPool>
#include <QVariantList>

#include "qml/models/counter.h"
#include "qml/models/row_model.h"
#include "qml/models/services.h"

namespace brimline {

class ThenDesk : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("the desk has it")
  Q_PROPERTY(QString title READ title NOTIFY changed)
  Q_PROPERTY(QVariantList earlierVisits READ earlierVisits NOTIFY changed)  // {key, word}, newest first
  Q_PROPERTY(QString earlier READ earlier WRITE setEarlier NOTIFY changed)  // the key of the one shown
  Q_PROPERTY(QString earlierWord READ earlierWord NOTIFY changed)
  Q_PROPERTY(brimline::RowModel* changes READ changes CONSTANT)
  Q_PROPERTY(brimline::RowModel* explanations READ explanations CONSTANT)

 public:
  ThenDesk(Counter& counter, const Services& services, QObject* parent = nullptr);
  ~ThenDesk() override;

  QString title() const;
  QVariantList earlierVisits() const;
  QString earlier() const { return earlier_; }
  void setEarlier(const QString& id);
  QString earlierWord() const;
  RowModel* changes() { return &changes_; }
  RowModel* explanations() { return &explanations_; }

 signals:
  void changed();

 private:
  void refresh();
  void show(int request, const Comparison& comparison);
  const Visit* shown() const;  // null: the vessel has no earlier visit

  Counter& counter_;
  RowModel changes_, explanations_;
  QString earlier_;
  decltype(Services::compare) compare_;
  int asked_ = 0;
  QThreadPool pool_;  // one thread
};

}  // namespace brimline
