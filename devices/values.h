// SPDX-License-Identifier: GPL-3.0-or-later
// Strict numbers and checks that the wire formats share.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "devices/decoder.h"

namespace brimline {

// "7.40" with two decimals, "-0.02"; at most nine digits before the decimal mark. Anything else,
// spaces, signs of plus, exponents, "nan" and another count of decimals included, is nothing.
std::optional<double> parse_decimal(std::string_view text, char decimal, int decimals);

// What a sound frame says, in the wire's unit: a reading (clipped where marked), or out_of_range
// for a value beyond the method's range without a mark.
void tell_value(Heard& heard, const MethodRow& row, double value, std::optional<Clip> clipped,
                std::optional<std::string> sample, std::optional<std::string> serial, std::string once);

// The fields between the delimiters, empty ones too; of an empty text one empty field.
std::vector<std::string_view> split_fields(std::string_view text, char delimiter);

bool is_printable(std::string_view text);  // ASCII 0x20 to 0x7e only

std::uint8_t xor_of(std::string_view bytes);
std::uint8_t sum_of(std::string_view bytes);  // modulo 256, as CLSI LIS1-A (ASTM E1381)
// CRC-16/MODBUS: polynomial 0xA001 reflected, start 0xFFFF (MODBUS over serial line V1.02, 6.2.2; from
// memory).
std::uint16_t crc16_of(std::string_view bytes);
std::string hex_digits(unsigned value, int digits);  // upper case

}  // namespace brimline
