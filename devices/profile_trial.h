// SPDX-License-Identifier: GPL-3.0-or-later
// Which profile speaks an instrument's language: each listens to the line for a while, at its own rate, as a
// receiver would; what was heard is shown and nothing is lost of it.
#pragma once

#include <QObject>
#include <QTimer>

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

class ProfileTrial : public QObject {
  Q_OBJECT

 public:
  using OpenWire = std::function<std::unique_ptr<Wire>(const SerialSettings&)>;

  // `each`: how long one profile listens, at most; one that has understood six frames needs no more.
  ProfileTrial(std::vector<Profile> profiles, OpenWire open, Millis each, QObject* parent = nullptr);

  void start();
  void cancel();
  bool running() const { return current_ < profiles_.size(); }
  size_t done() const { return results_.size(); }
  size_t of() const { return profiles_.size(); }
  const std::vector<TrialResult>& results() const { return results_; }
  const TrialResult* best() const;                     // of those that fit; nullptr: none does
  const std::string& heard() const { return heard_; }  // the latest bytes, kMostHeard at most
  static constexpr size_t kMostHeard = 4096;

 signals:
  void moved();  // bytes came, or the next profile listens
  void finished();

 private:
  void next();
  void take(Heard heard);
  void on_received(const QByteArray& bytes);
  void schedule();
  Millis now() const;

  std::vector<Profile> profiles_;
  OpenWire open_;
  Millis each_;
  size_t current_;
  std::vector<TrialResult> results_;
  TrialResult result_;
  std::unique_ptr<Wire> wire_;
  std::unique_ptr<Decoder> decoder_;
  QTimer wake_, end_;
  std::string heard_;
};

// Lines of what was heard, the latest last: as text where a line ends, and in hex.
std::vector<std::string> raw_lines(std::string_view bytes, size_t most);

// The draft of a profile from lines that were heard: what can be told from them is filled in, and what cannot
// is left to be written, so that the reader refuses the file until it is. Nothing where no two whole lines of
// one form were heard.
std::optional<std::string> profile_draft(std::string_view heard, const SerialSettings& serial);

}  // namespace brimline
