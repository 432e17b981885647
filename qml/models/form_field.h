// SPDX-License-Identifier: GPL-3.0-or-later
// A field of the Back room's forms, as SettingsForm.qml draws it.
#pragma once

#include <QVariantList>
#include <QVariantMap>

namespace brimline {

// `options`: {key, word} each; empty where the value is typed.
inline QVariantMap form_field(const char* key, const QString& label, const QString& value,
                              QVariantList options = {}) {
  return {
      {"key", QString::fromLatin1(key)}, {"label", label}, {"value", value}, {"options", std::move(options)}};
}

}  // namespace brimline
