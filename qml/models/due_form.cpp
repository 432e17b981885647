// SPDX-License-Identifier: GPL-3.0-or-later
#include "qml/models/due_form.h"

#include <cmath>

#include "qml/models/form_field.h"
#include "qml/models/private_file.h"
#include "station/reminder/calendar.h"
#include "station/wording/sheet_words.h"

namespace brimline {
namespace {

constexpr int kMostShown = 60, kMostToChoose = 12;
constexpr double kLost = 120 * 24;  // hours overdue after which nobody waits for them any more

QString q(const std::string& text) {
  return QString::fromStdString(text);
}

Instant later(const Instant& at, double hours) {
  return {at.utc + std::chrono::seconds(static_cast<long long>(hours * 3600)), at.offset};
}

}  // namespace

DueForm::DueForm(Counter& counter, Settings& settings, Services services, QString out_dir, QObject* parent)
    : QObject(parent),
      counter_(counter),
      settings_(settings),
      paper_(counter, settings, std::move(services)),
      out_dir_(std::move(out_dir)),
      beside_(counter) {
  connect(&beside_, &Beside::moved, this, &DueForm::moved);
  connect(&paper_, &BackPaper::said, this, &DueForm::said);
}

void DueForm::shown() {
  one_.clear();
  look();
}

void DueForm::left() {
  beside_.stop();
}

void DueForm::look() {
  const Instant now = counter_.now();
  const double ahead = span_ == QLatin1String("week")    ? 7 * 24
                       : span_ == QLatin1String("month") ? 30 * 24
                                                         : 0;
  const Instant from = span_ == QLatin1String("overdue") ? later(now, -kLost) : now;
  due_.clear();
  beside_.begin<std::vector<DueVisit>>(
      [from, until = later(now, ahead)](Store& store, const Progress& /*progress*/) {
        return store.due_visits(from, until, kMostShown);
      },
      [this](Stored<std::vector<DueVisit>> due) {
        unread_ = !due;
        if (due) due_ = std::move(*due);
      });
}

const DueVisit* DueForm::chosen() const {
  for (const DueVisit& one : due_)
    if (q(one.visit.id) == one_) return &one;
  return nullptr;
}

QList<QVariantMap> DueForm::fields() {
  const auto option = [](const char* key, const QString& word) {
    return QVariantMap{{"key", QString::fromLatin1(key)}, {"word", word}};
  };
  QList<QVariantMap> out{
      form_field("due_span", tr("Which"), span_,
                 {option("overdue", tr("Overdue")), option("week", tr("Due within a week")),
                  option("month", tr("Due within a month"))})};
  QVariantList people;
  for (const DueVisit& one : due_)
    if (people.size() < kMostToChoose)
      people.append(
          QVariantMap{{"key", q(one.visit.id)}, {"word", q(one.visit.customer->name.value_or(""))}});
  if (people.isEmpty()) return out;
  out.append(form_field("due_one", tr("A reminder for"), one_, people));
  if (chosen())
    out.append(
        form_field("due_act", tr("As"), act_,
                   {option("letter", tr("A letter, printed")), option("file", tr("A letter, as a file")),
                    option("calendar", tr("An entry for their calendar"))}));
  return out;
}

QList<QVariantMap> DueForm::rows() {
  QList<QVariantMap> out;
  const Instant now = counter_.now();
  for (const DueVisit& one : due_) {
    const Customer& customer = *one.visit.customer;
    QString detail = q(vessel_words(counter_.words(), one.visit.vessel, customer.units));
    for (const auto* more : {&customer.phone, &customer.street})
      if (*more) detail += " · " + q(**more);
    detail += "\n" + q(analyte_list(counter_.words(), due_analytes(one.visit)));
    const double hours = hours_between(now, one.due);
    const int days = static_cast<int>(hours < 0 ? std::floor(-hours / 24) : std::ceil(hours / 24));
    out.append(
        {{"name", q(customer.name.value_or(""))},
         {"detail", detail},
         {"number", hours < 0 ? tr("overdue, days: %1").arg(days) : tr("due, in days: %1").arg(days)}});
  }
  if (beside_.busy())
    out.append({{"name", tr("Looking ...")}, {"detail", QString()}, {"number", QString()}});
  else if (unread_)
    out.append(
        {{"name", tr("The records cannot be read now.")}, {"detail", QString()}, {"number", QString()}});
  else if (due_.empty())
    out.append({{"name", tr("Nobody")},
                {"detail", tr("A vessel stands here from the day its next bottle is due.")},
                {"number", QString()}});
  return out;
}

bool DueForm::set(const QString& key, const QString& text) {
  if (key == QLatin1String("due_span")) {
    span_ = text;
    one_.clear();
    look();
  }
  if (key == QLatin1String("due_one")) one_ = text;
  if (key == QLatin1String("due_act")) act_ = text;
  return true;
}

QString DueForm::act_word() const {
  if (!chosen()) return {};
  return act_ == QLatin1String("letter") ? tr("Print it") : tr("Write it");
}

QString DueForm::act() {
  const DueVisit* due = chosen();
  if (!due) return tr("Choose somebody first.");
  return act_ == QLatin1String("calendar") ? write_entry(*due) : print(*due);
}

QString DueForm::print(const DueVisit& due) {
  SheetJob job = paper_.job(PaperKind::reminder, due.visit.customer->language.value_or("en"),
                            act_ == QLatin1String("letter"));
  job.visit = due.visit;
  paper_.make(job);
  return tr("Making the letter ...");
}

QString DueForm::write_entry(const DueVisit& due) const {
  const Words words(due.visit.customer->language.value_or("en"));
  const std::string text = calendar_entry(due, settings_.shop, words, counter_.now());
  const QString file = QDir(out_dir_).filePath(q(due.visit.bottle.code) + "-reminder.ics");
  if (!QDir().mkpath(out_dir_)) return tr("%1 cannot be made.").arg(out_dir_);
  if (!write_privately(file, text)) return tr("%1 cannot be written.").arg(file);
  return tr("Written to %1: it may be sent to the customer, and names nobody.").arg(file);
}

}  // namespace brimline
