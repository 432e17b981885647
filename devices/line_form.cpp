// SPDX-License-Identifier: GPL-3.0-or-later
#include "devices/line_form.h"

#include <algorithm>
#include <cmath>
#include <cstdio>

#include "devices/values.h"

namespace brimline {
namespace {

struct FieldName {
  std::string_view name;
  LineField field;
};
constexpr FieldName kFields[] = {{"serial", LineField::serial},   {"sample", LineField::sample},
                                 {"method", LineField::method},   {"value", LineField::value},
                                 {"unit", LineField::unit},       {"mark", LineField::mark},
                                 {"ignored", LineField::ignored}, {"checksum", LineField::checksum}};

struct ChecksumRow {
  std::string_view name;
  std::string (*text)(std::string_view);
};
constexpr ChecksumRow kChecksums[] = {
    {"xor", [](std::string_view bytes) { return hex_digits(xor_of(bytes), 2); }},
    {"sum", [](std::string_view bytes) { return hex_digits(sum_of(bytes), 2); }},
    {"crc16", [](std::string_view bytes) { return hex_digits(crc16_of(bytes), 4); }}};

bool has(const LineForm& form, LineField field) {
  return std::find(form.fields.begin(), form.fields.end(), field) != form.fields.end();
}

void read_fields(Fields& table, LineForm& form) {
  for (const std::string& name : table.texts("fields")) {
    const auto found =
        std::find_if(std::begin(kFields), std::end(kFields), [&](const auto& f) { return f.name == name; });
    if (found == std::end(kFields))
      table.fault("fields", "the field \"" + name + "\" is not known",
                  "serial, sample, method, value, unit, mark, ignored or checksum");
    else if (found->field != LineField::ignored && has(form, found->field))
      table.fault("fields", "the field \"" + name + "\" stands twice", "each field once");
    else
      form.fields.push_back(found->field);
  }
  for (const LineField needed : {LineField::method, LineField::value})
    if (!has(form, needed))
      table.fault("fields", "a line has no method or no value", "both among its fields");
}

void read_checksum(Fields& table, LineForm& form) {
  form.checksum = table.text_if("checksum").value_or("");
  if (!form.checksum.empty() && !checksum_text(form.checksum, ""))
    table.fault("checksum", "`checksum` is \"" + form.checksum + "\"", "xor, sum or crc16");
  const bool last = !form.fields.empty() && form.fields.back() == LineField::checksum;
  if (has(form, LineField::checksum) != !form.checksum.empty() || (has(form, LineField::checksum) && !last))
    table.fault("checksum", "the checksum has no place", "`checksum` named, and the last of `fields`");
}

void read_marks(Fields& table, LineForm& form) {
  form.over = table.text_if("over").value_or("");
  form.under = table.text_if("under").value_or("");
  if (!form.over.empty() && form.over == form.under) table.fault("under", "both marks are one", "two marks");
  for (const std::string* mark : {&form.over, &form.under})
    if (mark->find_first_of("0123456789-.,") != std::string::npos)
      table.fault("over", "the mark \"" + *mark + "\" could be a number", "no digit, sign or decimal mark");
}

void read_signs(Fields& table, LineForm& form) {
  form.start = table.text_if("start").value_or("");
  if (form.start.size() > 1) table.fault("start", "`start` is long", "one character");
  form.end = table.text("end");
  if (form.end.empty() || form.end.size() > 4)
    table.fault("end", "`end` is empty or long", "1 to 4 characters");
  const std::string delimiter = table.text("delimiter");
  form.delimiter = delimiter.size() == 1 ? delimiter[0] : ',';
  if (delimiter.size() != 1)
    table.fault("delimiter", "`delimiter` is \"" + delimiter + "\"", "one character");
  const std::string decimal = table.text("decimal");
  if (decimal != "point" && decimal != "comma")
    table.fault("decimal", "`decimal` is \"" + decimal + "\"", "point or comma");
  form.decimal = decimal == "comma" ? ',' : '.';
  if (form.decimal == form.delimiter)
    table.fault("delimiter", "the delimiter is the decimal mark too", "two different characters");
  if (form.end.find(form.delimiter) != std::string::npos || form.start == delimiter ||
      (!form.start.empty() && form.end.find(form.start) != std::string::npos))
    table.fault("delimiter", "start, delimiter and end have a character in common", "none in common");
}

Millis read_millis(Fields& table, std::string_view key, int usual, int low, int high) {
  const int value = table.whole_if(key).value_or(usual);
  if (value < low || value > high)
    table.fault(key, "`" + std::string(key) + "` is " + std::to_string(value),
                std::to_string(low) + " to " + std::to_string(high));
  return Millis(value);
}

void read_ask(Fields& file, LineForm& form) {
  if (auto ask = file.table_if("ask")) {
    form.ask = ask->text("text");
    if (form.ask.empty()) ask->fault("text", "`text` is empty", "what asks for a reading");
    form.ask_every = read_millis(*ask, "every_ms", 1000, 50, 3600000);
    form.confirm = ask->flag_if("confirm").value_or(form.checksum.empty());
  }
}

}  // namespace

void read_line_form(Fields& file, Profile& into) {
  LineForm& form = into.line;
  Fields table = file.table("line");
  read_signs(table, form);
  read_fields(table, form);
  read_checksum(table, form);
  read_marks(table, form);
  form.gap = read_millis(table, "gap_ms", 1000, 20, 60000);
  form.longest = static_cast<int>(read_millis(table, "longest", 120, 8, 4096).count());
  form.idle = table.texts_if("idle").value_or(std::vector<std::string>{});
  read_ask(file, form);
}

std::optional<std::string> checksum_text(std::string_view name, std::string_view covered) {
  for (const ChecksumRow& row : kChecksums)
    if (row.name == name) return row.text(covered);
  return std::nullopt;
}

namespace {

std::string value_text(const LineForm& form, const MethodRow& row, const LineReading& reading) {
  char out[64];
  (void)std::snprintf(out, sizeof out, "%.*f", row.decimals, reading.value);
  std::string text = out;
  std::replace(text.begin(), text.end(), '.', form.decimal);
  if (reading.clipped && !has(form, LineField::mark))
    text = (*reading.clipped == Clip::above ? form.over : form.under) + text;
  return text;
}

std::string field_text(const LineForm& form, const MethodRow& row, const LineReading& reading,
                       LineField field) {
  switch (field) {
    case LineField::serial:
      return reading.serial;
    case LineField::sample:
      return reading.sample;
    case LineField::method:
      return row.code;
    case LineField::value:
      return value_text(form, row, reading);
    case LineField::unit:
      return row.unit;
    case LineField::mark:
      if (!reading.clipped) return "";
      return *reading.clipped == Clip::above ? form.over : form.under;
    case LineField::ignored:
    case LineField::checksum:
      return "";
  }
  return "";
}

}  // namespace

std::string line_of(const Profile& profile, const MethodRow& row, const LineReading& reading) {
  const LineForm& form = profile.line;
  std::string body;
  for (size_t i = 0; i < form.fields.size(); ++i) {
    if (i > 0) body += form.delimiter;
    body += field_text(form, row, reading, form.fields[i]);
  }
  if (!form.checksum.empty()) body += checksum_text(form.checksum, body).value_or("");
  return form.start + body + form.end;
}

}  // namespace brimline
