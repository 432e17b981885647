// SPDX-License-Identifier: GPL-3.0-or-later
// A profile whose methods send absorbances: read, refused when wrong, and told as absorbances.
#include <gtest/gtest.h>

#include "devices/line_decoder.h"
#include "devices/line_form.h"

namespace brimline {
namespace {

const std::string kHead = R"toml(
id = "colour_lines"
name = "Colour lines (invented)"
protocol = "ascii_lines"
[serial]
baud = 9600
data_bits = 8
parity = "none"
stop_bits = 1
[line]
start = "#"
end = "\r\n"
delimiter = ","
fields = ["serial", "sample", "method", "value", "unit", "mark", "checksum"]
decimal = "point"
over = "HI"
under = "LO"
checksum = "crc16"
gap_ms = 1000
longest = 96
[[method]]
code = "A51"
analyte = "iron"
)toml";
const std::string kIron = R"(kind = "absorbance"
wavelength_nm = 510.0
path_cm = 1.0
unit = ""
low = 0.0
high = 2.5
sd = 0.002
decimals = 3
)";

std::string with(const std::string& from, const std::string& to) {
  std::string text = kHead + kIron;
  text.replace(text.find(from), from.size(), to);
  return text;
}

TEST(AbsorbanceProfile, IsRead) {
  const auto profile = read_profile(kHead + kIron, "x.toml");
  ASSERT_TRUE(profile) << profile.error().front().text();
  ASSERT_TRUE(profile->methods[0].absorbance);
  EXPECT_EQ(profile->methods[0].absorbance->wavelength_nm, 510);
  EXPECT_EQ(profile->methods[0].absorbance->path_cm, 1);
}

TEST(AbsorbanceProfile, MistakesAreTold) {
  const struct {
    std::string from, to, told;
  } rows[] = {{"\"absorbance\"", "\"transmittance\"", "`kind` is"},
              {"wavelength_nm = 510.0\n", "", "wavelength_nm"},
              {"510.0", "51.0", "`wavelength_nm` is out of range"},
              {"path_cm = 1.0", "path_cm = 0.0", "`path_cm` is out of range"},
              {"unit = \"\"", "unit = \"mg/L\"", "no unit and no factor"},
              {"unit = \"\"", "unit = \"\"\nfactor = 2.0", "no unit and no factor"},
              {"high = 2.5", "high = 6.0", "no absorbance is so high"}};
  for (const auto& row : rows) {
    const auto profile = read_profile(with(row.from, row.to), "x.toml");
    ASSERT_FALSE(profile) << row.told;
    bool found = false;
    for (const Fault& fault : profile.error())
      found = found || fault.text().find(row.told) != std::string::npos;
    EXPECT_TRUE(found) << row.told << ": " << profile.error().front().text();
  }
}

// HJ/T 345-2007: 1 mg/L of iron in 1 cm is 0.197. On the wire it is an absorbance and nothing else.
TEST(AbsorbanceProfile, IsToldAsAnAbsorbance) {
  const auto profile = read_profile(kHead + kIron, "x.toml");
  ASSERT_TRUE(profile);
  LineDecoder decoder(*profile);
  decoder.opened(Millis(0));
  const std::string line = line_of(*profile, profile->methods[0], {"7", "B-1", 0.197, std::nullopt});
  const Heard heard = decoder.received(line, Millis(1));
  ASSERT_EQ(heard.told.size(), 1u);
  const auto* decoded = std::get_if<DecodedReading>(&heard.told[0]);
  ASSERT_TRUE(decoded);
  EXPECT_EQ(decoded->reading.value, 0.197);
  ASSERT_TRUE(decoded->reading.absorbance);
  EXPECT_EQ(decoded->reading.absorbance->wavelength_nm, 510);
  EXPECT_EQ(decoded->reading.sd, 0.002);
}

}  // namespace
}  // namespace brimline
