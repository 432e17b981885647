// SPDX-License-Identifier: GPL-3.0-or-later
// The short list of fonts: our two faces, and a letter for every sign that the counter says in any language
// and for names in other scripts (code points of the Unicode Standard).
#include <fontconfig/fontconfig.h>
#include <gtest/gtest.h>

#include <QDirIterator>
#include <QFile>

#include "qml/own_fonts.h"

namespace brimline {
namespace {

bool is_covered(char32_t letter) {
  const FcFontSet* fonts = FcConfigGetFonts(nullptr, FcSetSystem);
  for (int i = 0; fonts && i < fonts->nfont; ++i) {
    FcCharSet* letters = nullptr;
    if (FcPatternGetCharSet(fonts->fonts[i], FC_CHARSET, 0, &letters) == FcResultMatch &&
        FcCharSetHasChar(letters, letter))
      return true;
  }
  return false;
}

TEST(OwnFonts, HaveALetterForAllThatIsSaid) {
  use_own_fonts();
  QString said = QStringLiteral("✓±·–•’“”µ°½→");
  QDirIterator files(QStringLiteral(BRIMLINE_SOURCE_DIR "/qml/i18n"), {"*.ts"});
  while (files.hasNext()) {
    QFile file(files.next());
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    said += QString::fromUtf8(file.readAll());
  }
  ASSERT_GT(said.size(), 100000);
  for (const char32_t letter : said.toUcs4())
    if (letter > U' ' && letter != U'\u2060')
      EXPECT_TRUE(is_covered(letter)) << static_cast<unsigned>(letter);
}

TEST(OwnFonts, HaveLettersForNamesInOtherScripts) {
  use_own_fonts();
  // Greek, Cyrillic, Armenian, Hebrew, Arabic, Devanagari, Bengali, Tamil, Thai, Lao, Georgian, Ethiopic,
  // Khmer
  for (const char32_t letter : {U'\u03B1', U'\u0436', U'\u0531', U'\u05D0', U'\u0627', U'\u0905', U'\u0985',
                                U'\u0B85', U'\u0E01', U'\u0E81', U'\u10D0', U'\u1200', U'\u1780'})
    EXPECT_TRUE(is_covered(letter)) << static_cast<unsigned>(letter);
}

TEST(OwnFonts, AreFewerThanTheSystems) {
  // The system's, whichever list is in use already.
  FcConfig* system = FcInitLoadConfigAndFonts();
  ASSERT_TRUE(system);
  const int before = FcConfigGetFonts(system, FcSetSystem)->nfont;
  FcConfigDestroy(system);
  use_own_fonts();
  const int after = FcConfigGetFonts(nullptr, FcSetSystem)->nfont;
  EXPECT_LT(after, before / 2);
  EXPECT_GE(after, 8);  // two faces, upright and slanted, each in two weights
}

}  // namespace
}  // namespace brimline
