// SPDX-License-Identifier: GPL-3.0-or-later
#include "qml/models/choices.h"

#include <QCollator>
#include <QCoreApplication>
#include <QVariantMap>
#include <algorithm>

#include "station/wording/unit_words.h"

namespace brimline {
namespace {

struct ChoiceRow {
  const char* fact;
  const char* key;
  const char* word;
};

constexpr ChoiceRow kChoices[] = {
    {"theme", "light", QT_TRANSLATE_NOOP("choices", "Light")},
    {"theme", "dark", QT_TRANSLATE_NOOP("choices", "Dark")},
    {"theme", "contrast", QT_TRANSLATE_NOOP("choices", "High contrast")},
    {"yes_no", "yes", QT_TRANSLATE_NOOP("choices", "Yes")},
    {"yes_no", "no", QT_TRANSLATE_NOOP("choices", "No")},
    {"hide_names", "off", QT_TRANSLATE_NOOP("choices", "Names in full")},
    {"hide_names", "on", QT_TRANSLATE_NOOP("choices", "First letters only")},
    {"idle_minutes", "2", QT_TRANSLATE_NOOP("choices", "2 minutes")},
    {"idle_minutes", "10", QT_TRANSLATE_NOOP("choices", "10 minutes")},
    {"idle_minutes", "60", QT_TRANSLATE_NOOP("choices", "An hour")},
    {"idle_minutes", "0", QT_TRANSLATE_NOOP("choices", "Never")},
    {"keep_months", "0", QT_TRANSLATE_NOOP("choices", "Until they are erased")},
    {"keep_months", "12", QT_TRANSLATE_NOOP("choices", "A year after the last bottle")},
    {"keep_months", "24", QT_TRANSLATE_NOOP("choices", "Two years")},
    {"keep_months", "36", QT_TRANSLATE_NOOP("choices", "Three years")},
    {"person_act", "hand_out", QT_TRANSLATE_NOOP("choices", "All that is known, as a file")},
    {"person_act", "forget", QT_TRANSLATE_NOOP("choices", "To be forgotten")},
    {"staff_role", "clerk", QT_TRANSLATE_NOOP("choices", "Test, plan and print")},
    {"staff_role", "keeper", QT_TRANSLATE_NOOP("choices", "Also change what the shop is set to")},
    {"motion", "on", QT_TRANSLATE_NOOP("choices", "Moves gently")},
    {"motion", "off", QT_TRANSLATE_NOOP("choices", "Nothing moves")},
    {"sounds", "on", QT_TRANSLATE_NOOP("choices", "A note for a reading and for trouble")},
    {"sounds", "off", QT_TRANSLATE_NOOP("choices", "Silent")},
    {"kind", "pool", QT_TRANSLATE_NOOP("choices", "Pool")},
    {"kind", "spa", QT_TRANSLATE_NOOP("choices", "Spa")},
    {"kind", "swim_spa", QT_TRANSLATE_NOOP("choices", "Swim spa")},
    {"kind", "plunge", QT_TRANSLATE_NOOP("choices", "Plunge")},
    {"use", "household", QT_TRANSLATE_NOOP("choices", "One household")},
    {"use", "public", QT_TRANSLATE_NOOP("choices", "Guests, tenants, members, pupils")},
    {"sanitizer", "chlorine", QT_TRANSLATE_NOOP("choices", "Chlorine")},
    {"sanitizer", "salt_chlorine", QT_TRANSLATE_NOOP("choices", "Chlorine from salt")},
    {"sanitizer", "bromine", QT_TRANSLATE_NOOP("choices", "Bromine")},
    {"sanitizer", "biguanide", QT_TRANSLATE_NOOP("choices", "Biguanide")},
    {"surface", "plaster", QT_TRANSLATE_NOOP("choices", "Plaster")},
    {"surface", "tile", QT_TRANSLATE_NOOP("choices", "Tile")},
    {"surface", "vinyl", QT_TRANSLATE_NOOP("choices", "Vinyl")},
    {"surface", "fibreglass", QT_TRANSLATE_NOOP("choices", "Fibreglass")},
    {"surface", "painted", QT_TRANSLATE_NOOP("choices", "Painted")},
    {"surface", "acrylic", QT_TRANSLATE_NOOP("choices", "Acrylic")},
    {"place", "outdoor", QT_TRANSLATE_NOOP("choices", "Outdoors")},
    {"place", "indoor", QT_TRANSLATE_NOOP("choices", "Indoors")},
    {"in_ground", "yes", QT_TRANSLATE_NOOP("choices", "In the ground")},
    {"in_ground", "no", QT_TRANSLATE_NOOP("choices", "Above it")},
    {"volume_how", "0.05", QT_TRANSLATE_NOOP("choices", "Metered, or the maker’s")},
    {"volume_how", "0.1", QT_TRANSLATE_NOOP("choices", "Measured with a tape")},
    {"volume_how", "0.25", QT_TRANSLATE_NOOP("choices", "Guessed")},
    {"taken", "now", QT_TRANSLATE_NOOP("choices", "Just now")},
    {"taken", "hour", QT_TRANSLATE_NOOP("choices", "An hour ago")},
    {"taken", "morning", QT_TRANSLATE_NOOP("choices", "This morning")},
    {"taken", "evening", QT_TRANSLATE_NOOP("choices", "Last night")},
    {"taken", "days", QT_TRANSLATE_NOOP("choices", "Two days ago")},
    {"taken", "unknown", QT_TRANSLATE_NOOP("choices", "Not known")},
    {"sampled_at", "elbow_deep", QT_TRANSLATE_NOOP("choices", "Elbow deep")},
    {"sampled_at", "surface", QT_TRANSLATE_NOOP("choices", "Off the surface")},
    {"sampled_at", "skimmer", QT_TRANSLATE_NOOP("choices", "At the skimmer")},
    {"sampled_at", "inlet", QT_TRANSLATE_NOOP("choices", "At an inlet")},
    {"sampled_at", "pipe", QT_TRANSLATE_NOOP("choices", "Out of a pipe")},
    {"occasion", "routine", QT_TRANSLATE_NOOP("choices", "As every month")},
    {"occasion", "opening", QT_TRANSLATE_NOOP("choices", "Opening")},
    {"occasion", "closing", QT_TRANSLATE_NOOP("choices", "Closing")},
    {"occasion", "new_fill", QT_TRANSLATE_NOOP("choices", "New fill")},
    {"occasion", "after_storm", QT_TRANSLATE_NOOP("choices", "After a storm")},
    {"occasion", "trouble", QT_TRANSLATE_NOOP("choices", "Trouble")},
    {"signs", "cloudy", QT_TRANSLATE_NOOP("choices", "Cloudy")},
    {"signs", "green_water", QT_TRANSLATE_NOOP("choices", "Green water")},
    {"signs", "stains", QT_TRANSLATE_NOOP("choices", "Stains")},
    {"signs", "scale", QT_TRANSLATE_NOOP("choices", "Scale")},
    {"signs", "eye_irritation", QT_TRANSLATE_NOOP("choices", "Sore eyes")},
    {"signs", "strong_smell", QT_TRANSLATE_NOOP("choices", "Strong smell")},
    {"signs", "green_hair", QT_TRANSLATE_NOOP("choices", "Green hair")},
    {"signs", "foam", QT_TRANSLATE_NOOP("choices", "Foam")},
    {"signs", "slimy_walls", QT_TRANSLATE_NOOP("choices", "Slimy walls")},
    {"signs", "tablets_in_use", QT_TRANSLATE_NOOP("choices", "Tablets in use")},
    {"signs", "drain_not_visible", QT_TRANSLATE_NOOP("choices", "Main drain cannot be seen")},
    {"signs", "chemicals_mixed_or_fuming", QT_TRANSLATE_NOOP("choices", "Chemicals mixed or fuming")},
    {"incident", "faeces", QT_TRANSLATE_NOOP("choices", "Faeces")},
    {"incident", "vomit", QT_TRANSLATE_NOOP("choices", "Vomit")},
    {"incident", "blood", QT_TRANSLATE_NOOP("choices", "Blood")},
    {"incident", "dead_animal", QT_TRANSLATE_NOOP("choices", "Dead animal")},
    {"incident", "flood", QT_TRANSLATE_NOOP("choices", "Flood")},
    {"incident", "sewage", QT_TRANSLATE_NOOP("choices", "Sewage")},
    {"incident", "illness", QT_TRANSLATE_NOOP("choices", "Swimmers ill")},
    {"language", "en", "English"},
    {"language", "es", "Español"},
    {"language", "fr", "Français"},
    {"units", "us", QT_TRANSLATE_NOOP("choices", "Gallons, °F")},
    {"units", "metric", QT_TRANSLATE_NOOP("choices", "Cubic metres, °C")},
    {"method", "photometer", QT_TRANSLATE_NOOP("choices", "photometer")},
    {"method", "strip", QT_TRANSLATE_NOOP("choices", "strip")},
    {"method", "drop_titration", QT_TRANSLATE_NOOP("choices", "drop test")},
    {"method", "comparator", QT_TRANSLATE_NOOP("choices", "comparator")},
    {"method", "probe", QT_TRANSLATE_NOOP("choices", "probe")},
    {"method", "turbidity_tube", QT_TRANSLATE_NOOP("choices", "view tube")},
    {"clip", "inside", QT_TRANSLATE_NOOP("choices", "In range")},
    {"clip", "above", QT_TRANSLATE_NOOP("choices", "Or above")},
    {"clip", "below", QT_TRANSLATE_NOOP("choices", "Or below")},
    {"dilution", "1", QT_TRANSLATE_NOOP("choices", "Undiluted")},
    {"dilution", "2", QT_TRANSLATE_NOOP("choices", "1 + 1")},
    {"dilution", "5", QT_TRANSLATE_NOOP("choices", "1 + 4")},
    {"dilution", "10", QT_TRANSLATE_NOOP("choices", "1 + 9")},
    {"home_at", "hour", QT_TRANSLATE_NOOP("choices", "In an hour")},
    {"home_at", "afternoon", QT_TRANSLATE_NOOP("choices", "17:30")},
    {"home_at", "evening", QT_TRANSLATE_NOOP("choices", "20:00")},
    {"home_at", "morning", QT_TRANSLATE_NOOP("choices", "Tomorrow 08:00")},
    {"paper", "letter", QT_TRANSLATE_NOOP("choices", "Letter")},
    {"paper", "a4", QT_TRANSLATE_NOOP("choices", "A4")},
    {"paper", "roll80", QT_TRANSLATE_NOOP("choices", "Roll")},
    {"print_size", "usual", QT_TRANSLATE_NOOP("choices", "Usual")},
    {"print_size", "large", QT_TRANSLATE_NOOP("choices", "Large")},
    {"concern", "health", QT_TRANSLATE_NOOP("choices", "Health")},
    {"concern", "equipment", QT_TRANSLATE_NOOP("choices", "Equipment")},
    {"concern", "surface", QT_TRANSLATE_NOOP("choices", "Surface")},
    {"concern", "clarity", QT_TRANSLATE_NOOP("choices", "Clear water")},
    {"concern", "comfort", QT_TRANSLATE_NOOP("choices", "Comfort")},
    {"concern", "upkeep", QT_TRANSLATE_NOOP("choices", "Upkeep")},
    {"concern", "reading", QT_TRANSLATE_NOOP("choices", "The readings")},
};

struct QuestionRow {
  const char* fact;
  const char* question;
};

constexpr QuestionRow kQuestions[] = {
    {"kind", QT_TRANSLATE_NOOP("choices", "It is a")},
    {"use", QT_TRANSLATE_NOOP("choices", "Used by")},
    {"sanitizer", QT_TRANSLATE_NOOP("choices", "Sanitized with")},
    {"surface", QT_TRANSLATE_NOOP("choices", "Its surface")},
    {"place", QT_TRANSLATE_NOOP("choices", "It stands")},
    {"in_ground", QT_TRANSLATE_NOOP("choices", "Built")},
    {"volume_how", QT_TRANSLATE_NOOP("choices", "How the volume is known")},
    {"sampled_at", QT_TRANSLATE_NOOP("choices", "Where it was filled")},
    {"occasion", QT_TRANSLATE_NOOP("choices", "Why it came")},
    {"signs", QT_TRANSLATE_NOOP("choices", "Signs, as many as there are")},
    {"incident", QT_TRANSLATE_NOOP("choices", "Something happened in it")},
    {"home_at", QT_TRANSLATE_NOOP("choices", "They get home")},
    {"paper", QT_TRANSLATE_NOOP("choices", "Paper")},
    {"language", QT_TRANSLATE_NOOP("choices", "Language")},
    {"print_size", QT_TRANSLATE_NOOP("choices", "Print")},
};

QString say(const char* text) {
  return QCoreApplication::translate("choices", text);
}

}  // namespace

QVariantList choices_for(const QString& fact) {
  QVariantList out;
  for (const ChoiceRow& row : kChoices)
    if (fact == QLatin1String(row.fact))
      out.append(QVariantMap{{"key", QString::fromLatin1(row.key)}, {"word", say(row.word)}});
  return out;
}

QString word_for(const QString& fact, const QString& key) {
  for (const ChoiceRow& row : kChoices)
    if (fact == QLatin1String(row.fact) && key == QLatin1String(row.key)) return say(row.word);
  return {};
}

QString question_for(const QString& fact) {
  for (const QuestionRow& row : kQuestions)
    if (fact == QLatin1String(row.fact)) return say(row.question);
  return {};
}

QVariantList by_word(QVariantList options, qsizetype kept) {
  QCollator order{QLocale()};
  order.setCaseSensitivity(Qt::CaseInsensitive);
  order.setNumericMode(true);
  const auto word = [](const QVariant& option) { return option.toMap().value("word").toString(); };
  std::stable_sort(options.begin() + std::min(kept, options.size()), options.end(),
                   [&](const QVariant& a, const QVariant& b) { return order.compare(word(a), word(b)) < 0; });
  return options;
}

QString unit_on_screen(const AnalyteKind& kind) {
  return kind.unit.empty() ? QString() : QCoreApplication::translate("unit", unit_source(kind));
}

}  // namespace brimline
