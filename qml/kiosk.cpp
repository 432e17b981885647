// SPDX-License-Identifier: GPL-3.0-or-later
#include "qml/kiosk.h"

#include <QCoreApplication>
#include <QDateTime>
#include <QDir>
#include <QElapsedTimer>
#include <QFile>
#include <QGuiApplication>
#include <QLocale>
#include <QQmlComponent>
#include <QQmlIncubationController>
#include <QRandomGenerator>
#include <QScreen>
#include <QTimer>

#include <cstdio>

#include "qml/models/clock_face.h"
#include "qml/models/journal_records.h"
#include "qml/services_of_station.h"
#include "station/backup/schedule.h"
#include "station/store/copy.h"
#include "station/visit_json.h"

namespace brimline {
namespace {

constexpr qint64 kBuilding = 3000;  // ms, the longest that places still being built are waited for

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

QUrl url_of(const QString& page) {
  return QUrl("qrc:/qt/qml/Counter/" + page + ".qml");
}

// Random, so that counters of one shop never meet: 64 bits.
std::string new_id(std::string_view prefix) {
  const quint64 number = QRandomGenerator::system()->generate64();
  return std::string(prefix) + "-" + QString::number(number, 36).toUpper().toStdString();
}

}  // namespace

Kiosk::Kiosk(const KioskOptions& options) : options_(options) {}
// The window goes before what it shows.
Kiosk::~Kiosk() {
  close_window();
}

// Not while places are still built behind it: Qt 6.4 deletes half-made controls twice.
void Kiosk::close_window() {
  QElapsedTimer spent;
  spent.start();
  QQmlIncubationController* building = engine_ ? engine_->incubationController() : nullptr;
  while (building && building->incubatingObjectCount() > 0 && spent.elapsed() < kBuilding)
    building->incubateFor(100);
  window_ = nullptr;
  engine_.reset();
}

tl::expected<std::unique_ptr<Kiosk>, std::string> Kiosk::start(const KioskOptions& options) {
  std::unique_ptr<Kiosk> kiosk(new Kiosk(options));
  kiosk->fetch_pages();
  if (const auto why = kiosk->open_records()) {
    if (kiosk->offer_rescue(*why)) return kiosk;
    return tl::unexpected(why->text);
  }
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
  setup.out_dir = options.out_dir;
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
  QObject::connect(
      kiosk->bench_.get(), &Bench::happened, kiosk->desk_.get(),
      [k = kiosk.get()](const Happening& happening) {
        if (!k->desk_->settings().sounds || std::holds_alternative<BackAgain>(happening.what)) return;
        k->chime_.play(std::holds_alternative<Trouble>(happening.what) ? Chime::trouble : Chime::reading);
      });
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
      k->show();
    });
  });
  QObject::connect(&kiosk->desk_->back()->backups(), &BackupForm::restoring, kiosk->desk_.get(),
                   [k = kiosk.get()](const QString& backup) {
                     k->to_restore_ = backup;
                     k->reopen_ = true;
                     QTimer::singleShot(0, QCoreApplication::instance(), &QCoreApplication::quit);
                   });
  kiosk->speak();
  kiosk->listen();
  if (options.first_start) kiosk->desk_->firstStart()->begin();
  kiosk->show();
  if (!kiosk->window_) return tl::unexpected(std::string("the window could not be made"));
  return kiosk;
}

// A server's records are kept in a journal of this counter first, beside its settings.
std::optional<StoreError> Kiosk::open_records() {
  const bool shared = !options_.database.startsWith("sqlite:");
  const QString own = shared ? "sqlite:" + QFileInfo(options_.settings).absoluteDir().filePath("journal.db")
                             : options_.database;
  QDir().mkpath(QFileInfo(own.mid(7)).absolutePath());
  const std::string url = own.toStdString();
  auto store = Store::open(url);
  if (!store) return StoreError{store.error().trouble, url + ": " + store.error().text};
  store_ = std::make_unique<Store>(std::move(*store));
  if (!shared) {
    records_ = std::make_unique<StoreRecords>(*store_, url);
    return std::nullopt;
  }
  const std::string there = options_.database.toStdString();
  // A server that answers and holds something else, or a later store, is told at once.
  if (const auto reached = Store::open(there);
      !reached && reached.error().trouble != StoreTrouble::unreachable)
    return reached.error();
  const auto to_desk = [this](void (Desk::*what)()) {
    return [this, what] {
      QMetaObject::invokeMethod(
          QCoreApplication::instance(),
          [this, what] {
            if (desk_) (desk_.get()->*what)();
          },
          Qt::QueuedConnection);
    };
  };
  records_ = std::make_unique<JournalRecords>(
      *store_, url, there, [] { return new_id("J"); }, to_desk(&Desk::refreshRecords),
      to_desk(&Desk::recordsChanged));
  return std::nullopt;
}

tl::expected<std::unique_ptr<Kiosk>, std::string> Kiosk::restored(std::unique_ptr<Kiosk> kiosk) {
  KioskOptions options = kiosk->options_;
  options.visit.clear();
  const bool empty = kiosk->to_restore_.isEmpty();
  const std::string file = kiosk->to_restore_.toStdString();
  kiosk.reset();
  const auto done = empty ? set_aside(options.database.toStdString())
                          : restore(file, options.database.toStdString(), Existing::set_aside);
  auto again = start(options);
  if (!again) return again;
  if (!(*again)->desk_) return again;
  QString said = empty ? QString()
                 : done
                     ? QCoreApplication::translate("brimline::Kiosk", "The backup is back: %1.")
                           .arg(QString::fromStdString(file))
                     : QCoreApplication::translate("brimline::Kiosk", "The backup was not brought back: %1")
                           .arg(QString::fromStdString(done.error().text));
  if (done && *done)
    said += QStringLiteral(" ") +
            QCoreApplication::translate("brimline::Kiosk", "The records of before are set aside: %1.")
                .arg(QString::fromStdString(**done));
  (void)(*again)->records_->note(
      {"backup", file, "restored", std::nullopt, std::nullopt, done ? std::string() : done.error().text});
  (*again)->desk_->tell(said);
  return again;
}

bool Kiosk::offer_rescue(const StoreError& why) {
  const bool unreadable = why.trouble == StoreTrouble::damaged || why.trouble == StoreTrouble::not_a_store;
  if (!unreadable || !options_.database.startsWith("sqlite:") || !options_.shots.isEmpty()) return false;
  rescue_ = std::make_unique<RescueDesk>();
  rescue_->why = QString::fromStdString(why.text);
  QString folder = load_settings(options_.settings).backup_folder;
  if (folder.isEmpty()) folder = QFileInfo(options_.database.mid(7)).absoluteDir().filePath("backups");
  for (const BackupFile& file : backups_in(folder.toStdString())) {
    const auto there = look_into(file.path);
    if (!there) continue;
    rescue_->backup = QString::fromStdString(file.path);
    rescue_->backup_line = QCoreApplication::translate(
                               "brimline::Kiosk", "The newest sound backup is of %1 and holds %2 visits.")
                               .arg(date_line(file.at))
                               .arg(there->visits);
    break;
  }
  QObject::connect(rescue_.get(), &RescueDesk::chosen, rescue_.get(), [this](const QString& backup) {
    to_restore_ = backup;
    reopen_ = true;
    QTimer::singleShot(0, QCoreApplication::instance(), &QCoreApplication::quit);
  });
  show_window("Rescue", load_settings(options_.settings), {{"desk", QVariant::fromValue(rescue_.get())}});
  return window_ != nullptr;
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

void Kiosk::fetch_pages() {
  close_window();
  engine_ = std::make_unique<QQmlApplicationEngine>();
  engine_->addImportPath("qrc:/qt/qml");
  unused_ = true;
  for (const char* page : {"Main", "Tune", "Arrivals"})
    new QQmlComponent(engine_.get(), url_of(page), QQmlComponent::Asynchronous, engine_.get());
}

void Kiosk::show_window(const QString& page, const Settings& look, QVariantMap properties) {
  if (!unused_) fetch_pages();
  unused_ = false;
  const bool windowed = options_.windowed || !options_.shots.isEmpty();
  const QScreen* screen = QGuiApplication::primaryScreen();
  const QRect place(screen ? screen->geometry().topLeft() : QPoint(),
                    windowed || !screen ? options_.size : screen->size());
  QQmlComponent tune(engine_.get(), url_of("Tune"));
  const std::unique_ptr<QObject> tuned(tune.createWithInitialProperties(
      {{"page", QSizeF(place.size())}, {"theme", look.theme}, {"motion", look.motion}}));
  properties["width"] = place.width();
  properties["height"] = place.height();
  engine_->setInitialProperties(properties);
  engine_->load(url_of(page));
  if (engine_->rootObjects().isEmpty()) return;
  window_ = qobject_cast<QQuickWindow*>(engine_->rootObjects().first());
  if (!window_) return;
  if (windowed) {
    window_->show();
  } else {
    // Where nobody manages windows, full screen alone does not resize one.
    window_->setGeometry(place);
    window_->showFullScreen();
  }
  window_->requestActivate();
}

void Kiosk::show() {
  show_window("Main", desk_->settings(), {{"desk", QVariant::fromValue(desk_.get())}});
  if (!window_) return;
  window_->installEventFilter(desk_->lock());
  if (!options_.trace) return;
  QObject::connect(
      window_, &QQuickWindow::frameSwapped, desk_.get(),
      [] {
        std::printf("frame\n");
        std::fflush(stdout);
      },
      static_cast<Qt::ConnectionType>(Qt::QueuedConnection | Qt::SingleShotConnection));
}

}  // namespace brimline
