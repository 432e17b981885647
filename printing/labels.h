// SPDX-License-Identifier: GPL-3.0-or-later
// Labels for the bottles of an overnight test: to be cut from a page, or off the roll one by one.
#pragma once

#include <string>
#include <vector>

#include "printing/pages.h"
#include "station/overnight/overnight_test.h"
#include "station/visit.h"

namespace brimline {

struct Label {
  std::string code;                // "B-1012/3": what a scanner reads from its QR
  std::string dose, stock;         // "10 mg/L", "1.0 mL of stock"
  std::vector<std::string> lines;  // when it is read, and what it is
  friend bool operator==(const Label&, const Label&) = default;
};

// The text on the bottle's label, for scanner and instrument; `bottle` from 0.
std::string overnight_code(const std::string& bottle_code, int bottle);

// One a bottle, the stock's own last. `now` stands for the start where the clock has not been started, and
// the times then say "about".
std::vector<Label> overnight_labels(const OvernightTest& test, const Visit& visit, const Instant& now,
                                    const Words& words);

Pages lay_out_labels(const std::vector<Label>& labels, Paper paper);

}  // namespace brimline
