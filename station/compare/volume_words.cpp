// SPDX-License-Identifier: GPL-3.0-or-later
#include "station/compare/volume_words.h"

#include <cmath>

#include "station/compare/expectation.h"

namespace brimline {

namespace {

double in_units(double m3, Units units) {
  return units == Units::us ? Volume::cubic_metres(m3).us_gallons() : m3;
}

// Thousands parted: a comma in English, elsewhere a space that does not break.
std::string grouped(const Words& words, std::string whole) {
  for (size_t at = whole.size(); at > 3; at -= 3)
    whole.insert(at - 3, words.language() == "en" ? "," : "\u00a0");
  return whole;
}

// Rounded to a fifth of its sd or so: to tens, ones, tenths; m3 and gallons alike.
std::string rounded(const Words& words, double value, double sd) {
  const double step = std::pow(10, std::floor(std::log10(std::max(sd, 0.01 * value) / 2)));
  if (step < 1) return words.number(value, std::min(2, static_cast<int>(std::lround(-std::log10(step)))));
  return grouped(words, words.number(std::round(value / step) * step, 0));
}

std::string with_unit(const Words& words, const std::string& number, Units units) {
  return units == Units::us ? words.say("compare", phrase("compare", "%1 US gallons"), {number})
                            : words.say("compare", phrase("compare", "%1 m³"), {number});
}

}  // namespace

std::string volume_words(const Words& words, double m3, double sd, Units units) {
  return with_unit(words, rounded(words, in_units(m3, units), in_units(sd, units)), units);
}

std::string volume_and_sd_words(const Words& words, double m3, double sd, Units units) {
  const double own = in_units(sd, units);
  return with_unit(words, rounded(words, in_units(m3, units), own) + " ± " + rounded(words, own, own), units);
}

std::string litre_words(const Words& words, double m3, double sd) {
  return words.say("compare", phrase("compare", "%1 L"), {rounded(words, 1000 * m3, 1000 * sd)});
}

std::string found_volume_sentence(const Words& words, const VolumeFound& found, const Vessel& vessel,
                                  Units units) {
  const std::string shown = volume_and_sd_words(words, found.m3, found.sd, units);
  if (!vessel.volume)
    return words.say("compare",
                     phrase("compare", "From how the water answered the doses: %1; no volume is on file."),
                     {shown});
  const double on_file = vessel.volume->cubic_metres();
  return words.say("compare", phrase("compare", "From how the water answered the doses: %1; on file: %2."),
                   {shown, volume_words(words, on_file, on_file * relative_volume_sd(vessel), units)});
}

std::string lesson_sentence(const Words& words, const Vessel& vessel, Units units) {
  const LearntVolume* lesson = standing_lesson(vessel);
  if (!lesson) return {};
  const double m3 = lesson->volume.cubic_metres();
  const std::string now = volume_words(words, m3, m3 * relative_volume_sd(vessel), units);
  if (!lesson->before)
    return words.say("compare",
                     phrase("compare", "The volume on file, %1, was taken from how the water answered."),
                     {now});
  const double before = lesson->before->cubic_metres();
  return words.say(
      "compare",
      phrase("compare", "The volume on file, %1, was taken from how the water answered; before, it was %2."),
      {now, volume_words(words, before, before * lesson->before_relative_sd.value_or(0.1), units)});
}

}  // namespace brimline
