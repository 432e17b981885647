// SPDX-License-Identifier: GPL-3.0-or-later
// What the clerk is told of a printer, against the states and reasons of RFC 8011.
#include "printing/queue.h"

#include <gmock/gmock.h>

#include <QtGlobal>

namespace brimline {
namespace {

using testing::HasSubstr;

// RFC 8011, table 15 (5.3.7): pending 3, pending-held 4, processing 5, processing-stopped 6,
// canceled 7, aborted 8, completed 9.
TEST(JobReport, FollowsTheStatesOfRfc8011) {
  EXPECT_EQ(read_report(3, false, {}).state, JobState::waiting);
  EXPECT_EQ(read_report(4, false, {}).state, JobState::waiting);
  EXPECT_EQ(read_report(5, false, {}).state, JobState::printing);
  EXPECT_EQ(read_report(6, false, {}).state, JobState::stopped);
  EXPECT_EQ(read_report(7, false, {}).state, JobState::cancelled);
  EXPECT_EQ(read_report(8, false, {}).state, JobState::failed);
  EXPECT_EQ(read_report(9, false, {}).state, JobState::done);
  EXPECT_EQ(read_report(0, false, {}).state, JobState::unknown);
}

TEST(JobReport, OutOfPaperIsSaidSoAndNotPrinting) {
  for (const char* reason : {"media-empty", "media-empty-error", "media-empty-warning"}) {
    const JobReport report = read_report(5, false, {reason});
    EXPECT_EQ(report.state, JobState::stopped) << reason;
    EXPECT_THAT(report.text, HasSubstr("out of paper"));
    EXPECT_EQ(report.reasons, std::vector<std::string>{reason});
  }
  EXPECT_THAT(read_report(3, true, {"cover-open-error"}).text, HasSubstr("cover"));
  EXPECT_THAT(read_report(9, false, {"media-empty"}).text, HasSubstr("printed"));
}

TEST(JobReport, EndsOnlyWhereNothingMoreHappens) {
  for (const JobState state : {JobState::done, JobState::cancelled, JobState::failed})
    EXPECT_TRUE(is_over(state));
  for (const JobState state : {JobState::waiting, JobState::printing, JobState::stopped, JobState::unknown})
    EXPECT_FALSE(is_over(state));
}

// A print service at an address where none listens: there is no printer, and that is said plainly.
TEST(Queue, WithoutAServiceThereIsNoPrinter) {
  qputenv("CUPS_SERVER", "/nonexistent/cups.sock");
  EXPECT_TRUE(print_queues().empty());
  const auto job = send_to_queue("counter", "%PDF-1.4", "Take-home sheet");
  ASSERT_FALSE(job);
  EXPECT_EQ(job.error().kind, PrintError::Kind::no_printer);
  EXPECT_THAT(job.error().text, HasSubstr("No printer is set up"));
  EXPECT_EQ(job_report({"counter", 1}).state, JobState::unknown);
}

}  // namespace
}  // namespace brimline
