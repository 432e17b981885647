// SPDX-License-Identifier: GPL-3.0-or-later
#include "qml/models/row_model.h"

namespace brimline {

RowModel::RowModel(const QList<QByteArray>& roles, QObject* parent) : QAbstractListModel(parent) {
  int role = Qt::UserRole;
  for (const QByteArray& name : roles) names_.insert(++role, name);
}

int RowModel::rowCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : count();
}

QVariant RowModel::data(const QModelIndex& index, int role) const {
  if (!checkIndex(index, CheckIndexOption::IndexIsValid)) return {};
  return rows_[index.row()].value(QString::fromLatin1(names_.value(role)));
}

QHash<int, QByteArray> RowModel::roleNames() const {
  return names_;
}

void RowModel::replace(QList<QVariantMap> rows) {
  const qsizetype was = rows_.size(), is = rows.size();
  if (is < was) {
    beginRemoveRows({}, static_cast<int>(is), static_cast<int>(was) - 1);
    rows_.resize(is);
    endRemoveRows();
  }
  for (qsizetype i = 0; i < rows_.size(); ++i) {
    if (rows_[i] == rows[i]) continue;
    rows_[i] = rows[i];
    emit dataChanged(index(static_cast<int>(i)), index(static_cast<int>(i)));
  }
  if (is > was) {
    beginInsertRows({}, static_cast<int>(was), static_cast<int>(is) - 1);
    for (qsizetype i = was; i < is; ++i) rows_.append(rows[i]);
    endInsertRows();
  }
  if (is != was) emit countChanged();
}

}  // namespace brimline
