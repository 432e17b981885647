// SPDX-License-Identifier: GPL-3.0-or-later
// What the clerk is told of a printer, against the states and reasons of RFC 8011.
#include "printing/queue.h"

#include <cups/cups.h>
#include <gmock/gmock.h>

#include <QTcpServer>
#include <QTcpSocket>

#include "printing/pdf.h"
#include "tests/printing/print_service.h"
#include "tests/printing/sample_visit.h"

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

// Every sentence goes through Words, and so in the customer's or the clerk's language.
TEST(JobReport, SpeaksThroughWords) {
  const Words spanish("es");
  EXPECT_EQ(read_report(5, false, {"media-empty"}, spanish).text,
            spanish.say("printer", "The printer is out of paper."));
  EXPECT_EQ(read_report(7, false, {}, spanish).text,
            spanish.say("printer", "The sheet was cancelled. Print it again?"));
}

// A print service at an address where none listens: there is no printer, and that is said plainly.
TEST(Queue, WithoutAServiceThereIsNoPrinter) {
  cupsSetServer("/nonexistent/cups.sock");
  EXPECT_TRUE(print_queues().empty());
  const auto job = send_to_queue("counter", "%PDF-1.4", "Take-home sheet");
  ASSERT_FALSE(job);
  EXPECT_EQ(job.error().kind, PrintError::Kind::no_printer);
  EXPECT_THAT(job.error().text, HasSubstr("No printer is set up"));
  EXPECT_EQ(job_report({"counter", 1}).state, JobState::unknown);
}

// One queue whose printer is a socket of the test (raw printing over TCP, as network printers take it).
class RealQueue : public PrintService {
 protected:
  QTcpServer printer;

  void SetUp() override {
    start_service();
    ASSERT_TRUE(printer.listen(QHostAddress::LocalHost));
    add_queue("counter", "Counter printer",
              QString("socket://127.0.0.1:%1/?waiteof=false").arg(printer.serverPort()));
  }
};

TEST_F(RealQueue, PrintsTheBytesAndSaysWhenItIsDone) {
  const auto queues = print_queues();
  ASSERT_EQ(queues.size(), 1u);
  EXPECT_EQ(queues[0].name, "counter");
  EXPECT_EQ(queues[0].description, "Counter printer");
  const Sheet sheet = make_sheet(sample_visit(), nullptr, sample_shop(), Words("en"));
  const auto bytes = pdf_bytes(sheet, {});
  ASSERT_TRUE(bytes);
  const auto job = send_to_queue("counter", *bytes, "Take-home sheet");
  ASSERT_TRUE(job) << job.error().text;
  ASSERT_TRUE(printer.waitForNewConnection(30000));
  QTcpSocket* paper = printer.nextPendingConnection();
  QByteArray printed;
  while (printed.size() < bytes->size() && paper->waitForReadyRead(30000)) printed += paper->readAll();
  paper->close();
  EXPECT_EQ(printed, *bytes);
  EXPECT_EQ(report_when(*job, JobState::done).state, JobState::done);
}

TEST_F(RealQueue, TellsOfAStoppedPrinterAndTakesTheSheetBack) {
  run_cups("cupsdisable", {"counter"});
  const auto job = send_to_queue("counter", "%PDF-1.4", "Take-home sheet");
  ASSERT_TRUE(job) << job.error().text;
  EXPECT_EQ(report_when(*job, JobState::stopped).state, JobState::stopped);
  EXPECT_TRUE(cancel_job(*job));
  EXPECT_EQ(report_when(*job, JobState::cancelled).state, JobState::cancelled);
}

TEST_F(RealQueue, NamesAPrinterThatIsNotThere) {
  const auto job = send_to_queue("cellar", "%PDF-1.4", "Take-home sheet");
  ASSERT_FALSE(job);
  EXPECT_EQ(job.error().kind, PrintError::Kind::no_printer);
  EXPECT_THAT(job.error().text, HasSubstr("cellar"));
  run_cups("cupsreject", {"counter"});
  const auto refused = send_to_queue("counter", "%PDF-1.4", "Take-home sheet");
  ASSERT_FALSE(refused);
  EXPECT_EQ(refused.error().kind, PrintError::Kind::refused);
}

}  // namespace
}  // namespace brimline
