// SPDX-License-Identifier: GPL-3.0-or-later
#include "qml/models/clock_face.h"

#include <QCoreApplication>
#include <QDateTime>
#include <QLocale>

namespace brimline {
namespace {

using namespace std::chrono_literals;

QString say(const char* text) {
  return QCoreApplication::translate("clock", text);
}

// The wall clock of the place, as a QDateTime without a zone.
QDateTime wall(const Instant& at) {
  const auto seconds = at.local().time_since_epoch().count();
  return QDateTime::fromSecsSinceEpoch(seconds, Qt::UTC);
}

// Midnight of the day `days` after today's, by the place's clock, and `hour` from there.
Instant on_day(const Instant& now, int days, std::chrono::minutes since_midnight) {
  const auto midnight = std::chrono::floor<std::chrono::days>(now.local()) + std::chrono::days(days);
  const auto local = midnight + since_midnight;
  return {std::chrono::sys_seconds{local.time_since_epoch() - now.offset}, now.offset};
}

}  // namespace

QString clock_words_of(const Instant& when) {
  return wall(when).toString(QStringLiteral("HH:mm"));
}

QString date_line(const Instant& now) {
  return QLocale().toString(wall(now), QStringLiteral("dddd d MMMM, HH:mm"));
}

QString when_words(const Instant& now, const Instant& when) {
  const QDate today = wall(now).date(), day = wall(when).date();
  if (day == today) return say(QT_TRANSLATE_NOOP("clock", "today %1")).arg(clock_words_of(when));
  if (day == today.addDays(-1))
    return say(QT_TRANSLATE_NOOP("clock", "yesterday %1")).arg(clock_words_of(when));
  return QLocale().toString(wall(when), day.year() == today.year() ? QStringLiteral("d MMMM HH:mm")
                                                                   : QStringLiteral("d MMMM yyyy"));
}

std::optional<Instant> moment_for(const QString& taken, const Instant& now) {
  if (taken == QLatin1String("now")) return now;
  if (taken == QLatin1String("hour")) return Instant{now.utc - 1h, now.offset};
  if (taken == QLatin1String("morning")) {
    const Instant eight = on_day(now, 0, 8h);
    return eight.utc < now.utc ? eight : Instant{now.utc - 1h, now.offset};
  }
  if (taken == QLatin1String("evening")) return on_day(now, -1, 20h);
  if (taken == QLatin1String("days")) return Instant{now.utc - 48h, now.offset};
  return std::nullopt;
}

Instant home_moment(const QString& key, const Instant& now) {
  Instant at{now.utc + 1h, now.offset};
  if (key == QLatin1String("afternoon")) at = on_day(now, 0, 17h + 30min);
  if (key == QLatin1String("evening")) at = on_day(now, 0, 20h);
  if (key == QLatin1String("morning")) at = on_day(now, 1, 8h);
  if (at.utc <= now.utc) at.utc += 24h;
  return at;
}

}  // namespace brimline
