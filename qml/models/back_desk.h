// SPDX-License-Identifier: GPL-3.0-or-later
// The back room: what the shop sets, and what the program knows.
#pragma once

#include <qqmlintegration.h>
#include <QObject>
#include <QVariantList>

#include "qml/models/backup_form.h"
#include "qml/models/due_form.h"
#include "qml/models/kept_before.h"
#include "qml/models/listener_form.h"
#include "qml/models/people_form.h"
#include "qml/models/product_form.h"
#include "qml/models/row_model.h"
#include "qml/models/settings.h"
#include "qml/models/staff_form.h"
#include "qml/models/supply_form.h"
#include "qml/models/tables_form.h"
#include "qml/models/target_form.h"
#include "qml/models/trail_form.h"
#include "qml/models/twins_form.h"
#include "qml/models/week_form.h"

namespace brimline {

class BackDesk : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("the desk has it")
  Q_PROPERTY(QVariantList shelves READ shelves CONSTANT)  // {key, word, group}
  Q_PROPERTY(QVariantList groups READ groups CONSTANT)    // {key, word}
  Q_PROPERTY(QString group READ group WRITE setGroup NOTIFY changed)
  Q_PROPERTY(QString title READ title NOTIFY changed)
  Q_PROPERTY(QString shelf READ shelf WRITE setShelf NOTIFY changed)
  Q_PROPERTY(QString intro READ intro NOTIFY changed)
  Q_PROPERTY(QString says READ says NOTIFY saysChanged)
  Q_PROPERTY(QString actWord READ actWord NOTIFY changed)
  Q_PROPERTY(bool canUndo READ canUndo NOTIFY saysChanged)
  Q_PROPERTY(brimline::RowModel* fields READ fields CONSTANT)
  Q_PROPERTY(brimline::RowModel* rows READ rows CONSTANT)

 public:
  // `out_dir`: where a customer's file goes.
  BackDesk(Settings& settings, QString file, QString out_dir, Counter& counter, LockDesk& lock,
           Services services, QObject* parent = nullptr);

  QVariantList shelves() const;
  QVariantList groups() const;
  QString group() const;
  void setGroup(const QString& key);  // its first page
  QString title() const;
  QString shelf() const { return shelf_; }
  void setShelf(const QString& key);
  QString intro() const;
  QString says() const { return says_; }
  QString actWord() const;
  // Made when they are first asked for.
  RowModel* fields();
  RowModel* rows();

  Q_INVOKABLE void setValue(const QString& key, const QString& text);
  // A product's barcode while the shelf list is open; false: nothing took it.
  bool scan(const QString& code);
  ListenerForm& listener() { return listener_; }
  BackupForm& backups() { return backup_form_; }
  StaffForm& staff() { return staff_form_; }
  // The page shown still reads the records.
  bool reads() const { return form() && form()->reads(); }
  void refresh();
  Q_INVOKABLE void apply();  // keeps what was written and uses it
  bool canUndo() const { return as_before_.has_value() || before_.changed(); }
  Q_INVOKABLE void undo();  // what was kept last on this page is as it was before

 signals:
  void changed();
  void saysChanged();
  void applied();

 private:
  void ask();
  void refreshRows();
  void followed(const BackForm* page);  // what it shows has changed by itself
  void say(const QString& sentence);
  void keep_settings();
  void keep_files();
  BackForm* form() const;  // of the page, where it is one
  bool may_change() const;

  Settings& settings_;
  QString file_;
  Counter& counter_;
  SupplyForm supply_form_;
  ProductForm product_form_;
  TargetForm target_form_;
  LockDesk& lock_;
  StaffForm staff_form_;
  BackupForm backup_form_;
  PeopleForm people_form_;
  TrailForm trail_form_;
  TablesForm tables_form_;
  DueForm due_form_;
  WeekForm week_form_;
  TwinsForm twins_form_;
  QString profiles_;  // the folder of the shop's own
  ListenerForm listener_;
  QString shelf_ = QStringLiteral("instrument");
  int line_ = 0;  // the instrument whose line is shown
  QString says_;
  std::optional<Settings> untouched_;  // before what was written and is not kept yet
  std::optional<Settings> as_before_;  // the last keeping on this page
  KeptBefore before_;                  // likewise, the files of products and targets
  bool asked_ = false;                 // somebody wants the fields and rows
  RowModel fields_, rows_;
};

}  // namespace brimline
