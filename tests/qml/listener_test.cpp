// SPDX-License-Identifier: GPL-3.0-or-later
// The Back room's listener on real bytes: an instrument nobody set is found, used, and a draft is made of it.
#include <fstream>
#include <iterator>

#include "tests/qml/counter_fixture.h"

namespace brimline::test {
namespace {

class ListenerAtTheCounter : public CounterTest {
 protected:
  BackDesk& back() const { return *kiosk_->desk().back(); }
  QString rows() const {
    QStringList out;
    for (int i = 0; i < back().rows()->count(); ++i)
      out.append(back().rows()->row(i).value("name").toString() + " " +
                 back().rows()->row(i).value("number").toString());
    return out.join("\n");
  }
};

TEST_F(ListenerAtTheCounter, FindsUsesAndDraftsAnInstrument) {
  const QString port = start_photometer();
  open_counter("2026-06-14T09:00:00-05:00");
  kiosk_->desk().startBottle();
  kiosk_->desk().setPlace(Desk::BackRoom);
  back().setShelf("listener");
  back().apply();
  EXPECT_TRUE(back().says().contains("port")) << back().says().toStdString();
  const auto before = kiosk_->desk().settings().lines;
  back().setValue("listen_port", port);
  photometer_.write("measure\n");
  back().apply();
  ASSERT_TRUE(back().listener().running());
  EXPECT_TRUE(back().says().contains("profile 1 of")) << back().says().toStdString();
  ASSERT_TRUE(Hand::wait_for([&] { return back().rows()->count() > 0; }, 20000))
      << back().says().toStdString();
  ASSERT_TRUE(Hand::wait_for([&] { return rows().contains("fits best"); }, 20000)) << rows().toStdString();
  if (back().listener().running()) back().apply();  // stops the rest
  ASSERT_FALSE(back().listener().running());
  back().setValue("listen_wish", "use");
  back().apply();
  ASSERT_NE(kiosk_->desk().settings().lines, before) << back().says().toStdString();
  ASSERT_TRUE(back().canUndo());
  back().undo();
  EXPECT_EQ(kiosk_->desk().settings().lines, before);
  EXPECT_TRUE(kiosk_->bench().instruments().empty());
  back().setValue("listen_port", port);
  back().setValue("listen_wish", "use");
  back().apply();
  EXPECT_EQ(kiosk_->desk().settings().lines[0].profile, "bench_lines") << back().says().toStdString();
  EXPECT_EQ(kiosk_->bench().instruments().size(), 1u);
  // What it measured meanwhile is not lost: it was named for a bottle that does not wait.
  EXPECT_FALSE(kiosk_->counter().orphans().empty());
  back().setValue("listen_wish", "draft");
  back().apply();
  std::ifstream in(path("profiles/draft.toml").toStdString());
  const std::string draft((std::istreambuf_iterator<char>(in)), {});
  EXPECT_NE(draft.find("checksum = \"crc16\""), std::string::npos) << back().says().toStdString() << draft;
  EXPECT_NE(draft.find("start = \"#\""), std::string::npos) << draft;
  EXPECT_NE(draft.find("\"value\""), std::string::npos) << draft;
  EXPECT_FALSE(read_profile(draft, "draft.toml"));
  back().setShelf("instrument");
  EXPECT_TRUE(rows().contains("Not used")) << rows().toStdString();
}

TEST_F(ListenerAtTheCounter, SaysThatNothingIsThere) {
  open_counter("2026-06-14T09:00:00-05:00");
  kiosk_->desk().setPlace(Desk::BackRoom);
  back().setShelf("listener");
  back().setValue("listen_port", path("nothing"));
  back().apply();
  ASSERT_TRUE(Hand::wait_for([&] { return !back().listener().running(); }, 20000));
  EXPECT_TRUE(back().says().contains("Nothing was heard")) << back().says().toStdString();
}

}  // namespace
}  // namespace brimline::test
