// SPDX-License-Identifier: GPL-3.0-or-later
// The opaque code of a visit, as printed in the sheet's QR: it reopens the visit at the counter
// and says nothing about the customer to anybody else.
#pragma once

#include <string>
#include <string_view>

namespace brimline {

// "bl:" and the first 16 hexadecimal digits of SHA-256 (FIPS 180-4) of the visit's id.
std::string visit_code(std::string_view visit_id);

}  // namespace brimline
