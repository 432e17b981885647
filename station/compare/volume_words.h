// SPDX-License-Identifier: GPL-3.0-or-later
// What the water's answers say of the volume, as sentences in the customer's units.
#pragma once

#include <string>

#include "station/compare/compare.h"

namespace brimline {

// "48 m³", "12,700 US gallons"; as exact as `sd` (m3) lets it be, three digits at most.
std::string volume_words(const Words& words, double m3, double sd, Units units);

// "48 ± 4 m³", the sd to one digit or two.
std::string volume_and_sd_words(const Words& words, double m3, double sd, Units units);

// "48,200 L", rounded likewise.
std::string litre_words(const Words& words, double m3, double sd);

// "From how the water answered the doses: 48 ± 4 m³ (one standard deviation); on file: 57 m³."
std::string found_volume_sentence(const Words& words, const VolumeFound& found, const Vessel& vessel,
                                  Units units);

// That the volume on file was taken from the water's answers, and what stood there before; empty where it was
// not.
std::string lesson_sentence(const Words& words, const Vessel& vessel, Units units);

}  // namespace brimline
