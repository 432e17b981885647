// SPDX-License-Identifier: GPL-3.0-or-later
// PINs: which are allowed, how they are kept, how long a wrong one is waited for.
#include "station/staff/staff.h"

#include <gmock/gmock.h>

namespace brimline {
namespace {

// RFC 9106's Argon2id, as the reference implementation's own program writes it: PIN 246813, salt
// "saltsaltsalt1234", two passes, 19456 KiB, one lane (argon2 of Debian 12, run by hand).
const std::string kReference =
    "$argon2id$v=19$m=19456,t=2,p=1$c2FsdHNhbHRzYWx0MTIzNA$H/8Mwmea0dg3DnwZyekb2iSGwhI1nVi/aTpjYx17fqw";

TEST(Pin, IsKeptAsArgon2id) {
  EXPECT_TRUE(is_pin_of("246813", kReference));
  EXPECT_FALSE(is_pin_of("246814", kReference));
  EXPECT_FALSE(is_pin_of("", kReference));
  const auto hash = hash_of_pin("246813"), again = hash_of_pin("246813");
  ASSERT_TRUE(hash && again);
  EXPECT_THAT(*hash, testing::StartsWith("$argon2id$v=19$m=19456,t=2,p=1$"));
  EXPECT_NE(*hash, *again);  // each has its salt
  EXPECT_TRUE(is_pin_of("246813", *hash));
  EXPECT_EQ(hash->find("246813"), std::string::npos);
}

TEST(Pin, ADamagedHashLetsNobodyIn) {
  for (const std::string& hash : {std::string(), std::string("246813"), kReference.substr(0, 40),
                                  std::string(5000, '$'), std::string("$argon2id$v=19$m=1,t=0,p=0$$")})
    EXPECT_FALSE(is_pin_of("246813", hash)) << hash.substr(0, 60);
}

TEST(Pin, PlainOnesAreRefused) {
  EXPECT_EQ(pin_fault("123"), PinFault::too_short);
  EXPECT_EQ(pin_fault("1357913579135"), PinFault::too_long);
  EXPECT_EQ(pin_fault("12a4"), PinFault::not_digits);
  EXPECT_EQ(pin_fault("1234 "), PinFault::not_digits);
  for (const char* plain : {"0000", "1234", "98765", "777777"})
    EXPECT_EQ(pin_fault(plain), PinFault::too_plain);
  for (const char* sound : {"2468", "1243", "100200300400"}) EXPECT_EQ(pin_fault(sound), std::nullopt);
}

// A day of guessing at one PIN: what the waits leave of it is under one in a hundred of the 10,000 there are.
TEST(Pin, GuessingTakesLongerEachTime) {
  EXPECT_EQ(wait_after(0), 0);
  EXPECT_EQ(wait_after(2), 0);
  for (int n = 2; n < 40; ++n) EXPECT_GE(wait_after(n + 1), wait_after(n));
  EXPECT_EQ(wait_after(3), 5);
  EXPECT_EQ(wait_after(4), 10);
  EXPECT_EQ(wait_after(1000000), 900);
  std::int64_t seconds = 0;
  int tries = 0;
  while (seconds < 86400) seconds += wait_after(++tries);
  EXPECT_LT(tries, 110);
}

TEST(Pin, AClockPutBackLocksNobodyOutForLong) {
  StaffMember member{"S-1", "Ana", StaffRole::clerk, kReference, false, 9, 2'000'000'000};
  EXPECT_EQ(seconds_to_wait(member, 1'000'000'000), 900);
  EXPECT_EQ(seconds_to_wait(member, 1'999'999'990), 10);
  EXPECT_EQ(seconds_to_wait(member, 2'000'000'001), 0);
}

}  // namespace
}  // namespace brimline
