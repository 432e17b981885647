// SPDX-License-Identifier: GPL-3.0-or-later
#include "devices/profile.h"

#include <algorithm>
#include <cmath>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <set>

#include "analysis/embedded.h"
#include "analysis/panel/analyte.h"
#include "devices/protocols.h"

namespace brimline::embedded {
std::span<const Text> profiles();
}

namespace brimline {
namespace {

SerialSettings read_serial(Fields table) {
  SerialSettings out;
  out.baud = table.whole("baud");
  if (out.baud < 300 || out.baud > 921600)
    table.fault("baud", "`baud` is " + std::to_string(out.baud), "300 to 921600");
  out.data_bits = table.whole("data_bits");
  if (out.data_bits != 7 && out.data_bits != 8)
    table.fault("data_bits", "`data_bits` is not usual", "7 or 8");
  const std::string parity = table.text("parity");
  if (parity == "even")
    out.parity = Parity::even;
  else if (parity == "odd")
    out.parity = Parity::odd;
  else if (parity != "none")
    table.fault("parity", "`parity` is \"" + parity + "\"", "none, even or odd");
  out.stop_bits = table.whole("stop_bits");
  if (out.stop_bits != 1 && out.stop_bits != 2)
    table.fault("stop_bits", "`stop_bits` is not usual", "1 or 2");
  return out;
}

void check_range(Fields& table, const MethodRow& row) {
  if (!std::isfinite(row.low) || !std::isfinite(row.high) || row.low < 0 || row.high <= row.low)
    table.fault("high", "the range is not one", "0 <= low < high");
  if (!std::isfinite(row.sd) || row.sd <= 0)
    table.fault("sd", "`sd` is not above zero", "a standard deviation");
  if (!std::isfinite(row.factor) || row.factor <= 0)
    table.fault("factor", "`factor` is not above zero", "analyte's unit / wire's unit");
  if (row.decimals < 0 || row.decimals > 6) table.fault("decimals", "`decimals` is out of range", "0 to 6");
}

// Another unit than the analyte's only one needs its factor, and what comes of the range must be possible.
void check_unit(Fields& table, const MethodRow& row, const AnalyteKind& kind) {
  if (!table.has("factor") && row.unit != kind.unit && !row.unit.empty())
    table.fault("unit", "\"" + row.unit + "\" is not the unit of " + row.analyte,
                "\"" + kind.unit + "\", or `factor` beside it");
  if (!kind.possible.holds(row.low * row.factor) || !kind.possible.holds(row.high * row.factor))
    table.fault("high", "the range is beyond what " + row.analyte + " can be",
                "a range inside it, times `factor`");
}

// `kind = "absorbance"` with the light and the cell; "amount", or nothing, for an instrument that knows its
// own calibration. An absorbance has no unit and no factor, and above 4 no light is left to measure.
std::optional<AbsorbanceLight> read_kind(Fields& table, const MethodRow& row) {
  const std::string kind = table.text_if("kind").value_or("amount");
  if (kind == "amount") return std::nullopt;
  if (kind != "absorbance") {
    table.fault("kind", "`kind` is \"" + kind + "\"", "amount or absorbance");
    return std::nullopt;
  }
  AbsorbanceLight out{table.number("wavelength_nm"), table.number("path_cm")};
  if (!(out.wavelength_nm >= 190 && out.wavelength_nm <= 1100))
    table.fault("wavelength_nm", "`wavelength_nm` is out of range", "190 to 1100");
  if (!(out.path_cm >= 0.1 && out.path_cm <= 10))
    table.fault("path_cm", "`path_cm` is out of range", "0.1 to 10");
  if (table.has("factor") || !row.unit.empty())
    table.fault("kind", "an absorbance has no unit and no factor", "`unit` empty, no `factor`");
  if (!(row.high <= 4)) table.fault("high", "no absorbance is so high", "4 at most");
  return out;
}

MethodRow read_method(Fields table) {
  MethodRow row;
  row.code = table.text("code");
  row.analyte = table.text("analyte");
  row.unit = table.text("unit");
  row.factor = table.number_if("factor").value_or(1);
  row.low = table.number("low");
  row.high = table.number("high");
  row.sd = table.number("sd");
  row.decimals = table.whole("decimals");
  row.absorbance = read_kind(table, row);
  if (row.code.empty()) table.fault("code", "`code` is empty", "the method's code on the wire");
  const AnalyteKind* kind = find_analyte(row.analyte);
  if (!kind)
    table.fault("analyte", "`analyte` \"" + row.analyte + "\" is not known", "an analyte's id");
  else if (!row.absorbance)
    check_unit(table, row, *kind);
  check_range(table, row);
  return row;
}

std::vector<MethodRow> read_methods(Fields& file) {
  std::vector<MethodRow> rows;
  std::set<std::string> codes;
  for (Fields& table : file.tables("method")) {
    rows.push_back(read_method(table));
    if (!codes.insert(rows.back().code).second)
      table.fault("code", "the code \"" + rows.back().code + "\" stands twice", "each code once");
  }
  if (rows.empty()) file.fault("method", "there are no methods", "at least one [[method]]");
  return rows;
}

bool is_id(const std::string& id) {
  return !id.empty() && std::all_of(id.begin(), id.end(), [](char c) {
    return (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || c == '_';
  });
}

void read_form(Fields& file, Profile& profile) {
  const Protocol* protocol = protocol_named(profile.protocol);
  if (protocol)
    protocol->read(file, profile);
  else
    file.fault("protocol", "`protocol` is \"" + profile.protocol + "\"", protocol_names());
}

std::optional<std::string> file_text(const std::string& path) {
  std::error_code error;
  std::ifstream in(path, std::ios::binary);
  if (!in || std::filesystem::is_directory(path, error)) return std::nullopt;
  return std::string((std::istreambuf_iterator<char>(in)), {});
}

}  // namespace

int bits_per_byte(const SerialSettings& serial) {
  return 1 + serial.data_bits + (serial.parity == Parity::none ? 0 : 1) + serial.stop_bits;
}

const MethodRow* Profile::method(std::string_view code) const {
  const auto found =
      std::find_if(methods.begin(), methods.end(), [&](const auto& row) { return row.code == code; });
  return found == methods.end() ? nullptr : &*found;
}

tl::expected<Profile, std::vector<Fault>> read_profile(std::string_view text, std::string_view file_name) {
  auto file = Fields::parse(text, file_name);
  if (!file) return tl::unexpected(std::vector<Fault>{file.error()});
  Profile out;
  out.id = file->text("id");
  if (!is_id(out.id)) file->fault("id", "`id` is \"" + out.id + "\"", "small letters, digits and _");
  out.name = file->text("name");
  out.note = file->text_if("note").value_or("");
  out.protocol = file->text("protocol");
  if (const auto silence = file->number_if("silence_s")) {
    if (!(*silence >= 0.1 && *silence <= 86400))
      file->fault("silence_s", "`silence_s` is out of range", "0.1 to 86400");
    else
      out.silence = Millis(std::llround(*silence * 1000));
  }
  out.serial = read_serial(file->table("serial"));
  out.methods = read_methods(*file);
  read_form(*file, out);
  auto faults = file->finish();
  if (!faults.empty()) return tl::unexpected(std::move(faults));
  return out;
}

std::vector<Profile> builtin_profiles() {
  std::vector<Profile> out;
  for (const embedded::Text& text : embedded::profiles())
    if (auto profile = read_profile(text.text, text.name)) out.push_back(std::move(*profile));
  std::sort(out.begin(), out.end(), [](const auto& a, const auto& b) { return a.id < b.id; });
  return out;
}

std::optional<std::string> profile_text(const Profile& profile) {
  if (!profile.file.empty()) return file_text(profile.file);
  for (const embedded::Text& text : embedded::profiles())
    if (const auto built_in = read_profile(text.text, text.name); built_in && built_in->id == profile.id)
      return std::string(text.text);
  return std::nullopt;
}

tl::expected<Profile, std::vector<Fault>> read_profile_file(const std::string& path) {
  const auto text = file_text(path);
  if (!text)
    return tl::unexpected(
        std::vector<Fault>{{path, 0, "cannot be read", "a built-in profile's id or a profile's file"}});
  auto profile = read_profile(*text, path);
  if (profile) profile->file = path;
  return profile;
}

tl::expected<Profile, std::vector<Fault>> load_profile(const std::string& name_or_file) {
  for (Profile& profile : builtin_profiles())
    if (profile.id == name_or_file) return std::move(profile);
  return read_profile_file(name_or_file);
}

std::vector<Profile> all_profiles(const std::string& folder) {
  std::vector<Profile> out = builtin_profiles();
  for (Profile& own : profiles_in(folder).profiles) out.push_back(std::move(own));
  return out;
}

ProfileFolder profiles_in(const std::string& folder) {
  ProfileFolder out;
  std::error_code error;
  std::vector<std::string> files;
  for (const auto& entry : std::filesystem::directory_iterator(folder, error))
    if (entry.path().extension() == ".toml") files.push_back(entry.path().string());
  std::sort(files.begin(), files.end());
  for (const std::string& file : files) {
    auto profile = read_profile_file(file);
    if (profile)
      out.profiles.push_back(std::move(*profile));
    else
      out.faults.insert(out.faults.end(), profile.error().begin(), profile.error().end());
  }
  return out;
}

}  // namespace brimline
