// SPDX-License-Identifier: GPL-3.0-or-later
// The library holds only the compiled languages; a static library wants one source.
namespace brimline {
extern const char kLanguagesFolder[];
const char kLanguagesFolder[] = ":/i18n";
}  // namespace brimline
