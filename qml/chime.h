// SPDX-License-Identifier: GPL-3.0-or-later
// Two short sounds: a reading has come in, an instrument is in trouble. Played by `aplay` where it is
// installed; without it, or without a sound card, the counter is silent and nothing else changes.
#pragma once

#include <QByteArray>
#include <QElapsedTimer>
#include <QString>
#include <QTemporaryDir>

#include <map>
#include <memory>

namespace brimline {

class Chime {
 public:
  enum Sound { reading, trouble };

  // Begins to play and returns at once. The same sound again within half a second is left out.
  void play(Sound sound);

 private:
  QString file_of(Sound sound);

  std::unique_ptr<QTemporaryDir> folder_;
  std::map<Sound, QElapsedTimer> last_;
};

// The sound as a WAV file (RIFF, PCM, one channel, 16 bits, 22,050 samples a second).
QByteArray wave_of(Chime::Sound sound);

}  // namespace brimline
