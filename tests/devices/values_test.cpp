// SPDX-License-Identifier: GPL-3.0-or-later
#include "devices/values.h"

#include <gtest/gtest.h>

namespace brimline {
namespace {

using std::string_view_literals::operator""sv;

// CRC-16/MODBUS check value of "123456789", as CRC catalogues print it; the others are as several
// public test suites have them.
TEST(Crc16, MeetsPublishedValues) {
  EXPECT_EQ(crc16_of("123456789"), 0x4b37);
  EXPECT_EQ(crc16_of(""), 0xffff);
  EXPECT_EQ(crc16_of("\0"sv), 0x40bf);
  EXPECT_EQ(crc16_of("\x03\x03"), 0x4141);
}

// CLSI LIS1-A (ASTM E1381): the sum of the bytes from the frame number to ETX, computed by hand
// from that rule.
TEST(Sum, FollowsTheLinkStandardsRule) {
  EXPECT_EQ(hex_digits(sum_of("1H|\\^&\r\x03"), 2), "E5");
  EXPECT_EQ(hex_digits(sum_of("1H|\\^&\r\x17"), 2), "F9");
  EXPECT_EQ(hex_digits(sum_of("2P|1\r\x03"), 2), "3F");
  EXPECT_EQ(hex_digits(sum_of("3O|1|S1001||^^^A07|R\r\x03"), 2), "58");
  EXPECT_EQ(hex_digits(sum_of("4R|1|^^^A07|2.35|mg/L||N||F\r\x03"), 2), "14");
  EXPECT_EQ(hex_digits(sum_of("5L|1|N\r\x03"), 2), "08");
}

TEST(Decimal, IsReadExactlyOrNotAtAll) {
  EXPECT_EQ(parse_decimal("7.40", '.', 2), 7.4);
  EXPECT_EQ(parse_decimal("-0,02", ',', 2), -0.02);
  EXPECT_EQ(parse_decimal("112", '.', 0), 112.0);
  for (const auto wrong :
       {"7.4", "7.400", "7,40", "", ".", "7.", ".40", "7.4x", "+7.40", " 7.40", "1e3.00", "7..40", "-"})
    EXPECT_FALSE(parse_decimal(wrong, '.', 2)) << wrong;
  EXPECT_FALSE(parse_decimal("112.", '.', 0));
  EXPECT_FALSE(parse_decimal("11-2", '.', 0));
}

}  // namespace
}  // namespace brimline
