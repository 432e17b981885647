// SPDX-License-Identifier: GPL-3.0-or-later
// Every page in every language, theme and size, through the real window: no words cut off, out of their place
// or on each other; each reaches WCAG 2.1's 4.5:1 (1.4.3) in the picture itself; controls are 48 px and
// have a name and a role. The fourth language is none: accented, and 40 % longer than the English, as
// translations of that length are (common practice, no source).
// With BRIMLINE_SHOTS=DIR the pictures are kept there.
#include <QAccessible>
#include <QDir>

#include <set>

#include "qml/pages.h"
#include "tests/qml/furnished.h"
#include "tests/qml/page_faults.h"

namespace brimline::test {
namespace {

const QSize kSizes[] = {{1280, 800}, {1920, 1080}};
constexpr const char* kThemes[] = {"light", "dark", "contrast"};

class EveryPage : public FurnishedCounter, public testing::WithParamInterface<const char*> {
 protected:
  void note(const QString& page, const QStringList& faults) {
    for (const QString& fault : faults)
      if (told_.insert((page + fault).toStdString()).second)
        ADD_FAILURE() << GetParam() << " " << page.toStdString() << ": " << fault.toStdString();
  }
  void look_at(const QString& page, const QString& theme, QSize size) {
    QQuickWindow* window = kiosk_->window();
    ++pages_;
    note(page, text_faults(window));
    if (size == kSizes[0] && theme == "light") {
      note(page, unnamed(window));
      note(page, too_small(window));
    }
    const QString kept = qEnvironmentVariable("BRIMLINE_SHOTS");
    if (size != kSizes[0] && kept.isEmpty()) return;  // colours do not hang on the size
    const QImage picture = window->grabWindow();
    note(page, contrast_faults(window, picture, 4.5));
    if (kept.isEmpty()) return;
    const QString folder = QStringLiteral("%1/%2_%3_%4").arg(kept, GetParam(), theme).arg(size.width());
    QDir().mkpath(folder);
    picture.save(folder + "/" + page + ".png");
  }
  void walk() {
    for (const QSize size : kSizes)
      for (const char* theme : kThemes) {
        kiosk_->desk().back()->setShelf("screen");
        kiosk_->desk().back()->setValue("theme", theme);
        kiosk_->desk().back()->apply();
        ASSERT_EQ(kiosk_->window()->color().lightness() < 60, theme == std::string_view("dark")) << theme;
        kiosk_->window()->resize(size);
        ASSERT_TRUE(Hand::wait_for([&] { return kiosk_->window()->size() == size; }));
        each_page(*kiosk_, [&](const QString& page) { look_at(page, theme, size); });
      }
  }

  std::set<std::string> told_;
  int pages_ = 0;
};

TEST_P(EveryPage, CanBeReadInEveryThemeAndSize) {
  QAccessible::setActive(true);
  ASSERT_NO_FATAL_FAILURE(open_furnished(GetParam()));
  ASSERT_NO_FATAL_FAILURE(walk());  // with no bottle on the counter
  ASSERT_TRUE(kiosk_->counter().open(visit_));
  ASSERT_NO_FATAL_FAILURE(walk());
  std::printf("%s: %d pages seen\n", GetParam(), pages_);
  EXPECT_GT(pages_, 200);
}

INSTANTIATE_TEST_SUITE_P(Languages, EveryPage, testing::Values("en", "es", "fr", "qps"),
                         [](const auto& language) { return std::string(language.param); });

// The judge itself must be able to say no.
TEST_F(CounterTest, APageWithFaultsIsFound) {
  open_counter("2026-06-14T09:00:00-05:00");
  QQuickWindow* window = kiosk_->window();
  QQmlComponent component(qmlEngine(window));
  component.setData(R"(
    import QtQuick
    import QtQuick.Controls.Basic
    Rectangle {
        width: 400; height: 300; color: "#777777"
        Text { width: 60; text: "cut off in the middle"; elide: Text.ElideRight }
        Text { y: 40; width: 20; text: "unbreakable" }
        Text { x: 200; y: 80; text: "this one lies" }
        Text { x: 200; y: 84; text: "on that one" }
        Text { x: -30; y: 120; text: "out of the window" }
        Text { y: 160; text: "pale"; color: "#888888" }
        Button { y: 200; width: 30; height: 30 }
    })",
                    QUrl());
  std::unique_ptr<QObject> made(component.create());
  auto* bad = qobject_cast<QQuickItem*>(made.get());
  ASSERT_NE(bad, nullptr) << component.errorString().toStdString();
  bad->setParentItem(window->contentItem());
  QAccessible::setActive(true);
  const QString faults = text_faults(window).join("\n");
  for (const char* fault : {"cut off: “cut off", "wider than its place", "not all in sight: “out of",
                            "on each other: “this one lies” and “on that one”"})
    EXPECT_TRUE(faults.contains(QString::fromUtf8(fault))) << fault << "\n" << faults.toStdString();
  EXPECT_TRUE(contrast_faults(window, window->grabWindow(), 4.5).join("\n").contains("“pale”"));
  EXPECT_FALSE(too_small(window).isEmpty());
  EXPECT_TRUE(unnamed(window).join("\n").contains("no name"));
}

}  // namespace
}  // namespace brimline::test
