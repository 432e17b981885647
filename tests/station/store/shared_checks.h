// SPDX-License-Identifier: GPL-3.0-or-later
// What any store must do, on whichever engine.
#pragma once

#include "station/store/store.h"

namespace brimline::tests {

void check_round_trips(Store& store);  // whole, sparse and hostile visits come back equal
void check_revisions(Store& store);    // same once, other a revision, the audit trail for ever
void check_progress(Store& store);     // begun, read, told, finished
void check_people(Store& store);       // customers, vessels, settings, search
void check_crowd(Store& store);        // search among many, most words common
void check_orphans(Store& store);
void check_supplies(Store& store);
void check_quality(Store& store);      // control charts come back; what is evidence stays
void check_refusals(Store& store);     // what breaks a rule changes nothing
void check_audit_trail(Store& store);  // who changed what, for ever; no person in it
void check_audit_is_whole(Store& store);
void check_staff(Store& store);
void check_two_counters_edit(Store& one, Store& other);  // both at the same records
void check_erasure(Store& store);
void check_joining(Store& store);     // two cards of one person
void check_due(Store& store);         // whose next bottle is due
void check_overnights(Store& store);  // set up, read by two counters, told

}  // namespace brimline::tests
