// SPDX-License-Identifier: GPL-3.0-or-later
#include "qml/chime.h"

#include <QDataStream>
#include <QFile>
#include <QProcess>
#include <QStandardPaths>

#include <cmath>
#include <numbers>
#include <vector>

namespace brimline {
namespace {

constexpr int kRate = 22050;         // samples a second
constexpr double kLoudness = 0.3;    // of full scale
constexpr qint64 kAgainAfter = 500;  // ms

struct Note {
  double hertz, seconds;
};

// High and short, or two low ones: told apart without looking.
std::vector<Note> notes_of(Chime::Sound sound) {
  if (sound == Chime::reading) return {{1046.5, 0.09}};
  return {{392, 0.16}, {311.1, 0.24}};
}

}  // namespace

QByteArray wave_of(Chime::Sound sound) {
  QByteArray samples;
  QDataStream out(&samples, QIODevice::WriteOnly);
  out.setByteOrder(QDataStream::LittleEndian);
  for (const Note& note : notes_of(sound)) {
    const int count = static_cast<int>(note.seconds * kRate);
    for (int i = 0; i < count; ++i) {
      const double done = static_cast<double>(i) / count;
      const double swell = std::min(1.0, done * 12) * (1 - done);  // neither end clicks
      const double phase = 2 * std::numbers::pi * note.hertz * i / kRate;
      out << static_cast<qint16>(std::lround(32767 * kLoudness * swell * std::sin(phase)));
    }
  }
  QByteArray wave;
  QDataStream head(&wave, QIODevice::WriteOnly);
  head.setByteOrder(QDataStream::LittleEndian);
  head.writeRawData("RIFF", 4);
  head << static_cast<quint32>(36 + samples.size());
  head.writeRawData("WAVEfmt ", 8);
  head << quint32{16} << quint16{1} << quint16{1} << quint32{kRate} << quint32{kRate * 2} << quint16{2}
       << quint16{16};
  head.writeRawData("data", 4);
  head << static_cast<quint32>(samples.size());
  return wave + samples;
}

QString Chime::file_of(Sound sound) {
  if (!folder_) folder_ = std::make_unique<QTemporaryDir>();
  QString file =
      folder_->filePath(sound == reading ? QStringLiteral("reading.wav") : QStringLiteral("trouble.wav"));
  if (QFile::exists(file)) return file;
  QFile out(file);
  const QByteArray wave = wave_of(sound);
  return out.open(QIODevice::WriteOnly) && out.write(wave) == wave.size() ? file : QString();
}

void Chime::play(Sound sound) {
  QElapsedTimer& last = last_[sound];
  if (last.isValid() && last.elapsed() < kAgainAfter) return;
  const QString player = QStandardPaths::findExecutable(QStringLiteral("aplay"));
  const QString file = player.isEmpty() ? QString() : file_of(sound);
  if (file.isEmpty()) return;
  last.start();
  QProcess process;
  process.setProgram(player);
  process.setArguments({QStringLiteral("-q"), file});
  process.setStandardOutputFile(QProcess::nullDevice());
  process.setStandardErrorFile(QProcess::nullDevice());
  process.startDetached();
}

}  // namespace brimline
