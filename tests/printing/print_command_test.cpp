// SPDX-License-Identifier: GPL-3.0-or-later
// `brimline-batch print` as others call it: its words, exit codes and file.
#include <gmock/gmock.h>

#include <QDir>
#include <QFile>
#include <QProcess>
#include <QTemporaryDir>
#include <nlohmann/json.hpp>

#include "station/plan_json.h"
#include "station/visit_json.h"
#include "tests/printing/sample_visit.h"

namespace brimline {
namespace {

struct Outcome {
  int exit = -1;
  QByteArray out, err;
};

class PrintCommand : public testing::Test {
 protected:
  QTemporaryDir folder;
  QString at(const char* name) const { return folder.filePath(QString::fromLatin1(name)); }
  static Outcome run(const QString& program, const QStringList& arguments) {
    QProcess process;
    auto environment = QProcessEnvironment::systemEnvironment();
    for (const char* name : {"DISPLAY", "WAYLAND_DISPLAY", "QT_QPA_PLATFORM", "XDG_RUNTIME_DIR"})
      environment.remove(name);
    process.setProcessEnvironment(environment);
    process.start(program, arguments);
    EXPECT_TRUE(process.waitForFinished(120000));
    return {process.exitCode(), process.readAllStandardOutput(), process.readAllStandardError()};
  }
  static Outcome batch(const QStringList& arguments) {
    return run(BRIMLINE_BIN_DIR "/brimline-batch", arguments);
  }
  QString saved(const Visit& visit) const {
    QFile file(at("visit.json"));
    EXPECT_TRUE(file.open(QIODevice::WriteOnly));
    file.write(QByteArray::fromStdString(visit_to_json(visit).dump()));
    return file.fileName();
  }
  static QString words_of(const QString& pdf) {
    return QString::fromUtf8(run("pdftotext", {pdf, "-"}).out).simplified();
  }
};

TEST_F(PrintCommand, PrintsThePlanAsTold) {
  const Visit visit = sample_visit();
  const Outcome done = batch({"print", saved(visit), "--out", at("a.pdf")});
  EXPECT_EQ(done.exit, 0);
  EXPECT_EQ(done.out + done.err, "");
  const QString words = words_of(at("a.pdf"));
  for (const Step& step : visit.plan_as_told->steps)
    EXPECT_TRUE(words.contains(QString::fromStdString(step.text))) << step.text;
}

TEST_F(PrintCommand, SignsWithTheShopOfTheSettings) {
  QFile settings(at("shop.ini"));
  ASSERT_TRUE(settings.open(QIODevice::WriteOnly));
  settings.write("[shop]\nname=An Invented Shop\nphone=555-0142\nemergency=112\n");
  settings.close();
  ASSERT_EQ(batch({"print", saved(sample_visit()), "--out", at("s.pdf"), "--settings", at("shop.ini")}).exit,
            0);
  const QString words = words_of(at("s.pdf"));
  for (const char* said : {"An Invented Shop", "555-0142", "Emergency 112"})
    EXPECT_TRUE(words.contains(said)) << said;
}

TEST_F(PrintCommand, PrintsTheCountersOtherPapers) {
  const QString file = saved(sample_visit());
  for (const char* sheet : {"shelf", "staff", "label"})
    EXPECT_EQ(batch({"print", file, "--sheet", sheet, "--out", at("o.pdf")}).exit, 0) << sheet;
}

TEST_F(PrintCommand, MakesThePlanWhereNoneWasTold) {
  Visit visit = sample_visit();
  visit.plan_as_told.reset();
  const QString file = saved(visit);
  const auto plan = nlohmann::json::parse(batch({"plan", file}).out.toStdString());
  ASSERT_FALSE(plan["steps"].empty());
  ASSERT_EQ(batch({"print", file, "--out", at("b.pdf"), "--paper", "a4", "--large"}).exit, 0);
  const QString words = words_of(at("b.pdf"));
  for (const auto& step : plan["steps"]) {
    const QString text = QString::fromStdString(step["text"].get<std::string>()).simplified();
    EXPECT_TRUE(words.contains(text)) << text.toStdString();
  }
}

TEST_F(PrintCommand, RefusesInOneLineAndWritesNothing) {
  const QString file = saved(sample_visit());
  const QStringList bad[] = {
      {"print", file},
      {"print", "--out", at("c.pdf")},
      {"print", file, "--out", at("c.pdf"), "--paper", "a5"},
      {"print", file, "--out", at("c.pdf"), "--language", "de"},
      {"print", file, "--out", at("c.pdf"), "--loud"},
      {"print", file, "--out", at("c.pdf"), "--sheet", "poster"},
      {"print", file, "--out", at("c.pdf"), "--settings", at("none.ini")},
      {"print", at("none.json"), "--out", at("c.pdf")},
      {"print", file, "--out", at("no/such/folder/c.pdf")},
      {"print", file, "--out", folder.path()},
      {"print", file, "--out", "/dev/full"},
  };
  for (const QStringList& arguments : bad) {
    const Outcome refused = batch(arguments);
    EXPECT_EQ(refused.exit, 2) << arguments.join(' ').toStdString();
    EXPECT_EQ(refused.err.count('\n'), 1) << refused.err.toStdString();
    EXPECT_EQ(refused.out, "");
  }
  EXPECT_EQ(QDir(folder.path()).entryList(QDir::Files), QStringList{"visit.json"});
}

}  // namespace
}  // namespace brimline
