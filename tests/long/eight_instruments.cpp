// SPDX-License-Identifier: GPL-3.0-or-later
// Eight emulated instruments at 115,200 baud on the real bench in the real window: what was sent and what was
// kept, how long frames took, memory, processor time; one of them is pulled out and plugged in again and
// again. Arguments: minutes (30), replugs (200). Prints the table that is kept in eight_instruments.txt.
#include <algorithm>
#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <fstream>
#include <functional>
#include <iostream>
#include <map>
#include <memory>

#include <sys/resource.h>
#include <unistd.h>

#include <QElapsedTimer>
#include <QFile>
#include <QGuiApplication>
#include <QProcess>
#include <QQuickStyle>
#include <QTemporaryDir>
#include <QThread>
#include <QTimer>

#include "qml/kiosk.h"

using namespace brimline;

namespace {

constexpr int kInstruments = 8;

// bench_lines as it is, at 115,200 baud.
QString fast_profile(const QTemporaryDir& folder) {
  QFile from(QStringLiteral(BRIMLINE_SOURCE_DIR "/devices/profiles/bench_lines.toml"));
  if (!from.open(QIODevice::ReadOnly)) std::exit(2);
  QByteArray text = from.readAll();
  text.replace("baud = 9600", "baud = 115200");
  QFile to(folder.filePath("fast.toml"));
  if (!to.open(QIODevice::WriteOnly) || to.write(text) != text.size()) std::exit(2);
  return to.fileName();
}

QString bottle_of(const QTemporaryDir& folder, int number) {
  QFile from(QStringLiteral(BRIMLINE_SOURCE_DIR "/demo/bottles/plaster_pool.toml"));
  if (!from.open(QIODevice::ReadOnly)) std::exit(2);
  QByteArrayList lines;
  for (QByteArray line : from.readAll().split('\n')) {
    if (line.startsWith("visit =")) continue;
    if (line.startsWith("code =")) line = "code = \"B-" + QByteArray::number(9000 + number) + "\"";
    lines.append(line);
  }
  QFile to(folder.filePath(QStringLiteral("bottle%1.toml").arg(number)));
  const QByteArray text = lines.join('\n');
  if (!to.open(QIODevice::WriteOnly) || to.write(text) != text.size()) std::exit(2);
  return to.fileName();
}

struct Emulator {
  QProcess process;
  int sent = 0;
  std::string heard;
  void read() {
    heard += process.readAllStandardOutput().toStdString();
    for (size_t end = heard.find('\n'); end != std::string::npos; end = heard.find('\n')) {
      const std::string line = heard.substr(0, end);
      // What was measured while nobody listened was never on the line.
      if (line.starts_with("sent ") && line.ends_with(" none")) ++sent;
      heard.erase(0, end + 1);
    }
  }
};

double processor_seconds() {
  rusage usage{};
  ::getrusage(RUSAGE_SELF, &usage);
  const auto seconds = [](const timeval& t) {
    return static_cast<double>(t.tv_sec) + 1e-6 * static_cast<double>(t.tv_usec);
  };
  return seconds(usage.ru_utime) + seconds(usage.ru_stime);
}

double resident_mib() {
  std::ifstream file("/proc/self/statm");
  long pages = 0, resident = 0;
  file >> pages >> resident;
  return static_cast<double>(resident) * static_cast<double>(::sysconf(_SC_PAGESIZE)) / (1024.0 * 1024.0);
}

double at_share(std::vector<double> values, double share) {
  if (values.empty()) return 0;
  std::sort(values.begin(), values.end());
  return values[std::min(values.size() - 1, static_cast<size_t>(share * static_cast<double>(values.size())))];
}

}  // namespace

int main(int count, char** words) {
  const double minutes = count > 1 ? std::strtod(words[1], nullptr) : 30;
  const int replugs = count > 2 ? static_cast<int>(std::strtol(words[2], nullptr, 10)) : 200;
  qputenv("QT_QUICK_BACKEND", "software");
  if (!qEnvironmentVariableIsSet("QT_QPA_PLATFORM")) qputenv("QT_QPA_PLATFORM", "offscreen");
  QGuiApplication app(count, words);
  QQuickStyle::setStyle("Basic");
  const QTemporaryDir folder;
  const QString profile = fast_profile(folder);
  std::map<int, std::unique_ptr<Emulator>> emulators;
  Settings settings;
  for (int i = 0; i < kInstruments; ++i) {
    const QString port = folder.filePath(QStringLiteral("line%1").arg(i));
    auto& emulator = emulators[i] = std::make_unique<Emulator>();
    emulator->process.start(
        BRIMLINE_BIN_DIR "/brimline-photometer",
        {"--bottle", bottle_of(folder, i), "--profile", profile, "--link", port, "--pause", "2", "--rounds",
         "100000", "--seed", QString::number(i + 1), "--wait"});
    settings.lines[i] = {port, profile};
  }
  for (auto& [i, emulator] : emulators)
    while (!QFile::exists(settings.lines[i].port)) QThread::msleep(20);
  save_settings(settings, folder.filePath("shop.ini"));

  KioskOptions options;
  options.database = "sqlite:" + folder.filePath("counter.db");
  options.settings = folder.filePath("shop.ini");
  options.out_dir = folder.filePath("sheets");
  options.windowed = true;
  std::vector<std::string> codes;
  auto started = Kiosk::start(options);
  if (!started) {
    std::cerr << started.error() << "\n";
    return 2;
  }
  Kiosk& kiosk = **started;
  // Eight bottles wait, and the clerk turns to the next one every half minute; new ones every five.
  int made = 0;
  // One after the other, as hands do it: what one bottle's pages leave behind goes before the next.
  std::function<void(int)> begin_one = [&](int i) {
    if (i == 0) codes.clear();
    codes.push_back("B-" + std::to_string(9000 + made));
    kiosk.desk().scan(QString::fromStdString(codes.back()));
    if (made >= kInstruments)
      emulators[i]->process.write(("bottle " + bottle_of(folder, made) + "\n").toUtf8());
    ++made;
    kiosk.desk().setPlace(Desk::Bench);
    if (i + 1 < kInstruments) QTimer::singleShot(200, &app, [&, i] { begin_one(i + 1); });
  };
  std::function<void()> tell_one = [&] {
    if (kiosk.counter().waiting().empty()) return begin_one(0);
    const std::string id = kiosk.counter().waiting().front().id;
    if (kiosk.counter().open(id)) (void)kiosk.counter().tell(Plan{});
    QTimer::singleShot(200, &app, [&] { tell_one(); });
  };
  const auto begin_all = [&] { tell_one(); };
  begin_all();
  QTimer others;
  QObject::connect(&others, &QTimer::timeout, begin_all);
  others.start(300000);

  int kept = 0, backs = 0, late = 0;
  std::vector<double> frames, gaps, back_seconds;
  QObject::connect(&kiosk.counter(), &Counter::readingKept, [&] { ++kept; });
  QElapsedTimer frame, tick, unplugged;
  QObject::connect(kiosk.window(), &QQuickWindow::afterAnimating, [&] { frame.start(); });
  QObject::connect(kiosk.window(), &QQuickWindow::frameSwapped, [&] {
    if (frame.isValid()) frames.push_back(1e-6 * static_cast<double>(frame.nsecsElapsed()));
  });
  QTimer ticks;
  ticks.setTimerType(Qt::PreciseTimer);
  tick.start();
  QObject::connect(&ticks, &QTimer::timeout, [&] {
    gaps.push_back(std::max(0.0, 1e-6 * static_cast<double>(tick.nsecsElapsed()) - 10));
    tick.restart();
  });
  ticks.start(10);
  QTimer turn;
  int turned = 0;
  QObject::connect(&turn, &QTimer::timeout, [&] {
    ++turned;
    kiosk.desk().scan(QString::fromStdString(
        codes.empty() ? std::string() : codes[static_cast<size_t>(turned) % codes.size()]));
    kiosk.desk().setPlace(Desk::Bench);
  });
  turn.start(30000);

  // Pulled out for three seconds; back within three of being there again.
  Emulator& pulled = *emulators[0];
  bool out = false;
  const double seconds = minutes * 60;
  const int every_ms = replugs > 0 ? std::max(3500, static_cast<int>(1e3 * seconds / (replugs + 1))) : 0;
  QObject::connect(&kiosk.bench(), &Bench::happened, [&](const Happening& happening) {
    if (!std::holds_alternative<BackAgain>(happening.what) || !unplugged.isValid()) return;
    back_seconds.push_back(1e-3 * static_cast<double>(unplugged.elapsed()));
    late += back_seconds.back() > 3;
    ++backs;
    unplugged.invalidate();
  });
  QTimer plug;
  int pulls = 0;
  QObject::connect(&plug, &QTimer::timeout, [&] {
    if (!out && pulls >= replugs) return;
    if (!out) ++pulls;
    pulled.process.write(out ? "replug\n" : "unplug\n");
    if (out) unplugged.start();
    out = !out;
  });
  if (replugs > 0) plug.start(every_ms / 2);

  const double processor_before = processor_seconds();
  double early_mib = 0, middle_mib = 0;
  QElapsedTimer wall;
  wall.start();
  QTimer reads;
  QObject::connect(&reads, &QTimer::timeout, [&] {
    for (auto& [i, emulator] : emulators) emulator->read();
    if (early_mib == 0 && wall.elapsed() > 60000) early_mib = resident_mib();
    if (middle_mib == 0 && static_cast<double>(wall.elapsed()) > 1e3 * seconds / 2)
      middle_mib = resident_mib();
  });
  reads.start(500);
  QTimer::singleShot(static_cast<int>(seconds * 1000), [&] {
    plug.stop();
    others.stop();
    for (auto& [i, emulator] : emulators) emulator->process.write("fault silent\n");
    QTimer::singleShot(2000, &app, &QCoreApplication::quit);
  });
  QCoreApplication::exec();
  const double processor = processor_seconds() - processor_before;
  const double lasted = 1e-3 * static_cast<double>(wall.elapsed());
  int sent = 0;
  for (auto& [i, emulator] : emulators) {
    emulator->read();
    sent += emulator->sent;
    emulator->process.kill();
    emulator->process.waitForFinished();
  }
  const auto orphans = kiosk.counter().orphans().size();
  std::printf("eight instruments at 115,200 baud, %.1f minutes\n", lasted / 60);
  std::printf("readings sent soundly      %d\n", sent);
  std::printf("readings kept              %d (and %zu that belong to no bottle)\n", kept, orphans);
  std::printf("unplugged, back, over 3 s  %d, %d, %d; longest %.2f s\n", pulls, backs, late,
              at_share(back_seconds, 1));
  std::printf("frames                     %zu; median %.1f ms, 99th %.1f ms, longest %.1f ms\n",
              frames.size(), at_share(frames, 0.5), at_share(frames, 0.99), at_share(frames, 1));
  std::printf("event loop late by         median %.1f ms, 99th %.1f ms, longest %.1f ms\n",
              at_share(gaps, 0.5), at_share(gaps, 0.99), at_share(gaps, 1));
  std::printf("memory after a minute, half the time, at the end  %.1f, %.1f, %.1f MiB\n", early_mib,
              middle_mib, resident_mib());
  std::printf("processor time             %.1f %% of one core\n", 100 * processor / lasted);
  started->reset();
  return kept + static_cast<int>(orphans) == sent && late == 0 ? 0 : 1;
}
