// SPDX-License-Identifier: GPL-3.0-or-later
// That the benchmark of taps does what it says: every tap it asks for is made and timed, or told of. How long
// they take is no matter of a test.
#include <QGuiApplication>
#include <QQuickStyle>

#include <gtest/gtest.h>

#include "tests/bench/tap_walk.h"

namespace brimline::test {
namespace {

TEST(Taps, AreMadeAndTimedOrToldOf) {
  qputenv("QT_QUICK_BACKEND", "software");
  int argc = 1;
  char name[] = "taps_test";
  char* argv[] = {name, nullptr};
  const QGuiApplication app(argc, argv);
  QQuickStyle::setStyle("Basic");
  const QTemporaryDir folder;
  const std::string store = folder.filePath("shop.db").toStdString();
  make_tap_store(store, 500);
  auto shop = TapShop::open(store);
  ASSERT_TRUE(shop) << shop.error();
  TapClock clock((*shop)->kiosk().window());
  TapWalk(**shop, clock).walk(0);
  std::string faults;
  for (const std::string& fault : clock.faults()) faults += fault + "\n";
  size_t timed = 0;
  for (const auto& [kind, answers] : clock.answers())
    if (kind != TapClock::kHeldKind) timed += answers.size();
  EXPECT_EQ(timed, static_cast<size_t>(clock.made()));
  EXPECT_GE(clock.made() + static_cast<int>(clock.faults().size()), clock.asked()) << faults;
  EXPECT_EQ(faults.find("cannot be touched"), std::string::npos) << faults;
  EXPECT_EQ(faults.find("shown before"), std::string::npos) << faults;
  EXPECT_GT(clock.made(), 0) << faults;
  EXPECT_GT((*shop)->plans(), 0);
  std::printf("%d taps asked for, %d made\n%s", clock.asked(), clock.made(), faults.c_str());
  EXPECT_FALSE(clock.frames().empty());
}

}  // namespace
}  // namespace brimline::test
