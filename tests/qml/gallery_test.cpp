// SPDX-License-Identifier: GPL-3.0-or-later
// The gallery of parts in the three themes, judged as the pages are; and that no part is left out of it.
#include <QDir>
#include <QFile>
#include <QQmlApplicationEngine>
#include <QRegularExpression>

#include "tests/qml/counter_fixture.h"
#include "tests/qml/page_faults.h"

namespace brimline::test {
namespace {

TEST_F(CounterTest, TheGalleryCanBeReadInEveryTheme) {
  for (const char* theme : {"light", "dark", "contrast"}) {
    QQmlApplicationEngine engine;
    engine.addImportPath("qrc:/qt/qml");
    engine.setInitialProperties({{"theme", theme}, {"width", 1280}, {"height", 2600}, {"visible", true}});
    engine.load(QUrl("qrc:/qt/qml/Counter/Gallery.qml"));
    ASSERT_FALSE(engine.rootObjects().isEmpty());
    auto* window = qobject_cast<QQuickWindow*>(engine.rootObjects().first());
    ASSERT_TRUE(window && Hand::wait_for([&] { return window->isExposed(); }));
    Hand::wait_for([] { return false; }, 200);  // layouts come to rest
    const QImage picture = window->grabWindow();
    EXPECT_EQ(text_faults(window).join("\n").toStdString(), "") << theme;
    EXPECT_EQ(contrast_faults(window, picture, 4.5).join("\n").toStdString(), "") << theme;
    EXPECT_GE(controls_of(window).size(), 40) << theme;
  }
}

// The parts that the design names, and those they are made of.
TEST_F(CounterTest, TheGalleryShowsEveryPartOfTheDesign) {
  QFile file(BRIMLINE_SOURCE_DIR "/qml/gallery/Gallery.qml");
  ASSERT_TRUE(file.open(QIODevice::ReadOnly));
  const QString text = QString::fromUtf8(file.readAll());
  for (const char* part : {"Act", "BottleLine", "ChangeRow", "Choice", "ChoiceRow", "Drag", "Field",
                           "FocusFrame", "Line", "NumberPad", "Prose", "ReadingRow", "Section", "Sentence",
                           "StepRow", "Title", "TroubleBanner", "Waterline"}) {
    EXPECT_TRUE(QFile::exists(QStringLiteral(BRIMLINE_SOURCE_DIR "/qml/parts/%1.qml").arg(part))) << part;
    EXPECT_TRUE(text.contains(QRegularExpression(QStringLiteral("\\b%1 \\{").arg(part)))) << part;
  }
}

}  // namespace
}  // namespace brimline::test
