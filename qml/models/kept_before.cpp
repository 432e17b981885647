// SPDX-License-Identifier: GPL-3.0-or-later
#include "qml/models/kept_before.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>

#include "qml/models/private_file.h"

namespace brimline {

KeptBefore::Files KeptBefore::read(const QStringList& places) {
  Files out;
  for (const QString& place : places) {
    QStringList paths{place};
    if (QFileInfo(place).isDir()) {
      const QDir folder(place);
      paths.clear();
      for (const QString& name : folder.entryList(QDir::Files)) paths.append(folder.filePath(name));
    }
    for (const QString& path : paths)
      if (QFile file(path); file.open(QIODevice::ReadOnly)) out.insert(path, file.readAll());
  }
  return out;
}

void KeptBefore::remember(const QStringList& places) {
  places_ = places;
  before_ = read(places);
  changed_ = false;
}

void KeptBefore::settle() {
  changed_ = read(places_) != before_;
}

bool KeptBefore::put_back() {
  bool done = true;
  const Files now = read(places_);
  for (auto file = before_.cbegin(); file != before_.cend(); ++file)
    if (now.value(file.key()) != file.value() || !now.contains(file.key()))
      done = write_privately(file.key(), file.value().toStdString()) && done;
  for (auto file = now.cbegin(); file != now.cend(); ++file)
    if (!before_.contains(file.key())) done = QFile::remove(file.key()) && done;
  if (done) forget();
  return done;
}

}  // namespace brimline
