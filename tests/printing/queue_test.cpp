// SPDX-License-Identifier: GPL-3.0-or-later
// What the clerk is told of a printer, against the states and reasons of RFC 8011.
#include "printing/queue.h"

#include <cups/cups.h>
#include <gmock/gmock.h>

#include <QDir>
#include <QFile>
#include <QProcess>
#include <QTcpServer>
#include <QTcpSocket>
#include <QTemporaryDir>
#include <QThread>

#include "printing/pdf.h"
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

constexpr const char* kFiles =
    "ServerRoot @/etc\nServerBin /usr/lib/cups\nDataDir /usr/share/cups\nRequestRoot @/spool\nCacheDir "
    "@/cache\n"
    "StateDir @/state\nTempDir @/spool\nAccessLog @/access\nErrorLog @/error\nPageLog @/page\nFileDevice "
    "Yes\n";
constexpr const char* kDaemon =
    "Listen @/cups.sock\nBrowsing Off\nDefaultAuthType None\nWebInterface No\n"
    "<Location />\nOrder allow,deny\nAllow all\n</Location>\n"
    "<Location /admin>\nOrder allow,deny\nAllow all\n</Location>\n"
    "<Policy default>\n<Limit All>\nOrder allow,deny\nAllow all\n</Limit>\n</Policy>\n";

// A print service of our own in a folder of its own, with one queue whose printer is a socket of the test
// (raw printing over TCP, as network printers take it).
class RealQueue : public testing::Test {
 protected:
  QTemporaryDir folder;
  QProcess service;
  QTcpServer printer;

  QString at(const char* name) const { return folder.filePath(QString::fromLatin1(name)); }
  void write(const char* name, const char* text) const {
    QFile file(at(name));
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    file.write(QByteArray(text).replace("@", folder.path().toUtf8()));
  }
  void run(const QString& program, const QStringList& arguments) const {
    QProcess process;
    process.setProcessEnvironment([&] {
      auto environment = QProcessEnvironment::systemEnvironment();
      environment.insert("CUPS_SERVER", at("cups.sock"));
      environment.insert("PATH", environment.value("PATH") + ":/usr/sbin");
      return environment;
    }());
    process.start("/usr/bin/env", QStringList{program} + arguments);
    ASSERT_TRUE(process.waitForFinished(30000));
    ASSERT_EQ(process.exitCode(), 0) << process.readAllStandardError().toStdString();
  }
  void SetUp() override {
    QFile::setPermissions(folder.path(), QFile::permissions(folder.path()) | QFile::ReadOther |
                                             QFile::ExeOther | QFile::ReadGroup | QFile::ExeGroup);
    ASSERT_TRUE(printer.listen(QHostAddress::LocalHost));
    for (const char* name : {"etc", "spool", "cache", "state"}) ASSERT_TRUE(QDir(folder.path()).mkdir(name));
    write("files.conf", kFiles);
    write("cupsd.conf", kDaemon);
    service.start("/usr/sbin/cupsd", {"-f", "-c", at("cupsd.conf"), "-s", at("files.conf")});
    ASSERT_TRUE(service.waitForStarted());
    for (int i = 0; i < 300 && !QFile::exists(at("cups.sock")); ++i) QThread::msleep(50);
    cupsSetServer(at("cups.sock").toUtf8().constData());
    run("lpadmin", {"-p", "counter", "-D", "Counter printer", "-E", "-v",
                    QString("socket://127.0.0.1:%1/?waiteof=false").arg(printer.serverPort())});
  }
  void TearDown() override {
    service.terminate();
    service.waitForFinished(10000);
  }
  // The report once its state is `wanted`, or the last one.
  static JobReport report_when(const PrintJob& job, JobState wanted) {
    JobReport report = job_report(job);
    for (int i = 0; i < 300 && report.state != wanted; ++i) {
      QThread::msleep(50);
      report = job_report(job);
    }
    return report;
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
  run("cupsdisable", {"counter"});
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
  run("cupsreject", {"counter"});
  const auto refused = send_to_queue("counter", "%PDF-1.4", "Take-home sheet");
  ASSERT_FALSE(refused);
  EXPECT_EQ(refused.error().kind, PrintError::Kind::refused);
}

}  // namespace
}  // namespace brimline
