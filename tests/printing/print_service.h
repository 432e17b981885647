// SPDX-License-Identifier: GPL-3.0-or-later
// A print service of the test's own: cupsd in a folder of its own, heard on a socket in it.
#pragma once

#include <cups/cups.h>
#include <gtest/gtest.h>

#include <QDir>
#include <QFile>
#include <QProcess>
#include <QTemporaryDir>
#include <QThread>

#include "printing/queue.h"

namespace brimline {

class PrintService : public testing::Test {
 protected:
  QTemporaryDir folder;
  QProcess service;

  QString at(const char* name) const { return folder.filePath(QString::fromLatin1(name)); }

  // `@` in the text becomes the folder.
  void write(const char* name, const char* text) const {
    QFile file(at(name));
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    file.write(QByteArray(text).replace("@", folder.path().toUtf8()));
  }

  void run_cups(const QString& program, const QStringList& arguments) const {
    QProcess process;
    auto environment = QProcessEnvironment::systemEnvironment();
    environment.insert("CUPS_SERVER", at("cups.sock"));
    environment.insert("PATH", environment.value("PATH") + ":/usr/sbin");
    process.setProcessEnvironment(environment);
    process.start("/usr/bin/env", QStringList{program} + arguments);
    ASSERT_TRUE(process.waitForFinished(30000));
    ASSERT_EQ(process.exitCode(), 0) << process.readAllStandardError().toStdString();
  }

  void start_service() {
    QFile::setPermissions(folder.path(), QFile::permissions(folder.path()) | QFile::ReadOther |
                                             QFile::ExeOther | QFile::ReadGroup | QFile::ExeGroup);
    for (const char* name : {"etc", "spool", "cache", "state"}) ASSERT_TRUE(QDir(folder.path()).mkdir(name));
    write("files.conf",
          "ServerRoot @/etc\nServerBin /usr/lib/cups\nDataDir /usr/share/cups\nRequestRoot @/spool\n"
          "CacheDir @/cache\nStateDir @/state\nTempDir @/spool\nAccessLog @/access\nErrorLog @/error\n"
          "PageLog @/page\nFileDevice Yes\n");
    write("cupsd.conf",
          "Listen @/cups.sock\nBrowsing Off\nDefaultAuthType None\nWebInterface No\n"
          "<Location />\nOrder allow,deny\nAllow all\n</Location>\n"
          "<Location /admin>\nOrder allow,deny\nAllow all\n</Location>\n"
          "<Policy default>\n<Limit All>\nOrder allow,deny\nAllow all\n</Limit>\n</Policy>\n");
    service.start("/usr/sbin/cupsd", {"-f", "-c", at("cupsd.conf"), "-s", at("files.conf")});
    ASSERT_TRUE(service.waitForStarted());
    for (int i = 0; i < 300 && !QFile::exists(at("cups.sock")); ++i) QThread::msleep(50);
    cupsSetServer(at("cups.sock").toUtf8().constData());
  }

  void add_queue(const QString& name, const QString& description, const QString& device) const {
    run_cups("lpadmin", {"-p", name, "-D", description, "-E", "-v", device});
  }

  void TearDown() override {
    service.terminate();
    service.waitForFinished(10000);
  }

  // The report once its state is `wanted`, or the last one.
  static JobReport report_when(const PrintJob& job, JobState wanted, const Words& words = Words("en")) {
    JobReport report = job_report(job, words);
    for (int i = 0; i < 300 && report.state != wanted; ++i) {
      QThread::msleep(50);
      report = job_report(job, words);
    }
    return report;
  }
};

}  // namespace brimline
