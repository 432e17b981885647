// SPDX-License-Identifier: GPL-3.0-or-later
#include "qml/kiosk.h"

#include <QCoreApplication>
#include <QDateTime>
#include <QDir>
#include <QElapsedTimer>
#include <QFile>
#include <QLocale>
#include <QRandomGenerator>
#include <QScreen>
#include <QTimer>

#include <cstdio>

#include "qml/services_of_station.h"
#include "station/visit_json.h"

namespace brimline {
namespace {

Instant machine_now() {
  const QDateTime now = QDateTime::currentDateTime();
  return {std::chrono::sys_seconds(std::chrono::seconds(now.toSecsSinceEpoch())),
          std::chrono::minutes(now.offsetFromUtc() / 60)};
}

// The machine's clock, or one that starts at `start` and goes on from there.
Counter::Now clock_from(const std::optional<Instant>& start) {
  if (!start) return machine_now;
  auto elapsed = std::make_shared<QElapsedTimer>();
  elapsed->start();
  return [start = *start, elapsed] {
    return Instant{start.utc + std::chrono::seconds(elapsed->elapsed() / 1000), start.offset};
  };
}

// Random, so that counters of one shop never meet: 64 bits.
std::string new_id(std::string_view prefix) {
  const quint64 number = QRandomGenerator::system()->generate64();
  return std::string(prefix) + "-" + QString::number(number, 36).toUpper().toStdString();
}

}  // namespace

Kiosk::Kiosk(const KioskOptions& options) : options_(options) {}
Kiosk::~Kiosk() = default;

tl::expected<std::unique_ptr<Kiosk>, std::string> Kiosk::start(const KioskOptions& options) {
  const std::string url = options.database.toStdString();
  if (options.database.startsWith("sqlite:"))
    QDir().mkpath(QFileInfo(options.database.mid(7)).absolutePath());
  auto store = Store::open(url);
  if (!store) return tl::unexpected(url + ": " + store.error().text);
  std::unique_ptr<Kiosk> kiosk(new Kiosk(options));
  kiosk->store_ = std::make_unique<Store>(std::move(*store));
  kiosk->records_ = std::make_unique<StoreRecords>(*kiosk->store_, url);
  const Counter::Now now = clock_from(options.clock);
  kiosk->counter_ = std::make_unique<Counter>(*kiosk->records_, now, new_id);
  kiosk->bench_ = std::make_unique<Bench>(now);

  Desk::Setup setup;
  setup.settings = load_settings(options.settings);
  if (!options.port.isEmpty()) setup.settings.lines[0].port = options.port;
  if (!options.profile.isEmpty()) setup.settings.lines[0].profile = options.profile;
  if (!options.language.isEmpty()) setup.settings.language = options.language;
  if (!options.theme.isEmpty()) setup.settings.theme = options.theme;
  setup.settings_file = options.settings;
  setup.services = services_of_station(options.out_dir, options.settings);
  setup.screen_keyboard = options.screen_keyboard;
  kiosk->desk_ = std::make_unique<Desk>(*kiosk->counter_, std::move(setup));

  if (options.trace)
    QObject::connect(kiosk->counter_.get(), &Counter::readingKept,
                     [](const QString& visit, const QString& analyte, double value) {
                       std::printf("kept %s %s %.17g\n", qPrintable(visit), qPrintable(analyte), value);
                       std::fflush(stdout);
                     });
  if (!options.visit.isEmpty())
    if (const std::string fault = kiosk->put_on_counter(options.visit); !fault.empty())
      return tl::unexpected(fault);
  QObject::connect(kiosk->bench_.get(), &Bench::happened, kiosk->desk_.get(), &Desk::onHappened);
  // A port has one listener: the bench is silent while the Back room tries profiles on it.
  ListenerForm& trial = kiosk->desk_->back()->listener();
  QObject::connect(&trial, &ListenerForm::began, kiosk->desk_.get(), [k = kiosk.get()] {
    while (!k->bench_->instruments().empty()) k->bench_->stop(*k->bench_->instruments().front());
  });
  QObject::connect(&trial, &ListenerForm::ended, kiosk->desk_.get(), [k = kiosk.get()] {
    k->listening_.reset();
    k->listen();
  });
  QObject::connect(&trial, &ListenerForm::heard, kiosk->desk_.get(),
                   [k = kiosk.get(), now](const InstrumentReading& reading, const QString& profile) {
                     k->desk_->onHappened({now(), profile.toStdString(), reading});
                   });
  QObject::connect(kiosk->desk_->back(), &BackDesk::applied, kiosk->desk_.get(), [k = kiosk.get()] {
    k->listen();
    if (k->spoken_ == k->desk_->settings().language) return;
    // Not from within the window that is to go: it is made anew, with every sentence.
    QTimer::singleShot(0, k->desk_.get(), [k] {
      k->speak();
      k->tell_instruments();
      k->show(k->options_);
    });
  });
  kiosk->speak();
  kiosk->listen();
  if (options.first_start) kiosk->desk_->firstStart()->begin();
  kiosk->show(options);
  if (!kiosk->window_) return tl::unexpected(std::string("the window could not be made"));
  return kiosk;
}

std::string Kiosk::put_on_counter(const QString& file) {
  QFile input(file);
  if (!input.open(QIODevice::ReadOnly)) return file.toStdString() + ": cannot be read";
  const auto visit = read_visit(input.readAll().toStdString(), file.toStdString());
  if (!visit) return visit.error().front().text();
  if (!records_->visit(visit->id))
    if (const auto kept = records_->begin(*visit); !kept) return file.toStdString() + ": " + kept.error();
  const auto opened = counter_->open(visit->id);
  return opened ? std::string() : opened.error();
}

void Kiosk::listen() {
  const std::vector<InstrumentLine>& lines = desk_->settings().lines;
  if (lines == listening_) return tell_instruments();
  while (!bench_->instruments().empty()) bench_->stop(*bench_->instruments().front());
  listening_ = lines;
  for (const InstrumentLine& line : lines) {
    if (line.port.isEmpty()) continue;
    if (auto profile = load_profile(line.profile.toStdString()))
      bench_->listen(std::move(*profile), line.port);
  }
  tell_instruments();
}

void Kiosk::tell_instruments() {
  QStringList said;
  for (const InstrumentLine& line : desk_->settings().lines) {
    if (line.port.isEmpty()) continue;
    const auto profile = load_profile(line.profile.toStdString());
    if (!profile) {
      said.append(QString::fromStdString(profile.error().front().text()));
      continue;
    }
    said.append(QObject::tr("%1 on %2: its readings come in by themselves")
                    .arg(QString::fromStdString(profile->name), line.port));
  }
  if (said.isEmpty())
    said.append(QObject::tr("No instrument is set; type the readings. (Back room, Instrument)"));
  else if (said.size() > 2)
    said = {QObject::tr("%1 instruments: their readings come in by themselves").arg(said.size())};
  desk_->bench()->setInstrumentLine(said.join(QStringLiteral("; ")));
}

void Kiosk::speak() {
  const QString language = desk_->settings().language;
  spoken_ = language;
  if (translator_) QCoreApplication::removeTranslator(translator_.get());
  translator_.reset();
  if (language != "en") {
    translator_ = std::make_unique<QTranslator>();
    if (translator_->load(":/i18n/kiosk_" + language + ".qm"))
      QCoreApplication::installTranslator(translator_.get());
  }
  QLocale::setDefault(language == "en" ? QLocale::c() : QLocale(language));
  counter_->speak(language.toStdString());
  desk_->retell();
}

void Kiosk::show(const KioskOptions& options) {
  window_ = nullptr;
  engine_ = std::make_unique<QQmlApplicationEngine>();
  engine_->addImportPath("qrc:/qt/qml");
  engine_->setInitialProperties({{"desk", QVariant::fromValue(desk_.get())}});
  engine_->load(QUrl("qrc:/qt/qml/Counter/Main.qml"));
  if (engine_->rootObjects().isEmpty()) return;
  window_ = qobject_cast<QQuickWindow*>(engine_->rootObjects().first());
  if (!window_) return;
  if (options.windowed || !options.shots.isEmpty()) {
    window_->resize(options.size);
    window_->show();
  } else {
    // Where nobody manages windows, full screen alone does not resize one.
    if (window_->screen()) window_->setGeometry(window_->screen()->geometry());
    window_->showFullScreen();
  }
  window_->requestActivate();
}

}  // namespace brimline
