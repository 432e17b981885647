// SPDX-License-Identifier: GPL-3.0-or-later
#include "station/records/moments.h"

#include <QDateTime>
#include <QRegularExpression>

namespace brimline {

std::optional<WrittenMoment> moment_from(std::string_view text) {
  static const QRegularExpression form(
      R"(^(\d{4})-?(\d\d)-?(\d\d)(?:[T ](\d\d):(\d\d)(?::(\d\d)(?:[.,]\d{1,9})?)?(Z|[+-]\d\d(?::?\d\d)?)?)?$)");
  const auto match =
      form.match(QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size())).trimmed());
  if (!match.hasMatch()) return std::nullopt;
  const auto whole = [&](int group, int otherwise) {
    return match.capturedLength(group) > 0 ? match.captured(group).toInt() : otherwise;
  };
  const QString day_text = match.captured(0).left(10);
  if (day_text.count('-') == 1 || (day_text.count('-') == 0) != (day_text[4] != '-')) return std::nullopt;
  const QDate day(whole(1, 0), whole(2, 0), whole(3, 0));
  const QTime time(whole(4, 12), whole(5, 0), whole(6, 0));
  if (!day.isValid() || !time.isValid()) return std::nullopt;
  const QString zone = match.captured(7);
  int offset = QDateTime(day, time).offsetFromUtc() / 60;  // of this machine's place
  if (zone == "Z") offset = 0;
  if (zone.size() > 1) {
    const QString digits = zone.mid(1).remove(':');
    const int hours = digits.left(2).toInt(), minutes = digits.mid(2).toInt();
    if (hours > 18 || minutes > 59) return std::nullopt;
    offset = (zone[0] == '-' ? -1 : 1) * (hours * 60 + minutes);
  }
  const qint64 seconds = QDateTime(day, time, Qt::UTC).toSecsSinceEpoch();
  WrittenMoment out;
  out.at.offset = std::chrono::minutes(offset);
  out.at.utc = std::chrono::sys_seconds(std::chrono::seconds(seconds)) - out.at.offset;
  out.wall = QDateTime(day, time, Qt::UTC).toString("yyyy-MM-ddTHH:mm:ss").toStdString() + zone.toStdString();
  return out;
}

}  // namespace brimline
