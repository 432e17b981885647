// SPDX-License-Identifier: GPL-3.0-or-later
#include "devices/session.h"

#include <algorithm>
#include <cstdio>

#include "devices/protocols.h"

namespace brimline {
namespace {

// An instrument sends again what it last sent, or empties a memory of some thousand readings.
constexpr size_t kRemembered = 20000;
constexpr Millis kGarbledEvery{1000};

std::string seconds_text(Millis time) {
  char out[32];
  (void)std::snprintf(out, sizeof out, "%g", static_cast<double>(time.count()) / 1000);
  return out;
}

}  // namespace

Session::Session(const Profile& profile) : decoder_(decoder_for(profile)), silence_(profile.silence) {}

Said Session::opened(Millis at) {
  if (silence_) silent_at_ = at + *silence_;
  return judge(decoder_->opened(at), at);
}

Said Session::received(std::string_view bytes, Millis at) {
  return judge(decoder_->received(bytes, at), at);
}

Said Session::waited(Millis at) {
  Said said = judge(decoder_->waited(at), at);
  if (silent_at_ && at >= *silent_at_) {
    silent_at_.reset();
    said.told.push_back(Trouble{TroubleKind::silent, "Nothing readable has come from the instrument for " +
                                                         seconds_text(*silence_) + " s."});
  }
  return said;
}

std::optional<Millis> Session::wake() const {
  const auto decoder = decoder_->wake();
  if (!silent_at_) return decoder;
  return decoder ? std::min(*decoder, *silent_at_) : *silent_at_;
}

Said Session::judge(Heard heard, Millis at) {
  Said said;
  said.answer = std::move(heard.answer);
  if (heard.alive && silence_) silent_at_ = at + *silence_;
  for (auto& one : heard.told) {
    if (auto* decoded = std::get_if<DecodedReading>(&one)) {
      if (is_new(decoded->once)) said.told.push_back(std::move(decoded->reading));
    } else {
      Trouble& trouble = std::get<Trouble>(one);
      if (trouble.what != TroubleKind::garbled || !swallow_garbled(at))
        said.told.push_back(std::move(trouble));
    }
  }
  return said;
}

bool Session::is_new(const std::string& once) {
  if (once.empty()) return true;
  if (!known_.insert(once).second) return false;
  known_in_order_.push_back(once);
  if (known_in_order_.size() > kRemembered) {
    known_.erase(known_in_order_.front());
    known_in_order_.pop_front();
  }
  return true;
}

bool Session::swallow_garbled(Millis at) {
  if (garbled_told_ && at - *garbled_told_ < kGarbledEvery) return true;
  garbled_told_ = at;
  return false;
}

}  // namespace brimline
