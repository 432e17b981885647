// SPDX-License-Identifier: GPL-3.0-or-later
#include "devices/wire_log.h"

#include <algorithm>
#include <charconv>
#include <cstdio>

namespace brimline {
namespace {

constexpr std::string_view kFirstLine = "brimline-wire/1";

struct EventName {
  std::string_view name;
  WireEvent event;
};
constexpr EventName kEvents[] = {{"opened", WireEvent::opened},
                                 {"closed", WireEvent::closed},
                                 {"<", WireEvent::in},
                                 {">", WireEvent::out}};

std::string_view name_of(WireEvent event) {
  for (const EventName& row : kEvents)
    if (row.event == event) return row.name;
  return "";
}

// The next word of `line`, which is shortened by it.
std::string_view next_word(std::string_view& line) {
  line.remove_prefix(std::min(line.find_first_not_of(' '), line.size()));
  const std::string_view word = line.substr(0, line.find(' '));
  line.remove_prefix(word.size());
  return word;
}

std::optional<Millis> parse_time(std::string_view word) {
  const size_t point = word.find('.');
  if (point == std::string_view::npos || word.size() != point + 4 || point > 10) return std::nullopt;
  long long seconds = 0, thousandths = 0;
  const char* middle = word.data() + point;
  const char* end = word.data() + word.size();
  if (std::from_chars(word.data(), middle, seconds).ptr != middle || seconds < 0) return std::nullopt;
  if (std::from_chars(middle + 1, end, thousandths).ptr != end || thousandths < 0) return std::nullopt;
  return Millis(seconds * 1000 + thousandths);
}

std::optional<std::string> parse_bytes(std::string_view line) {
  std::string out;
  for (std::string_view word = next_word(line); !word.empty(); word = next_word(line)) {
    unsigned value = 0;
    const char* end = word.data() + word.size();
    if (word.size() != 2 || std::from_chars(word.data(), end, value, 16).ptr != end) return std::nullopt;
    out += static_cast<char>(value);
  }
  return out;
}

tl::expected<WireEntry, std::string> parse_line(std::string_view line, Millis earliest) {
  WireEntry entry;
  const auto time = parse_time(next_word(line));
  if (!time || *time < earliest)
    return tl::unexpected(std::string("seconds with three decimals, not earlier than the line before"));
  entry.at = *time;
  const std::string_view name = next_word(line);
  const auto row =
      std::find_if(std::begin(kEvents), std::end(kEvents), [&](const auto& r) { return r.name == name; });
  if (row == std::end(kEvents)) return tl::unexpected(std::string("opened, closed, < or >"));
  entry.event = row->event;
  const auto bytes = parse_bytes(line);
  const bool carries = entry.event == WireEvent::in || entry.event == WireEvent::out;
  if (!bytes || bytes->empty() == carries)
    return tl::unexpected(std::string("bytes of two hexadecimal digits after < or >"));
  entry.bytes = *bytes;
  return entry;
}

}  // namespace

bool is_wire_log(std::string_view text) {
  return text.starts_with(kFirstLine);
}

tl::expected<std::vector<WireEntry>, Fault> read_wire_log(std::string_view text, std::string_view file) {
  std::vector<WireEntry> out;
  Millis earliest{0};
  for (int number = 1; !text.empty(); ++number) {
    const size_t end = text.find('\n');
    const std::string_view line = text.substr(0, end);
    text.remove_prefix(end == std::string_view::npos ? text.size() : end + 1);
    if (number == 1 && line != kFirstLine)
      return tl::unexpected(
          Fault{std::string(file), 1, "this is no recorded wire", "\"" + std::string(kFirstLine) + "\""});
    if (number == 1 || line.empty() || line.starts_with('#')) continue;
    auto entry = parse_line(line, earliest);
    if (!entry)
      return tl::unexpected(Fault{std::string(file), number, "the line cannot be read", entry.error()});
    earliest = entry->at;
    out.push_back(std::move(*entry));
  }
  return out;
}

std::optional<WireRecorder> WireRecorder::create(const std::string& path, std::string_view heading,
                                                 std::uintmax_t limit) {
  WireRecorder out;
  out.path_ = path;
  out.heading_ = heading;
  out.limit_ = limit;
  if (!out.begin()) return std::nullopt;
  return out;
}

bool WireRecorder::begin() {
  out_ = std::ofstream(path_, std::ios::binary | std::ios::trunc);
  const std::string head = std::string(kFirstLine) + "\n# " + heading_ + "\n";
  written_ = head.size();
  out_ << head << std::flush;
  return out_.good();
}

bool WireRecorder::write(Millis at, WireEvent event, std::string_view bytes) {
  if (!out_.good()) return false;
  char time[40];
  (void)std::snprintf(time, sizeof time, "%lld.%03lld ", static_cast<long long>(at.count() / 1000),
                      static_cast<long long>(at.count() % 1000));
  std::string line = time + std::string(name_of(event));
  for (const char byte : bytes) {
    char hex[4];
    (void)std::snprintf(hex, sizeof hex, " %02x", static_cast<unsigned char>(byte));
    line += hex;
  }
  line += '\n';
  if (written_ + line.size() > limit_) {
    out_.close();
    if (std::rename(path_.c_str(), (path_ + ".1").c_str()) != 0 || !begin()) return false;
  }
  written_ += line.size();
  out_ << line << std::flush;
  return out_.good();
}

}  // namespace brimline
