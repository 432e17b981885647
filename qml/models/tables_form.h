// SPDX-License-Identifier: GPL-3.0-or-later
// Everything in the records as tables, and tables made elsewhere brought in: looked through first, kept only
// when that is said. The work runs beside the screen and can be stopped.
#pragma once

#include <QObject>

#include <atomic>
#include <functional>
#include <memory>

#include "qml/models/back_form.h"
#include "qml/models/back_pool.h"
#include "qml/models/counter.h"
#include "station/records/import.h"

namespace brimline {

class TablesForm : public QObject, public BackForm {
  Q_OBJECT

 public:
  // `out_dir`: where tables go unless another folder is named.
  TablesForm(Counter& counter, QString out_dir, QObject* parent = nullptr);
  ~TablesForm() override;

  QList<QVariantMap> fields() override;
  QList<QVariantMap> rows() override;
  bool set(const QString& key, const QString& text) override;
  QString act() override;
  QString act_word() const override;

 signals:
  void said(const QString& sentence);
  void brought_in();

 private:
  using Said = std::function<QString(Store&, const Progress&)>;
  QString begin(Said work);
  QString write_out();
  QString look();
  QString keep();
  ImportFiles files() const;

  Counter& counter_;
  QString want_ = QStringLiteral("out"), folder_, customers_, readings_;
  std::shared_ptr<const Import> import_;  // looked through and not kept yet
  bool busy_ = false;
  std::atomic<bool> stop_ = false;
  BackPool pool_;
};

}  // namespace brimline
