// SPDX-License-Identifier: GPL-3.0-or-later
// The vessel a bottle was taken from: pool, spa, swim spa or plunge.
#pragma once

#include <optional>
#include <string>

#include "analysis/instant.h"
#include "analysis/quantities.h"

namespace brimline {

enum class VesselKind { pool, spa, swim_spa, plunge };
enum class VesselUse { household, public_use };  // hotels, associations, schools, rentals are public
enum class Place { outdoor, indoor };
enum class Surface { plaster, tile, vinyl, fibreglass, painted, acrylic };
enum class Sanitizer { chlorine, salt_chlorine, bromine, biguanide };

// A volume that was taken from how the water answered the doses told, and what stood on file before it.
struct LearntVolume {
  Volume volume;  // stands for no more once the vessel's volume is another: that was typed since
  Instant until;  // the last bottle whose answers it holds
  std::optional<Volume> before;
  std::optional<double> before_relative_sd;  // share of the volume
  friend bool operator==(const LearntVolume&, const LearntVolume&) = default;
};

// Absent means not known; nothing is guessed here.
struct Vessel {
  std::string id;
  std::optional<VesselKind> kind;
  std::optional<VesselUse> use;
  std::optional<Place> place;
  std::optional<bool> in_ground;
  std::optional<Surface> surface;
  std::optional<double> plaster_age_days;
  std::optional<Volume> volume;
  std::optional<double> volume_relative_sd;  // share of the volume
  std::optional<LearntVolume> learnt_volume;
  std::optional<Sanitizer> sanitizer;  // absent: no home plan
  std::optional<Sanitizer> previous_sanitizer;
  std::optional<Temperature> water_temperature;
  std::optional<double> turnover_h;  // hours for the pump to move the whole volume
  friend bool operator==(const Vessel&, const Vessel&) = default;
};

// Pool, or unknown: what is not known to be a spa, swim spa or plunge is treated as a pool.
inline VesselKind kind_of(const Vessel& v) {
  return v.kind.value_or(VesselKind::pool);
}
// What was learnt, while the volume on file is still that; else null.
inline const LearntVolume* standing_lesson(const Vessel& v) {
  return v.learnt_volume && v.volume == v.learnt_volume->volume ? &*v.learnt_volume : nullptr;
}
inline bool is_chlorine(Sanitizer s) {
  return s == Sanitizer::chlorine || s == Sanitizer::salt_chlorine;
}

}  // namespace brimline
