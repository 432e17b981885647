// SPDX-License-Identifier: GPL-3.0-or-later
#include "devices/profile_trial.h"

#include <algorithm>
#include <chrono>

#include "devices/protocols.h"
#include "devices/values.h"

namespace brimline {
namespace {

constexpr int kEnough = 6;
constexpr size_t kLineBytes = 16;  // of a hex line

bool is_unprintable(char c) {
  return !is_printable(std::string_view(&c, 1));
}

}  // namespace

ProfileTrial::ProfileTrial(std::vector<Profile> profiles, OpenWire open, Millis each, QObject* parent)
    : QObject(parent), profiles_(std::move(profiles)), open_(std::move(open)), each_(each), current_(0) {
  wake_.setSingleShot(true);
  end_.setSingleShot(true);
  connect(&wake_, &QTimer::timeout, this, [this] {
    if (decoder_) take(decoder_->waited(now()));
  });
  connect(&end_, &QTimer::timeout, this, &ProfileTrial::next);
}

Millis ProfileTrial::now() const {
  return std::chrono::duration_cast<Millis>(std::chrono::steady_clock::now().time_since_epoch());
}

void ProfileTrial::start() {
  results_.clear();
  heard_.clear();
  cancelled_ = false;
  turns_ = profiles_;
  current_ = static_cast<size_t>(-1);
  next();
}

// A line that was open and silent may be one whose instrument waits to be asked at its own rate; one that
// does not wait has been heard at any rate, if only as noise.
bool ProfileTrial::add_other_rates() {
  const bool open = std::any_of(results_.begin(), results_.end(), [](const auto& r) { return r.opened; });
  if (!open || best() || turns_.size() != profiles_.size()) return false;
  for (const int baud : kUsualRates)
    for (const Profile& profile : profiles_) {
      const bool asks = !profile.line.ask.empty() || profile.protocol == "modbus_rtu";
      if (profile.serial.baud == baud || (heard_.empty() && !asks)) continue;
      turns_.push_back(profile);
      turns_.back().serial.baud = baud;
    }
  return turns_.size() != profiles_.size();
}

void ProfileTrial::cancel() {
  if (!running() && !wire_) return;
  cancelled_ = true;
  current_ = turns_.size();
  next();
}

void ProfileTrial::next() {
  wake_.stop();
  end_.stop();
  if (wire_) {
    wire_->disconnect(this);
    wire_->close();
    wire_.release()->deleteLater();  // it may be telling us something just now
    results_.push_back(std::move(result_));
  }
  decoder_.reset();
  const bool found =
      turns_.size() > profiles_.size() && best();  // at another rate: the rest are worse guesses
  if (found || (++current_ >= turns_.size() && (cancelled_ || !add_other_rates()))) {
    current_ = turns_.size();
    emit moved();
    emit finished();
    return;
  }
  const Profile& profile = turns_[current_];
  result_ = {};
  result_.profile = profile.key();
  result_.name = profile.name;
  result_.serial = profile.serial;
  wire_ = open_(profile.serial);
  connect(wire_.get(), &Wire::received, this, &ProfileTrial::on_received);
  connect(wire_.get(), &Wire::lost, this, [this] { end_.start(0); });
  emit moved();
  if (wire_->open()) return end_.start(0);  // not there, or in use: the next one says the same
  result_.opened = true;
  decoder_ = decoder_for(profile);
  end_.start(static_cast<int>(each_.count()));
  take(decoder_->opened(now()));
}

void ProfileTrial::on_received(const QByteArray& bytes) {
  if (!decoder_) return;
  const std::string_view view(bytes.constData(), static_cast<size_t>(bytes.size()));
  result_.bytes += static_cast<int>(view.size());
  heard_ += view;
  if (heard_.size() > kMostHeard) heard_.erase(0, heard_.size() - kMostHeard);
  take(decoder_->received(view, now()));
  emit moved();
}

void ProfileTrial::take(Heard heard) {
  if (heard.alive) ++result_.sound;
  for (auto& one : heard.told)
    if (auto* decoded = std::get_if<DecodedReading>(&one))
      result_.readings.push_back(std::move(decoded->reading));
    else
      result_.garbled += std::get<Trouble>(one).what == TroubleKind::garbled;
  if (!heard.answer.empty()) wire_->send(QByteArray::fromStdString(heard.answer));
  if (result_.fits() && result_.sound + static_cast<int>(result_.readings.size()) >= kEnough) end_.start(0);
  schedule();
}

void ProfileTrial::schedule() {
  const auto wake = decoder_->wake();
  if (!wake) return wake_.stop();
  wake_.start(std::max<int>(0, static_cast<int>((*wake - now()).count())));
}

const TrialResult* ProfileTrial::best() const {
  const TrialResult* out = nullptr;
  const auto worth = [](const TrialResult& r) {
    return r.sound + static_cast<int>(r.readings.size()) - r.garbled;
  };
  for (const TrialResult& result : results_)
    if (result.fits() && (!out || worth(result) > worth(*out))) out = &result;
  return out;
}

std::vector<std::string> raw_lines(std::string_view bytes, size_t most) {
  std::vector<std::string> out;
  while (!bytes.empty()) {
    const size_t end = bytes.find('\n');
    std::string_view line = bytes.substr(0, end == std::string_view::npos ? end : end + 1);
    bytes.remove_prefix(line.size());
    for (; !line.empty(); line.remove_prefix(std::min(line.size(), kLineBytes))) {
      const std::string_view piece = line.substr(0, kLineBytes);
      std::string text(piece), hex;
      std::replace_if(text.begin(), text.end(), is_unprintable, '.');
      text.resize(kLineBytes + 2, ' ');
      for (const char c : piece) hex += hex_digits(static_cast<unsigned char>(c), 2) + " ";
      out.push_back(text + hex);
    }
  }
  if (out.size() > most) out.erase(out.begin(), out.end() - static_cast<std::ptrdiff_t>(most));
  return out;
}

}  // namespace brimline
