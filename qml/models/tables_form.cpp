// SPDX-License-Identifier: GPL-3.0-or-later
#include "qml/models/tables_form.h"

#include <QDir>
#include <QElapsedTimer>

#include <algorithm>

#include "qml/models/form_field.h"
#include "station/records/tables_out.h"
#include "station/wording/fault_words.h"

namespace brimline {
namespace {

constexpr size_t kShownFaults = 100;
constexpr qint64 kBetweenWords = 200;  // ms

QString q(const std::string& text) {
  return QString::fromStdString(text);
}

// A folder of its own, so that nothing that is there is written over.
QString fresh_folder(const QString& parent, const Instant& now) {
  const QString day = q(now.text().substr(0, 10));
  QString out = QDir(parent).filePath("tables-" + day);
  for (int n = 2; QFileInfo::exists(out); ++n)
    out = QDir(parent).filePath(QStringLiteral("tables-%1-%2").arg(day).arg(n));
  return out;
}

}  // namespace

TablesForm::TablesForm(Counter& counter, QString out_dir, QObject* parent)
    : QObject(parent), counter_(counter), folder_(std::move(out_dir)) {}

TablesForm::~TablesForm() {
  stop_ = true;
  pool_.wait();
}

ImportFiles TablesForm::files() const {
  ImportFiles out;
  if (!customers_.isEmpty()) out.customers.push_back(customers_.toStdString());
  if (!readings_.isEmpty()) out.readings.push_back(readings_.toStdString());
  return out;
}

QList<QVariantMap> TablesForm::fields() {
  const QVariantList wishes{
      QVariantMap{{"key", "out"}, {"word", tr("Write everything out as tables")}},
      QVariantMap{{"key", "in"}, {"word", tr("Bring in customers and earlier readings")}}};
  QList<QVariantMap> out{form_field("tables_wish", tr("What to do"), want_, wishes)};
  if (want_ == QLatin1String("out")) {
    out.append(form_field("tables_folder", tr("Folder or stick; a new folder is made in it"), folder_));
    return out;
  }
  out.append(form_field("tables_customers", tr("Table of customers, a CSV file"), customers_));
  out.append(form_field("tables_readings", tr("Table of earlier readings, a CSV file"), readings_));
  return out;
}

QList<QVariantMap> TablesForm::rows() {
  QList<QVariantMap> out;
  if (want_ == QLatin1String("out")) {
    for (const std::string& name : table_files())
      out.append({{"name", q(name)}, {"detail", QString()}, {"number", QString()}});
    return out;
  }
  if (!import_) return out;
  const auto count = [&](const QString& name, const ImportCount& of) {
    out.append({{"name", name},
                {"detail", of.there > 0 ? tr("%1 in the records already").arg(of.there) : QString()},
                {"number", tr("%1 new").arg(of.fresh)}});
  };
  count(tr("Customers"), import_->counts.customers);
  count(tr("Vessels"), import_->counts.vessels);
  count(tr("Visits"), import_->counts.visits);
  count(tr("Readings"), import_->counts.readings);
  const auto remarks = [&](const QString& name, const ImportRemarks& list) {
    for (size_t i = 0; i < std::min(kShownFaults, list.list().size()); ++i)
      out.append({{"name", name},
                  {"detail", q(fault_words(counter_.words(), list.list()[i]))},
                  {"number", QString()}});
    if (list.count() > kShownFaults)
      out.append({{"name", name},
                  {"detail", tr("and %1 more").arg(list.count() - kShownFaults)},
                  {"number", QString()}});
  };
  remarks(tr("Left out"), import_->faults);
  remarks(tr("Left as it is"), import_->notes);
  return out;
}

bool TablesForm::set(const QString& key, const QString& text) {
  if (key == QLatin1String("tables_folder")) folder_ = text.trimmed();
  if (key == QLatin1String("tables_customers")) customers_ = text.trimmed();
  if (key == QLatin1String("tables_readings")) readings_ = text.trimmed();
  if (key == QLatin1String("tables_wish")) want_ = text;
  const bool had = import_ != nullptr;
  import_.reset();
  return had || key == QLatin1String("tables_wish");
}

QString TablesForm::act_word() const {
  if (busy_) return tr("Stop");
  if (want_ == QLatin1String("out")) return tr("Write them");
  if (!import_) return tr("Look through");
  return import_->faults.count() > 0 ? tr("Keep the sound lines") : tr("Keep them all");
}

QString TablesForm::act() {
  if (busy_) {
    stop_ = true;
    return tr("It stops at the next whole piece ...");
  }
  if (want_ == QLatin1String("out")) return write_out();
  return import_ ? keep() : look();
}

// The work's own store, beside the screen's; what it says comes back to the screen.
QString TablesForm::begin(Said work) {
  busy_ = true;
  stop_ = false;
  pool_.start([this, work = std::move(work), url = counter_.records().shared_place()] {
    QElapsedTimer since;
    since.start();
    const Progress progress = [&](double share) {
      if (since.elapsed() > kBetweenWords) {
        since.restart();
        QMetaObject::invokeMethod(
            this, [this, share] { emit said(tr("%1 % done ...").arg(qRound(share * 100))); },
            Qt::QueuedConnection);
      }
      return !stop_;
    };
    auto store = Store::open(url, Opening::existing);
    const QString sentence = store ? work(*store, progress) : q(store.error().text);
    QMetaObject::invokeMethod(
        this,
        [this, sentence] {
          busy_ = false;
          emit said(sentence);
        },
        Qt::QueuedConnection);
  });
  return tr("Working ...");
}

QString TablesForm::write_out() {
  if (folder_.isEmpty()) return tr("Name a folder first.");
  const QString folder = fresh_folder(folder_, counter_.now());
  (void)counter_.records().note(
      {"tables", folder.toStdString(), std::nullopt, std::nullopt, std::nullopt, std::nullopt});
  return begin([folder](Store& store, const Progress& progress) {
    const auto rows = write_tables(store, folder.toStdString(), Tables::keep_existing, progress);
    if (!rows) return q(rows.error().text);
    return tr("Written to %1: %2 visits, %3 customers.")
        .arg(folder)
        .arg(rows->at("visits.csv"))
        .arg(rows->at("customers.csv"));
  });
}

QString TablesForm::look() {
  const ImportFiles from = files();
  if (from.customers.empty() && from.readings.empty()) return tr("Name a table first.");
  return begin([this, from](Store& store, const Progress& progress) {
    auto looked = look_through(store, from, progress);
    if (!looked) return q(looked.error().text);
    const auto import = std::make_shared<const Import>(std::move(*looked));
    QMetaObject::invokeMethod(
        this, [this, import] { import_ = import; }, Qt::QueuedConnection);
    if (import->faults.count() == 0) return tr("Looked through: nothing is kept yet.");
    return tr("Looked through: nothing is kept yet. Lines that cannot be taken: %1.")
        .arg(import->faults.count());
  });
}

QString TablesForm::keep() {
  const std::shared_ptr<const Import> import = std::move(import_);
  import_.reset();
  for (const QString& file : {customers_, readings_})
    if (!file.isEmpty())
      (void)counter_.records().note(
          {"import", file.toStdString(), std::nullopt, std::nullopt, std::nullopt, std::nullopt});
  return begin([this, import, from = files()](Store& store, const Progress& progress) {
    const auto kept = keep_import(store, *import, from, progress);
    QMetaObject::invokeMethod(this, &TablesForm::brought_in, Qt::QueuedConnection);
    if (!kept) return q(kept.error().text);
    return tr("Kept: %1 customers, %2 visits, %3 readings.")
        .arg(kept->customers.fresh)
        .arg(kept->visits.fresh)
        .arg(kept->readings.fresh);
  });
}

}  // namespace brimline
