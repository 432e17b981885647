// SPDX-License-Identifier: GPL-3.0-or-later
// Findings and plan of the bottle on the counter, made anew off the screen's thread whenever it
// changes, and the sheet that is made of them.
#pragma once

#include <qqmlintegration.h>
#include <QObject>
#include <QThreadPool>
#include <QVariantMap>

#include "qml/models/counter.h"
#include "qml/models/row_model.h"
#include "qml/models/services.h"
#include "qml/models/settings.h"

namespace brimline {

class PlanDesk : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("the desk has it")
  Q_PROPERTY(brimline::RowModel* findings READ findings CONSTANT)
  Q_PROPERTY(brimline::RowModel* steps READ steps CONSTANT)
  Q_PROPERTY(QStringList cautions READ cautions NOTIFY changed)
  Q_PROPERTY(QString findingsTitle READ findingsTitle NOTIFY changed)
  Q_PROPERTY(QString title READ title NOTIFY changed)
  Q_PROPERTY(QString swimLine READ swimLine NOTIFY changed)
  Q_PROPERTY(QString whyNot READ whyNot NOTIFY changed)
  Q_PROPERTY(QString comeBack READ comeBack NOTIFY changed)
  Q_PROPERTY(QVariantMap choices READ choices NOTIFY changed)
  Q_PROPERTY(bool ready READ ready NOTIFY changed)  // the plan shown is of the bottle as it is
  Q_PROPERTY(bool busy READ busy NOTIFY changed)    // a sheet is being made
  Q_PROPERTY(QString sheetSays READ sheetSays NOTIFY changed)

 public:
  PlanDesk(Counter& counter, const Settings& settings, Services services, QObject* parent = nullptr);
  ~PlanDesk() override;

  RowModel* findings() { return &findings_; }
  RowModel* steps() { return &steps_; }
  QStringList cautions() const { return cautions_; }
  QString findingsTitle() const;
  QString title() const { return title_; }
  QString swimLine() const { return swim_line_; }
  QString whyNot() const { return why_not_; }
  QString comeBack() const { return come_back_; }
  QVariantMap choices() const;
  bool ready() const { return plan_.has_value() && made_ == asked_; }
  bool busy() const { return busy_; }
  QString sheetSays() const { return sheet_says_; }
  const std::optional<Plan>& plan() const { return plan_; }

  Q_INVOKABLE void choose(const QString& fact, const QString& key);
  Q_INVOKABLE QVariantList options(const QString& fact) const;
  Q_INVOKABLE QString question(const QString& fact) const;
  Q_INVOKABLE void makeSheet(bool print);

 signals:
  void changed();
  void sheetMade(const QString& where);

 private:
  void ask();
  std::optional<Instant> overnightDue() const;
  void show(int request, const tl::expected<Plan, std::string>& plan);
  void clear();
  Visit visit_to_tell() const;
  void onSheet(const tl::expected<std::string, std::string>& made);

  Counter& counter_;
  const Settings& settings_;
  Services services_;
  RowModel findings_, steps_;
  std::optional<Plan> plan_;
  QStringList cautions_;
  QString title_, swim_line_, why_not_, come_back_, sheet_says_, failed_;
  QVariantMap choices_;
  std::string of_;                    // the visit the choices were made for
  std::optional<Instant> overnight_;  // as the plan was asked for
  int asked_ = 0, made_ = 0;
  bool busy_ = false;
  QThreadPool plans_, sheets_;  // one thread each
};

}  // namespace brimline
