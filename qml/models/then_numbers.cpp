// SPDX-License-Identifier: GPL-3.0-or-later
#include "qml/models/then_numbers.h"

#include <QCoreApplication>
#include <QVariantMap>

#include "analysis/panel/analyte.h"
#include "qml/models/facts.h"
#include "station/compare/expectation.h"
#include "station/compare/volume_words.h"
#include "station/wording/unit_words.h"

namespace brimline {
namespace {

QString q(const std::string& text) {
  return QString::fromStdString(text);
}
QString say(const char* text) {
  return QCoreApplication::translate("numbers", text);
}
QVariantMap row(const QString& name, const QString& number, const QString& detail) {
  return {{"name", name}, {"number", number}, {"detail", detail}};
}

QString verdict_words(const ReadingChange& change) {
  if (change.dose_unknown && change.verdict == ChangeVerdict::not_told)
    return say(QT_TRANSLATE_NOOP("numbers",
                                 "not held against it: a dose has no amount, or the volume is not on file"));
  switch (change.verdict) {
    case ChangeVerdict::as_expected:
      break;
    case ChangeVerdict::more:
      return say(QT_TRANSLATE_NOOP("numbers", "more than expected, by over 1.96 × ±"));
    case ChangeVerdict::less:
      return say(QT_TRANSLATE_NOOP("numbers", "less than expected, by over 1.96 × ±"));
    case ChangeVerdict::not_told:
      return say(QT_TRANSLATE_NOOP("numbers", "further off than 1.96 × ±, and nothing told moves it"));
  }
  return say(QT_TRANSLATE_NOOP("numbers", "as expected, within 1.96 × ±"));
}

QVariantMap change_row(const Words& words, const AnalyteKind& kind, const ReadingChange& change) {
  const int decimals = decimals_for(change.expected_sd);
  const std::string number =
      words.number(change.expected, decimals) + " ± " + words.number(change.expected_sd, decimals);
  return row(q(words.say("analyte", kind.name.c_str())),
             (q(number) + " " + q(unit_words(words, kind))).trimmed(),
             say(QT_TRANSLATE_NOOP("numbers", "%1 then, %2 now: %3"))
                 .arg(q(words.number(change.earlier, kind.decimals)),
                      q(words.number(change.later, kind.decimals)), verdict_words(change)));
}

QString percent(const Words& words, double share) {
  return q(words.number(100 * share, 0));
}

}  // namespace

QVariantList then_number_rows(const Words& words, const Comparison& comparison,
                              const std::optional<VolumeFound>& volume, const Visit& now) {
  QVariantList out;
  for (const ReadingChange& change : comparison.changes)
    if (const AnalyteKind* kind = find_analyte(change.analyte)) out.append(change_row(words, *kind, change));
  if (comparison.changes.empty()) return out;
  if (const auto& replaced = comparison.water_replaced)
    out.append(
        row(say(QT_TRANSLATE_NOOP("numbers", "Water replaced")),
            percent(words, replaced->fraction) + QStringLiteral(" ± ") + percent(words, replaced->sd) +
                QStringLiteral(" %"),
            say(QT_TRANSLATE_NOOP("numbers",
                                  "the share that makes what moved likeliest, by mass balance of every "
                                  "reading at once; told drains are in it"))));
  if (volume)
    out.append(row(say(QT_TRANSLATE_NOOP("numbers", "Volume")),
                   q(volume_and_sd_words(words, volume->m3, volume->sd, units_of(now))),
                   say(QT_TRANSLATE_NOOP("numbers",
                                         "by Bayes’ rule, from the volume on file and from how far each told "
                                         "dose moved the water, visit after visit"))));
  const bool open = in_the_open(now.vessel);
  out.append(
      row(say(QT_TRANSLATE_NOOP("numbers", "Evaporation")),
          say(QT_TRANSLATE_NOOP("numbers", "%1 % a month"))
              .arg(percent(words, open ? kEvaporatedOutdoor : kEvaporatedIndoor)),
          open ? say(QT_TRANSLATE_NOOP("numbers",
                                       "of the volume, in the open: common practice, no source; what is "
                                       "dissolved stays"))
               : say(QT_TRANSLATE_NOOP("numbers",
                                       "of the volume, under a roof or a cover: common practice, no source; "
                                       "what is dissolved stays"))));
  return out;
}

}  // namespace brimline
