// SPDX-License-Identifier: GPL-3.0-or-later
// The program is killed at any moment while readings come in: whatever it had confirmed is in the store.
#include <QCoreApplication>
#include <QFile>
#include <QProcess>
#include <QProcessEnvironment>
#include <QTemporaryDir>
#include <QThread>

#include <gtest/gtest.h>

#include <map>
#include <random>

#include "station/store/store.h"

namespace brimline::test {
namespace {

using Tally = std::map<std::pair<std::string, double>, int>;  // (analyte, value), how often

// "kept VISIT ANALYTE VALUE", whole lines only: a line cut by the kill was not yet said.
Tally confirmed(const QByteArray& output) {
  Tally out;
  for (QByteArray rest = output; rest.contains('\n'); rest.remove(0, rest.indexOf('\n') + 1)) {
    const QList<QByteArray> words = rest.left(rest.indexOf('\n')).split(' ');
    if (words.size() == 4 && words[0] == "kept") ++out[{words[2].toStdString(), words[3].toDouble()}];
  }
  return out;
}

Tally stored(const QString& database, const std::string& visit_id) {
  Tally out;
  auto store = Store::open("sqlite:" + database.toStdString());
  EXPECT_TRUE(store);
  auto visit = store->visit(visit_id);
  EXPECT_TRUE(visit && *visit);
  if (visit && *visit)
    for (const Reading& reading : (*visit)->bottle.readings) ++out[{reading.analyte, reading.value}];
  return out;
}

class Killed : public testing::Test {
 protected:
  void start() {
    QFile visit(folder_.filePath("visit.json"));
    ASSERT_TRUE(visit.open(QIODevice::WriteOnly));
    visit.write(
        R"({"format":"brimline-visit/1","id":"V-kill","bottle":"B-1012",)"
        R"("vessel":{"id":"W-1","kind":"pool","use":"household","sanitizer":"chlorine"},"readings":[]})");
    visit.close();
    photometer_.start(
        BRIMLINE_BIN_DIR "/brimline-photometer",
        {"--bottle", BRIMLINE_SOURCE_DIR "/demo/bottles/plaster_pool.toml", "--profile", "bench_lines",
         "--link", folder_.filePath("port"), "--speed", "200", "--pause", "0", "--rounds", "100000"});
    ASSERT_TRUE(photometer_.waitForStarted());
    while (!QFile::exists(folder_.filePath("port"))) QThread::msleep(5);
    QProcessEnvironment environment = QProcessEnvironment::systemEnvironment();
    environment.insert("QT_QPA_PLATFORM", "offscreen");
    environment.insert("QT_QUICK_BACKEND", "software");
    counter_.setProcessEnvironment(environment);
    counter_.start(BRIMLINE_BIN_DIR "/brimline",
                   {"--database", "sqlite:" + folder_.filePath("c.db"), "--settings",
                    folder_.filePath("s.ini"), "--port", folder_.filePath("port"), "--profile", "bench_lines",
                    "--visit", folder_.filePath("visit.json"), "--windowed", "--trace"});
    ASSERT_TRUE(counter_.waitForStarted());
  }
  // Its output from the first confirmed reading to its death `wait` later.
  QByteArray kill_after(int milliseconds) {
    QByteArray output;
    while (!output.contains("kept ") && counter_.waitForReadyRead(60000))
      output += counter_.readAllStandardOutput();
    QThread::msleep(static_cast<unsigned long>(milliseconds));
    counter_.kill();
    counter_.waitForFinished();
    photometer_.kill();
    photometer_.waitForFinished();
    return output + counter_.readAllStandardOutput();
  }

  QTemporaryDir folder_;
  QProcess photometer_, counter_;
};

class KilledAt : public Killed, public testing::WithParamInterface<int> {};

TEST_P(KilledAt, NoConfirmedReadingIsLost) {
  int argc = 1;
  char name[] = "kill_test";
  char* argv[] = {name, nullptr};
  const QCoreApplication app(argc, argv);
  start();
  std::mt19937 random(static_cast<unsigned>(GetParam()));
  const QByteArray output = kill_after(std::uniform_int_distribution(0, 400)(random));
  const Tally said = confirmed(output);
  ASSERT_FALSE(said.empty()) << output.toStdString();
  const Tally there = stored(folder_.filePath("c.db"), "V-kill");
  for (const auto& [reading, times] : said) {
    const auto found = there.find(reading);
    EXPECT_TRUE(found != there.end() && found->second >= times)
        << reading.first << " " << reading.second << " was confirmed " << times << " times";
  }
}

INSTANTIATE_TEST_SUITE_P(Moments, KilledAt, testing::Range(0, 50));

}  // namespace
}  // namespace brimline::test
