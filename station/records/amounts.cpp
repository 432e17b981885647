// SPDX-License-Identifier: GPL-3.0-or-later
#include "station/records/amounts.h"

#include <algorithm>
#include <charconv>
#include <cmath>
#include <vector>

#include <QString>

namespace brimline {
namespace {

// Molar masses, IUPAC 2021 standard atomic weights (from memory), g/mol.
constexpr double kCaCO3 = 100.087, kCaO = 56.077, kCa = 40.078, kMg = 24.305, kN = 14.007, kNO3 = 62.004;
constexpr double kPO4 = 94.971, kP = 30.974;
constexpr double kGrain = 64.79891;                           // mg, exact
constexpr double kUsGallon = 3.785411784, kGallon = 4.54609;  // L, exact

struct UnitRow {
  const char* of;  // the analyte's own unit
  const char* unit;
  double factor;
};

// German degree: 10 mg/L CaO; French: 10 mg/L CaCO3; English (Clark): a grain a gallon; US: a grain a US
// gallon (definitions; DIN 38409-6 for the German one).
constexpr UnitRow kUnits[] = {
    {"mg/lcaco3", "°dh", 10 * kCaCO3 / kCaO},
    {"mg/lcaco3", "dh", 10 * kCaCO3 / kCaO},
    {"mg/lcaco3", "°fh", 10},
    {"mg/lcaco3", "fh", 10},
    {"mg/lcaco3", "°f", 10},
    {"mg/lcaco3", "°e", kGrain / kGallon},
    {"mg/lcaco3", "clark", kGrain / kGallon},
    {"mg/lcaco3", "gpg", kGrain / kUsGallon},
    {"mg/lcaco3", "mmol/l", kCaCO3},
    {"mg/lcaco3", "meq/l", kCaCO3 / 2},
    {"mg/ln", "mg/lno3", kN / kNO3},
    {"mg/lpo4", "mg/lp", kPO4 / kP},
    {"us/cmat25c", "us/cm", 1},
    {"us/cmat25c", "µs/cm", 1},
    {"us/cmat25c", "ms/cm", 1000},
    {"ntu", "fnu", 1},
};

// Small letters, no blanks, "as" left out: "mg/L as CaCO3" -> "mg/lcaco3".
std::string plain(std::string_view unit) {
  QString text = QString::fromUtf8(unit.data(), static_cast<qsizetype>(unit.size())).toLower().simplified();
  text.replace(QChar(0x3bc), QChar(0xb5));  // the Greek letter is the sign too
  text.replace(" as ", " ").remove(' ').remove('(').remove(')').replace("l⁻¹", "/l").replace("m³", "m3");
  if (text.startsWith("ppm") || text.startsWith("g/m3"))
    text = "mg/l" + text.mid(text.startsWith("ppm") ? 3 : 4);
  if (text.startsWith("ppb")) text = "µg/l" + text.mid(3);
  if (text.startsWith("ug/l")) text = "µg/l" + text.mid(4);
  return text.toStdString();
}

// The metal itself, for its hardness.
std::optional<double> ion_factor(const AnalyteKind& kind, const std::string& unit) {
  if (kind.id == "calcium_hardness" && unit == "mg/lca") return kCaCO3 / kCa;
  if (kind.id == "magnesium_hardness" && unit == "mg/lmg") return kCaCO3 / kMg;
  return std::nullopt;
}

}  // namespace

std::optional<double> number_from(std::string_view text, bool comma) {
  std::string digits(text);
  if (comma && digits.find('.') == std::string::npos && std::count(digits.begin(), digits.end(), ',') == 1)
    std::replace(digits.begin(), digits.end(), ',', '.');
  if (digits.starts_with('+')) digits.erase(0, 1);
  double value = 0;
  const auto [end, error] = std::from_chars(digits.data(), digits.data() + digits.size(), value);
  if (error != std::errc() || end != digits.data() + digits.size() || !std::isfinite(value))
    return std::nullopt;
  return value;
}

std::optional<double> factor_of(const AnalyteKind& kind, std::string_view unit) {
  const std::string asked = plain(unit), own = plain(kind.unit);
  if (asked.empty() || asked == own) return 1;
  if (kind.id == "ph") return asked == "ph" ? std::optional(1.0) : std::nullopt;
  const bool mass = own.starts_with("mg/l");
  if (mass && asked == "mg/l") return 1;
  if (mass && (asked == "µg/l" || asked == "µg/l" + own.substr(4))) return 1e-3;
  if (mass && asked == "g/l") return 1e3;
  if (mass && asked == "%") return 1e4;  // by weight, of a water of 1 kg/L
  if (const auto ion = ion_factor(kind, asked)) return ion;
  for (const UnitRow& row : kUnits)
    if (own == row.of && asked == row.unit) return row.factor;
  return std::nullopt;
}

std::string units_of(const AnalyteKind& kind) {
  if (kind.id == "ph") return "no unit";
  std::string out = kind.unit;
  const std::string own = plain(kind.unit);
  if (own.starts_with("mg/l")) out += ", mg/L, ppm, ug/L, ppb, g/L";
  for (const UnitRow& row : kUnits)
    if (own == row.of) out += std::string(", ") + row.unit;
  return out;
}

std::optional<Volume> volume_in(double value, std::string_view unit) {
  const std::string name = plain(unit);
  if (name.empty() || name == "m3") return Volume::cubic_metres(value);
  for (const char* litres : {"l", "litre", "litres", "liter", "liters"})
    if (name == litres) return Volume::litres(value);
  for (const char* gallons : {"gal", "usgal", "gallon", "gallons", "gal_us"})
    if (name == gallons) return Volume::us_gallons(value);
  if (name == "gal_imp" || name == "impgal") return Volume::imperial_gallons(value);
  return std::nullopt;
}

}  // namespace brimline
