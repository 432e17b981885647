// SPDX-License-Identifier: GPL-3.0-or-later
// An instrument as its file tells it: the line, the form of what it sends, its methods.
// One file an instrument (devices/profiles/*.toml, or a shop's own), read strictly.
//
//   const auto profile = load_profile("bench_lines");
//   if (!profile) for (const Fault& fault : profile.error()) std::cerr << fault.text() << "\n";
#pragma once

#include <chrono>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include <tl/expected.hpp>

#include "analysis/fields.h"
#include "analysis/panel/reading.h"
#include "devices/happening.h"

namespace brimline {

using Millis = std::chrono::milliseconds;

enum class Parity { none, even, odd };

struct SerialSettings {
  int baud = 9600;
  int data_bits = 8;  // 7 or 8
  Parity parity = Parity::none;
  int stop_bits = 1;  // 1 or 2
  friend bool operator==(const SerialSettings&, const SerialSettings&) = default;
};
// Bits on the line for one byte, start bit included.
int bits_per_byte(const SerialSettings& serial);

// One method of the instrument; a value on the wire times `factor` is the analyte's unit.
struct MethodRow {
  std::string code;  // as on the wire
  AnalyteId analyte;
  std::string unit;                           // as on the wire; empty: none is sent for this method
  double factor = 1;                          // analyte's unit / wire's unit
  double low = 0, high = 0;                   // the method's range, wire's unit
  double sd = 0;                              // standard deviation of one reading, wire's unit
  int decimals = 0;                           // exactly so many are sent
  std::optional<AbsorbanceLight> absorbance;  // the wire's value is one; absent: it is an amount
};

enum class LineField { serial, sample, method, value, unit, mark, ignored, checksum };

// The form of protocol "ascii_lines": one reading a line.
struct LineForm {
  std::string start;  // one character that opens each line; empty: a line starts where the last ended
  std::string end = "\r\n";
  char delimiter = ',';
  std::vector<LineField> fields;  // in their order; `checksum`, where there is one, is the last
  char decimal = '.';
  std::string over, under;  // range marks: the `mark` field, or before the value where there is none
  std::string checksum;     // "", "xor", "sum" or "crc16"; over all between start and itself, in hex digits
  Millis gap{1000};         // a line that pauses for longer is broken
  int longest = 120;        // bytes of a line, start and end included
  std::vector<std::string> idle;  // whole lines that only say that the instrument lives
  std::string ask;                // sent every `ask_every`; empty: the instrument speaks by itself
  Millis ask_every{0};
  bool confirm = false;  // a line counts once three answers running are equal
};

// Timers of protocol "lis" (CLSI LIS1-A link, LIS2-A records).
struct LisForm {
  Millis frame_timeout{30000};  // the receiver waits so long for the next frame
  int longest = 247;            // bytes of a frame, STX to LF
};

// Protocol "modbus_rtu": holding registers are polled.
struct ModbusForm {
  int station = 1;               // 1-247
  int counter_at = 0;            // register that counts the readings made
  int method_at = 0;             // register with the method's number
  int value_at = 0;              // two registers, IEEE 754 single, high word first
  int mark_at = 0;               // register: 0 inside the range, 1 above, 2 below
  std::optional<int> sample_at;  // `sample_words` registers of two letters each
  int sample_words = 0;
  Millis poll_every{500};
  Millis answer_timeout{300};
};

struct Profile {
  std::string id, name, protocol, note;
  std::string file;  // it was read from; empty: built in
  // What load_profile finds it by.
  const std::string& key() const { return file.empty() ? id : file; }
  SerialSettings serial;
  std::optional<Millis> silence;  // longer without a sound frame is `silent`; absent: silence says nothing
  LineForm line;
  LisForm lis;
  ModbusForm modbus;
  std::vector<MethodRow> methods;

  const MethodRow* method(std::string_view code) const;
};

// All faults of the file, in its order; never an incomplete profile.
tl::expected<Profile, std::vector<Fault>> read_profile(std::string_view text, std::string_view file);

// The same of a file on disk.
tl::expected<Profile, std::vector<Fault>> read_profile_file(const std::string& path);

// The text it was read from; nothing where its file cannot be read any more.
std::optional<std::string> profile_text(const Profile& profile);

// Those compiled in, sorted by id. A test proves that each can be read.
std::vector<Profile> builtin_profiles();

// A built-in profile's id, or else the path of a file.
tl::expected<Profile, std::vector<Fault>> load_profile(const std::string& name_or_file);

// The shop's own: every *.toml of `folder`; a faulty one gives its faults and none of the others suffers.
struct ProfileFolder {
  std::vector<Profile> profiles;
  std::vector<Fault> faults;
};
ProfileFolder profiles_in(const std::string& folder);

// Those built in, then the shop's own.
std::vector<Profile> all_profiles(const std::string& folder);

}  // namespace brimline
