// SPDX-License-Identifier: GPL-3.0-or-later
// A file that its owner alone may read (0600): whole, or as it was before.
#pragma once

#include <QDir>
#include <QSaveFile>

#include <string>

namespace brimline {

inline bool write_privately(const QString& file, const std::string& bytes) {
  QSaveFile out(file);
  const auto size = static_cast<qint64>(bytes.size());
  return out.open(QIODevice::WriteOnly) &&
         out.setPermissions(QFileDevice::ReadOwner | QFileDevice::WriteOwner) &&
         out.write(bytes.data(), size) == size && out.commit();
}

}  // namespace brimline
