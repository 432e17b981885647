// SPDX-License-Identifier: GPL-3.0-or-later
#include "station/visit_names.h"

namespace brimline {

template <>
std::span<const Named<Units>> names() {
  static constexpr Named<Units> rows[] = {{Units::us, "us"}, {Units::metric, "metric"}};
  return rows;
}

template <>
std::span<const Named<Concern>> names() {
  static constexpr Named<Concern> rows[] = {{Concern::health, "health"},   {Concern::equipment, "equipment"},
                                            {Concern::surface, "surface"}, {Concern::clarity, "clarity"},
                                            {Concern::comfort, "comfort"}, {Concern::upkeep, "upkeep"},
                                            {Concern::reading, "reading"}};
  return rows;
}

template <>
std::span<const Named<Action>> names() {
  static constexpr Named<Action> rows[] = {{Action::drain_refill, "drain_refill"},
                                           {Action::add, "add"},
                                           {Action::aerate, "aerate"},
                                           {Action::brush, "brush"},
                                           {Action::vacuum, "vacuum"},
                                           {Action::filter, "filter"},
                                           {Action::clean_filter, "clean_filter"},
                                           {Action::circulate, "circulate"},
                                           {Action::remove_tablets, "remove_tablets"},
                                           {Action::set_generator, "set_generator"},
                                           {Action::cool, "cool"},
                                           {Action::retest, "retest"},
                                           {Action::call_professional, "call_professional"}};
  return rows;
}

}  // namespace brimline
