// SPDX-License-Identifier: GPL-3.0-or-later
// The JSON form of a visit, `brimline-visit/1`: strict to read, the same visit again when written.
#pragma once

#include <string_view>
#include <vector>

#include <nlohmann/json_fwd.hpp>
#include <tl/expected.hpp>

#include "analysis/fields.h"
#include "station/visit.h"

namespace brimline {

// The visit in `json`, or every fault in the order of lines; `file` is how faults name it and
// `first_line` the line of that file on which `json` begins. Refused is what no visit can be:
// unknown fields, names and units, wrong types, negative amounts, pH outside 0 to 14.
tl::expected<Visit, std::vector<Fault>> read_visit(std::string_view json, std::string_view file,
                                                   int first_line = 1);

// What is absent is left out; numbers keep every digit. read_visit of the text gives an equal visit.
nlohmann::ordered_json visit_to_json(const Visit& visit);

// The parts, for those who keep them apart; read strictly, `file` naming where they are from.
nlohmann::ordered_json reading_to_json(const Reading& reading);
nlohmann::ordered_json customer_to_json(const Customer& customer);
nlohmann::ordered_json vessel_to_json(const Vessel& vessel);
tl::expected<Reading, std::vector<Fault>> read_reading(std::string_view json, std::string_view file);

// From a form in memory, read as strictly as its text would be; its faults have no lines.
tl::expected<Visit, std::vector<Fault>> visit_from(const nlohmann::ordered_json& form, std::string_view file);
tl::expected<Reading, std::vector<Fault>> reading_from(const nlohmann::ordered_json& form,
                                                       std::string_view file);
tl::expected<Customer, std::vector<Fault>> customer_from(const nlohmann::ordered_json& form,
                                                         std::string_view file);
tl::expected<Vessel, std::vector<Fault>> vessel_from(const nlohmann::ordered_json& form,
                                                     std::string_view file);

// A double as JSON writes it shortest: 24 rather than 24.0.
nlohmann::ordered_json number_to_json(double value);

}  // namespace brimline
