// SPDX-License-Identifier: GPL-3.0-or-later
#include "station/store/tables.h"

namespace brimline {

namespace {
constexpr StoredTable kTables[] = {
    {"customers", "id, name, phone, street, email, language, units", 7},
    {"customer_words", "word, place, customer_id", 3},
    {"vessels",
     "id, customer_id, kind, \"use\", place, in_ground, surface, plaster_age_days, volume_m3, "
     "volume_relative_sd, learnt_volume_m3, learnt_until, volume_before_m3, volume_before_relative_sd, "
     "sanitizer, previous_sanitizer, water_temperature_c, turnover_h",
     18},
    {"visits", "id, revision, finished, at_s, bottle, customer_id, vessel_id, circumstances, due_s", 9},
    {"readings",
     "visit_id, position, analyte, value, method, dilution, clipped, repeat_of, sd, instrument, lot", 11},
    {"plans", "visit_id, plan", 2},
    {"revisions", "visit_id, revision, superseded_at, content", 4},
    {"overnight_tests", "visit_id, number, open, content", 4},
    {"orphan_readings", "id, number, heard_at, sample, reading, settled", 6},
    {"settings", "name, value", 2},
    {"reagent_lots", "lot, analyte, expires, opened, warmest_c, beside_chlorine, gone, tests", 8},
    {"instrument_checks", "instrument, number, analyte, at, passed", 5},
    {"instruments", "id", 1},
    {"check_standards", "id, instrument, analyte, name, value, sd, every_days, since", 8},
    {"check_measurements", "id, standard, at_s, measured_at, value, typed, lot", 7},
    {"check_clearances", "id, instrument, analyte, at_s, cleared_at, cleared_by, reason", 7},
    {"lot_curves", "id, lot, wavelength_nm, at_s, measured_at, points", 6},
    {"staff", "id, name, role, pin_hash, gone, failures, wait_until_s", 7},
    {"audit_trail", "number, at_s, at, who, what, subject, field, before, after, reason", 10},
    {"done_work", "id, at_s", 2},
    {"joined_customers", "id, into_id, content", 3},
    {"told_apart", "id, other_id", 2},
    {"waiting_work", "number, id, kind, subject, content, who, at, refusal", 8}};
}  // namespace

std::span<const StoredTable> stored_tables() {
  return kTables;
}

}  // namespace brimline
