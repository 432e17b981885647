// SPDX-License-Identifier: GPL-3.0-or-later
// What a counter does to a store, as values that can wait: made here, done by `do_work` on the counter's own
// store at once and on the shared one when it can be reached, once.
#pragma once

#include "station/store/waiting_work.h"

namespace brimline {

namespace work {
WaitingWork begin(const Visit& visit);
WaitingWork update(const Visit& before, const Visit& after);  // circumstances
WaitingWork reading(const std::string& visit, const Reading& reading);
WaitingWork tell(const std::string& visit, const Plan& plan);  // and the bottle waits no longer
WaitingWork correct(const std::string& visit, const std::vector<Reading>& before,
                    const std::vector<Reading>& after, const std::string& reason);
WaitingWork overnight(const std::optional<OvernightTest>& before, const OvernightTest& after);
WaitingWork orphan(const OrphanReading& orphan);
WaitingWork settle(const std::string& orphan, const std::optional<std::string>& visit, const Reading& as);
WaitingWork customer(const Customer& seen, const Customer& now);
WaitingWork vessel(const Vessel& before, const Vessel& after, const std::string& customer);
// The same, ours to win where another counter changed the same.
WaitingWork insisted(WaitingWork work);
}  // namespace work

// Joins the work with what others did meanwhile. `conflicting`: both changed the same; the text says what, as
// "FIELD: ours OURS, theirs THEIRS". Not signed, and not guarded against being done twice.
Stored<void> do_work(Store& store, const WaitingWork& work);

}  // namespace brimline
