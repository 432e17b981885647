// SPDX-License-Identifier: GPL-3.0-or-later
#include "qml/models/backup_form.h"

#include <QDir>
#include <QFileInfo>

#include "qml/models/clock_face.h"
#include "qml/models/form_field.h"
#include "station/backup/schedule.h"

namespace brimline {
namespace {

QString q(const std::string& text) {
  return QString::fromStdString(text);
}

}  // namespace

BackupForm::BackupForm(Counter& counter, Settings& settings, QObject* parent)
    : QObject(parent), counter_(counter), settings_(settings) {}

BackupForm::~BackupForm() {
  pool_.wait();
}

QString BackupForm::folder() const {
  if (!settings_.backup_folder.isEmpty()) return settings_.backup_folder;
  const QString url = q(counter_.records().place());
  if (!url.startsWith(QLatin1String("sqlite:"))) return {};
  return QFileInfo(url.mid(7)).absoluteDir().filePath("backups");
}

QList<QVariantMap> BackupForm::fields() {
  QVariantList files{QVariantMap{{"key", ""}, {"word", tr("None: make one now")}}};
  for (const BackupFile& file : backups_in(folder().toStdString()))
    files.append(QVariantMap{{"key", q(file.path)}, {"word", date_line(file.at)}});
  return {
      form_field("backup_folder", tr("Folder or stick; empty: beside the records"), settings_.backup_folder),
      form_field("backup_file", tr("A backup to bring back"), chosen_, files)};
}

QList<QVariantMap> BackupForm::rows() {
  QList<QVariantMap> out;
  const auto row = [&](const QString& name, const QString& detail, const QString& number) {
    out.append({{"name", name}, {"detail", detail}, {"number", number}});
  };
  if (!chosen_.isEmpty()) {
    const auto there = look_into(chosen_.toStdString());
    if (!there) {
      row(tr("Cannot be used"), q(there.error().text), {});
      return out;
    }
    const auto here = counter_.records().contents();
    const auto last = [&](const std::optional<Instant>& at) {
      return at ? tr("last bottle %1").arg(when_words(counter_.now(), *at)) : QString();
    };
    row(tr("In this backup"), last(there->last_visit),
        tr("%1 visits, %2 customers").arg(there->visits).arg(there->customers));
    row(tr("In the records now"), {}, tr("%1 visits, %2 customers").arg(here.first).arg(here.second));
    row(tr("If it is brought back"), tr("The records of now are set aside under another name, not deleted."),
        {});
    return out;
  }
  for (const BackupFile& file : backups_in(folder().toStdString()))
    row(date_line(file.at), q(file.path),
        tr("%1 MB").arg(static_cast<double>(QFileInfo(q(file.path)).size()) / 1e6, 0, 'f', 1));
  return out;
}

bool BackupForm::set(const QString& key, const QString& text) {
  if (key == QLatin1String("backup_folder")) settings_.backup_folder = text.trimmed();
  if (key == QLatin1String("backup_file")) chosen_ = text;
  return key == QLatin1String("backup_file");
}

QString BackupForm::act_word() const {
  return chosen_.isEmpty() ? tr("Back up now") : tr("Bring it back");
}

QString BackupForm::act() {
  if (busy_) return tr("A backup is being made.");
  if (!chosen_.isEmpty()) {
    if (const auto sound = look_into(chosen_.toStdString()); !sound) return q(sound.error().text);
    emit restoring(chosen_);
    return tr("The counter closes its records and opens the backup’s.");
  }
  make();
  return tr("A backup is being made ...");
}

void BackupForm::make_if_due() {
  if (!busy_ && !folder().isEmpty() && backup_due(backups_in(folder().toStdString()), counter_.now())) make();
}

void BackupForm::make() {
  busy_ = true;
  pool_.start(
      [this, url = counter_.records().shared_place(), folder = folder().toStdString(), now = counter_.now()] {
        auto store = Store::open(url, Opening::existing);
        const auto made = store ? back_up_to_folder(*store, folder, now)
                                : Stored<std::string>(tl::unexpected(store.error()));
        const QString said = made ? tr("Backed up, opened and counted: %1").arg(q(*made))
                                  : tr("No backup was made: %1").arg(q(made.error().text));
        QMetaObject::invokeMethod(
            this,
            [this, said] {
              busy_ = false;
              emit this->said(said);
            },
            Qt::QueuedConnection);
      });
}

}  // namespace brimline
