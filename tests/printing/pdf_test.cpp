// SPDX-License-Identifier: GPL-3.0-or-later
// The file itself, judged by other people's programs: poppler's pdftotext, pdffonts, pdfinfo and
// pdftoppm, qpdf, and zbarimg.
#include "printing/pdf.h"

#include <gmock/gmock.h>
#include <sys/stat.h>

#include <QProcess>
#include <QRegularExpression>
#include <QTemporaryDir>

#include "printing/readings_table.h"
#include "tests/printing/sample_visit.h"

namespace brimline {
namespace {

QByteArray output_of(const QString& program, const QStringList& arguments) {
  QProcess process;
  process.start(program, arguments);
  EXPECT_TRUE(process.waitForFinished(60000)) << program.toStdString();
  EXPECT_EQ(process.exitCode(), 0) << program.toStdString() << process.readAllStandardError().toStdString();
  return process.readAllStandardOutput();
}

QString simplified(const QByteArray& text) {
  return QString::fromUtf8(text).simplified();
}

class Pdf : public testing::Test {
 protected:
  QTemporaryDir folder;
  QString path(const char* name) const { return folder.filePath(QString::fromLatin1(name)); }
  Sheet sheet_of(const Visit& visit) const {
    const Visit earlier = sample_earlier_visit();
    return make_sheet(visit, &earlier, sample_shop(), Words("en"));
  }
  QString written(const Visit& visit, const Edition& edition) const {
    const QString file = path("sheet.pdf");
    const auto result = write_pdf(sheet_of(visit), file.toStdString(), edition);
    EXPECT_TRUE(result.has_value());
    return file;
  }
  void expect_holds_all(const Visit& visit, const Edition& edition) const {
    const QString file = written(visit, edition);
    const QString text = simplified(output_of("pdftotext", {file, "-"}));
    const Sheet sheet = sheet_of(visit);
    const auto has = [&](const std::string& words) {
      EXPECT_TRUE(text.contains(QString::fromStdString(words).simplified())) << words;
    };
    for (const Step& step : visit.plan_as_told->steps) has(step.text);
    for (const Finding& finding : visit.plan_as_told->findings) has(finding.text);
    for (const SheetStep& step : sheet.steps) has(step.when);
    for (const Reading& reading : visit.bottle.readings)
      has(value_words(Words("en"), reading.analyte, reading.value, false));
    has(sheet.code);
  }
};

TEST_F(Pdf, HoldsEveryStepFindingAndReadingAsText) {
  for (const Edition edition : {Edition{Paper::letter}, Edition{Paper::a4}, Edition{Paper::letter, true},
                                Edition{Paper::a4, true}, Edition{Paper::roll80}}) {
    SCOPED_TRACE(static_cast<int>(edition.paper));
    expect_holds_all(sample_visit(), edition);
  }
}

TEST_F(Pdf, HasThePapersOfTheStandards) {
  // Letter 612 x 792 points (ANSI/ASME Y14.1), A4 595.28 x 841.89 (ISO 216), a roll 80 mm wide: 226.77.
  EXPECT_THAT(output_of("pdfinfo", {written(sample_visit(), {Paper::letter})}).toStdString(),
              testing::HasSubstr("612 x 792 pts"));
  EXPECT_THAT(output_of("pdfinfo", {written(sample_visit(), {Paper::a4})}).toStdString(),
              testing::ContainsRegex("595(\\.[0-9]+)? x 84[12](\\.[0-9]+)? pts \\(A4\\)"));
  EXPECT_THAT(output_of("pdfinfo", {written(sample_visit(), {Paper::roll80})}).toStdString(),
              testing::ContainsRegex("22[67](\\.[0-9]+)? x "));
}

TEST_F(Pdf, EmbedsEveryFont) {
  const QList<QByteArray> lines =
      output_of("pdffonts", {written(sample_visit(), {Paper::letter})}).split('\n');
  int fonts = 0;
  for (qsizetype i = 2; i < lines.size(); ++i) {
    if (lines[i].trimmed().isEmpty()) continue;
    ++fonts;
    EXPECT_TRUE(lines[i].contains("NotoSans")) << lines[i].toStdString();
    // columns: emb sub uni
    EXPECT_TRUE(QRegularExpression("\\s(yes)\\s+(yes|no)\\s+yes\\s+\\d+")
                    .match(QString::fromUtf8(lines[i]))
                    .hasMatch())
        << lines[i].toStdString();
  }
  EXPECT_GE(fonts, 2);
}

// ISO 19005-1, clause by clause as far as it concerns what a sheet can hold; the clauses' numbers from
// memory.
void expect_pdf_a1b(const QString& file, const QString& flat) {
  output_of("qpdf", {"--qdf", "--object-streams=disable", file, flat});
  QFile in(flat), original(file);
  ASSERT_TRUE(in.open(QIODevice::ReadOnly) && original.open(QIODevice::ReadOnly));
  const QByteArray raw = original.readAll();
  const QString text = QString::fromLatin1(in.readAll());
  const auto has = [&](const char* pattern) { return text.contains(QRegularExpression(pattern)); };
  EXPECT_TRUE(raw.startsWith("%PDF-1."));                                  // 6.1.2 header
  EXPECT_GT(static_cast<unsigned char>(raw[raw.indexOf('\n') + 2]), 127);  // and a comment of bytes above 127
  EXPECT_TRUE(has("/ID \\[ ?<[0-9a-f]{16,}>"));                            // 6.1.3 the trailer's ID
  EXPECT_FALSE(has("/Encrypt"));                                           // and no encryption
  EXPECT_FALSE(raw.contains("/LZWDecode"));                                // 6.1.10
  EXPECT_FALSE(has("/EmbeddedFiles|/EF "));                                // 6.1.11
  EXPECT_TRUE(has("/OutputIntents"));                                      // 6.2.2
  EXPECT_TRUE(has("/S /GTS_PDFA1"));
  EXPECT_TRUE(has("/DestOutputProfile \\d+ 0 R"));
  EXPECT_TRUE(text.contains("acsp"));  // the signature of an ICC profile (ICC.1, 7.2.11)
  EXPECT_TRUE(has("/N 3"));            // of three channels, as the sheet's colours are
  for (auto it = QRegularExpression("/SMask ?(/?\\w+)").globalMatch(text); it.hasNext();)
    EXPECT_EQ(it.next().captured(1), "/None");  // 6.4 no soft mask
  for (auto it = QRegularExpression("/(ca|CA) ([0-9.]+)").globalMatch(text); it.hasNext();)
    EXPECT_EQ(it.next().captured(2).toDouble(), 1.0);  // and all opaque
  EXPECT_FALSE(has("/S /Transparency"));
  for (auto it = QRegularExpression("/BM /(\\w+)").globalMatch(text); it.hasNext();)
    EXPECT_EQ(it.next().captured(1), "Normal");
  EXPECT_FALSE(has("/JavaScript|/Launch|/Movie|/Sound"));  // 6.6.1
  EXPECT_TRUE(raw.contains("<?xpacket"));                  // 6.7.2 metadata, unfiltered in the file itself
  EXPECT_TRUE(has("pdfaid:part(>|=\")1"));                 // 6.7.11
  EXPECT_TRUE(has("pdfaid:conformance(>|=\")B"));
  EXPECT_TRUE(has("xmp:CreateDate") && has("<dc:title>"));  // 6.7.3 as the document's own information
}

TEST_F(Pdf, IsPdfA1bOnEveryPaper) {
  for (const Edition edition : {Edition{Paper::letter}, Edition{Paper::a4, true}, Edition{Paper::roll80}})
    expect_pdf_a1b(written(sample_visit(), edition), path("flat.pdf"));
}

// What is reprinted from history is what was told: nothing but the file's own date and number differs.
TEST_F(Pdf, AReprintIsTheSameSheet) {
  const Sheet sheet = sheet_of(sample_visit());
  const auto first = pdf_bytes(sheet, {}), again = pdf_bytes(sheet, {});
  ASSERT_TRUE(first && again);
  for (const auto& [name, bytes] : {std::pair{"first", &*first}, std::pair{"again", &*again}}) {
    QFile file(path((std::string(name) + ".pdf").c_str()));
    ASSERT_TRUE(file.open(QIODevice::WriteOnly) && file.write(*bytes) == bytes->size() && file.flush());
    output_of("pdftoppm", {"-r", "60", "-gray", file.fileName(), path(name)});
  }
  const QStringList pages = QDir(folder.path()).entryList({"first-*.pgm"});
  ASSERT_FALSE(pages.isEmpty());
  for (QString page : pages) {
    QFile one(folder.filePath(page)), other(folder.filePath(page.replace("first", "again")));
    ASSERT_TRUE(one.open(QIODevice::ReadOnly) && other.open(QIODevice::ReadOnly));
    EXPECT_EQ(one.readAll(), other.readAll()) << page.toStdString();
  }
}

TEST_F(Pdf, CodeCanBeScannedFromPaper) {
  for (const Edition edition : {Edition{Paper::letter}, Edition{Paper::roll80}, Edition{Paper::a4, true}}) {
    const QString file = written(sample_visit(), edition);
    output_of("pdftoppm",
              {"-r", "150", "-f", "1", "-l", "1", "-singlefile", "-gray", "-png", file, path("page")});
    EXPECT_EQ(output_of("zbarimg", {"-q", "--raw", path("page.png")}).trimmed().toStdString(),
              sheet_of(sample_visit()).code);
  }
}

TEST_F(Pdf, SaysWhyItCannotBeWrittenAndLeavesNothing) {
  const auto nowhere = write_pdf(sheet_of(sample_visit()), path("no/such/folder.pdf").toStdString(), {});
  ASSERT_FALSE(nowhere);
  EXPECT_EQ(nowhere.error().kind, PrintError::Kind::cannot_write);
  EXPECT_THAT(nowhere.error().text, testing::HasSubstr("folder.pdf:1: cannot be written"));
  const auto full = write_pdf(sheet_of(sample_visit()), "/dev/full", {});
  ASSERT_FALSE(full);
  EXPECT_THAT(full.error().text, testing::HasSubstr("No space left"));
  EXPECT_FALSE(write_pdf(sheet_of(sample_visit()), folder.path().toStdString(), {}));
  EXPECT_TRUE(QDir(folder.path()).isEmpty());
}

TEST_F(Pdf, DoesNotReplaceADevice) {
  ASSERT_TRUE(write_pdf(sheet_of(sample_visit()), "/dev/null", {}));
  struct stat now {};
  ASSERT_EQ(stat("/dev/null", &now), 0);
  EXPECT_TRUE(S_ISCHR(now.st_mode));
}

}  // namespace
}  // namespace brimline
