// SPDX-License-Identifier: GPL-3.0-or-later
// The emergency card read back by another program (pdftotext): every line and number of it, on one page of
// every paper, in each language. Rinsing for at least 15 minutes: Arizona Poison and Drug Information Center.
#include "printing/emergency_card.h"

#include <gmock/gmock.h>

#include <QProcess>
#include <QTemporaryDir>

#include "printing/pdf.h"

namespace brimline {
namespace {

using testing::HasSubstr;

ShopDetails invented_shop() {
  ShopDetails shop;
  shop.name = "The Invented Pool Shop";
  shop.emergency = {{"Emergency", "000-1"}, {"Poison line", "000-2"}};
  return shop;
}

std::string words_of(const Pages& pages) {
  QTemporaryDir folder;
  const QString file = folder.filePath("card.pdf");
  const auto bytes = pdf_bytes(pages, "Card");
  EXPECT_TRUE(bytes && write_pdf(*bytes, file.toStdString()));
  QProcess process;
  process.start("pdftotext", {file, "-"});
  EXPECT_TRUE(process.waitForFinished(60000));
  return QString::fromUtf8(process.readAllStandardOutput()).simplified().toStdString();
}

class EmergencyCards : public testing::TestWithParam<const char*> {};

TEST_P(EmergencyCards, StandOnOnePageWithEveryLine) {
  const EmergencyCard card = make_emergency_card(invented_shop(), Words(GetParam()));
  ASSERT_EQ(card.parts.size(), 4u);
  for (const Paper paper : {Paper::letter, Paper::a4, Paper::roll80}) {
    const Pages pages = lay_out(card, paper);
    EXPECT_EQ(pages.pages.size(), 1u);
    const std::string read = words_of(pages);
    for (const EmergencyNumber& call : card.numbers) {
      EXPECT_THAT(read, HasSubstr(call.label));
      EXPECT_THAT(read, HasSubstr(call.number));
    }
    for (const EmergencyCard::Part& part : card.parts) {
      EXPECT_THAT(read, HasSubstr(part.title));
      for (const std::string& line : part.lines)
        EXPECT_THAT(read, HasSubstr(QString::fromStdString(line).simplified().toStdString()));
    }
    EXPECT_THAT(read, HasSubstr(" 15 "));
  }
}

INSTANTIATE_TEST_SUITE_P(Languages, EmergencyCards, testing::Values("en", "es", "fr"),
                         [](const auto& language) { return std::string(language.param); });

TEST(EmergencyCard, SaysThatNoNumberIsSet) {
  const EmergencyCard card = make_emergency_card({}, Words("en"));
  ASSERT_EQ(card.numbers.size(), 1u);
  EXPECT_THAT(card.numbers[0].label, HasSubstr("No number is set"));
}

}  // namespace
}  // namespace brimline
