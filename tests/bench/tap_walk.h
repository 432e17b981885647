// SPDX-License-Identifier: GPL-3.0-or-later
// A walk-in from label to sheet, then and now, every page of the Back room and the emergency card: by touch,
// each tap timed.
#pragma once

#include "tests/bench/tap_clock.h"
#include "tests/bench/tap_shop.h"

namespace brimline::test {

class TapWalk {
 public:
  TapWalk(TapShop& shop, TapClock& clock) : shop_(shop), clock_(clock), desk_(shop.kiosk().desk()) {}

  void walk(int round);

 private:
  void go(const char* key);
  void option(const QString& name);
  void next_bottle(int round);
  void whose(int round);
  void how_it_came();
  void at_the_bench();
  void type_reading(const QString& analyte, const QString& number);
  void findings();
  void take_home();
  void by_hand();
  void then_and_now();
  void back_room();
  void emergency();

  TapShop& shop_;
  TapClock& clock_;
  Desk& desk_;
};

}  // namespace brimline::test
