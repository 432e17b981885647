// SPDX-License-Identifier: GPL-3.0-or-later
// The fuzz targets on bytes from a fixed seed: broken laws abort the program.
#include <gtest/gtest.h>

#include <random>
#include <string>
#include <vector>

#include "tests/long/fuzz.h"

namespace brimline {
namespace {

using Bytes = std::vector<std::uint8_t>;

Bytes bytes_of(char command, const std::string& text) {
  const std::string all = command + text;
  return {all.begin(), all.end()};
}

// A few bytes replaced, dropped or doubled.
Bytes spoiled(Bytes bytes, std::mt19937& random) {
  static const std::string kLikely = ",\n\"#-.0123456789eE \r\xC3\xFFnaninf";
  const auto below = [&](size_t n) { return std::uniform_int_distribution<size_t>(0, n - 1)(random); };
  for (size_t i = below(5) + 1; i > 0; --i) {
    const auto at = bytes.begin() + static_cast<std::ptrdiff_t>(below(bytes.size() - 1) + 1);
    switch (below(3)) {
      case 0:
        *at = static_cast<std::uint8_t>(kLikely[below(kLikely.size())]);
        break;
      case 1:
        bytes.erase(at);
        break;
      default:
        bytes.insert(at, static_cast<std::uint8_t>(kLikely[below(kLikely.size())]));
    }
  }
  return bytes;
}

TEST(FuzzShort, Tables) {
  const Bytes seeds[] = {
      bytes_of(
          0,
          "id,temperature_c,ph,total_alkalinity_mg_l_caco3,calcium_hardness_mg_l_caco3,cyanuric_acid_mg_l,"
          "free_chlorine_mg_l_cl2,salt_mg_l,vessel_temperature_c\na,25,7.5,100,250,30,3,,\n#c\n"
          "\"b,\",25.5,7.45e0,100,250,,,3200,38\r\nc,60,7,1,1,1,1,1,1\n"),
      bytes_of(1,
               "id,addition_1,amount_1_mmol_kgw,addition_2,amount_2_mmol_kgw,temperature_c,start_ph,"
               "start_total_alkalinity_mg_l_caco3,start_tds_mg_l\na,HCl,0.1,aeration,,25,7.5,100,1000\n"
               "b,trichlor,0.1,,,25,7.5,100,\n")};
  std::mt19937 random(20260614);
  for (int i = 0; i < 20000; ++i) fuzz::table(spoiled(seeds[i % 2], random));
  for (const Bytes& seed : seeds) fuzz::table(seed);
}

TEST(FuzzShort, Solver) {
  std::mt19937 random(20260614);
  std::uniform_int_distribution<int> byte(0, 255);
  Bytes bytes(170);
  for (int i = 0; i < 30000; ++i) {
    for (auto& b : bytes) b = static_cast<std::uint8_t>(byte(random));
    for (size_t at = 1; at + 1 < bytes.size(); at += 2)  // often exactly the ends of a range
      if (byte(random) < 30) bytes[at] = bytes[at + 1] = byte(random) < 128 ? 0 : 255;
    fuzz::solver(bytes);
  }
}

// One sound frame of each kind first, so that what is spoiled is nearly right.
TEST(FuzzShort, Wire) {
  const Bytes seeds[] = {
      bytes_of(0, "#000123,B-0001,11,2.35,mg/L,,8D1F\r\n#idle\r\n"),
      bytes_of(1, "B-0001;20260614081500;FCL;2,35;ppm;9C\n"),
      bytes_of(2,
               "\x05\x02"
               "1H|\\^&\r\x03"
               "E5\r\n\x02"
               "2O|1|S1001\r\x03"
               "00\r\n\x04"),
      bytes_of(3, std::string("\xff\x07\x03\x1a\x00\x05\x00\x01\x40\xf0", 10) + std::string(24, ' ')),
      bytes_of(
          4,
          "id = \"x\"\nname = \"x\"\nprotocol = \"lis\"\n[serial]\nbaud = 9600\n[[method]]\nlow = 1e999\n"),
      bytes_of(5, "brimline-wire/1\n0.000 opened\n1.234 < 23 30\n9.000 closed\n")};
  std::mt19937 random(20260614);
  for (int i = 0; i < 60000; ++i) fuzz::wire(spoiled(seeds[i % std::size(seeds)], random));
}

}  // namespace
}  // namespace brimline
