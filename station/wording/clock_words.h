// SPDX-License-Identifier: GPL-3.0-or-later
// Moments as a customer says them: "tonight 20:00", "tomorrow 08:00", "Tuesday 16 June 08:00".
#pragma once

#include <optional>
#include <string>

#include "analysis/instant.h"
#include "station/visit.h"
#include "station/wording/words.h"

namespace brimline {

// `hours` (never negative) after `start`, rounded up to the next five minutes so that no wait gets
// shorter.
Instant later(const Instant& start, double hours);

// The moment `when` as said on the day of `start`: "today 17:30" and from 18:00 "tonight 20:00";
// the next day "tomorrow 08:00"; then the weekday, and beyond six days the date too.
std::string clock_words(const Words& words, const Instant& start, const Instant& when);

// The same beside a step whose day is said above it: no date, and by a clock of twelve hours "Tue 8:00 a.m."
std::string label_words(const Words& words, const Instant& start, const Instant& when);

// "Sunday 14 June"
std::string date_words(const Words& words, const Instant& when);
// "14 Jun": for the foot of a chart
std::string short_date_words(const Words& words, const Instant& when);
// "14 June 2026, 08:10"
std::string date_and_time_words(const Words& words, const Instant& when);
// "08:10", or by a clock of twelve hours "8:10 a.m.", "noon"
std::string time_words(const Words& words, const Instant& when);
// "45 minutes", "1 hour", "14 hours", from two days on "3 days" where that is exact enough
std::string span_words(const Words& words, double hours);

// Who thinks in US units tells time by a clock of twelve hours; French is written by one of twenty-four.
Clock clock_for(const Words& words, const std::optional<Units>& units);

// The full or half hour at or after it, or seven in the morning where it falls between 22:00 and 07:00.
Instant by_day(const Instant& when);

// True where both fall on one date of their own clocks.
bool same_day(const Instant& a, const Instant& b);

}  // namespace brimline
