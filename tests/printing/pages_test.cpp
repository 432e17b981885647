// SPDX-License-Identifier: GPL-3.0-or-later
// Nothing on a page is clipped or covered, whatever the paper and however long the texts.
#include "printing/pages.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "printing/paragraph.h"
#include "tests/printing/sample_visit.h"

namespace brimline {
namespace {

struct Case {
  const char* name;
  Visit (*visit)();
  Edition edition;
};

const Case kCases[] = {
    {"letter", sample_visit, {Paper::letter, false}},
    {"a4", sample_visit, {Paper::a4, false}},
    {"roll80", sample_visit, {Paper::roll80, false}},
    {"letter_large", sample_visit, {Paper::letter, true}},
    {"a4_large", sample_visit, {Paper::a4, true}},
    {"roll80_large", sample_visit, {Paper::roll80, true}},
    {"letter_refused", sample_refused_visit, {Paper::letter, false}},
    {"letter_long", sample_long_visit, {Paper::letter, false}},
    {"a4_long_large", sample_long_visit, {Paper::a4, true}},
    {"roll80_long", sample_long_visit, {Paper::roll80, false}},
};

class PagesOf : public testing::TestWithParam<Case> {
 protected:
  Sheet sheet() const {
    const Visit earlier = sample_earlier_visit();
    return make_sheet(GetParam().visit(), &earlier, sample_shop(), Words("en"));
  }
  Pages pages() const { return lay_out(sheet(), GetParam().edition); }
};

std::vector<TextItem> texts_of(const Page& page) {
  std::vector<TextItem> out;
  for (const Item& item : page.items)
    if (const auto* text = std::get_if<TextItem>(&item)) out.push_back(*text);
  return out;
}

// The letters themselves, not the room around them.
QRectF ink_box(const TextItem& t) {
  return {t.x, t.baseline - 0.72 * t.type.size, t.width, 0.92 * t.type.size};
}

TEST_P(PagesOf, NoTextLiesOnAnother) {
  for (const Page& page : pages().pages) {
    const auto texts = texts_of(page);
    for (size_t i = 0; i < texts.size(); ++i)
      for (size_t j = i + 1; j < texts.size(); ++j)
        EXPECT_FALSE(ink_box(texts[i]).intersects(ink_box(texts[j])))
            << texts[i].text.toStdString() << " | " << texts[j].text.toStdString();
  }
}

TEST_P(PagesOf, AllTextIsInsideThePaper) {
  const Pages laid = pages();
  const double edge = GetParam().edition.paper == Paper::roll80 ? 8 : 36;
  const double foot = GetParam().edition.paper == Paper::roll80 ? 2 : 18;
  for (const Page& page : laid.pages)
    for (const TextItem& text : texts_of(page)) {
      EXPECT_GE(text.x, edge) << text.text.toStdString();
      EXPECT_LE(text.x + text.width, laid.width - edge) << text.text.toStdString();
      EXPECT_GE(ink_box(text).top(), edge / 2);
      EXPECT_LE(ink_box(text).bottom(), laid.height - foot) << text.text.toStdString();
    }
}

TEST_P(PagesOf, NoLineOrMarkCrossesText) {
  for (const Page& page : pages().pages) {
    const auto texts = texts_of(page);
    for (const Item& item : page.items) {
      QRectF box;
      if (const auto* marks = std::get_if<BoxItem>(&item)) box = marks->box;
      if (const auto* cells = std::get_if<CellsItem>(&item))
        for (const QRectF& cell : cells->cells) box = box.united(cell);
      if (const auto* line = std::get_if<LineItem>(&item))
        box = QRectF(QPointF(line->x1, line->y1), QPointF(line->x2, line->y2))
                  .normalized()
                  .adjusted(0, -0.1, 0.1, 0.1);
      for (const TextItem& text : texts)
        EXPECT_FALSE(!box.isEmpty() && box.intersects(ink_box(text))) << text.text.toStdString();
    }
  }
}

INSTANTIATE_TEST_SUITE_P(Editions, PagesOf, testing::ValuesIn(kCases),
                         [](const auto& which) { return std::string(which.param.name); });

bool a_line_begins_with_the_sign(const std::string& blank) {
  const Type type{10, false, Ink::black};
  bool found = false;
  for (int width = 45; width < 120; ++width)
    for (const TextLine& line : break_lines("swim swim" + blank + "? swim", width, type)) {
      const auto* first = line.items.empty() ? nullptr : std::get_if<TextItem>(&line.items.front());
      found = found || (first && first->text.startsWith('?'));
    }
  return found;
}

// Unicode Standard Annex 14, class GL: at a blank that glues no line ends, whatever the width.
TEST(Lines, DoNotEndAtABlankThatGlues) {
  EXPECT_TRUE(a_line_begins_with_the_sign(" "));
  for (const char* glue : {"\u00a0", "\u202f", "\u2007"}) EXPECT_FALSE(a_line_begins_with_the_sign(glue));
}

TEST(Pages, AnOrdinaryPlanTakesTwoAtMost) {
  const Visit earlier = sample_earlier_visit();
  const Sheet sheet = make_sheet(sample_visit(), &earlier, sample_shop(), Words("en"));
  EXPECT_LE(lay_out(sheet, {Paper::letter}).pages.size(), 2u);
  EXPECT_LE(lay_out(sheet, {Paper::a4}).pages.size(), 2u);
  EXPECT_EQ(lay_out(sheet, {Paper::roll80}).pages.size(), 1u);
}

TEST(Pages, AStepIsNotPartedByAPagesEnd) {
  const Visit earlier = sample_earlier_visit();
  const Sheet sheet = make_sheet(sample_visit(), &earlier, sample_shop(), Words("en"));
  const Pages laid = lay_out(sheet, {Paper::letter});
  for (const SheetStep& step : sheet.steps) {
    int pages_with_it = 0;
    for (const Page& page : laid.pages) {
      bool here = false;
      for (const TextItem& text : texts_of(page)) {
        const QString words = text.text.simplified();
        here = here || (words.size() > 12 && QString::fromStdString(step.text).contains(words));
      }
      pages_with_it += here;
    }
    EXPECT_EQ(pages_with_it, 1) << step.text;
  }
}

// Nor a paragraph, were it in the middle of a list that is longer than a page.
TEST(Pages, AParagraphIsNotPartedByAPagesEnd) {
  Sheet sheet = make_sheet(sample_visit(), nullptr, sample_shop(), Words("en"));
  sheet.findings.clear();
  for (int i = 0; i < 60; ++i) {
    std::string text = "Finding" + std::to_string(i);
    for (int word = 0; word < 22; ++word) text += " tells" + std::to_string(i) + ".";
    sheet.findings.push_back({text});
  }
  for (const Edition& edition : {Edition{Paper::letter}, Edition{Paper::letter, true}, Edition{Paper::a4}}) {
    const Pages laid = lay_out(sheet, edition);
    ASSERT_GT(laid.pages.size(), 2u);
    const QString title = QString::fromStdString(sheet.titles.findings);
    for (const Page& page : laid.pages) {
      const auto texts = texts_of(page);
      const auto at =
          std::find_if(texts.begin(), texts.end(), [&](const auto& t) { return t.text == title; });
      const bool alone = at != texts.end() && std::none_of(at, texts.end(), [](const TextItem& text) {
                           return text.text.startsWith("Finding0");
                         });
      EXPECT_FALSE(alone) << "the heading at a page's foot";
    }
    for (int i = 0; i < 60; ++i) {
      size_t pages_with_it = 0;
      for (const Page& page : laid.pages) {
        const auto texts = texts_of(page);
        pages_with_it += std::any_of(texts.begin(), texts.end(), [&](const TextItem& text) {
          return text.text.contains("tells" + QString::number(i) + ".");
        });
      }
      EXPECT_EQ(pages_with_it, 1u) << i;
    }
  }
}

// The large-print edition is larger in every line of the plan: 14 points and more (from memory,
// the usual floor of large-print guidelines; the body has 15.6).
TEST(Pages, LargePrintIsLarge) {
  const Sheet sheet = make_sheet(sample_visit(), nullptr, sample_shop(), Words("en"));
  for (const Page& page : lay_out(sheet, {Paper::letter, true}).pages)
    for (const TextItem& text : texts_of(page)) {
      const bool of_a_step = QString::fromStdString(sheet.steps[0].text).contains(text.text.simplified()) &&
                             text.text.size() > 12;
      if (of_a_step) {
        EXPECT_GE(text.type.size, 14 - 1e-9);
      }
    }
}

}  // namespace
}  // namespace brimline
