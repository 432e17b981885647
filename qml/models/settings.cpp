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

// "instrument/port", "instrument2/port" and so on.
QString line_key(int line, const char* what) {
  return QStringLiteral("instrument%1/%2").arg(line == 0 ? QString() : QString::number(line + 1), what);
}

}  // namespace

Settings load_settings(const QString& file) {
  const QSettings ini(file, QSettings::IniFormat);
  Settings out;
  out.shop = read_shop_details(file.toStdString());
  for (int i = 0; i < kMostInstruments; ++i)
    out.lines[i] = {ini.value(line_key(i, "port")).toString(), ini.value(line_key(i, "profile")).toString()};
  out.paper = ini.value("sheet/paper", out.paper).toString();
  out.language = ini.value("screen/language", out.language).toString();
  out.units = ini.value("shop/units", out.units).toString();
  out.theme = ini.value("screen/theme", out.theme).toString();
  out.motion = ini.value("screen/motion", out.motion).toBool();
  out.sounds = ini.value("screen/sounds", out.sounds).toBool();
  out.printer = ini.value("sheet/printer").toString();
  out.backup_folder = ini.value("records/backup_folder").toString();
  out.keep_months = ini.value("records/keep_months", out.keep_months).toInt();
  out.idle_minutes = ini.value("screen/idle_minutes", out.idle_minutes).toInt();
  out.hide_names = ini.value("screen/hide_names", out.hide_names).toBool();
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
  for (int i = 0; i < kMostInstruments; ++i) {
    const InstrumentLine& line = settings.lines[i];
    if (i > 0 && line == InstrumentLine{} && !ini.contains(line_key(i, "port"))) continue;
    ini.setValue(line_key(i, "port"), line.port);
    ini.setValue(line_key(i, "profile"), line.profile);
  }
  ini.setValue("sheet/paper", settings.paper);
  ini.setValue("screen/language", settings.language);
  ini.setValue("shop/units", settings.units);
  ini.setValue("screen/theme", settings.theme);
  ini.setValue("screen/motion", settings.motion);
  ini.setValue("screen/sounds", settings.sounds);
  ini.setValue("sheet/printer", settings.printer);
  ini.setValue("targets/public_code", settings.code);
  ini.setValue("records/backup_folder", settings.backup_folder);
  ini.setValue("records/keep_months", settings.keep_months);
  ini.setValue("screen/idle_minutes", settings.idle_minutes);
  ini.setValue("screen/hide_names", settings.hide_names);
  ini.sync();
  return ini.status() == QSettings::NoError;
}

}  // namespace brimline
