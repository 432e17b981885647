// SPDX-License-Identifier: GPL-3.0-or-later
// Findings and plan of the bottle on the counter, made anew off the screen's thread whenever it
// changes, and the sheet that is made of them.
#pragma once

#include <qqmlintegration.h>
#include <QObject>
#include <QVariantMap>

#include "qml/models/back_pool.h"
#include "qml/models/counter.h"
#include "qml/models/number_rows.h"
#include "qml/models/print_watch.h"
#include "qml/models/row_model.h"
#include "qml/models/services.h"
#include "qml/models/settings.h"

namespace brimline {

class PlanDesk : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("the desk has it")
  Q_PROPERTY(brimline::RowModel* findings READ findings CONSTANT)
  Q_PROPERTY(QVariantList numbers READ numbers NOTIFY changed)          // where each reading comes from
  Q_PROPERTY(QVariantList doseNumbers READ doseNumbers NOTIFY changed)  // and each dose and prediction
  Q_PROPERTY(brimline::RowModel* steps READ steps CONSTANT)
  Q_PROPERTY(QStringList cautions READ cautions NOTIFY changed)
  Q_PROPERTY(QStringList stillOpen READ stillOpen NOTIFY changed)  // what the plan leaves outside its target
  Q_PROPERTY(QString findingsTitle READ findingsTitle NOTIFY changed)
  Q_PROPERTY(QString title READ title NOTIFY changed)
  Q_PROPERTY(QString swimLine READ swimLine NOTIFY changed)
  Q_PROPERTY(QString whyNot READ whyNot NOTIFY changed)
  Q_PROPERTY(QString comeBack READ comeBack NOTIFY changed)
  Q_PROPERTY(QVariantMap choices READ choices NOTIFY changed)
  Q_PROPERTY(bool ready READ ready NOTIFY changed)  // the plan shown is of the bottle as it is
  Q_PROPERTY(bool busy READ busy NOTIFY changed)    // a sheet is being made
  Q_PROPERTY(bool told READ told NOTIFY changed)    // the visit is kept with its plan
  Q_PROPERTY(QString sheetSays READ sheetSays NOTIFY changed)
  Q_PROPERTY(QString cardSays READ cardSays NOTIFY changed)        // of the emergency card
  Q_PROPERTY(QString printSays READ printSays NOTIFY changed)      // what becomes of the last sheet sent
  Q_PROPERTY(bool printWaits READ printWaits NOTIFY changed)       // it may still come out
  Q_PROPERTY(QStringList changes READ changeLines NOTIFY changed)  // by hand, as sentences

 public:
  PlanDesk(Counter& counter, const Settings& settings, Services services, QObject* parent = nullptr);
  ~PlanDesk() override;

  RowModel* findings() { return &findings_; }
  QVariantList numbers() const { return number_rows(counter_); }
  QVariantList doseNumbers() const;
  RowModel* steps() { return &steps_; }
  QStringList cautions() const { return cautions_; }
  QStringList stillOpen() const { return still_open_; }
  QString findingsTitle() const;
  QString title() const { return title_; }
  QString swimLine() const { return swim_line_; }
  QString whyNot() const { return why_not_; }
  QString comeBack() const { return come_back_; }
  QVariantMap choices() const;
  bool ready() const { return plan_.has_value() && made_ == asked_; }
  bool busy() const { return busy_; }
  bool told() const { return counter_.open() && counter_.visit().plan_as_told.has_value(); }
  QString sheetSays() const { return sheet_says_; }
  QString cardSays() const { return card_says_; }
  QString printSays() const { return watch_.text(); }
  bool printWaits() const { return watch_.waits(); }
  QStringList changeLines() const;
  const std::optional<Plan>& plan() const { return plan_; }

  Q_INVOKABLE void choose(const QString& fact, const QString& key);
  Q_INVOKABLE QVariantList options(const QString& fact) const;
  Q_INVOKABLE QString question(const QString& fact) const;
  Q_INVOKABLE void makeSheet(bool print);
  Q_INVOKABLE void printPaper(const QString& kind);      // "shelf_list", "staff_copy" or "bottle_label"
  Q_INVOKABLE void printAgain(const QString& visit_id);  // an earlier visit's sheet, as it was told then
  Q_INVOKABLE void takeBack();                           // the sheet that waits for the printer

  const std::vector<HandOrder>& orders() const { return orders_; }
  void order(std::vector<HandOrder> orders);  // the plan is made anew with these changes
  Visit visit_to_tell() const;                // as it would be told now
  std::optional<Instant> overnightDue() const;

 signals:
  void changed();
  void sheetMade(const QString& where);

 private:
  // A plan in the clerk's words, and in the sheet's where that is another language.
  struct Told {
    tl::expected<Plan, std::string> shown;
    std::optional<Plan> told;
  };
  void ask();
  std::string sheet_language() const;
  void show(int request, const Told& made);
  void clear();
  void drop_stale_orders();
  bool tell();
  void make(PaperKind kind, bool print);
  void send(SheetJob job);
  void onCard(const tl::expected<PaperOut, std::string>& made);
  void onSheet(const std::string& bottle, const tl::expected<PaperOut, std::string>& made);

  Counter& counter_;
  const Settings& settings_;
  Services services_;
  RowModel findings_, steps_;
  std::optional<Plan> plan_, told_;  // as shown, and in the language of the sheet
  QStringList cautions_, still_open_;
  QString title_, swim_line_, why_not_, come_back_, sheet_says_, card_says_, failed_;
  QVariantMap choices_;
  std::string of_;                    // the visit the choices were made for
  std::optional<Instant> overnight_;  // as the plan was asked for
  int asked_ = 0, made_ = 0;
  bool busy_ = false;
  std::vector<HandOrder> orders_;  // what staff changed, of the bottle as it stands below
  std::vector<Reading> orders_read_;
  Vessel orders_vessel_;
  PrintWatch watch_;
  BackPool plans_, sheets_;
};

}  // namespace brimline
