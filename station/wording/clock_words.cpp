// SPDX-License-Identifier: GPL-3.0-or-later
#include "station/wording/clock_words.h"

#include <QDate>
#include <QLocale>
#include <QTime>
#include <algorithm>
#include <cmath>

namespace brimline {
namespace {

constexpr const char* kContext = "clock";
constexpr int kEvening = 18;  // "tonight" from this hour on

QDate date_of(const Instant& when) {
  const auto day = std::chrono::floor<std::chrono::days>(when.local());
  return QDate(1970, 1, 1).addDays(day.time_since_epoch().count());
}

QTime time_of(const Instant& when) {
  const auto local = when.local();
  const auto rest = local - std::chrono::floor<std::chrono::days>(local);
  return QTime(0, 0).addSecs(static_cast<int>(std::chrono::seconds(rest).count()));
}

QLocale locale_of(const Words& words) {
  if (words.language() == "es") return QLocale(QLocale::Spanish);
  if (words.language() == "fr") return QLocale(QLocale::French);
  return QLocale(QLocale::English);
}

// How a language writes a date, in the letters of QLocale.
struct DateForms {
  const char *weekday, *short_weekday, *short_day, *day, *day_of_year, *day_of_chart;
};
DateForms forms_of(const Words& words, const QDate& date) {
  if (words.language() == "es")
    return {"dddd", "ddd", "ddd d MMM", "dddd d 'de' MMMM", "d 'de' MMMM 'de' yyyy", "d MMM"};
  if (words.language() == "fr" && date.day() == 1)
    return {"dddd", "ddd", "ddd '1er' MMM", "dddd '1er' MMMM", "'1er' MMMM yyyy", "'1er' MMM"};
  return {"dddd", "ddd", "ddd d MMM", "dddd d MMMM", "d MMMM yyyy", "d MMM"};
}

std::string formatted(const Words& words, const Instant& when, const char* DateForms::*form) {
  const QDate date = date_of(when);
  return locale_of(words).toString(date, QString::fromLatin1(forms_of(words, date).*form)).toStdString();
}

}  // namespace

std::string time_words(const Words& words, const Instant& when) {
  const QTime time = time_of(when);
  if (words.clock() == Clock::hours_24) return time.toString("HH:mm").toStdString();
  // Twelve is neither before nor after noon.
  if (time == QTime(12, 0)) return words.say(kContext, phrase("clock", "noon"));
  const int hour = time.hour() % 12 == 0 ? 12 : time.hour() % 12;
  const std::string clock = std::to_string(hour) + time.toString(":mm").toStdString();
  return time.hour() < 12 ? words.say(kContext, phrase("clock", "%1 a.m."), {clock})
                          : words.say(kContext, phrase("clock", "%1 p.m."), {clock});
}

Instant later(const Instant& start, double hours) {
  using namespace std::chrono;
  constexpr double kStep = 300;  // seconds
  const double wanted =
      static_cast<double>(start.utc.time_since_epoch().count()) + std::max(0.0, hours) * 3600;
  const double rounded = hours <= 0 ? wanted : std::ceil((wanted - 1) / kStep) * kStep;
  return Instant{sys_seconds{seconds{static_cast<long long>(rounded)}}, start.offset};
}

Instant by_day(const Instant& when) {
  constexpr int kMorning = 7 * 60, kNight = 22 * 60, kDay = 24 * 60;
  constexpr int kHalf = 30;  // minutes: nobody comes at five past
  const int whole = (time_of(when).msecsSinceStartOfDay() + 59999) / 60000;
  const int minute = (whole + kHalf - 1) / kHalf * kHalf;
  const int told = minute >= kMorning && minute <= kNight ? minute : kMorning + (minute > kNight ? kDay : 0);
  const auto day = std::chrono::floor<std::chrono::days>(when.local());
  return {when.utc + (day + std::chrono::minutes(told) - when.local()), when.offset};
}

Clock clock_for(const Words& words, const std::optional<Units>& units) {
  return units == Units::us && words.language() != "fr" ? Clock::hours_12 : Clock::hours_24;
}

bool same_day(const Instant& a, const Instant& b) {
  return date_of(a) == date_of(b);
}

std::string clock_words(const Words& words, const Instant& start, const Instant& when) {
  const auto days = date_of(start).daysTo(date_of(when));
  const std::string clock = time_words(words, when);
  if (days == 0 && time_of(when).hour() >= kEvening)
    return words.say(kContext, phrase("clock", "tonight %1"), {clock});
  if (days == 0) return words.say(kContext, phrase("clock", "today %1"), {clock});
  if (days == 1) return words.say(kContext, phrase("clock", "tomorrow %1"), {clock});
  return formatted(words, when, days > 1 && days <= 6 ? &DateForms::weekday : &DateForms::short_day) + " " +
         clock;
}

std::string label_words(const Words& words, const Instant& start, const Instant& when) {
  if (date_of(start).daysTo(date_of(when)) <= 1) return clock_words(words, start, when);
  const auto day = words.clock() == Clock::hours_12 ? &DateForms::short_weekday : &DateForms::weekday;
  return formatted(words, when, day) + " " + time_words(words, when);
}

std::string date_words(const Words& words, const Instant& when) {
  return formatted(words, when, &DateForms::day);
}

std::string short_date_words(const Words& words, const Instant& when) {
  return formatted(words, when, &DateForms::day_of_chart);
}

std::string date_and_time_words(const Words& words, const Instant& when) {
  return formatted(words, when, &DateForms::day_of_year) + ", " + time_words(words, when);
}

std::string span_words(const Words& words, double hours) {
  const auto whole = [](double value) { return std::to_string(std::lround(value)); };
  if (hours < 1.5 && std::abs(hours - 1) > 0.01)
    return words.say(kContext, phrase("clock", "%1 minutes"), {whole(std::ceil(hours * 60 - 1e-6))});
  if (std::abs(hours - 1) <= 0.01) return words.say(kContext, phrase("clock", "1 hour"));
  if (hours >= 48 && std::abs(std::remainder(hours, 24.0)) < 0.01)
    return words.say(kContext, phrase("clock", "%1 days"), {whole(hours / 24)});
  const bool is_whole = std::abs(hours - std::round(hours)) < 0.01;
  // Half an hour more than one is neither one nor many: languages differ on the word.
  if (hours < 1.5 + 0.01) return words.say(kContext, phrase("clock", "1½ hours"));
  return words.say(kContext, phrase("clock", "%1 hours"),
                   {is_whole ? whole(hours) : words.number(std::ceil(hours * 2 - 1e-6) / 2, 1)});
}

}  // namespace brimline
