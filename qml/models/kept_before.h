// SPDX-License-Identifier: GPL-3.0-or-later
// Files as they were before something was kept in them, to be put back as they were.
#pragma once

#include <QByteArray>
#include <QMap>
#include <QString>
#include <QStringList>

namespace brimline {

class KeptBefore {
 public:
  // To be called before writing. `places`: files, or folders of files; they need not be there.
  void remember(const QStringList& places);
  // To be called after it: what has not changed needs no putting back.
  void settle();
  void forget() { *this = {}; }
  bool changed() const { return changed_; }
  // False where a file cannot be written; what could be is as it was.
  bool put_back();

 private:
  using Files = QMap<QString, QByteArray>;  // by path
  static Files read(const QStringList& places);

  QStringList places_;
  Files before_;
  bool changed_ = false;
};

}  // namespace brimline
