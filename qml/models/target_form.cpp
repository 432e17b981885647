// SPDX-License-Identifier: GPL-3.0-or-later
#include "qml/models/target_form.h"

#include <QCoreApplication>
#include <QVariantList>

#include "analysis/panel/analyte.h"
#include "analysis/panel/names.h"
#include "qml/models/choices.h"
#include "qml/models/form_field.h"
#include "qml/models/typed_number.h"
#include "station/plan/shop_targets.h"
#include "station/wording/fault_words.h"

namespace brimline {
namespace {

QString q(std::string_view text) {
  return QString::fromUtf8(text.data(), static_cast<int>(text.size()));
}
QString say(const char* text) {
  return QCoreApplication::translate("targets", text);
}

TargetSet set_of(const std::string& file) {
  return shop_targets(file).value_or(*find_targets("household"));
}

const TargetRow* built_in_row(size_t row) {
  const TargetSet* set = find_targets("household");
  return set && row < set->rows.size() ? &set->rows[row] : nullptr;
}

QString analyte_word(const AnalyteId& analyte) {
  if (analyte == "combined_chlorine") return say(QT_TRANSLATE_NOOP("targets", "Combined chlorine"));
  if (analyte == "si_calcite") return say(QT_TRANSLATE_NOOP("targets", "Saturation index"));
  if (analyte == "water_temperature") return say(QT_TRANSLATE_NOOP("targets", "Water temperature"));
  const AnalyteKind* kind = find_analyte(analyte);
  return kind ? QCoreApplication::translate("analyte", kind->name.c_str()) : q(analyte);
}

QString unit_of(const AnalyteId& analyte) {
  if (analyte == "combined_chlorine") return QStringLiteral("mg/L");
  if (analyte == "water_temperature") return QStringLiteral("°C");
  const AnalyteKind* kind = find_analyte(analyte);
  return kind ? unit_on_screen(*kind) : QString();
}

template <class E>
QString words_of(const char* fact, const std::vector<E>& values) {
  QStringList out;
  for (const E value : values) out.append(word_for(QString::fromLatin1(fact), q(name_of(value))));
  return out.join(QStringLiteral(" / "));
}

QString number(double value) {
  return QString::number(value, 'g', 6);
}
QString number(const std::optional<double>& value) {
  return value ? number(*value) : QString();
}

// "Chlorine / Chlorine from salt, Spa, stabilised": for which water the row holds.
QString case_words(const TargetRow& row) {
  QStringList out{words_of("sanitizer", row.sanitizers), words_of("kind", row.kinds),
                  words_of("place", row.places), words_of("surface", row.surfaces)};
  if (row.stabilised)
    out.append(*row.stabilised ? say(QT_TRANSLATE_NOOP("targets", "with stabilizer"))
                               : say(QT_TRANSLATE_NOOP("targets", "without stabilizer")));
  if (row.above_ph) out.append(say(QT_TRANSLATE_NOOP("targets", "above pH %1")).arg(number(*row.above_ph)));
  if (row.above_celsius)
    out.append(say(QT_TRANSLATE_NOOP("targets", "above %1 °C")).arg(number(*row.above_celsius)));
  out.removeAll(QString());
  return out.isEmpty() ? say(QT_TRANSLATE_NOOP("targets", "all water")) : out.join(QStringLiteral(", "));
}

QString range_of(const TargetRow& row) {
  const QString unit = unit_of(row.analyte);
  if (row.low && row.high)
    return say(QT_TRANSLATE_NOOP("targets", "%1 to %2 %3"))
        .arg(number(*row.low), number(*row.high), unit)
        .trimmed();
  return (row.low ? say(QT_TRANSLATE_NOOP("targets", "at least %1 %2")).arg(number(*row.low), unit)
                  : say(QT_TRANSLATE_NOOP("targets", "at most %1 %2")).arg(number(row.high), unit))
      .trimmed();
}

bool is_own(const TargetRow& row, size_t index) {
  const TargetRow* built_in = built_in_row(index);
  return !built_in || *built_in != row;
}

}  // namespace

void TargetForm::show(size_t index) {
  const TargetSet set = set_of(file_);
  if (index >= set.rows.size()) return form_.clear();
  const TargetRow& row = set.rows[index];
  form_ = {{"target_analyte", q(row.analyte)},
           {"target_row", QString::number(index)},
           {"target_low", number(row.low)},
           {"target_high", number(row.high)},
           {"target_aim", number(row.aim)},
           {"target_source", q(row.source)},
           {"target_whose", is_own(row, index) ? "shop" : "built_in"}};
}

QList<QVariantMap> TargetForm::fields() const {
  QVariantList targets,
      whose{QVariantMap{{"key", "shop"}, {"word", say(QT_TRANSLATE_NOOP("targets", "The shop’s own"))}},
            QVariantMap{{"key", "built_in"}, {"word", say(QT_TRANSLATE_NOOP("targets", "As built in"))}}};
  const TargetSet set = set_of(file_);
  QVariantList analytes;
  const std::string chosen = form_.value("target_analyte").toString().toStdString();
  for (size_t i = 0; i < set.rows.size(); ++i) {
    const AnalyteId& analyte = set.rows[i].analyte;
    const QVariantMap choice{{"key", q(analyte)}, {"word", analyte_word(analyte)}};
    if (!analytes.contains(choice)) analytes.append(choice);
    if (analyte == chosen)
      targets.append(QVariantMap{{"key", QString::number(i)}, {"word", case_words(set.rows[i])}});
  }
  const auto field = [&](const char* key, const char* label, QVariantList options = {}) {
    return form_field(key, say(label), form_.value(QString::fromLatin1(key)).toString(), std::move(options));
  };
  QList<QVariantMap> out{field("target_analyte", QT_TRANSLATE_NOOP("targets", "Which target"), analytes)};
  if (targets.isEmpty()) return out;
  out += {field("target_row", QT_TRANSLATE_NOOP("targets", "For which water"), targets),
          field("target_low", QT_TRANSLATE_NOOP("targets", "At least")),
          field("target_high", QT_TRANSLATE_NOOP("targets", "At most")),
          field("target_aim", QT_TRANSLATE_NOOP("targets", "Where a dose aims; empty: the middle")),
          field("target_source", QT_TRANSLATE_NOOP("targets", "Who says so")),
          field("target_whose", QT_TRANSLATE_NOOP("targets", "Whose it is"), whose)};
  return out;
}

QList<QVariantMap> TargetForm::rows() const {
  QList<QVariantMap> out;
  const TargetSet set = set_of(file_);
  for (size_t i = 0; i < set.rows.size(); ++i) {
    const TargetRow& row = set.rows[i];
    const QString whose = is_own(row, i)
                              ? say(QT_TRANSLATE_NOOP("targets", "the shop’s own: %1")).arg(q(row.source))
                              : q(row.source);
    out.append({{"name", analyte_word(row.analyte)},
                {"detail", case_words(row) + QStringLiteral("; ") + whose},
                {"number", range_of(row)}});
  }
  return out;
}

bool TargetForm::set(const QString& key, const QString& text) {
  if (key == QLatin1String("target_analyte")) {  // its first row, which holds for most water
    const TargetSet set = set_of(file_);
    for (size_t i = set.rows.size(); i-- > 0;)
      if (q(set.rows[i].analyte) == text) show(i);
    return true;
  }
  if (key == QLatin1String("target_row")) {
    bool sound = false;
    const size_t row = text.toULongLong(&sound);
    if (sound) show(row);
    return true;
  }
  form_[key] = text;
  if (key != QLatin1String("target_whose")) form_["target_whose"] = QStringLiteral("shop");
  return key == QLatin1String("target_whose");
}

QString TargetForm::keep(const Words& words) {
  const auto text = [&](const char* key) {
    return form_.value(QString::fromLatin1(key)).toString().trimmed();
  };
  bool chosen = false;
  const size_t row = text("target_row").toULongLong(&chosen);
  if (!chosen) return say(QT_TRANSLATE_NOOP("targets", "Not kept: choose which target."));
  std::optional<OwnTarget> own;
  if (text("target_whose") == QLatin1String("shop")) {
    bool sound = true;
    own = OwnTarget{typed_number(text("target_low"), sound), typed_number(text("target_high"), sound),
                    typed_number(text("target_aim"), sound), text("target_source").toStdString()};
    if (!sound) return say(QT_TRANSLATE_NOOP("targets", "Not kept: a target is a number or empty."));
    if (const TargetRow* built_in = built_in_row(row); built_in && built_in->source == own->source)
      own->source.clear();  // the numbers are no longer that source's
  }
  if (const auto kept = keep_target(file_, row, own); !kept)
    return say(QT_TRANSLATE_NOOP("targets", "Not kept: %1")).arg(q(fault_words(words, kept.error().front())));
  show(row);
  return say(QT_TRANSLATE_NOOP("targets", "Kept. The next plan goes by it."));
}

}  // namespace brimline
