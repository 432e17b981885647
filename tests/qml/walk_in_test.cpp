// SPDX-License-Identifier: GPL-3.0-or-later
// A walk-in by somebody who has never stood at this counter, through the real window: a new customer, six
// readings from the instrument, three typed, the sheet. Touches are counted, and their time is that of the
// keystroke-level model (Card, Moran & Newell 1980, Comm. ACM 23(7), 396-410; operators from memory): 1.1 s
// to point, 0.28 s a key for an average non-secretary typist, and 1.35 s to make up one's mind before every
// touch, for a new user.
#include <QFile>

#include "tests/qml/counter_fixture.h"

namespace brimline::test {
namespace {

constexpr double kPoint = 1.1, kKey = 0.28, kMind = 1.35;  // s

class WalkIn : public CounterTest {
 protected:
  void touch(const QString& name) {
    ASSERT_TRUE(Hand::wait_for([&] { return hand_->touch(name); }, 5000)) << name.toStdString();
    ++touches_;
  }
  void type(const QString& text) {
    hand_->type(text);
    keys_ += static_cast<int>(text.size());
  }
  // Letters and digits on the screen are pointed at; they are no touches of the count.
  void type_on_pad(const QString& digits) {
    for (QChar c : digits)
      ASSERT_TRUE(hand_->touch(c == '.' ? "pad_point" : "pad_" + QString(c))) << c.toLatin1();
    pad_ += static_cast<int>(digits.size());
  }
  size_t kept() const { return kiosk_->counter().visit().bottle.readings.size(); }
  double seconds() const { return touches_ * (kMind + kPoint) + pad_ * kPoint + keys_ * kKey; }

  int touches_ = 0, keys_ = 0, pad_ = 0;
};

TEST_F(WalkIn, TakesUnderThreeMinutesAndFortyTouches) {
  open_counter("2026-06-14T09:00:00-05:00", start_photometer());
  ASSERT_NO_FATAL_FAILURE(touch("label_field"));
  type("B-1012");  // what the emulated instrument calls its bottle
  hand_->key(Qt::Key_Return);
  ++touches_;
  ASSERT_EQ(hand_->text_of("bottle_code"), "B-1012");
  ASSERT_NO_FATAL_FAILURE(touch("new_customer"));
  type("Ivo Brandt");
  ASSERT_NO_FATAL_FAILURE(touch("save_customer"));
  const double customer = seconds();
  ASSERT_NO_FATAL_FAILURE(touch("new_vessel"));
  for (const char* fact : {"sanitizer_chlorine", "surface_plaster", "place_outdoor", "in_ground_yes"})
    ASSERT_NO_FATAL_FAILURE(touch(fact));
  ASSERT_NO_FATAL_FAILURE(touch("volume"));
  type("15000");
  ASSERT_NO_FATAL_FAILURE(touch("to_bench"));
  ASSERT_TRUE(kiosk_->counter().visit().vessel.volume) << "a number stands in the field but was not taken";

  photometer_.write("measure\n");  // the button on the instrument
  ++touches_;
  const auto serial = std::chrono::steady_clock::now();
  ASSERT_TRUE(Hand::wait_for([&] { return kept() == 7; }));
  const std::chrono::duration<double> waited = std::chrono::steady_clock::now() - serial;
  const size_t from_instrument = kept();
  const std::pair<const char*, const char*> typed[] = {
      {"calcium_hardness", "318"}, {"salt", "1200"}, {"phosphate", "0.3"}};
  for (const auto& [analyte, number] : typed) {
    ASSERT_NO_FATAL_FAILURE(touch(QString("reading_") + analyte));
    ASSERT_NO_FATAL_FAILURE(type_on_pad(number));
    ASSERT_NO_FATAL_FAILURE(touch("pad_enter"));
  }
  ASSERT_EQ(kept(), from_instrument + 3) << hand_->text_of("pad_says").toStdString();
  ASSERT_NO_FATAL_FAILURE(touch("to_findings"));
  ASSERT_TRUE(Hand::wait_for([&] { return kiosk_->desk().plan()->ready(); }));
  ASSERT_NO_FATAL_FAILURE(touch("to_take_home"));
  ASSERT_GT(kiosk_->desk().plan()->steps()->count(), 0);
  ASSERT_NO_FATAL_FAILURE(touch("print_sheet"));
  // No printer stands here: the file is the paper, and that is said.
  ASSERT_TRUE(Hand::wait_for([&] { return QFile::exists(path("sheets/B-1012.pdf")); }));

  std::printf("walk-in: %d touches, %d letters and digits typed, %d on the pad; %.0f s of hand and mind\n",
              touches_, keys_, pad_, seconds());
  std::printf(
      "  of these the new customer %.0f s; the instrument took %.1f s more, 50 times as fast as it is\n",
      customer, waited.count());
  EXPECT_LE(touches_, 40);
  EXPECT_LT(seconds(), 180);
  EXPECT_LT(customer, 30);
}

}  // namespace
}  // namespace brimline::test
