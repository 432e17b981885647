// SPDX-License-Identifier: GPL-3.0-or-later
// A sound bottle and every fault a check is for.
#pragma once

#include <functional>
#include <ostream>
#include <vector>

#include "analysis/panel/check.h"

namespace brimline {

Reading read(AnalyteId analyte, double value, std::optional<Method> method = Method::photometer,
             double dilution = 1);
Reading clipped(AnalyteId analyte, double value, Clip clip, Method method = Method::photometer);

struct Case {
  Bottle bottle;
  Vessel vessel;
  std::vector<Bottle> earlier;
  std::optional<Instant> now;
  Supplies supplies;

  void set(AnalyteId analyte, double value, std::optional<Method> method = Method::photometer) {
    for (Reading& r : bottle.readings)
      if (r.analyte == analyte) {
        r.value = value;
        r.method = method;
        return;
      }
    bottle.readings.push_back(read(analyte, value, method));
  }
  void drop(std::string_view analyte) {
    std::erase_if(bottle.readings, [&](const Reading& r) { return r.analyte == analyte; });
  }
  void add(std::string chemical, std::optional<double> days) {
    bottle.additions_since.push_back({std::move(chemical), 10.0, days});
  }
  std::vector<Check> run() const { return check_bottle(bottle, vessel, earlier, now, supplies); }
};

// A stabilised outdoor pool in good order.
Case sound();

// A lot that the free chlorine was read with, in good order.
ReagentLot& lot(Case& c);

// Every reading by one instrument, checked then.
void checked(Case& c, const char* when, bool passed);

struct Fires {
  const char* id;
  Verdict verdict;
  std::function<void(Case&)> fault;
};
std::ostream& operator<<(std::ostream& out, const Fires& f);

// One row a check.
const std::vector<Fires>& fires();

}  // namespace brimline
