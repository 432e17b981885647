// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/bench/tap_shop.h"

#include <QFile>
#include <QThread>

#include <cstdlib>

#include "qml/models/back_pool.h"
#include "qml/services_of_station.h"
#include "station/visit_json.h"
#include "tests/long/shop_of_many.h"

namespace brimline::test {
namespace {

QByteArray read(const QString& name) {
  QFile file(QStringLiteral(BRIMLINE_SOURCE_DIR "/demo/") + name);
  if (!file.open(QIODevice::ReadOnly)) std::abort();
  return file.readAll();
}

Visit whole_bottle() {
  return read_visit(read("visits/plaster_pool.json").toStdString(), "plaster_pool.json").value();
}

}  // namespace

void make_tap_store(const std::string& file, std::int64_t visits) {
  tests::fill_sqlite(file, visits);
  auto store = Store::open("sqlite:" + file);
  if (!store) std::abort();
  for (const QByteArray& line : read("shop/earlier_visits.jsonl").trimmed().split('\n')) {
    Visit one = read_visit(line.toStdString(), "earlier_visits.jsonl").value();
    one.customer->id = "D-" + one.customer->id;  // the invented ones are named alike
    one.vessel.id = "D-" + one.vessel.id;
    if (!store->keep(one)) std::abort();
  }
  const Instant now = Instant::parse(kTapClock).value();
  for (std::int64_t i = 0; i < visits / 50; ++i) {
    Visit one = tests::shop_visit(i * 5);
    one.id = "K-" + std::to_string(i);
    one.bottle.code = "K-" + std::to_string(i);
    one.bottle.taken_at = Instant{now.utc - std::chrono::minutes(5 + 15 * (i % 300)), now.offset};
    for (Reading& reading : one.bottle.readings) reading.lot = "LOT-" + std::to_string(i % 6);
    if (!store->keep(one)) std::abort();
  }
}

tl::expected<std::unique_ptr<TapShop>, std::string> TapShop::open(const std::string& store, double pause_s) {
  std::unique_ptr<TapShop> shop(new TapShop);
  const QString database = shop->folder_.filePath("counter.db");
  if (!QFile::copy(QString::fromStdString(store), database))
    return tl::unexpected(store + ": cannot be copied to " + database.toStdString());
  Settings settings;
  settings.shop.name = "Bench";
  shop->start_instruments(settings, pause_s);
  const QString file = shop->folder_.filePath("shop.ini");
  if (!save_settings(settings, file)) return tl::unexpected(file.toStdString() + ": cannot be written");
  KioskOptions options;
  options.database = "sqlite:" + database;
  options.settings = file;
  options.out_dir = shop->folder_.filePath("sheets");
  options.windowed = true;
  options.clock = Instant::parse(kTapClock);
  auto started = Kiosk::start(options);
  if (!started) return tl::unexpected(started.error());
  shop->kiosk_ = std::move(*started);
  shop->planner_ = std::thread([&self = *shop] { self.plan_on(); });
  return shop;
}

TapShop::~TapShop() {
  over_ = true;
  if (planner_.joinable()) planner_.join();
  kiosk_.reset();
  for (auto& instrument : instruments_) {
    if (!instrument) continue;
    instrument->kill();
    instrument->waitForFinished();
  }
}

// The demo's plaster pool under another label.
QString TapShop::bottle(const QString& code) const {
  QByteArrayList lines;
  for (const QByteArray& line : read("bottles/plaster_pool.toml").split('\n')) {
    if (line.startsWith("visit =")) continue;
    lines.append(line.startsWith("code =") ? "code = \"" + code.toUtf8() + "\"" : line);
  }
  QFile file(folder_.filePath(code + ".toml"));
  const QByteArray text = lines.join('\n');
  if (!file.open(QIODevice::WriteOnly) || file.write(text) != text.size()) std::abort();
  return file.fileName();
}

void TapShop::start_instruments(Settings& settings, double pause_s) {
  for (int i = 0; i < 2; ++i) {
    const QString port = folder_.filePath(QStringLiteral("line%1").arg(i));
    instruments_[i] = std::make_unique<QProcess>();
    instruments_[i]->setStandardOutputFile(QProcess::nullDevice());
    instruments_[i]->start(BRIMLINE_BIN_DIR "/brimline-photometer",
                           {"--bottle", bottle(QStringLiteral("T-%1").arg(i)), "--profile", "bench_lines",
                            "--link", port, "--pause", QString::number(pause_s), "--rounds", "100000",
                            "--seed", QString::number(i + 1), "--wait"});
    settings.lines[i] = {port, "bench_lines"};
    for (int tries = 0; !QFile::exists(port) && tries < 500; ++tries) QThread::msleep(20);
  }
}

void TapShop::measure(int instrument, const QString& code) {
  instruments_[instrument]->write(("bottle " + bottle(code) + "\n").toUtf8());
}

// As the kiosk's own plans are made.
void TapShop::plan_on() {
  give_way();
  const Services services = services_of_station(folder_.filePath("sheets"), folder_.filePath("shop.ini"));
  Visit visit = whole_bottle();
  visit.home_at = Instant::parse(kTapClock);
  while (!over_) {
    if (!services.plan(visit, {}, "en", {}, std::nullopt, {})) std::abort();
    ++plans_;
  }
}

}  // namespace brimline::test
