// SPDX-License-Identifier: GPL-3.0-or-later
#include "station/wording/shop_details.h"

#include <QSettings>

namespace brimline {

ShopDetails read_shop_details(const std::string& settings_file) {
  const QSettings ini(QString::fromStdString(settings_file), QSettings::IniFormat);
  const auto text = [&](const char* key) -> std::optional<std::string> {
    const QString value = ini.value(QLatin1String(key)).toString();
    return value.isEmpty() ? std::nullopt : std::optional(value.toStdString());
  };
  ShopDetails out;
  out.name = text("shop/name").value_or("");
  out.street = text("shop/street");
  out.phone = text("shop/phone");
  if (const auto number = text("shop/emergency")) out.emergency.push_back({"Emergency", *number});
  if (const auto number = text("shop/poison_line")) out.emergency.push_back({"Poison line", *number});
  return out;
}

}  // namespace brimline
