// SPDX-License-Identifier: GPL-3.0-or-later
// The draft of a profile from lines that were heard.
#include <algorithm>
#include <cctype>
#include <set>
#include <sstream>

#include "analysis/toml_text.h"
#include "devices/line_form.h"
#include "devices/profile_trial.h"
#include "devices/values.h"

namespace brimline {
namespace {

using Columns = std::vector<std::vector<std::string>>;  // of each line

struct Form {
  std::string start, end;
  char delimiter = ',';
  std::vector<std::string> bodies;
  Columns lines;
  std::string checksum;
};

std::vector<std::string> whole_lines(std::string_view heard, const std::string& end) {
  std::vector<std::string> out;
  size_t at = heard.find(end);  // what stands before the first end may lack its beginning
  while (at != std::string_view::npos) {
    const size_t begin = at + end.size();
    at = heard.find(end, begin);
    if (at != std::string_view::npos && at > begin) out.emplace_back(heard.substr(begin, at - begin));
  }
  return out;
}

bool is_number(const std::string& text) {
  return !text.empty() && std::all_of(text.begin(), text.end(), [](char c) {
    return std::isdigit(c) || c == '.' || c == ',' || c == '-';
  }) && std::any_of(text.begin(), text.end(), [](char c) { return std::isdigit(c); });
}

// The lines of the most fields, two at least.
std::optional<Form> form_of(std::string_view heard, const std::string& end, char delimiter) {
  Form out;
  out.end = end;
  out.delimiter = delimiter;
  std::vector<std::string> all = whole_lines(heard, end);
  std::erase_if(all, [&](const std::string& line) {
    return !is_printable(line) || line.find(delimiter) == std::string::npos;
  });
  if (all.size() < 2) return std::nullopt;
  const auto delimiters = [&](const std::string& line) {
    return std::count(line.begin(), line.end(), delimiter);
  };
  const auto most = delimiters(*std::max_element(
      all.begin(), all.end(), [&](const auto& a, const auto& b) { return delimiters(a) < delimiters(b); }));
  std::erase_if(all, [&](const std::string& line) { return delimiters(line) != most; });
  if (most < 2 || all.size() < 2) return std::nullopt;
  const char first = all.front()[0];
  if (!std::isalnum(first) &&
      std::all_of(all.begin(), all.end(), [&](const auto& l) { return l[0] == first; }))
    out.start = std::string(1, first);
  for (const std::string& line : all) {
    out.bodies.push_back(line.substr(out.start.size()));
    const auto fields = split_fields(out.bodies.back(), delimiter);
    out.lines.emplace_back(fields.begin(), fields.end());
  }
  for (const char* kind : {"crc16", "sum", "xor"}) {
    const bool fits = std::all_of(out.bodies.begin(), out.bodies.end(), [&](const std::string& body) {
      const size_t at = body.rfind(delimiter);
      return checksum_text(kind, body.substr(0, at + 1)) == body.substr(at + 1);
    });
    if (fits) out.checksum = kind;
  }
  return out;
}

std::string field_name(const Form& form, size_t column) {
  const bool last = column + 1 == form.lines.front().size();
  if (last && !form.checksum.empty()) return "checksum";
  std::set<std::string> values;
  bool numbers = true, point = false, letters = true, rises = true;
  std::string before;
  for (const auto& line : form.lines) {
    const std::string& text = line[column];
    values.insert(text);
    numbers = numbers && is_number(text);
    point = point || text.find_first_of(".,") != std::string::npos;
    letters = letters && std::none_of(text.begin(), text.end(), [](char c) { return std::isdigit(c); });
    rises = rises && text > before;
    before = text;
  }
  static const std::set<std::string> units = {"mg/L", "mg/l", "ppm", "pH", "NTU", "g/L", "g/l", "mmol/l"};
  if (std::any_of(values.begin(), values.end(), [](const auto& v) { return units.contains(v); }))
    return "unit";
  if (numbers && point) return "value";
  if (values.size() == form.lines.size() && rises && numbers) return "serial";
  if (values == std::set<std::string>{""} || (letters && values.contains(""))) return "mark";
  if (!numbers && !letters && values.size() < form.lines.size()) return "sample";
  return "method";
}

}  // namespace

std::optional<std::string> profile_at_rate(const Profile& profile, int baud) {
  const auto text = profile_text(profile);
  if (!text) return std::nullopt;
  const std::string rate = std::to_string(baud);
  std::string out;
  std::istringstream lines(*text);
  for (std::string line; std::getline(lines, line);) {
    const std::string key = line.substr(0, line.find_first_of(" ="));
    // The profile's own id and name stand before any table, its rate only under [serial].
    if (key == "baud")
      line = "baud = " + rate;
    else if (key == "id")
      line = "id = " + toml_string(profile.id + "_" + rate);
    else if (key == "name" && line.find(profile.name) != std::string::npos)
      line = "name = " + toml_string(profile.name + ", " + rate + " baud");
    out.append(line).append("\n");
  }
  const auto read = read_profile(out, profile.key());
  if (!read || read->serial.baud != baud || read->methods.size() != profile.methods.size())
    return std::nullopt;
  return out;
}

std::optional<std::string> profile_draft(std::string_view heard, const SerialSettings& serial) {
  std::optional<Form> form;
  for (const char* end : {"\r\n", "\n", "\r"})
    for (const char delimiter : {',', ';', '\t', '|'})
      if (!form) form = form_of(heard, end, delimiter);
  if (!form) return std::nullopt;
  std::vector<std::string> names;
  std::string fields;
  size_t method = form->lines.front().size();
  for (size_t i = 0; i < form->lines.front().size(); ++i) {
    std::string name = field_name(*form, i);
    if (std::find(names.begin(), names.end(), name) != names.end()) name = "ignored";  // each once
    if (name == "method") method = i;
    names.push_back(name);
    fields += (fields.empty() ? "" : ", ") + toml_string(name);
  }
  const auto escaped = [](const std::string& text) {
    std::string out;
    for (const char c : text)
      out += c == '\r' ? "\\r" : c == '\n' ? "\\n" : c == '\t' ? "\\t" : std::string(1, c);
    return "\"" + out + "\"";
  };
  const std::string parity = serial.parity == Parity::even  ? "even"
                             : serial.parity == Parity::odd ? "odd"
                                                            : "none";
  std::string out =
      "# A draft made from what was heard. Look at each field's name, and write what stands as \"?\":\n"
      "# until then this file is refused, with the line.\n";
  for (size_t i = 0; i < std::min<size_t>(3, form->bodies.size()); ++i)
    out += "#   " + form->start + form->bodies[i] + "\n";
  out += "id = \"?\"\nname = \"?\"\nnote = \"\"\nprotocol = \"ascii_lines\"\n\n[serial]\nbaud = " +
         std::to_string(serial.baud) + "\ndata_bits = " + std::to_string(serial.data_bits) + "\nparity = \"" +
         parity + "\"\nstop_bits = " + std::to_string(serial.stop_bits) + "\n\n[line]\n";
  if (!form->start.empty()) out += "start = " + escaped(form->start) + "\n";
  out += "end = " + escaped(form->end) + "\ndelimiter = " + escaped(std::string(1, form->delimiter)) +
         "\nfields = [" + fields + "]\ndecimal = \"point\"\nover = \"?\"\nunder = \"?\"\n";
  if (!form->checksum.empty()) out += "checksum = " + toml_string(form->checksum) + "\n";
  out += "gap_ms = 1000\nlongest = 120\n";
  std::set<std::string> codes;
  for (const auto& line : form->lines) codes.insert(method < line.size() ? line[method] : "?");
  for (const std::string& code : codes)
    out += "\n[[method]]\ncode = " + toml_string(code) +
           "\nanalyte = \"?\"\nunit = \"?\"\nlow = 0.0\nhigh = 0.0\nsd = 0.0\ndecimals = 2\n";
  return out;
}

}  // namespace brimline
