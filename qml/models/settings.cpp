// SPDX-License-Identifier: GPL-3.0-or-later
#include "qml/models/settings.h"

#include <QSettings>

namespace brimline {
namespace {

constexpr auto kEmergency = "shop/emergency";
constexpr auto kPoison = "shop/poison_line";

QString q(const std::optional<std::string>& text) {
  return text ? QString::fromStdString(*text) : QString();
}

}  // namespace

Settings load_settings(const QString& file) {
  const QSettings ini(file, QSettings::IniFormat);
  Settings out;
  out.shop = read_shop_details(file.toStdString());
  out.port = ini.value("instrument/port").toString();
  out.profile = ini.value("instrument/profile").toString();
  out.paper = ini.value("sheet/paper", out.paper).toString();
  out.language = ini.value("screen/language", out.language).toString();
  out.theme = ini.value("screen/theme", out.theme).toString();
  out.motion = ini.value("screen/motion", out.motion).toBool();
  out.printer = ini.value("sheet/printer").toString();
  out.code = ini.value("targets/public_code").toString();
  return out;
}

bool save_settings(const Settings& settings, const QString& file) {
  QSettings ini(file, QSettings::IniFormat);
  ini.setValue("shop/name", QString::fromStdString(settings.shop.name));
  ini.setValue("shop/street", q(settings.shop.street));
  ini.setValue("shop/phone", q(settings.shop.phone));
  const auto number = [&](const char* label) {
    for (const EmergencyNumber& entry : settings.shop.emergency)
      if (entry.label == label) return QString::fromStdString(entry.number);
    return QString();
  };
  ini.setValue(kEmergency, number("Emergency"));
  ini.setValue(kPoison, number("Poison line"));
  ini.setValue("instrument/port", settings.port);
  ini.setValue("instrument/profile", settings.profile);
  ini.setValue("sheet/paper", settings.paper);
  ini.setValue("screen/language", settings.language);
  ini.setValue("screen/theme", settings.theme);
  ini.setValue("screen/motion", settings.motion);
  ini.setValue("sheet/printer", settings.printer);
  ini.setValue("targets/public_code", settings.code);
  ini.sync();
  return ini.status() == QSettings::NoError;
}

}  // namespace brimline
