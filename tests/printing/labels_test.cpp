// SPDX-License-Identifier: GPL-3.0-or-later
// Labels of an overnight test: what they say, that nothing runs over an edge or into a neighbour, and that a
// scanner reads them (zbarimg) from the page as another program draws it (pdftoppm).
#include "printing/labels.h"

#include <gmock/gmock.h>

#include <QFile>
#include <QProcess>
#include <QTemporaryDir>

#include "printing/pdf.h"
#include "tests/printing/sample_visit.h"

namespace brimline {
namespace {

using testing::Contains;
using testing::HasSubstr;

const Instant kStart = *Instant::parse("2026-06-14T10:20:00-05:00");

OvernightTest sample_test(bool started) {
  OvernightTest test;
  test.visit = sample_visit().id;
  test.stage = OvernightStage::pour;
  test.reach = DemandReach::usual;
  test.check_mg_l = 1.93;
  if (started) start(test, kStart);
  return test;
}

std::vector<Label> labels(bool started, const char* language = "en") {
  return overnight_labels(sample_test(started), sample_visit(), kStart, Words(language));
}

TEST(Labels, SayBottleDoseAndWhenItIsRead) {
  const std::vector<Label> all = labels(true);
  ASSERT_EQ(all.size(), 8u);  // seven bottles and the stock
  EXPECT_EQ(all[3].code, sample_visit().bottle.code + "/4");
  EXPECT_EQ(all[3].dose, "10 mg/L");
  EXPECT_EQ(all[0].stock, "no stock");
  EXPECT_THAT(all[3].lines, Contains(HasSubstr("1 h: Sunday 14 June 11:20")));
  EXPECT_THAT(all[3].lines, Contains(HasSubstr("24 h: Monday 15 June 10:20")));
  EXPECT_THAT(all[3].lines, Contains(HasSubstr("Do not drink")));
  EXPECT_EQ(all.back().dose, "STOCK");
  EXPECT_THAT(all.back().stock, HasSubstr("965 mg/L"));  // 1.93 times 500
  // before the clock is started nobody knows better than "about"
  EXPECT_THAT(labels(false)[3].lines, Contains(HasSubstr("24 h: about")));
}

QRectF box_of(const Item& item) {
  if (const auto* text = std::get_if<TextItem>(&item)) return text->box();
  if (const auto* box = std::get_if<BoxItem>(&item)) return box->box;
  QRectF out;
  if (const auto* cells = std::get_if<CellsItem>(&item))
    for (const QRectF& cell : cells->cells) out |= cell;
  return out;
}

class LabelsIn : public testing::TestWithParam<const char*> {};
INSTANTIATE_TEST_SUITE_P(Languages, LabelsIn, testing::Values("en", "es", "fr"));

TEST_P(LabelsIn, NothingRunsOverItsOwnLabel) {
  for (const Paper paper : {Paper::letter, Paper::a4, Paper::roll80}) {
    const Pages pages = lay_out_labels(labels(false, GetParam()), paper);
    ASSERT_FALSE(pages.pages.empty());
    int frames = 0;
    for (const Page& page : pages.pages) {
      QRectF frame;
      for (const Item& item : page.items) {
        const QRectF box = box_of(item);
        EXPECT_TRUE(QRectF(0, 0, pages.width, pages.height).contains(box));
        if (const auto* next = std::get_if<BoxItem>(&item)) {
          frame = next->box;
          ++frames;
        }
        EXPECT_TRUE(frame.contains(box)) << "label " << frames;
      }
    }
    EXPECT_EQ(frames, 8);
  }
}

QByteArray output_of(const QString& program, const QStringList& arguments) {
  QProcess process;
  process.start(program, arguments);
  EXPECT_TRUE(process.waitForFinished(60000)) << program.toStdString();
  return process.readAllStandardOutput();
}

TEST(Labels, AScannerReadsEachOnPaper) {
  const QTemporaryDir folder;
  const auto pdf = pdf_bytes(lay_out_labels(labels(true), Paper::letter), "Labels");
  ASSERT_TRUE(pdf);
  const QString file = folder.filePath("labels.pdf");
  ASSERT_TRUE(write_pdf(*pdf, file.toStdString()));
  output_of("pdftoppm", {"-r", "200", "-png", "-singlefile", file, folder.filePath("page")});
  const QByteArray read = output_of("zbarimg", {"-q", "--raw", folder.filePath("page.png")});
  for (int b = 0; b < 7; ++b)
    EXPECT_THAT(read.toStdString(), HasSubstr(overnight_code(sample_visit().bottle.code, b)));
}

}  // namespace
}  // namespace brimline
