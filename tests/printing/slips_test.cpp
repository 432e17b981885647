// SPDX-License-Identifier: GPL-3.0-or-later
// The counter's other papers, read back by other people's programs: zbarimg for the bars, pdftotext for
// words.
#include "printing/slips.h"

#include <gmock/gmock.h>

#include <QFile>
#include <QProcess>
#include <QTemporaryDir>

#include "printing/pdf.h"
#include "tests/printing/sample_visit.h"

namespace brimline {
namespace {

using testing::HasSubstr;
using testing::Not;

class Slips : public testing::Test {
 protected:
  QTemporaryDir folder;

  QByteArray output_of(const QString& program, const QStringList& arguments) const {
    QProcess process;
    process.start(program, arguments);
    EXPECT_TRUE(process.waitForFinished(60000)) << program.toStdString();
    EXPECT_EQ(process.exitCode(), 0) << process.readAllStandardError().toStdString();
    return process.readAllStandardOutput();
  }
  QString written(const Pages& pages) const {
    QString file = folder.filePath("slip.pdf");
    const auto bytes = pdf_bytes(pages, "Slip");
    EXPECT_TRUE(bytes && write_pdf(*bytes, file.toStdString()));
    return file;
  }
  // What a scanner finds on the first page: "EAN-13:4006381333931", a line each.
  std::string scanned(const Pages& pages) const {
    const QString picture = folder.filePath("page");
    output_of("pdftoppm", {"-r", "200", "-gray", "-singlefile", "-png", written(pages), picture});
    return output_of("zbarimg", {"-q", picture + ".png"}).toStdString();
  }
  std::string words(const Pages& pages) const {
    return QString::fromUtf8(output_of("pdftotext", {written(pages), "-"})).simplified().toStdString();
  }
};

Visit visit_from_the_shelf() {
  Visit visit = sample_visit();
  visit.plan_as_told->steps[0].product = "muriatic_acid_31";
  visit.plan_as_told->steps[1].product = "liquid_chlorine_125";
  return visit;
}

// GS1 General Specifications: the check digit. 4006381333931 and 036000291452 are the textbook's usual
// examples of an EAN-13 and a UPC-A (from memory); 96385074 of an EAN-8.
TEST(Ean, IsKnownByItsCheckDigit) {
  EXPECT_TRUE(is_ean("4006381333931"));
  EXPECT_TRUE(is_ean("036000291452"));
  EXPECT_TRUE(is_ean("96385074"));
  EXPECT_FALSE(is_ean("4006381333932"));
  EXPECT_FALSE(is_ean("40063813339"));
  EXPECT_FALSE(is_ean("B-1012"));
}

TEST_F(Slips, TheShelfListIsScannedAtTheTill) {
  const TillCodes codes{{"muriatic_acid_31", "4006381333931"}, {"liquid_chlorine_125", "LC-125"}};
  for (const Paper paper : {Paper::letter, Paper::a4, Paper::roll80}) {
    const Pages pages = lay_out(
        make_shelf_slip(visit_from_the_shelf(), built_in_shelf(), codes, sample_shop(), Words("en")), paper);
    const std::string found = scanned(pages);
    EXPECT_THAT(found, HasSubstr("EAN-13:4006381333931"));
    EXPECT_THAT(found, HasSubstr("CODE-128:LC-125"));
  }
}

TEST_F(Slips, TheShelfListSaysHowMuchInAll) {
  Visit visit = visit_from_the_shelf();
  visit.plan_as_told->steps[3].product = "muriatic_acid_31";  // twice on the plan, once on the list
  visit.plan_as_told->steps[3].amount = ProductAmount{940, "mL"};
  visit.customer->units = Units::metric;
  const ShelfSlip slip = make_shelf_slip(visit, built_in_shelf(), {}, sample_shop(), Words("en"));
  ASSERT_EQ(slip.lines.size(), 2u);
  EXPECT_EQ(slip.lines[0].amount, "2.00 L");  // 1.06 L and 940 mL
  EXPECT_EQ(slip.lines[0].code, "");          // no till knows a product by this program's id
  EXPECT_EQ(slip.who, "Marisol Brandt · B-0417");
  EXPECT_TRUE(make_shelf_slip(sample_refused_visit(), built_in_shelf(), {}, sample_shop(), Words("en"))
                  .lines.empty());
}

TEST_F(Slips, TheShelfListNamesThePacks) {
  Visit visit = visit_from_the_shelf();
  visit.customer->units = Units::metric;
  visit.plan_as_told->steps.resize(1);  // acid, from the shelf
  Shelf shelf = built_in_shelf();
  for (Product& product : shelf.products)
    if (product.id == "muriatic_acid_31") {
      product.packs = {5, 1, 2.5};
      product.barcode = "96385074";
    }
  const auto packs = [&](double litres) {
    visit.plan_as_told->steps[0].amount = ProductAmount{litres, "L"};
    return make_shelf_slip(visit, shelf, {}, sample_shop(), Words("en")).lines.at(0).packs;
  };
  EXPECT_EQ(packs(0.8), "1 pack of 1.00 L");
  EXPECT_EQ(packs(1.2), "1 pack of 2.50 L");
  EXPECT_EQ(packs(5.01), "1 pack of 5.00 L");  // nobody opens another for a spoon
  EXPECT_EQ(packs(11), "3 packs of 5.00 L");
  const ShelfSlip slip = make_shelf_slip(visit, shelf, {}, sample_shop(), Words("en"));
  EXPECT_EQ(slip.lines[0].code, "96385074");
  EXPECT_THAT(slip.note, Not(HasSubstr("at least")));
  const Pages pages = lay_out(slip, Paper::letter);
  EXPECT_THAT(scanned(pages), HasSubstr("EAN-8:96385074"));
  EXPECT_THAT(words(pages), HasSubstr("3 packs of 5.00 L"));
}

TEST_F(Slips, TheStaffCopyHasReadingsWithTheirLotsAndTheCode) {
  Visit visit = sample_visit();
  visit.bottle.readings[2].lot = "L-77";
  const StaffCopy copy = make_staff_copy(visit, sample_shop(), Words("en"));
  for (const Paper paper : {Paper::letter, Paper::a4, Paper::roll80}) {
    const Pages pages = lay_out(copy, paper);
    const std::string text = words(pages);
    EXPECT_THAT(text, HasSubstr("L-77"));
    EXPECT_THAT(text, HasSubstr("Marisol Brandt"));
    EXPECT_THAT(scanned(pages), HasSubstr("QR-Code:" + copy.code));
  }
}

TEST_F(Slips, ABottlesLabelIsScannedAndNamesNobody) {
  const BottleLabel label = label_of(sample_visit(), sample_shop(), Words("en"));
  for (const Paper paper : {Paper::letter, Paper::a4, Paper::roll80}) {
    const Pages pages = lay_out(std::vector<BottleLabel>{label}, paper);
    EXPECT_THAT(scanned(pages), HasSubstr("CODE-128:B-0417"));
    EXPECT_THAT(words(pages), Not(HasSubstr("Marisol")));
  }
}

TEST_F(Slips, CodesOfTheTillComeFromTheSettings) {
  QFile file(folder.filePath("shop.ini"));
  ASSERT_TRUE(file.open(QIODevice::WriteOnly));
  file.write("[till]\nmuriatic_acid_31=4006381333931\nsoda_ash=\n");
  file.close();
  const TillCodes codes = read_till_codes(file.fileName().toStdString());
  EXPECT_EQ(codes, (TillCodes{{"muriatic_acid_31", "4006381333931"}}));
}

}  // namespace
}  // namespace brimline
