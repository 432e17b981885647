// SPDX-License-Identifier: GPL-3.0-or-later
#include "analysis/instant.h"

#include <cstdio>

namespace brimline {
namespace {

// The `count` digits at `text[at]`, or nothing.
std::optional<int> digits(std::string_view text, size_t at, size_t count) {
  if (at + count > text.size()) return std::nullopt;
  int value = 0;
  for (size_t i = at; i < at + count; ++i) {
    if (text[i] < '0' || text[i] > '9') return std::nullopt;
    value = value * 10 + (text[i] - '0');
  }
  return value;
}

std::optional<std::chrono::minutes> parse_offset(std::string_view text) {
  if (text == "Z" || text == "z") return std::chrono::minutes{0};
  if (text.size() != 6 || (text[0] != '+' && text[0] != '-') || text[3] != ':') return std::nullopt;
  const auto hours = digits(text, 1, 2);
  const auto minutes = digits(text, 4, 2);
  if (!hours || !minutes || *hours > 14 || *minutes > 59) return std::nullopt;
  const std::chrono::minutes size{*hours * 60 + *minutes};
  return text[0] == '-' ? -size : size;
}

}  // namespace

std::optional<Instant> Instant::parse(std::string_view text) {
  using namespace std::chrono;
  if (text.size() < 20 || text[4] != '-' || text[7] != '-' || (text[10] != 'T' && text[10] != 't') ||
      text[13] != ':' || text[16] != ':')
    return std::nullopt;
  const auto y = digits(text, 0, 4), mo = digits(text, 5, 2), d = digits(text, 8, 2);
  const auto h = digits(text, 11, 2), mi = digits(text, 14, 2), s = digits(text, 17, 2);
  if (!y || !mo || !d || !h || !mi || !s || *h > 23 || *mi > 59 || *s > 60) return std::nullopt;
  size_t at = 19;
  if (text[at] == '.') {  // fractions of a second are read and dropped
    ++at;
    const size_t first = at;
    while (at < text.size() && text[at] >= '0' && text[at] <= '9') ++at;
    if (at == first) return std::nullopt;
  }
  const year_month_day date{year{*y}, month{static_cast<unsigned>(*mo)}, day{static_cast<unsigned>(*d)}};
  const auto offset = parse_offset(text.substr(at));
  if (!date.ok() || !offset) return std::nullopt;
  const sys_seconds wall = sys_days{date} + hours{*h} + minutes{*mi} + seconds{*s};
  return Instant{wall - *offset, *offset};
}

std::string Instant::text() const {
  using namespace std::chrono;
  const sys_seconds wall = utc + offset;
  const auto day_start = floor<days>(wall);
  const year_month_day date{day_start};
  const hh_mm_ss time{wall - day_start};
  const auto size = offset < minutes{0} ? -offset : offset;
  char out[64];
  std::snprintf(out, sizeof out, "%04d-%02u-%02uT%02d:%02d:%02d%c%02d:%02d", static_cast<int>(date.year()),
                static_cast<unsigned>(date.month()), static_cast<unsigned>(date.day()),
                static_cast<int>(time.hours().count()), static_cast<int>(time.minutes().count()),
                static_cast<int>(time.seconds().count()), offset < minutes{0} ? '-' : '+',
                static_cast<int>(size.count() / 60), static_cast<int>(size.count() % 60));
  return out;
}

double hours_between(const Instant& from, const Instant& to) {
  return static_cast<double>((to.utc - from.utc).count()) / 3600.0;
}

}  // namespace brimline
