// SPDX-License-Identifier: GPL-3.0-or-later
#include "analysis/panel/names.h"

namespace brimline {

template <>
std::span<const Named<Method>> names() {
  static constexpr Named<Method> rows[] = {{Method::photometer, "photometer"},
                                           {Method::strip, "strip"},
                                           {Method::drop_titration, "drop_titration"},
                                           {Method::comparator, "comparator"},
                                           {Method::probe, "probe"},
                                           {Method::turbidity_tube, "turbidity_tube"}};
  return rows;
}

template <>
std::span<const Named<Clip>> names() {
  static constexpr Named<Clip> rows[] = {{Clip::above, "above"}, {Clip::below, "below"}};
  return rows;
}

template <>
std::span<const Named<Occasion>> names() {
  static constexpr Named<Occasion> rows[] = {
      {Occasion::routine, "routine"},         {Occasion::opening, "opening"},
      {Occasion::closing, "closing"},         {Occasion::new_fill, "new_fill"},
      {Occasion::after_storm, "after_storm"}, {Occasion::trouble, "trouble"}};
  return rows;
}

template <>
std::span<const Named<SampledAt>> names() {
  static constexpr Named<SampledAt> rows[] = {{SampledAt::elbow_deep, "elbow_deep"},
                                              {SampledAt::surface, "surface"},
                                              {SampledAt::skimmer, "skimmer"},
                                              {SampledAt::inlet, "inlet"},
                                              {SampledAt::pipe, "pipe"}};
  return rows;
}

template <>
std::span<const Named<Sign>> names() {
  static constexpr Named<Sign> rows[] = {{Sign::cloudy, "cloudy"},
                                         {Sign::green_water, "green_water"},
                                         {Sign::stains, "stains"},
                                         {Sign::scale, "scale"},
                                         {Sign::eye_irritation, "eye_irritation"},
                                         {Sign::strong_smell, "strong_smell"},
                                         {Sign::green_hair, "green_hair"},
                                         {Sign::foam, "foam"},
                                         {Sign::slimy_walls, "slimy_walls"},
                                         {Sign::drain_not_visible, "drain_not_visible"},
                                         {Sign::chemicals_mixed_or_fuming, "chemicals_mixed_or_fuming"},
                                         {Sign::tablets_in_use, "tablets_in_use"}};
  return rows;
}

template <>
std::span<const Named<Incident>> names() {
  static constexpr Named<Incident> rows[] = {
      {Incident::faeces, "faeces"},           {Incident::vomit, "vomit"}, {Incident::blood, "blood"},
      {Incident::dead_animal, "dead_animal"}, {Incident::flood, "flood"}, {Incident::sewage, "sewage"},
      {Incident::illness, "illness"}};
  return rows;
}

template <>
std::span<const Named<VesselKind>> names() {
  static constexpr Named<VesselKind> rows[] = {{VesselKind::pool, "pool"},
                                               {VesselKind::spa, "spa"},
                                               {VesselKind::swim_spa, "swim_spa"},
                                               {VesselKind::plunge, "plunge"}};
  return rows;
}

template <>
std::span<const Named<VesselUse>> names() {
  static constexpr Named<VesselUse> rows[] = {{VesselUse::household, "household"},
                                              {VesselUse::public_use, "public"}};
  return rows;
}

template <>
std::span<const Named<Place>> names() {
  static constexpr Named<Place> rows[] = {{Place::outdoor, "outdoor"}, {Place::indoor, "indoor"}};
  return rows;
}

template <>
std::span<const Named<Surface>> names() {
  static constexpr Named<Surface> rows[] = {
      {Surface::plaster, "plaster"},       {Surface::tile, "tile"},       {Surface::vinyl, "vinyl"},
      {Surface::fibreglass, "fibreglass"}, {Surface::painted, "painted"}, {Surface::acrylic, "acrylic"}};
  return rows;
}

template <>
std::span<const Named<Sanitizer>> names() {
  static constexpr Named<Sanitizer> rows[] = {{Sanitizer::chlorine, "chlorine"},
                                              {Sanitizer::salt_chlorine, "salt_chlorine"},
                                              {Sanitizer::bromine, "bromine"},
                                              {Sanitizer::biguanide, "biguanide"}};
  return rows;
}

}  // namespace brimline
