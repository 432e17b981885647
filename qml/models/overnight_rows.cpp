// SPDX-License-Identifier: GPL-3.0-or-later
#include "qml/models/overnight_rows.h"

#include <QCoreApplication>

#include <algorithm>

#include "analysis/panel/analyte.h"
#include "printing/labels.h"
#include "qml/models/typed_number.h"
#include "station/overnight/overnight_result.h"
#include "station/wording/overnight_words.h"

namespace brimline {
namespace {

constexpr OvernightDue kDues[] = {OvernightDue::hour, OvernightDue::day};
constexpr const char* kAnalytes[] = {"free_chlorine", "total_chlorine"};

QString q(const std::string& text) {
  return QString::fromStdString(text);
}
QString say(const char* text) {
  return QCoreApplication::translate("overnight", text);
}

QString plain_number(double value, int decimals) {
  QString text = QString::number(value, 'f', decimals);
  if (text.contains('.'))
    while (text.endsWith('0') || text.endsWith('.')) {
      const bool point = text.endsWith('.');
      text.chop(1);
      if (point) break;
    }
  return with_own_mark(text);
}

QString value_of(const OvernightReading* reading) {
  if (!reading) return {};
  QString number = with_own_mark(QString::number(reading->value, 'f', reading->value < 10 ? 2 : 1));
  if (reading->clipped == Clip::above) return QStringLiteral("> ") + number;
  if (reading->clipped == Clip::below) return QStringLiteral("< ") + number;
  return number;
}

// A cell still to be read: total only where free chlorine was found.
bool waits(const OvernightTest& test, const OvernightCell& cell) {
  if (standing(test, cell.bottle, cell.due, cell.analyte)) return false;
  const auto* free = standing(test, cell.bottle, cell.due, "free_chlorine");
  return cell.analyte == "free_chlorine" || !free || free->value > kNoFreeLeft;
}

}  // namespace

QString column_of(const OvernightCell& cell) {
  return q(std::string(name_of(cell.due))) +
         (cell.analyte == "free_chlorine" ? QStringLiteral("Free") : QStringLiteral("Total"));
}

std::optional<OvernightCell> next_cell(const OvernightTest& test, OvernightDue due,
                                       const OvernightCell& from) {
  const int count = static_cast<int>(test.bottles.size());
  const int first = from.due == due ? 2 * from.bottle + (from.analyte == "total_chlorine" ? 1 : 0) : 0;
  for (int i = 0; i < 2 * count; ++i) {
    const int at = (first + i) % (2 * count);
    const OvernightCell cell{at / 2, due, kAnalytes[at % 2]};
    if (waits(test, cell)) return cell;
  }
  return std::nullopt;
}

QString cell_words(const OvernightTest& test, const OvernightCell& cell) {
  if (cell.bottle >= static_cast<int>(test.bottles.size())) return {};
  const AnalyteKind* kind = find_analyte(cell.analyte);
  const double dose = test.bottles[static_cast<size_t>(cell.bottle)].aimed_mg_l;
  return (cell.due == OvernightDue::hour
              ? say(QT_TRANSLATE_NOOP("overnight", "Bottle %1, %2 mg/L: %3 after 1 hour"))
              : say(QT_TRANSLATE_NOOP("overnight", "Bottle %1, %2 mg/L: %3 after 24 hours")))
      .arg(cell.bottle + 1)
      .arg(plain_number(dose, 1), kind ? q(kind->name).toLower() : q(cell.analyte));
}

QString dilution_for(const OvernightTest& test, const OvernightCell& cell, double free_now) {
  double most = free_now;
  if (cell.bottle < static_cast<int>(test.bottles.size()))
    most += test.bottles[static_cast<size_t>(cell.bottle)].aimed_mg_l;
  // What was found an hour after is the most that a day leaves.
  const auto* hour = standing(test, cell.bottle, OvernightDue::hour, "free_chlorine");
  if (cell.due == OvernightDue::day && hour && !hour->clipped) most = hour->value;
  const auto* free = standing(test, cell.bottle, cell.due, "free_chlorine");
  if (cell.analyte == "total_chlorine" && free && !free->clipped) return QString::number(free->dilution);
  return QString::number(dilution_to_read(most, std::nullopt));
}

QList<QVariantMap> bottle_rows(const Words& words, const OvernightTest& test, const Visit& visit,
                               const OvernightCell& marked) {
  QList<QVariantMap> rows;
  const std::vector<OvernightBottle> bottles = bottles_to_pour(test);
  std::vector<DemandBottleResult> judged;
  if (test.started_at) judged = result_of(demand_test_of(test), visit).bottles;
  for (int b = 0; b < static_cast<int>(bottles.size()); ++b) {
    const OvernightBottle& bottle = bottles[static_cast<size_t>(b)];
    QVariantMap row{{"code", q(overnight_code(visit.bottle.code, b))},
                    {"dose", plain_number(bottle.aimed_mg_l, 1)},
                    {"stock", plain_number(bottle.stock_ml, 2)},
                    {"word", QString()},
                    {"marked", marked.bottle == b ? column_of(marked) : QString()}};
    for (const OvernightDue due : kDues)
      for (const char* analyte : kAnalytes)
        row[column_of({b, due, analyte})] = value_of(standing(test, b, due, analyte));
    if (standing(test, b, OvernightDue::day, "free_chlorine") && judged.size() == bottles.size())
      row["word"] = q(demand_word_words(words, judged[static_cast<size_t>(b)].word));
    rows.append(row);
  }
  return rows;
}

QList<QVariantMap> overnight_rows(const Counter& counter) {
  const Instant now = counter.now();
  const Words& words = counter.words();
  std::vector<const Overnight*> all;
  for (const Overnight& overnight : counter.overnights()) all.push_back(&overnight);
  const auto order = [&](const Overnight* o) {
    const auto started = o->test.started_at.value_or(now);
    return std::make_pair(!overnight_calls(o->test, now), started.utc);
  };
  std::stable_sort(all.begin(), all.end(), [&](auto* a, auto* b) { return order(a) < order(b); });
  QList<QVariantMap> rows;
  for (const Overnight* o : all) {
    const auto& customer = o->visit.customer;
    const bool in =
        o->test.stage == OvernightStage::result || (o->test.started_at && !waits_for(o->test, now));
    QString result;
    if (o->test.stage == OvernightStage::result && o->visit.bottle.demand_test)
      result = q(demand_lines(words, result_of(*o->visit.bottle.demand_test, o->visit)).front());
    rows.append({{"visitId", q(o->visit.id)},
                 {"code", q(o->visit.bottle.code)},
                 {"who", customer ? q(customer->name.value_or(""))
                                  : say(QT_TRANSLATE_NOOP("overnight", "Not said whose"))},
                 {"due", q(overnight_due_words(words, o->test, now))},
                 {"calls", overnight_calls(o->test, now)},
                 {"phone", in && customer ? q(customer->phone.value_or("")) : QString()},
                 {"result", result}});
  }
  return rows;
}

}  // namespace brimline
