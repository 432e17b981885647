// SPDX-License-Identifier: GPL-3.0-or-later
#include "qml/models/week_form.h"

#include "qml/models/form_field.h"
#include "qml/models/private_file.h"
#include "station/week/week_words.h"

namespace brimline {
namespace {

constexpr int kWeeksBack = 4;

QString q(const std::string& text) {
  return QString::fromStdString(text);
}

}  // namespace

WeekForm::WeekForm(Counter& counter, Settings& settings, Services services, QString out_dir, QObject* parent)
    : QObject(parent),
      counter_(counter),
      paper_(counter, settings, std::move(services)),
      out_dir_(std::move(out_dir)),
      beside_(counter) {
  connect(&beside_, &Beside::moved, this, &WeekForm::moved);
  connect(&paper_, &BackPaper::said, this, &WeekForm::said);
}

void WeekForm::shown() {
  count();
}

void WeekForm::left() {
  beside_.stop();
}

void WeekForm::count() {
  week_.reset();
  unread_.clear();
  beside_.begin<OwnersWeek>(
      [from = week_begin(counter_.now(), which_.toInt()), supplies = counter_.written_supplies()](
          Store& store, const Progress& progress) { return week_of(store, from, supplies, progress); },
      [this](Stored<OwnersWeek> week) {
        if (week)
          week_ = std::move(*week);
        else
          unread_ = tr("The records cannot be read now.");
      });
}

QList<QVariantMap> WeekForm::fields() {
  QVariantList weeks;
  for (int back = 0; back < kWeeksBack; ++back)
    weeks.append(QVariantMap{{"key", QString::number(back)},
                             {"word", back == 0   ? tr("This week")
                                      : back == 1 ? tr("Last week")
                                                  : tr("%1 weeks ago").arg(back)}});
  const auto option = [](const char* key, const QString& word) {
    return QVariantMap{{"key", QString::fromLatin1(key)}, {"word", word}};
  };
  return {form_field("week_which", tr("Which"), which_, weeks),
          form_field("week_act", tr("As"), act_,
                     {option("paper", tr("A sheet, printed")), option("file", tr("A sheet, as a file")),
                      option("table", tr("A table (CSV)"))})};
}

QList<QVariantMap> WeekForm::rows() {
  QList<QVariantMap> out;
  if (beside_.busy())
    return {{{"name", tr("Counting ...")},
             {"detail", QString()},
             {"number", beside_.percent() > 0 ? tr("%1 %").arg(beside_.percent()) : QString()}}};
  if (!week_)
    return {{{"name", unread_.isEmpty() ? tr("Not counted") : unread_},
             {"detail", QString()},
             {"number", QString()}}};
  const Words& words = counter_.words();
  for (const WeekPart& part : week_parts(*week_, words))
    for (const WeekLine& line : part.lines)
      out.append({{"name", q(line.name)},
                  {"detail", q(line.detail.empty() ? part.title : part.title + " · " + line.detail)},
                  {"number", q(line.number)}});
  return out;
}

bool WeekForm::set(const QString& key, const QString& text) {
  if (key == QLatin1String("week_act")) act_ = text;
  if (key == QLatin1String("week_which")) {
    which_ = text;
    count();
  }
  return true;
}

QString WeekForm::act_word() const {
  if (beside_.busy()) return tr("Stop");
  if (!week_) return tr("Count it");
  return act_ == QLatin1String("paper") ? tr("Print it") : tr("Write it");
}

QString WeekForm::act() {
  if (beside_.busy()) {
    beside_.stop();
    return {};
  }
  if (!week_) {
    count();
    return {};
  }
  return act_ == QLatin1String("table") ? write_table() : print();
}

QString WeekForm::print() {
  SheetJob job = paper_.job(PaperKind::week, counter_.words().language(), act_ == QLatin1String("paper"));
  job.week = week_;
  paper_.make(job);
  return tr("Making the sheet ...");
}

QString WeekForm::write_table() const {
  const std::string text = week_csv(*week_);
  const QString file =
      QDir(out_dir_).filePath(QStringLiteral("week-%1.csv").arg(q(week_->from.text().substr(0, 10))));
  if (!QDir().mkpath(out_dir_)) return tr("%1 cannot be made.").arg(out_dir_);
  if (!write_privately(file, text)) return tr("%1 cannot be written.").arg(file);
  return tr("Written to %1. No names stand in it.").arg(file);
}

}  // namespace brimline
