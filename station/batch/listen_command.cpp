// SPDX-License-Identifier: GPL-3.0-or-later
// `listen`: what an instrument tells, one JSON line a happening.
#include <QCoreApplication>
#include <QSocketNotifier>
#include <QTimer>

#include <charconv>
#include <csignal>
#include <ctime>
#include <filesystem>
#include <fstream>
#include <iostream>
#include <iterator>

#include <fcntl.h>
#include <unistd.h>

#include <nlohmann/json.hpp>

#include "analysis/panel/analyte.h"
#include "devices/bench.h"
#include "devices/replay_wire.h"
#include "devices/serial_wire.h"
#include "station/batch/commands.h"
#include "station/batch/usage.h"

namespace brimline::batch {
namespace {

using Json = nlohmann::ordered_json;

template <class T>
Json or_null(const std::optional<T>& value) {
  return value ? Json(*value) : Json(nullptr);
}

Json clip_json(const std::optional<Clip>& clip) {
  if (!clip) return nullptr;
  return *clip == Clip::above ? "above" : "below";
}

// pH has no unit.
Json unit_of(const AnalyteId& analyte) {
  const AnalyteKind* kind = find_analyte(analyte);
  return kind && !kind->unit.empty() ? Json(kind->unit) : Json(nullptr);
}

struct WhatJson {
  Json operator()(const InstrumentReading& r) const {
    if (r.absorbance) return absorbance(r);
    return {{"kind", "reading"},
            {"analyte", r.analyte},
            {"value", r.value},
            {"unit", unit_of(r.analyte)},
            {"clipped", clip_json(r.clipped)},
            {"sample", or_null(r.sample)},
            {"serial", or_null(r.serial)},
            {"sd", or_null(r.sd)}};
  }
  // No amount without a reagent lot's calibration, and none is guessed.
  static Json absorbance(const InstrumentReading& r) {
    return {{"kind", "absorbance"},
            {"analyte", r.analyte},
            {"absorbance", r.value},
            {"wavelength_nm", r.absorbance->wavelength_nm},
            {"path_cm", r.absorbance->path_cm},
            {"clipped", clip_json(r.clipped)},
            {"sample", or_null(r.sample)},
            {"serial", or_null(r.serial)},
            {"sd", or_null(r.sd)}};
  }
  Json operator()(const Trouble& t) const {
    return {{"kind", "trouble"}, {"what", name_of(t.what)}, {"text", t.text}};
  }
  Json operator()(const BackAgain&) const { return {{"kind", "back"}}; }
};

// Bytes that are no UTF-8 are shown as replacement marks, never a reason to fall silent.
void print(const Happening& happening) {
  Json line = {{"at", happening.at.text()}};
  line.update(std::visit(WhatJson{}, happening.what));
  line["instrument"] = happening.instrument;
  std::cout << line.dump(-1, ' ', false, Json::error_handler_t::replace) << std::endl;
}

Instant machine_now() {
  const std::time_t now = std::time(nullptr);
  std::tm local{};
  localtime_r(&now, &local);
  return Instant{std::chrono::sys_seconds{std::chrono::seconds{now}},
                 std::chrono::minutes{local.tm_gmtoff / 60}};
}

// The signal handler's end of the pipe that wakes the event loop.
int signal_pipe = -1;

void on_signal(int) {
  const char byte = 0;
  [[maybe_unused]] const auto written = ::write(signal_pipe, &byte, 1);
}

void quit_on_signals(QCoreApplication& app) {
  int ends[2];
  if (::pipe2(ends, O_CLOEXEC | O_NONBLOCK) != 0) return;
  signal_pipe = ends[1];
  auto* notifier = new QSocketNotifier(ends[0], QSocketNotifier::Read, &app);
  QObject::connect(notifier, &QSocketNotifier::activated, &app, &QCoreApplication::quit);
  for (const int number : {SIGTERM, SIGINT}) std::signal(number, on_signal);
}

int print_faults(const std::vector<Fault>& faults) {
  for (const Fault& fault : faults) std::cerr << fault.text() << "\n";
  return kBadInput;
}

std::optional<double> parse_seconds(const std::string& text) {
  double value = 0;
  const char* end = text.data() + text.size();
  if (std::from_chars(text.data(), end, value).ptr != end || !(value >= 0 && value <= 1e6))
    return std::nullopt;
  return value;
}

// A plain file is a recording, anything else a port.
tl::expected<std::unique_ptr<Wire>, Fault> wire_for(const std::string& port, const Profile& profile) {
  std::error_code error;
  if (!std::filesystem::is_regular_file(port, error))
    return std::make_unique<SerialWire>(QString::fromStdString(port), profile.serial);
  std::ifstream in(port, std::ios::binary);
  auto entries = read_wire_log(std::string((std::istreambuf_iterator<char>(in)), {}), port);
  if (!entries) return tl::unexpected(entries.error());
  return std::make_unique<ReplayWire>(std::move(*entries));
}

struct Wanted {
  Profile profile;
  std::unique_ptr<Wire> wire;
  std::optional<WireRecorder> recorder;
  std::optional<double> seconds;
};

int run_bench(Wanted wanted) {
  int argc = 1;
  char name[] = "brimline-batch";
  char* argv[] = {name, nullptr};
  QCoreApplication app(argc, argv);
  quit_on_signals(app);
  Bench bench(machine_now);
  QObject::connect(&bench, &Bench::happened, &app, print);
  if (wanted.seconds)
    QTimer::singleShot(static_cast<int>(*wanted.seconds * 1000), &app, &QCoreApplication::quit);
  Wire* wire = wanted.wire.get();
  QObject::connect(wire, &Wire::finished, &app, &QCoreApplication::quit, Qt::QueuedConnection);
  QTimer::singleShot(0, &app, [&] {
    if (wanted.recorder)
      bench.listen(std::move(wanted.profile), std::move(wanted.wire), std::move(*wanted.recorder));
    else
      bench.listen(std::move(wanted.profile), std::move(wanted.wire));
  });
  QCoreApplication::exec();
  return kDone;
}

}  // namespace

int listen_command(const Arguments& arguments) {
  const auto parsed = parse(arguments, {"--port", "--profile", "--record", "--for"});
  if (!parsed) return bad_usage("listen", parsed.error());
  const auto port = parsed->value("--port"), name = parsed->value("--profile");
  if (!port || !name || !parsed->positional.empty())
    return bad_usage("listen", "expected --port PATH and --profile NAME|FILE");
  Wanted wanted;
  if (const auto text = parsed->value("--for")) {
    wanted.seconds = parse_seconds(*text);
    if (!wanted.seconds)
      return bad_usage("listen", "--for " + *text + " is no time; expected seconds, 0 to 1000000");
  }
  auto profile = load_profile(*name);
  if (!profile) return print_faults(profile.error());
  auto wire = wire_for(*port, *profile);
  if (!wire) return print_faults({wire.error()});
  if (const auto record = parsed->value("--record")) {
    wanted.recorder = WireRecorder::create(*record, machine_now().text() + " " + profile->id);
    if (!wanted.recorder) return print_faults({{*record, 0, "cannot be written", "a file to record to"}});
  }
  wanted.profile = std::move(*profile);
  wanted.wire = std::move(*wire);
  return run_bench(std::move(wanted));
}

}  // namespace brimline::batch
