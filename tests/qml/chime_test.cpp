// SPDX-License-Identifier: GPL-3.0-or-later
// The counter's sounds: well-formed files, played by the program that is found, and off where that is wished.
#include <QFile>
#include <QProcess>

#include "qml/chime.h"
#include "tests/qml/counter_fixture.h"

namespace brimline::test {
namespace {

// What the Python standard library's wave module says of it: channels, bytes a sample, rate, frames.
QByteArray read_by_python(const QByteArray& wave) {
  QProcess python;
  python.start("python3",
               {"-c",
                "import io,sys,wave\n"
                "w=wave.open(io.BytesIO(sys.stdin.buffer.read()))\n"
                "d=w.readframes(w.getnframes())\n"
                "print(w.getnchannels(),w.getsampwidth(),w.getframerate(),w.getnframes()*2==len(d),"
                "0.05<w.getnframes()/w.getframerate()<0.5)"});
  python.waitForStarted();
  python.write(wave);
  python.closeWriteChannel();
  python.waitForFinished();
  return python.readAllStandardOutput().trimmed();
}

TEST(Chimes, AreWaveFilesAndDiffer) {
  EXPECT_EQ(read_by_python(wave_of(Chime::reading)), "1 2 22050 True True");
  EXPECT_EQ(read_by_python(wave_of(Chime::trouble)), "1 2 22050 True True");
  EXPECT_NE(wave_of(Chime::reading), wave_of(Chime::trouble));
}

class Sounds : public CounterTest {
 protected:
  // A player that writes down what it is given, found first.
  void stand_in() {
    QFile player(path("aplay"));
    ASSERT_TRUE(player.open(QIODevice::WriteOnly));
    player.write("#!/bin/sh\nbasename \"$2\" >> \"$(dirname \"$0\")/played\"\n");
    player.setPermissions(QFileDevice::ReadOwner | QFileDevice::WriteOwner | QFileDevice::ExeOwner);
    player.close();
    qputenv("PATH", path("").toLocal8Bit() + ":" + before_);
  }
  ~Sounds() override { qputenv("PATH", before_); }
  QByteArray played() const {
    QFile file(path("played"));
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
  }
  QByteArray before_ = qgetenv("PATH");
};

TEST_F(Sounds, TellAReadingAndTroubleAndCanBeOff) {
  open_counter("2026-06-14T09:00:00-05:00");
  stand_in();
  const Instant now = kiosk_->counter().now();
  const auto hear = [&](auto what) { emit kiosk_->bench().happened({now, "bench", what}); };
  hear(InstrumentReading{});
  EXPECT_TRUE(Hand::wait_for([&] { return played() == "reading.wav\n"; }, 5000)) << played().toStdString();
  hear(Trouble{});
  EXPECT_TRUE(Hand::wait_for([&] { return played() == "reading.wav\ntrouble.wav\n"; }, 5000));
  kiosk_->desk().setPlace(Desk::BackRoom);
  ASSERT_TRUE(hand_->touch("group_shop"));
  ASSERT_TRUE(Hand::wait_for([&] { return hand_->touch("shelf_screen"); }, 3000));
  ASSERT_TRUE(hand_->touch("set_sounds_off"));
  ASSERT_TRUE(hand_->touch("apply_settings"));
  Hand::wait_for([] { return false; }, 700);
  hear(InstrumentReading{});
  hear(Trouble{});
  Hand::wait_for([] { return false; }, 300);
  EXPECT_EQ(played(), "reading.wav\ntrouble.wav\n");
  close_counter();
  open_counter("2026-06-14T09:00:00-05:00");
  EXPECT_FALSE(kiosk_->desk().settings().sounds);
}

}  // namespace
}  // namespace brimline::test
