// SPDX-License-Identifier: GPL-3.0-or-later
// taps make FILE VISITS: a store to tap on.  taps walk FILE ROUNDS: whole walk-ins on a copy of it, and the
// table that is kept in taps.txt. See tests/bench/taps.
#include <QGuiApplication>
#include <QQuickStyle>

#include <algorithm>
#include <cstdio>
#include <cstdlib>
#include <fstream>
#include <iostream>

#include "tests/bench/tap_walk.h"

namespace brimline::test {
namespace {

constexpr double kAnswer = 100;  // ms, within which a tap is answered

double share(std::vector<double> all, double part) {
  if (all.empty()) return 0;
  std::sort(all.begin(), all.end());
  return all[std::min(all.size() - 1, static_cast<size_t>(part * static_cast<double>(all.size())))];
}

void row(const std::string& name, const std::vector<double>& ms) {
  std::printf("%-30s %6zu %8.1f %8.1f %8.1f", name.c_str(), ms.size(), share(ms, 0.5), share(ms, 0.99),
              share(ms, 1));
}

double peak_mib() {
  std::ifstream status("/proc/self/status");
  for (std::string line; std::getline(status, line);)
    if (line.starts_with("VmHWM:")) return std::strtod(line.c_str() + 6, nullptr) / 1024;
  return 0;
}

int walk(const std::string& store, int rounds) {
  auto opened = TapShop::open(store);
  if (!opened) {
    std::cerr << opened.error() << "\n";
    return 2;
  }
  TapShop& shop = **opened;
  TapClock clock(shop.kiosk().window());
  TapWalk taps(shop, clock);
  for (int round = 0; round < rounds; ++round) taps.walk(round);

  std::printf("%-30s %6s %8s %8s %8s %10s %9s\n", "ms", "count", "median", "99th", "longest", "processor",
              "over 100");
  std::vector<double> every;
  for (const auto& [kind, answers] : clock.answers()) {
    std::vector<double> wall, processor;
    for (const TapAnswer& answer : answers) {
      wall.push_back(answer.wall_ms);
      processor.push_back(answer.processor_ms);
    }
    every.insert(every.end(), wall.begin(), wall.end());
    row(kind, wall);
    const auto longest = std::max_element(answers.begin(), answers.end(),
                                          [](const auto& a, const auto& b) { return a.wall_ms < b.wall_ms; });
    std::printf(" %10.1f %9td  %s\n", share(processor, 1),
                std::count_if(wall.begin(), wall.end(), [](double ms) { return ms > kAnswer; }),
                longest->what.c_str());
  }
  row("all taps", every);
  std::printf("\n\n");
  row("frames, laid out and drawn", clock.frames());
  std::printf("\n");
  row("event loop came late by", clock.gaps());
  std::printf("\n\nnot taps: from the last tap until all of it is there\n");
  for (const auto& [kind, ms] : clock.waits()) {
    row(kind, ms);
    std::printf("\n");
  }
  std::printf("\ntaps asked for, made  %d, %d; plans computed beside them %d; most memory %.0f MiB\n",
              clock.asked(), clock.made(), shop.plans(), peak_mib());
  for (const auto& [kind, answers] : clock.answers())
    for (const TapAnswer& answer : answers)
      if (answer.wall_ms > kAnswer)
        std::printf("over 100 ms: %s, %s, %.0f ms (%.0f at work)\n", kind.c_str(), answer.what.c_str(),
                    answer.wall_ms, answer.processor_ms);
  for (const std::string& fault : clock.faults()) std::printf("%s\n", fault.c_str());
  return clock.asked() == clock.made() ? 0 : 1;
}

}  // namespace
}  // namespace brimline::test

int main(int count, char** words) {
  qputenv("QT_QUICK_BACKEND", "software");
  if (!qEnvironmentVariableIsSet("QT_QPA_PLATFORM")) qputenv("QT_QPA_PLATFORM", "offscreen");
  const QGuiApplication app(count, words);
  QQuickStyle::setStyle("Basic");
  const std::string what = count == 4 ? words[1] : "";
  if (what == "make") {
    brimline::test::make_tap_store(words[2], std::strtoll(words[3], nullptr, 10));
    return 0;
  }
  if (what == "walk")
    return brimline::test::walk(words[2], static_cast<int>(std::strtol(words[3], nullptr, 10)));
  std::cerr << "use: taps make FILE VISITS | taps walk FILE ROUNDS\n";
  return 2;
}
