// SPDX-License-Identifier: GPL-3.0-or-later
#include "qml/models/sheet_rows.h"

#include <QCoreApplication>
#include <QStringList>

#include <algorithm>
#include <map>
#include <set>

#include "analysis/panel/names.h"
#include "printing/readings_table.h"
#include "qml/models/choices.h"

namespace brimline {
namespace {

QString q(const std::string& text) {
  return QString::fromStdString(text);
}

const char* key_of(Concern concern) {
  switch (concern) {
    case Concern::health:
      return "health";
    case Concern::equipment:
      return "equipment";
    case Concern::surface:
      return "surface";
    case Concern::clarity:
      return "clarity";
    case Concern::comfort:
      return "comfort";
    case Concern::upkeep:
      return "upkeep";
    case Concern::reading:
      return "reading";
  }
  return "";
}

bool is_stop(QChar c) {
  return c == ',' || c == '.' || c == ';' || c == ':' || c == ')';
}

// The sentence cut at its blanks; a waterline is noted by the word after it. A stop that follows a
// waterline moves before it, to its word.
QVariantMap words_of(const Sentence& sentence) {
  QStringList words;
  QVariantMap out{{"markBefore", -1}, {"line", QVariantMap()}};
  for (const Piece& piece : sentence) {
    if (const auto* line = std::get_if<Waterline>(&piece)) {
      out["markBefore"] = static_cast<int>(words.size());
      out["line"] = waterline_shares(*line);
      continue;
    }
    QString text = q(std::get<std::string>(piece));
    while (!text.isEmpty() && is_stop(text.front()) && !words.isEmpty()) {
      words.last() += text.front();
      text.remove(0, 1);
    }
    words.append(text.split(' ', Qt::SkipEmptyParts));
  }
  out["words"] = words;
  return out;
}

// "Afterwards pH 7.5, free chlorine 3.0 mg/L Cl2": of what the step is for.
QString after_words(const Step& step, const Plan& plan, const Words& words) {
  if (!step.after) return {};
  const std::set<AnalyteId> of_interest = analytes_of(step, plan);
  QStringList parts;
  for (const auto& [analyte, value] : step.after->readings)
    if (of_interest.contains(analyte))
      parts.append(q(analyte_name(words, analyte) + " " + value_words(words, analyte, value, true)));
  if (parts.isEmpty()) return {};
  return QCoreApplication::translate("plan", "Afterwards, we expect: %1")
      .arg(parts.join(QStringLiteral(", ")));
}

}  // namespace

std::set<AnalyteId> analytes_of(const Step& step, const Plan& plan) {
  std::set<AnalyteId> out;
  for (const Finding& finding : plan.findings)
    if (finding.analyte &&
        std::find(step.for_findings.begin(), step.for_findings.end(), finding.id) != step.for_findings.end())
      out.insert(*finding.analyte);
  return out;
}

QVariantMap waterline_shares(const Waterline& line) {
  const double span = line.high - line.low;
  const auto share = [&](double x) { return span > 0 ? std::clamp((x - line.low) / span, 0.0, 1.0) : 0.0; };
  QVariantMap out{{"value", share(line.value)},
                  {"half", span > 0 ? std::min(line.half_width / span, 0.5) : 0.0}};
  QStringList says{QCoreApplication::translate("plan", "this bottle %1").arg(line.value)};
  if (line.target.low) out["low"] = share(*line.target.low);
  if (line.target.high) out["high"] = share(*line.target.high);
  if (line.target.low)
    says.append(QCoreApplication::translate("plan", "target from %1").arg(*line.target.low));
  if (line.target.high)
    says.append(QCoreApplication::translate("plan", "target up to %1").arg(*line.target.high));
  if (line.last) {
    out["last"] = share(*line.last);
    says.append(QCoreApplication::translate("plan", "last visit %1").arg(*line.last));
  }
  out["says"] = says.join(QStringLiteral(", "));
  return out;
}

QList<QVariantMap> finding_rows(const Plan& plan, const Visit& visit, const Visit* earlier,
                                const Words& words) {
  std::vector<Finding> findings = plan.findings;
  std::stable_sort(findings.begin(), findings.end(),
                   [](const Finding& a, const Finding& b) { return a.rank < b.rank; });
  QList<QVariantMap> rows;
  std::optional<Concern> before;
  for (const Finding& finding : findings) {
    QVariantMap row = words_of(finding_sentence(finding, visit, earlier, words));
    row["concern"] = word_for("concern", key_of(finding.concern));
    row["first"] = finding.concern != before;
    before = finding.concern;
    rows.append(row);
  }
  return rows;
}

QList<QVariantMap> step_rows(const Sheet& sheet, const Plan& plan, const Words& words) {
  QList<QVariantMap> rows;
  QString day_before;
  for (const SheetStep& step : sheet.steps) {
    const QString when = q(step.when);
    const QString clock = q(step.clock);
    const bool timed = !clock.isEmpty() && when.endsWith(clock);
    const QString day = timed ? when.chopped(clock.size()).trimmed() : QString();
    QStringList cautions;
    for (const std::string& caution : step.cautions) cautions.append(q(caution));
    QVariantMap row{{"day", day == day_before ? QString() : day},
                    {"clock", timed ? clock : when},
                    {"text", q(step.text)},
                    {"amount", q(step.amount)},
                    {"after", QString()},
                    {"cautions", cautions}};
    for (const Step& planned : plan.steps)
      if (planned.order == step.order) row["after"] = after_words(planned, plan, words);
    rows.append(row);
    day_before = day;
  }
  return rows;
}

}  // namespace brimline
