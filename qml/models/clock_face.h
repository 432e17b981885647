// SPDX-License-Identifier: GPL-3.0-or-later
// Moments for the screen: as words beside now, and the moments behind the quick choices.
#pragma once

#include <QString>

#include <optional>

#include "analysis/instant.h"

namespace brimline {

// "today 08:10", "yesterday 20:00", "14 June 08:10", with the year where it is another one.
QString when_words(const Instant& now, const Instant& when);
// "08:10"
QString clock_words_of(const Instant& when);
// "Wednesday 25 November, 21:40"
QString date_line(const Instant& now);

// The moment a quick choice stands for ("hour", "morning" of choices.cpp's `taken`); nothing for "unknown".
std::optional<Instant> moment_for(const QString& taken, const Instant& now);
// The same for `home_at`, always after now.
Instant home_moment(const QString& key, const Instant& now);

}  // namespace brimline
