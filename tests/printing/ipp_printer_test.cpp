// SPDX-License-Identifier: GPL-3.0-or-later
// A sheet on its way through a real print service to an emulated network printer (IPP Everywhere, as the cups
// project's ippeveprinter speaks it): printed, out of paper, away and back, cancelled. Each is told, and
// nothing is printed twice.
#include <gmock/gmock.h>

#include <QTcpServer>

#include "printing/pdf.h"
#include "tests/printing/print_service.h"
#include "tests/printing/sample_visit.h"

namespace brimline {
namespace {

using testing::HasSubstr;

// What the printer does with a sheet: waits for paper while the file `no_paper` is there, then keeps it.
constexpr const char* kEngine =
    "#!/bin/sh\n"
    "if [ -e @/no_paper ]; then echo 'STATE: +media-empty-error' >&2\n"
    "  while [ -e @/no_paper ]; do sleep 0.05; done\n"
    "  echo 'STATE: -media-empty-error' >&2; fi\n"
    "cat \"$1\" > @/printed/$(date +%s%N).pdf\n";
constexpr const char* kBus =
    "<!DOCTYPE busconfig PUBLIC \"-//freedesktop//DTD D-Bus Bus Configuration 1.0//EN\" "
    "\"http://www.freedesktop.org/standards/dbus/1.0/busconfig.dtd\">"
    "<busconfig><type>system</type><listen>unix:path=@/bus</listen><auth>EXTERNAL</auth>"
    "<policy context=\"default\"><allow send_destination=\"*\" eavesdrop=\"true\"/><allow "
    "eavesdrop=\"true\"/>"
    "<allow own=\"*\"/><allow user=\"*\"/></policy>"
    "</busconfig>";
// ippeveprinter will not start without a name service, though it tells it nothing here.
constexpr const char* kNames =
    "[server]\nuse-ipv6=no\nallow-interfaces=lo\nenable-dbus=yes\n[wide-area]\nenable-wide-area=no\n";

class IppPrinter : public PrintService {
 protected:
  QProcess bus, names, printer;
  QByteArray pdf;
  int port = 0;

  void SetUp() override {
    start_service();
    ASSERT_TRUE(QDir(folder.path()).mkdir("printed"));
    ASSERT_TRUE(QDir(folder.path()).mkdir("taken"));
    write("engine", kEngine);
    QFile::setPermissions(at("engine"), QFile::ReadOwner | QFile::WriteOwner | QFile::ExeOwner);
    write("bus.conf", kBus);
    write("names.conf", kNames);
    bus.start("/usr/bin/dbus-daemon", {"--config-file=" + at("bus.conf"), "--nofork"});
    for (int i = 0; i < 200 && !QFile::exists(at("bus")); ++i) QThread::msleep(50);
    auto environment = QProcessEnvironment::systemEnvironment();
    environment.insert("DBUS_SYSTEM_BUS_ADDRESS", "unix:path=" + at("bus"));
    names.setProcessEnvironment(environment);
    printer.setProcessEnvironment(environment);
    QTcpServer probe;
    ASSERT_TRUE(probe.listen(QHostAddress::LocalHost));
    port = probe.serverPort();
    probe.close();
    // Only one name service runs on a machine at a time: another test's may be about to end.
    for (int i = 0; i < 40; ++i) {
      names.start("/usr/sbin/avahi-daemon",
                  {"--no-rlimits", "--no-drop-root", "--no-chroot", "-f", at("names.conf")});
      if (!names.waitForFinished(1000)) break;
    }
    plug_in();
    add_queue("counter", "Counter printer", QString("ipp://localhost:%1/ipp/print").arg(port));
    const auto bytes = pdf_bytes(make_sheet(sample_visit(), nullptr, sample_shop(), Words("en")), {});
    ASSERT_TRUE(bytes);
    pdf = *bytes;
  }

  void plug_in() {
    printer.setProcessChannelMode(QProcess::MergedChannels);
    printer.start("/usr/sbin/ippeveprinter", {"-r", "off", "-p", QString::number(port), "-d", at("taken"),
                                              "-f", "application/pdf", "-c", at("engine"), "Counter"});
    ASSERT_TRUE(printer.waitForStarted());
    for (int i = 0; i < 200; ++i) {
      QProcess ask;
      ask.start("/usr/bin/ipptool",
                {"-q", QString("ipp://localhost:%1/ipp/print").arg(port), "get-printer-attributes.test"});
      if (ask.waitForFinished(5000) && ask.exitCode() == 0) return;
      QThread::msleep(50);
    }
    printer.kill();
    printer.waitForFinished(5000);
    FAIL() << printer.readAll().toStdString();
  }
  void unplug() {
    printer.kill();
    printer.waitForFinished(5000);
  }
  void TearDown() override {
    unplug();
    for (QProcess* one : {&names, &bus}) {
      one->kill();
      one->waitForFinished(5000);
    }
    PrintService::TearDown();
  }

  qsizetype printed() const { return QDir(at("printed")).entryList(QDir::Files).size(); }
  PrintJob sent() const {
    const auto job = send_to_queue("counter", pdf, "Take-home sheet");
    EXPECT_TRUE(job) << job.error().text;
    return job.value_or(PrintJob{});
  }
};

TEST_F(IppPrinter, EachOutcomeIsToldAndNothingIsPrintedTwice) {
  // done
  EXPECT_THAT(report_when(sent(), JobState::done).text, HasSubstr("is printed"));
  ASSERT_EQ(printed(), 1);
  QFile paper(at("printed") + "/" + QDir(at("printed")).entryList(QDir::Files).front());
  ASSERT_TRUE(paper.open(QIODevice::ReadOnly));
  EXPECT_EQ(paper.readAll(), pdf);

  // out of paper, then paper again
  write("no_paper", "");
  const PrintJob hungry = sent();
  EXPECT_THAT(report_when(hungry, JobState::stopped).text, HasSubstr("out of paper"));
  EXPECT_EQ(printed(), 1);
  QFile::remove(at("no_paper"));
  EXPECT_EQ(report_when(hungry, JobState::done).state, JobState::done);
  EXPECT_EQ(printed(), 2);

  // away, then back: the sheet that waited comes out, once
  unplug();
  const PrintJob patient = sent();
  EXPECT_THAT(report_when(patient, JobState::stopped).text, HasSubstr("is it switched on?"));
  plug_in();
  EXPECT_EQ(report_when(patient, JobState::done).state, JobState::done);
  EXPECT_EQ(printed(), 3);

  // cancelled while it waits for paper: told, offered again, and gone
  write("no_paper", "");
  const PrintJob unwanted = sent();
  EXPECT_EQ(report_when(unwanted, JobState::stopped).state, JobState::stopped);
  EXPECT_TRUE(cancel_job(unwanted));
  EXPECT_THAT(report_when(unwanted, JobState::cancelled).text, HasSubstr("Print it again?"));
  QThread::msleep(500);
  EXPECT_EQ(printed(), 3);
}

}  // namespace
}  // namespace brimline
