// SPDX-License-Identifier: GPL-3.0-or-later
#include "qml/own_fonts.h"

#include <fontconfig/fontconfig.h>

#include <algorithm>
#include <array>
#include <iterator>
#include <string_view>

namespace brimline {
namespace {

// fontconfig's user manual: the configuration's elements, and where fonts and their cache stand.
constexpr const char* kRules = R"(<?xml version="1.0"?>
<!DOCTYPE fontconfig SYSTEM "fonts.dtd">
<fontconfig>
  <dir>/usr/share/fonts</dir>
  <dir>/usr/local/share/fonts</dir>
  <dir prefix="xdg">fonts</dir>
  <cachedir>/var/cache/fontconfig</cachedir>
  <cachedir prefix="xdg">fontconfig</cachedir>
  <match target="pattern">
    <edit name="hintstyle" mode="append"><const>hintslight</const></edit>
  </match>
  <alias><family>sans-serif</family><prefer><family>Noto Sans</family></prefer></alias>
  <alias><family>serif</family><prefer><family>Noto Serif</family></prefer></alias>
</fontconfig>)";

constexpr std::array<std::string_view, 2> kFaces{"Noto Sans", "Noto Serif"};
// For names, the scripts that are written today, one face each; and for signs.
constexpr std::string_view kOfOtherScripts[] = {
    "Noto Sans Arabic",   "Noto Sans Armenian",  "Noto Sans Bengali",    "Noto Sans Canadian Aboriginal",
    "Noto Sans Cherokee", "Noto Sans CJK JP",    "Noto Sans CJK KR",     "Noto Sans CJK SC",
    "Noto Sans CJK TC",   "Noto Sans Deva",      "Noto Sans Devanagari", "Noto Sans Ethiopic",
    "Noto Sans Georgian", "Noto Sans Gujarati",  "Noto Sans Gurmukhi",   "Noto Sans Hebrew",
    "Noto Sans Kannada",  "Noto Sans Khmer",     "Noto Sans Lao",        "Noto Sans Malayalam",
    "Noto Sans Math",     "Noto Sans Mongolian", "Noto Sans Myanmar",    "Noto Sans Oriya",
    "Noto Sans Sinhala",  "Noto Sans Symbols",   "Noto Sans Symbols2",   "Noto Sans Symbols 2",
    "Noto Sans Tamil",    "Noto Sans Telugu",    "Noto Sans Thaana",     "Noto Sans Thai",
    "Noto Serif Tibetan", "DejaVu Sans"};

std::string_view text_of(FcPattern* font, const char* what) {
  FcChar8* out = nullptr;
  if (FcPatternGetString(font, what, 0, &out) != FcResultMatch) return {};
  return reinterpret_cast<const char*>(out);
}

template <class Names>
bool among(const Names& names, std::string_view one) {
  return std::find(std::begin(names), std::end(names), one) != std::end(names);
}

bool is_wanted(FcPattern* font) {
  const std::string_view family = text_of(font, FC_FAMILY), style = text_of(font, FC_STYLE);
  return among(kFaces, family) || (among(kOfOtherScripts, family) && (style == "Regular" || style == "Book"));
}

// Every match of a font goes through all of them: what nobody reads here is dropped. Whether both faces are
// there.
bool keep_wanted(FcFontSet* fonts) {
  if (!fonts) return false;
  std::array<bool, kFaces.size()> there{};
  int kept = 0;
  for (int i = 0; i < fonts->nfont; ++i) {
    FcPattern* font = fonts->fonts[i];
    if (!is_wanted(font)) {
      FcPatternDestroy(font);
      continue;
    }
    fonts->fonts[kept++] = font;
    for (size_t face = 0; face < kFaces.size(); ++face)
      there[face] |= text_of(font, FC_FAMILY) == kFaces[face];
  }
  fonts->nfont = kept;
  return std::all_of(there.begin(), there.end(), [](bool one) { return one; });
}

}  // namespace

void use_own_fonts() {
  FcConfig* rules = FcConfigCreate();
  if (!rules) return;
  const bool sound =
      FcConfigParseAndLoadFromMemory(rules, reinterpret_cast<const FcChar8*>(kRules), FcTrue) &&
      FcConfigBuildFonts(rules) && keep_wanted(FcConfigGetFonts(rules, FcSetSystem));
  if (sound) FcConfigSetCurrent(rules);  // which holds on to it
  FcConfigDestroy(rules);
}

}  // namespace brimline
