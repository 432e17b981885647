// SPDX-License-Identifier: GPL-3.0-or-later
// The contract's spellings of the panel's words: one table an enum, used both ways.
//
//   name_of(Sanitizer::salt_chlorine)      -> "salt_chlorine"
//   named<Sanitizer>("salt_chlorine")      -> Sanitizer::salt_chlorine, or nothing
//   choices<Sanitizer>()                   -> "chlorine, salt_chlorine, bromine, biguanide"
#pragma once

#include <optional>
#include <span>
#include <string>
#include <string_view>

#include "analysis/panel/bottle.h"
#include "analysis/panel/reading.h"
#include "analysis/panel/vessel.h"

namespace brimline {

template <class E>
struct Named {
  E value;
  std::string_view name;
};

// Every value of E with its spelling, in the contract's order; specialise for an enum of your own.
template <class E>
std::span<const Named<E>> names();

template <>
std::span<const Named<Method>> names();
template <>
std::span<const Named<Clip>> names();
template <>
std::span<const Named<Occasion>> names();
template <>
std::span<const Named<SampledAt>> names();
template <>
std::span<const Named<Sign>> names();
template <>
std::span<const Named<Incident>> names();
template <>
std::span<const Named<VesselKind>> names();
template <>
std::span<const Named<VesselUse>> names();
template <>
std::span<const Named<Place>> names();
template <>
std::span<const Named<Surface>> names();
template <>
std::span<const Named<Sanitizer>> names();

template <class E>
std::string_view name_of(E value) {
  for (const Named<E>& row : names<E>())
    if (row.value == value) return row.name;
  return {};
}

template <class E>
std::optional<E> named(std::string_view name) {
  for (const Named<E>& row : names<E>())
    if (row.name == name) return row.value;
  return std::nullopt;
}

// All spellings, comma separated, for "expected one of ...".
template <class E>
std::string choices() {
  std::string out;
  for (const Named<E>& row : names<E>()) {
    if (!out.empty()) out += ", ";
    out += row.name;
  }
  return out;
}

}  // namespace brimline
