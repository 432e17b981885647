// SPDX-License-Identifier: GPL-3.0-or-later
// Then and now: an earlier visit of the same vessel beside the one on the counter.
#pragma once

#include <qqmlintegration.h>
#include <QObject>
#include <QVariantList>

#include "qml/models/back_pool.h"
#include "qml/models/counter.h"
#include "qml/models/row_model.h"
#include "qml/models/services.h"
#include "qml/models/year_chart.h"

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
  Q_PROPERTY(brimline::RowModel* answers READ answers CONSTANT)  // of the plan of then, a finding each
  Q_PROPERTY(brimline::YearChart* year READ year CONSTANT)
  Q_PROPERTY(QVariantList numbers READ numbers NOTIFY changed)  // behind them, as NumberList shows
  // What the water's answers over the whole history say of the volume, or where the one on file came from.
  Q_PROPERTY(QString volumeSays READ volumeSays NOTIFY changed)
  Q_PROPERTY(QString lessonSays READ lessonSays NOTIFY changed)
  Q_PROPERTY(bool canTakeVolume READ canTakeVolume NOTIFY changed)
  Q_PROPERTY(QString takeWord READ takeWord NOTIFY changed)
  Q_PROPERTY(QString trouble READ trouble NOTIFY changed)

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
  RowModel* answers() { return &answers_; }
  YearChart* year() { return &year_; }
  QVariantList numbers() const { return numbers_; }
  QString volumeSays() const;
  QString lessonSays() const;
  bool canTakeVolume() const;
  QString takeWord() const;
  QString trouble() const { return trouble_; }

  // The volume found becomes the vessel's, for the plans to come; and back to what stood before.
  Q_INVOKABLE void takeVolume();
  Q_INVOKABLE void giveVolumeBack();

 signals:
  void changed();

 private:
  void refresh();
  void show(int request, const Comparison& comparison, const std::optional<VolumeFound>& volume);
  void showAnswers(const Visit& then);
  void keepVessel(const Vessel& vessel);
  const Visit* shown() const;  // null: the vessel has no earlier visit

  Counter& counter_;
  RowModel changes_, explanations_, answers_;
  YearChart year_;
  QVariantList numbers_;
  QString earlier_, trouble_;
  std::optional<VolumeFound> volume_;
  decltype(Services::compare) compare_;
  int asked_ = 0;
  BackPool pool_;
};

}  // namespace brimline
