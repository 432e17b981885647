// SPDX-License-Identifier: GPL-3.0-or-later
// The commands of the store as a script meets them: answers, power cuts and full disks.
#include <sys/mount.h>
#include <unistd.h>
#include <csignal>

#include <thread>

#include "tests/station/store/workshop.h"

namespace brimline::tests {
namespace {

using testing::HasSubstr;
using testing::StartsWith;

class StoreProgram : public StoreTest {
 protected:
  std::string database(const std::string& name = "shop.db") const { return "--database " + url(name); }
};

std::vector<std::string> lines_of(const std::string& text) {
  std::vector<std::string> out;
  std::istringstream stream(text);
  for (std::string line; std::getline(stream, line);) out.push_back(line);
  return out;
}

std::vector<std::string> kept_in(const std::string& answers) {
  std::vector<std::string> out;
  for (const std::string& line : lines_of(answers)) {
    std::istringstream words(line);
    std::string word, number, id;
    words >> word >> number >> id;
    if (word == "kept") out.push_back(id);
  }
  return out;
}

// A name typed wrongly is told, and no empty store stands there after.
TEST_F(StoreProgram, WhatOnlyReadsMakesNoStore) {
  for (const char* command : {"find", "export", "verify", "backup --out x.db", "tables --out x"}) {
    const StoreRun ran = batch(std::string(command) + " --database sqlite:" + path("nothere.db") +
                               (std::string(command) == "find" ? " Ada" : ""));
    EXPECT_NE(ran.code, 0) << command;
    EXPECT_NE(ran.err.find("there is no store"), std::string::npos) << command << ": " << ran.err;
    EXPECT_FALSE(std::filesystem::exists(folder / "nothere.db")) << command;
  }
}

TEST_F(StoreProgram, KeepAnswersEachLine) {
  const std::string input = line_of(whole_visit("a")) + "{\"id\":\n" + "\n" + line_of(whole_visit("a")) +
                            R"({"format":"brimline-visit/1","id":"x\ny"})" + "\n" + line_of(whole_visit("b"));
  const StoreRun ran = batch("keep " + database(), input);
  EXPECT_THAT(lines_of(ran.out),
              testing::ElementsAre("kept 1 a", StartsWith("refused 2 not JSON"), "kept 4 a",
                                   StartsWith("refused 5 `id` holds"), "kept 6 b"));
  EXPECT_EQ(ran.code, 2);
  EXPECT_THAT(ran.err, StartsWith("standard input:2: "));
  EXPECT_THAT(batch("verify " + database()).out, HasSubstr("\"visits\":2"));
}

TEST_F(StoreProgram, ExportKeepExportGivesTheSameLines) {
  std::string input;
  for (int i = 0; i < 10; ++i) {
    Visit visit = whole_visit("V-" + std::to_string(i));
    visit.bottle.taken_at->utc -= std::chrono::hours(i * 7 % 10);
    if (i % 3 == 0) visit.plan_as_told.reset();
    if (i % 4 == 0) visit.bottle.taken_at.reset();
    input += line_of(visit);
  }
  ASSERT_EQ(batch("keep " + database(), input).code, 0);
  const std::string first = batch("export " + database()).out;
  EXPECT_EQ(lines_of(first).size(), 10u);
  ASSERT_EQ(batch("keep " + database("two.db"), first).code, 0);
  EXPECT_EQ(batch("export " + database("two.db") + " --out " + path("again")).code, 0);
  EXPECT_EQ(contents_of(path("again")), first);
}

TEST_F(StoreProgram, FindEndsEachAnswer) {
  ASSERT_EQ(batch("keep " + database(), line_of(whole_visit())).code, 0);
  const auto lines = lines_of(batch("find " + database() + " --batch", "orsted\nnobody\n").out);
  ASSERT_EQ(lines.size(), 3u);
  EXPECT_EQ(nlohmann::json::parse(lines[0]),
            nlohmann::json::parse(R"({"customer_id":"C-1","name":"Ines Ørsted","vessels":["W-1"],
                                      "last_visit":"2026-06-14T08:10:00-05:00"})"));
  EXPECT_EQ(nlohmann::json::parse(lines[1])["end"], 1);
  EXPECT_EQ(nlohmann::json::parse(lines[2])["end"], 2);
}

TEST_F(StoreProgram, BadUsageAndUnsoundStores) {
  EXPECT_EQ(batch("keep").code, 2);
  EXPECT_EQ(batch("keep " + database() + " --colour red").code, 2);
  write_file(path("letter"), "Dear Sir or Madam,\n");
  const StoreRun kept = batch("keep " + database("letter"), line_of(whole_visit()));
  EXPECT_EQ(kept.code, 2);
  EXPECT_EQ(lines_of(kept.err).size(), 1u);
  const StoreRun verified = batch("verify " + database("letter"));
  EXPECT_EQ(verified.code, 1);
  EXPECT_EQ(lines_of(verified.err).size(), 1u);
}

// `keep` with pipes at both ends, killed when the parent says so.
class Keeper {
 public:
  explicit Keeper(const std::string& url) {
    int in[2], out[2];
    if (::pipe(in) != 0 || ::pipe(out) != 0) std::abort();
    child_ = ::fork();
    if (child_ == 0) {
      ::dup2(in[0], 0);
      ::dup2(out[1], 1);
      for (const int end : {in[0], in[1], out[0], out[1]}) ::close(end);
      ::execl(BRIMLINE_BIN_DIR "/brimline-batch", "brimline-batch", "keep", "--database", url.c_str(),
              nullptr);
      ::_exit(127);
    }
    ::close(in[0]);
    ::close(out[1]);
    to_ = in[1];
    from_ = out[0];
  }
  // Everything it answered from its start to its violent end, `after` of its start.
  std::string answers_until_killed(const std::string& input, std::chrono::microseconds after) {
    std::thread feeder([&] {
      for (size_t at = 0; at < input.size();) {
        const ssize_t written = ::write(to_, input.data() + at, std::min<size_t>(input.size() - at, 4096));
        if (written <= 0) break;
        at += static_cast<size_t>(written);
      }
      ::close(to_);
    });
    std::thread killer([&] {
      std::this_thread::sleep_for(after);
      ::kill(child_, SIGKILL);
    });
    std::string out;
    char buffer[4096];
    for (ssize_t got; (got = ::read(from_, buffer, sizeof buffer)) > 0;)
      out.append(buffer, static_cast<size_t>(got));
    killer.join();
    ::waitpid(child_, nullptr, 0);
    feeder.join();
    ::close(from_);
    return out;
  }

 private:
  pid_t child_ = -1;
  int to_ = -1, from_ = -1;
};

TEST_F(StoreProgram, NothingAnsweredIsLostWhenItIsKilled) {
  ::signal(SIGPIPE, SIG_IGN);
  std::mt19937 random(20);
  std::vector<std::string> kept;
  int number = 0;
  for (int round = 0; round < 20; ++round) {
    std::string input;
    for (int i = 0; i < 400; ++i) input += line_of(whole_visit("V-" + std::to_string(number++)));
    // From before the first answer to well into the run, however fast the machine is.
    const std::chrono::microseconds after(5000 + random() % 150000);
    std::string answers = Keeper(url()).answers_until_killed(input, after);
    answers.resize(answers.rfind('\n') + 1);  // a torn last line was not answered
    for (const std::string& id : kept_in(answers)) kept.push_back(id);
  }
  EXPECT_EQ(batch("verify " + database()).code, 0);
  Store store = Store::open(url()).value();
  EXPECT_GT(kept.size(), 0u) << "the program was always killed before it answered";
  for (const std::string& id : kept) EXPECT_EQ(store.visit(id).value(), whole_visit(id)) << id;
}

// Fills the disk until lines are refused, then looks from where there is room.
void expect_full_disk_is_survived(const StoreRun& ran, const StoreRun& verified, Store store) {
  const auto kept = kept_in(ran.out);
  EXPECT_GT(kept.size(), 0u);
  EXPECT_THAT(ran.out, HasSubstr("refused "));
  EXPECT_THAT(ran.out, HasSubstr("full"));
  EXPECT_EQ(ran.code, 2);
  EXPECT_EQ(verified.code, 0) << verified.err;
  for (const std::string& id : kept) EXPECT_EQ(store.visit(id).value(), whole_visit(id)) << id;
  EXPECT_EQ(static_cast<size_t>(store.counts()->at("visits")), kept.size());
}

std::string many_visits(int count) {
  std::string out;
  for (int i = 0; i < count; ++i) out += line_of(whole_visit("V-" + std::to_string(i)));
  return out;
}

TEST_F(StoreProgram, FileSizeLimitRefusesAndLosesNothing) {
  const StoreRun ran = batch("keep " + database(), many_visits(150), "ulimit -f 1200;");
  expect_full_disk_is_survived(ran, batch("verify " + database()), Store::open(url()).value());
}

TEST_F(StoreProgram, FullDiskRefusesAndLosesNothing) {
  std::filesystem::create_directory(folder / "small");
  if (::mount("tmpfs", path("small").c_str(), "tmpfs", 0, "size=640k") != 0)
    GTEST_SKIP() << "no right to mount a small disk";
  const StoreRun ran = batch("keep " + database("small/shop.db"), many_visits(150));
  const StoreRun again = batch("keep " + database("small/shop.db"), line_of(whole_visit("V-0")));
  EXPECT_EQ(::mount("tmpfs", path("small").c_str(), "tmpfs", MS_REMOUNT, "size=4m"), 0);
  EXPECT_EQ(again.out, "kept 1 V-0\n");
  expect_full_disk_is_survived(ran, batch("verify " + database("small/shop.db")),
                               Store::open(url("small/shop.db")).value());
  ::umount(path("small").c_str());
}

TEST_F(StoreProgram, NewStoreOnAFullDiskIsOneSentence) {
  const StoreRun ran = batch("keep " + database(), many_visits(1), "ulimit -f 8;");
  EXPECT_EQ(ran.code, 2);
  EXPECT_EQ(lines_of(ran.err).size(), 1u) << ran.err;
  EXPECT_EQ(batch("keep " + database(), many_visits(1)).out, "kept 1 V-0\n");
}

}  // namespace
}  // namespace brimline::tests
