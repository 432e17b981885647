// SPDX-License-Identifier: GPL-3.0-or-later
#include "demo/bottle_file.h"

#include <filesystem>
#include <fstream>
#include <iterator>

#include "analysis/panel/analyte.h"

namespace brimline::demo {
namespace {

constexpr const char* kCodeSigns = "ABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789-";

std::map<AnalyteId, double> read_values(Fields table) {
  std::map<AnalyteId, double> out;
  for (const std::string& id : table.keys()) {
    const double value = table.number(id);
    const AnalyteKind* kind = find_analyte(id);
    if (!kind)
      table.fault(id, "`" + id + "` is not known", "an analyte's id");
    else if (!kind->possible.holds(value))
      table.fault(id, "`" + id + "` is what no water can be", "a value the analyte can have");
    else
      out[id] = value;
  }
  return out;
}

}  // namespace

tl::expected<BottleFile, std::vector<Fault>> read_bottle(std::string_view text, std::string_view file_name) {
  auto file = Fields::parse(text, file_name);
  if (!file) return tl::unexpected(std::vector<Fault>{file.error()});
  BottleFile out;
  out.code = file->text("code");
  if (out.code.empty() || out.code.find_first_not_of(kCodeSigns) != std::string::npos)
    file->fault("code", "`code` is \"" + out.code + "\"", "capitals, digits and -");
  out.note = file->text("note");
  if (out.note.find("invented") == std::string::npos)
    file->fault("note", "the note does not say that the bottle is invented", "the word \"invented\"");
  out.visit = file->text_if("visit");
  out.temperature_c = file->number("temperature_c");
  if (!(out.temperature_c >= 0 && out.temperature_c <= 60))
    file->fault("temperature_c", "`temperature_c` is out of range", "0 to 60");
  out.water = read_values(file->table("water"));
  if (auto typed = file->table_if("typed")) out.typed = read_values(*typed);
  out.measure = file->texts("measure");
  for (const AnalyteId& id : out.measure)
    if (!out.water.contains(id))
      file->fault("measure", "`measure` names \"" + id + "\", which the water does not have",
                  "analytes of [water]");
  auto faults = file->finish();
  if (!faults.empty()) return tl::unexpected(std::move(faults));
  return out;
}

tl::expected<BottleFile, std::vector<Fault>> read_bottle_file(const std::string& path) {
  std::error_code error;
  std::ifstream in(path, std::ios::binary);
  if (!in || std::filesystem::is_directory(path, error))
    return tl::unexpected(std::vector<Fault>{{path, 0, "cannot be read", "a bottle's file"}});
  return read_bottle(std::string((std::istreambuf_iterator<char>(in)), {}), path);
}

}  // namespace brimline::demo
