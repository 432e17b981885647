// SPDX-License-Identifier: GPL-3.0-or-later
// Targets for arbitrary bytes. Each aborts where a law is broken; `tests/long/fuzz` runs them under
// libFuzzer, fuzz_short_test for a few seconds on fixed bytes.
#pragma once

#include <cstdint>
#include <span>

namespace brimline::fuzz {

void table(std::span<const std::uint8_t> bytes);   // the CSV of `water` and `dose`
void solver(std::span<const std::uint8_t> bytes);  // readings, doses, saturation
void wire(std::span<const std::uint8_t> bytes);    // the instruments' decoders, profiles and recordings

}  // namespace brimline::fuzz
