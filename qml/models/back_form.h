// SPDX-License-Identifier: GPL-3.0-or-later
// A page of the Back room that is a form above a list.
#pragma once

#include <QString>
#include <QVariantMap>

namespace brimline {

class BackForm {
 public:
  virtual ~BackForm() = default;
  virtual QList<QVariantMap> fields() = 0;                        // {key, label, value, options}
  virtual QList<QVariantMap> rows() = 0;                          // {name, detail, number}
  virtual bool set(const QString& key, const QString& text) = 0;  // whether the fields are to be shown anew
  virtual QString act() = 0;                                      // what is said once it is done, or begun
  virtual QString act_word() const = 0;                           // empty: there is nothing to do here
  virtual void shown() {}                                         // somebody has come to the page
  virtual void left() {}                                          // and gone from it
  virtual bool reads() const { return false; }                    // the records, beside the screen
};

}  // namespace brimline
