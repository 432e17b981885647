// SPDX-License-Identifier: GPL-3.0-or-later
// Rows with named roles for a list on screen. Roles are named once; a row is a map from role to what
// is shown there, already in words. A row that stays in its place changes in place, so a list does
// not jump under a finger.
//
//   RowModel arrivals({"visitId", "code", "who"});
//   arrivals.replace({{{"visitId", id}, {"code", code}, {"who", who}}});
#pragma once

#include <qqmlintegration.h>
#include <QAbstractListModel>
#include <QVariantMap>

namespace brimline {

class RowModel : public QAbstractListModel {
  Q_OBJECT
  QML_ANONYMOUS
  Q_PROPERTY(int count READ count NOTIFY countChanged)

 public:
  explicit RowModel(const QList<QByteArray>& roles, QObject* parent = nullptr);

  int rowCount(const QModelIndex& parent = {}) const override;
  QVariant data(const QModelIndex& index, int role) const override;
  QHash<int, QByteArray> roleNames() const override;

  int count() const { return static_cast<int>(rows_.size()); }
  void replace(QList<QVariantMap> rows);
  QVariantMap row(int index) const { return rows_.value(index); }

 signals:
  void countChanged();

 private:
  QHash<int, QByteArray> names_;
  QList<QVariantMap> rows_;
};

}  // namespace brimline
