// SPDX-License-Identifier: GPL-3.0-or-later
// Which profile speaks an instrument's language: each listens to the line for a while, at its own rate, as a
// receiver would; where none understands, each again at the other usual rates. What was heard is shown and
// nothing is lost of it.
#pragma once

#include <QObject>
#include <QTimer>

#include <array>
#include <functional>
#include <memory>
#include <string>
#include <vector>

#include "devices/decoder.h"
#include "devices/wire.h"

namespace brimline {

struct TrialResult {
  std::string profile, name;  // its key and name
  SerialSettings serial;
  int bytes = 0, sound = 0, garbled = 0;  // sound: frames, idle ones too; garbled: as the decoder told
  bool opened = false;
  std::vector<InstrumentReading> readings;
  // More was understood than not.
  bool fits() const { return sound + static_cast<int>(readings.size()) > garbled; }
};

// Rates instruments are set to, the likeliest first; common practice, no source.
constexpr std::array<int, 8> kUsualRates{9600, 19200, 4800, 2400, 1200, 38400, 57600, 115200};

class ProfileTrial : public QObject {
  Q_OBJECT

 public:
  using OpenWire = std::function<std::unique_ptr<Wire>(const SerialSettings&)>;

  // `each`: how long one profile listens, at most; one that has understood six frames needs no more.
  ProfileTrial(std::vector<Profile> profiles, OpenWire open, Millis each, QObject* parent = nullptr);

  void start();
  void cancel();
  bool running() const { return current_ < turns_.size(); }
  size_t done() const { return results_.size(); }
  bool other_rates() const { return turns_.size() > profiles_.size(); }
  size_t of() const { return turns_.size(); }  // more once the other rates are tried
  const std::vector<TrialResult>& results() const { return results_; }
  const TrialResult* best() const;                     // of those that fit; nullptr: none does
  const std::string& heard() const { return heard_; }  // the latest bytes, kMostHeard at most
  static constexpr size_t kMostHeard = 4096;

 signals:
  void moved();  // bytes came, or the next profile listens
  void finished();

 private:
  void next();
  bool add_other_rates();  // false: they cannot help, or were added already
  void take(Heard heard);
  void on_received(const QByteArray& bytes);
  void schedule();
  Millis now() const;

  std::vector<Profile> profiles_, turns_;
  OpenWire open_;
  Millis each_;
  size_t current_;
  bool cancelled_ = false;
  std::vector<TrialResult> results_;
  TrialResult result_;
  std::unique_ptr<Wire> wire_;
  std::unique_ptr<Decoder> decoder_;
  QTimer wake_, end_;
  std::string heard_;
};

// The text of a profile that listens at another rate than the built-in or shop's own one it is made of, with
// an id and a name of its own ("bench_lines_4800"); nothing where the profile cannot be read again.
std::optional<std::string> profile_at_rate(const Profile& profile, int baud);

// Lines of what was heard, the latest last: as text where a line ends, and in hex.
std::vector<std::string> raw_lines(std::string_view bytes, size_t most);

// The draft of a profile from lines that were heard: what can be told from them is filled in, and what cannot
// is left to be written, so that the reader refuses the file until it is. Nothing where no two whole lines of
// one form were heard.
std::optional<std::string> profile_draft(std::string_view heard, const SerialSettings& serial);

}  // namespace brimline
