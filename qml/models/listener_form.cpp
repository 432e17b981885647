// SPDX-License-Identifier: GPL-3.0-or-later
#include "qml/models/listener_form.h"

#include <QCoreApplication>
#include <QDir>
#include <QSaveFile>
#include <QVariantList>

#include "devices/serial_wire.h"
#include "qml/models/form_field.h"

namespace brimline {
namespace {

constexpr Millis kEach{6000};  // longer than an idle line's pause
constexpr size_t kRawLines = 40;

QString q(std::string_view text) {
  return QString::fromUtf8(text.data(), static_cast<int>(text.size()));
}
QString say(const char* text) {
  return QCoreApplication::translate("listener", text);
}
QVariantMap choice(const char* key, const QString& word) {
  return {{"key", QString::fromLatin1(key)}, {"word", word}};
}

QString counts_of(const TrialResult& r) {
  if (!r.opened) return say(QT_TRANSLATE_NOOP("listener", "the port could not be opened"));
  return say(QT_TRANSLATE_NOOP("listener", "%1 baud: %2 bytes, %3 sound frames, %4 readings, %5 garbled"))
      .arg(r.serial.baud)
      .arg(r.bytes)
      .arg(r.sound)
      .arg(r.readings.size())
      .arg(r.garbled);
}

bool written(const QString& file, const std::string& text) {
  QSaveFile out(file);
  const auto size = static_cast<qint64>(text.size());
  return out.open(QIODevice::WriteOnly) && out.write(text.data(), size) == size && out.commit();
}

}  // namespace

ListenerForm::ListenerForm(Settings& settings, QString folder, QObject* parent)
    : QObject(parent), settings_(settings), folder_(std::move(folder)) {}

QList<QVariantMap> ListenerForm::fields(int line) const {
  const QVariantList wishes{
      choice("listen", say(QT_TRANSLATE_NOOP("listener", "Try every profile"))),
      choice("use", say(QT_TRANSLATE_NOOP("listener", "Use the one that fits"))),
      choice("draft", say(QT_TRANSLATE_NOOP("listener", "Write a draft of a new one")))};
  return {
      form_field("listen_port", say(QT_TRANSLATE_NOOP("listener", "Port")), settings_.lines[line].port, {}),
      form_field("listen_wish", say(QT_TRANSLATE_NOOP("listener", "What to do")), want_, wishes)};
}

QList<QVariantMap> ListenerForm::rows() const {
  QList<QVariantMap> out;
  if (!trial_) return out;
  const TrialResult* best = trial_->best();
  for (const TrialResult& r : trial_->results())
    out.append({{"name", q(r.name)},
                {"detail", counts_of(r)},
                {"number", &r == best ? say(QT_TRANSLATE_NOOP("listener", "fits best"))
                           : r.fits() ? say(QT_TRANSLATE_NOOP("listener", "fits"))
                                      : QString()}});
  for (const std::string& raw : raw_lines(trial_->heard(), kRawLines)) {
    const QString text = q(raw);
    out.append(
        {{"name", text.left(18).trimmed()}, {"detail", text.mid(18).trimmed()}, {"number", QString()}});
  }
  return out;
}

QString ListenerForm::act_word() const {
  if (running()) return say(QT_TRANSLATE_NOOP("listener", "Stop"));
  return want_ == QLatin1String("use")     ? say(QT_TRANSLATE_NOOP("listener", "Use it"))
         : want_ == QLatin1String("draft") ? say(QT_TRANSLATE_NOOP("listener", "Write it"))
                                           : say(QT_TRANSLATE_NOOP("listener", "Listen"));
}

bool ListenerForm::set(const QString& key, const QString& text, int line) {
  if (key == QLatin1String("listen_port")) settings_.lines[line].port = text.trimmed();
  if (key != QLatin1String("listen_wish")) return false;
  want_ = text;
  return true;
}

QString ListenerForm::progress() const {
  if (!trial_) return {};
  if (running())
    return say(trial_->other_rates()
                   ? QT_TRANSLATE_NOOP("listener",
                                       "None understands it at its own rate. Trying other rates, %1 of %2; "
                                       "measure again and again.")
                   : QT_TRANSLATE_NOOP("listener", "Listening with profile %1 of %2; measure something now."))
        .arg(trial_->done() + 1)
        .arg(trial_->of());
  if (const TrialResult* best = trial_->best())
    return say(QT_TRANSLATE_NOOP("listener", "%1 understands this instrument.")).arg(q(best->name));
  if (trial_->heard().empty())
    return say(
        QT_TRANSLATE_NOOP("listener", "Nothing was heard: is it switched on, and the port the right one?"));
  return say(
      QT_TRANSLATE_NOOP("listener", "No profile understands it. A draft can be made from what was heard."));
}

void ListenerForm::stop() {
  if (running()) trial_->cancel();
}

QString ListenerForm::act(int line, bool& applied) {
  if (running()) {
    stop();
    return say(QT_TRANSLATE_NOOP("listener", "Stopped."));
  }
  const QString port = settings_.lines[line].port;
  if (want_ == QLatin1String("draft")) return draft();
  if (want_ == QLatin1String("use")) return use(line, applied);
  if (port.isEmpty()) return say(QT_TRANSLATE_NOOP("listener", "Name the port first."));
  emit began();
  trial_ = std::make_unique<ProfileTrial>(
      all_profiles(folder_.toStdString()),
      [port](const SerialSettings& serial) { return std::make_unique<SerialWire>(port, serial); }, kEach);
  connect(trial_.get(), &ProfileTrial::moved, this, &ListenerForm::moved);
  connect(trial_.get(), &ProfileTrial::finished, this, [this] {
    // What the instrument gave away while it was tried is a reading like any other.
    if (const TrialResult* best = trial_->best())
      for (const InstrumentReading& reading : best->readings) emit heard(reading, q(best->profile));
    emit ended();
    emit moved();
  });
  trial_->start();
  return progress();
}

// One that fits at another rate is kept as a profile of the shop's own.
QString ListenerForm::use(int line, bool& applied) const {
  const TrialResult* best = trial_ ? trial_->best() : nullptr;
  if (!best) return say(QT_TRANSLATE_NOOP("listener", "None fits yet: listen first."));
  QString profile = q(best->profile), name = q(best->name);
  const auto is = load_profile(best->profile);
  if (is && is->serial.baud != best->serial.baud) {
    const auto text = profile_at_rate(*is, best->serial.baud);
    profile = QDir(folder_).filePath(QStringLiteral("%1_%2.toml").arg(q(is->id)).arg(best->serial.baud));
    if (!text || !QDir().mkpath(folder_) || !written(profile, *text))
      return say(QT_TRANSLATE_NOOP("listener", "%1 cannot be written.")).arg(profile);
    name += say(QT_TRANSLATE_NOOP("listener", ", %1 baud")).arg(best->serial.baud);
  }
  settings_.lines[line].profile = profile;
  applied = true;
  return say(QT_TRANSLATE_NOOP("listener", "%1 is listened to on %2.")).arg(name, settings_.lines[line].port);
}

QString ListenerForm::draft() const {
  const std::string heard = trial_ ? trial_->heard() : std::string();
  SerialSettings serial;
  if (trial_)
    for (const TrialResult& r : trial_->results())
      if (r.bytes > 0) serial = r.serial;
  const auto text = profile_draft(heard, serial);
  if (!text)
    return say(
        QT_TRANSLATE_NOOP("listener", "Two whole lines of one form are needed for a draft: listen first."));
  if (!QDir().mkpath(folder_)) return say(QT_TRANSLATE_NOOP("listener", "%1 cannot be made.")).arg(folder_);
  QString file = QDir(folder_).filePath("draft.toml");
  for (int n = 2; QFile::exists(file); ++n)
    file = QDir(folder_).filePath(QStringLiteral("draft%1.toml").arg(n));
  if (!written(file, *text)) return say(QT_TRANSLATE_NOOP("listener", "%1 cannot be written.")).arg(file);
  return say(QT_TRANSLATE_NOOP("listener",
                               "Written to %1. It is refused until what stands as ? is filled in."))
      .arg(file);
}

}  // namespace brimline
