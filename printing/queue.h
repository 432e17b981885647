// SPDX-License-Identifier: GPL-3.0-or-later
// Print queues of the machine (CUPS, over IPP: RFC 8011) and what becomes of a sheet sent to one.
//
//   const auto job = send_to_queue("counter", bytes, "Take-home sheet");
//   if (job) show(job_report(*job).text);        // asked again while is_over() is false
#pragma once

#include <QByteArray>
#include <string>
#include <vector>

#include <tl/expected.hpp>

#include "printing/print_error.h"
#include "station/wording/words.h"

namespace brimline {

struct PrintQueue {
  std::string name;         // as CUPS knows it
  std::string description;  // as people know it; the name where there is none
  bool is_default = false;
  bool accepting = true;  // takes new jobs
};

// Every queue, the default first; empty where there is none or no print service runs.
std::vector<PrintQueue> print_queues();

struct PrintJob {
  std::string queue;
  int id = 0;
};

enum class JobState { waiting, printing, done, stopped, cancelled, failed, unknown };

// What the clerk is told of a job.
struct JobReport {
  JobState state = JobState::unknown;
  std::vector<std::string> reasons;  // the printer's own, as RFC 8011 5.4.12 names them: "media-empty"
  std::string text;                  // one plain line in the words' language
};

// Nothing more will happen to it by itself.
bool is_over(JobState state);

// Sends a PDF, once; paper and sides are the queue's own. No queue of that name, or no print service:
// `no_printer`; a queue that takes no jobs: `refused`. A sent job may wait for ever if its printer is off:
// ask job_report.
tl::expected<PrintJob, PrintError> send_to_queue(const std::string& queue, const QByteArray& pdf,
                                                 const std::string& title, const Words& words = Words("en"));

JobReport job_report(const PrintJob& job, const Words& words = Words("en"));

// Takes a job back that has not been printed; false where it could not be.
bool cancel_job(const PrintJob& job);

// State and sentence from what the print service says: IPP job-state (RFC 8011 5.3.7, 3 to 9), whether
// the printer is stopped, and the printer's reasons.
JobReport read_report(int ipp_job_state, bool printer_stopped, std::vector<std::string> reasons,
                      const Words& words = Words("en"));

}  // namespace brimline
