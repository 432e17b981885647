// SPDX-License-Identifier: GPL-3.0-or-later
#include "devices/values.h"

#include <algorithm>
#include <cmath>
#include <cstdio>

namespace brimline {
namespace {

bool all_digits(std::string_view text) {
  return !text.empty() && std::all_of(text.begin(), text.end(), [](char c) { return c >= '0' && c <= '9'; });
}

std::string fixed(double value, int decimals) {
  char out[64];
  (void)std::snprintf(out, sizeof out, "%.*f", decimals, value);
  return out;
}

}  // namespace

std::optional<double> parse_decimal(std::string_view text, char decimal, int decimals) {
  const bool negative = text.starts_with('-');
  if (negative) text.remove_prefix(1);
  const size_t whole = decimals > 0 ? text.find(decimal) : text.size();
  if (whole == std::string_view::npos || whole > 9 || !all_digits(text.substr(0, whole))) return std::nullopt;
  if (decimals > 0) {
    const std::string_view fraction = text.substr(whole + 1);
    if (fraction.size() != static_cast<size_t>(decimals) || !all_digits(fraction)) return std::nullopt;
  }
  double scaled = 0;  // exact: at most fifteen digits
  for (const char c : text)
    if (c != decimal) scaled = scaled * 10 + (c - '0');
  const double value = scaled / std::pow(10.0, decimals);
  return negative ? -value : value;
}

void tell_value(Heard& heard, const MethodRow& row, double value, std::optional<Clip> clipped,
                std::optional<std::string> sample, std::optional<std::string> serial, std::string once) {
  heard.alive = true;
  const bool inside = value >= row.low && value <= row.high;  // false for a NaN
  if (!std::isfinite(value) || value < 0 || (!clipped && !inside)) {
    heard.trouble(TroubleKind::out_of_range, row.analyte + " of " + fixed(value, row.decimals) +
                                                 " is beyond the method's range " +
                                                 fixed(row.low, row.decimals) + " to " +
                                                 fixed(row.high, row.decimals) + " and carries no mark.");
    return;
  }
  InstrumentReading reading;
  reading.analyte = row.analyte;
  reading.value = value * row.factor;
  reading.clipped = clipped;
  reading.sample = std::move(sample);
  reading.serial = std::move(serial);
  reading.sd = row.sd * row.factor;
  reading.absorbance = row.absorbance;
  heard.told.push_back(DecodedReading{std::move(reading), std::move(once)});
}

std::vector<std::string_view> split_fields(std::string_view text, char delimiter) {
  std::vector<std::string_view> out;
  for (;;) {
    const size_t at = text.find(delimiter);
    out.push_back(text.substr(0, at));
    if (at == std::string_view::npos) return out;
    text.remove_prefix(at + 1);
  }
}

bool is_printable(std::string_view text) {
  return std::all_of(text.begin(), text.end(), [](char c) { return c >= 0x20 && c <= 0x7e; });
}

std::uint8_t xor_of(std::string_view bytes) {
  unsigned out = 0;
  for (const char c : bytes) out ^= static_cast<unsigned char>(c);
  return static_cast<std::uint8_t>(out);
}

std::uint8_t sum_of(std::string_view bytes) {
  unsigned out = 0;
  for (const char c : bytes) out += static_cast<unsigned char>(c);
  return static_cast<std::uint8_t>(out & 0xff);
}

std::uint16_t crc16_of(std::string_view bytes) {
  unsigned crc = 0xffff;
  for (const char c : bytes) {
    crc ^= static_cast<unsigned char>(c);
    for (int bit = 0; bit < 8; ++bit) crc = (crc & 1) ? (crc >> 1) ^ 0xa001 : crc >> 1;
  }
  return static_cast<std::uint16_t>(crc);
}

std::string hex_digits(unsigned value, int digits) {
  char out[16];
  (void)std::snprintf(out, sizeof out, "%0*X", digits, value);
  return out;
}

}  // namespace brimline
