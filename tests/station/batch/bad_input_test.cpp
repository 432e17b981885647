// SPDX-License-Identifier: GPL-3.0-or-later
// Bad input: one clear line a fault, `FILE:LINE: what is wrong; what was expected`, exit 2, nothing written.
#include <gtest/gtest.h>

#include <regex>

#include "tests/support/run_program.h"

namespace brimline {
namespace {

using testing::Ran;
using testing::run_program;
using testing::ScratchFolder;

const char* const kSound = R"({"format":"brimline-visit/1","id":"V-1","bottle":"B-1",
"vessel":{"id":"W-1","kind":"pool","use":"household","volume_m3":50,"sanitizer":"chlorine"},
"readings":[
{"analyte":"free_chlorine","value":3},
{"analyte":"ph","value":7.5}],
"sample_temperature_c":22})";

struct Bad {
  const char* name;
  const char* from;  // text of the sound visit
  const char* to;    // what stands there instead
  int line;          // of the fault
};

std::ostream& operator<<(std::ostream& out, const Bad& bad) {
  return out << bad.name;
}

class BadVisit : public ::testing::TestWithParam<Bad> {};

std::string with(std::string text, const std::string& from, const std::string& to) {
  const auto at = text.find(from);
  EXPECT_NE(at, std::string::npos);
  return text.replace(at, from.size(), to);
}

TEST_P(BadVisit, IsRefusedWithFileAndLine) {
  const ScratchFolder scratch;
  const std::string file = (scratch / "visit.json").string();
  std::ofstream(file) << with(kSound, GetParam().from, GetParam().to);
  for (const std::string command : {"check", "plan"}) {
    const Ran ran = run_program("brimline-batch", {command, file});
    EXPECT_EQ(ran.exit_code, 2) << command;
    EXPECT_EQ(ran.out, "") << command;
    const std::regex form{"[^\\n]*visit\\.json:" + std::to_string(GetParam().line) +
                          ": [^\\n]+; expected [^\\n]+\\n"};
    EXPECT_TRUE(std::regex_match(ran.err, form)) << command << " said: " << ran.err;
  }
}

INSTANTIATE_TEST_SUITE_P(
    Faults, BadVisit,
    ::testing::Values(Bad{"unknown_analyte", "\"free_chlorine\"", "\"free_clorine\"", 4},
                      Bad{"negative", "\"value\":3", "\"value\":-3", 4},
                      Bad{"text_for_a_number", "\"value\":3", "\"value\":\"3\"", 4},
                      Bad{"ph_above_14", "\"value\":7.5", "\"value\":14.2", 5},
                      Bad{"unknown_field", "\"value\":7.5", "\"value\":7.5,\"unit\":\"ppm\"", 5},
                      Bad{"unknown_vessel", "\"kind\":\"pool\"", "\"kind\":\"pond\"", 2},
                      Bad{"negative_volume", "\"volume_m3\":50", "\"volume_m3\":-50", 2},
                      Bad{"unknown_top_field", "\"sample_temperature_c\"", "\"sample_temperature\"", 6},
                      Bad{"other_format", "brimline-visit/1", "brimline-visit/9", 1}),
    [](const auto& one) { return std::string(one.param.name); });

TEST(BadInput, TheSoundVisitIsTaken) {
  const ScratchFolder scratch;
  const std::string file = (scratch / "visit.json").string();
  std::ofstream(file) << kSound;
  EXPECT_EQ(run_program("brimline-batch", {"check", file}).exit_code, 0);
  EXPECT_EQ(run_program("brimline-batch", {"plan", file}).exit_code, 0);
}

TEST(BadInput, AnEmptyMissingOrCutFileIsSaid) {
  const ScratchFolder scratch;
  const std::string empty = (scratch / "empty.json").string(), cut = (scratch / "cut.json").string();
  std::ofstream(empty) << "";
  std::ofstream(cut) << std::string(kSound).substr(0, 120);
  for (const std::string& file : {empty, cut, (scratch / "absent.json").string()})
    for (const std::string command : {"check", "plan"}) {
      const Ran ran = run_program("brimline-batch", {command, file});
      EXPECT_EQ(ran.exit_code, 2) << file;
      EXPECT_EQ(ran.out, "");
      EXPECT_EQ(std::count(ran.err.begin(), ran.err.end(), '\n'), 1) << ran.err;
      EXPECT_NE(ran.err.find(file + ":"), std::string::npos) << ran.err;
    }
}

TEST(BadInput, UnknownCommandAndOptionAreSaid) {
  EXPECT_EQ(run_program("brimline-batch", {"paln"}).exit_code, 2);
  EXPECT_EQ(run_program("brimline-batch", {}).exit_code, 2);
  EXPECT_EQ(run_program("brimline-batch", {"plan"}).exit_code, 2);
  EXPECT_EQ(run_program("brimline-batch", {"plan", "--colour", "red"}).exit_code, 2);
}

TEST(BadInput, APdfThatCannotBeWrittenIsSaidAndNothingAppears) {
  const ScratchFolder scratch;
  const std::string file = (scratch / "visit.json").string();
  std::ofstream(file) << kSound;
  const Ran ran =
      run_program("brimline-batch", {"print", file, "--out", (scratch / "no/such/folder.pdf").string()});
  EXPECT_EQ(ran.exit_code, 2);
  EXPECT_NE(ran.err, "");
  const Ran full = run_program("brimline-batch", {"print", file, "--out", "/dev/full"});
  EXPECT_EQ(full.exit_code, 2) << full.err;
  const Ran paper =
      run_program("brimline-batch", {"print", file, "--out", (scratch / "a.pdf").string(), "--paper", "a5"});
  EXPECT_EQ(paper.exit_code, 2);
  EXPECT_FALSE(std::filesystem::exists(scratch / "a.pdf"));
}

TEST(BadInput, ADatabaseOfANewerVersionIsRefusedAndLeftAlone) {
  const ScratchFolder scratch;
  const std::string file = (scratch / "shop.db").string();
  std::string visit = kSound;
  std::erase(visit, '\n');
  const Ran first = run_program("brimline-batch", {"keep", "--database", "sqlite:" + file}, visit + "\n");
  ASSERT_EQ(first.exit_code, 0) << first.err;
  EXPECT_EQ(first.out, "kept 1 V-1\n");
  ASSERT_EQ(std::system(("python3 -c \"import sqlite3; c = sqlite3.connect('" + file +
                         "'); c.execute('pragma user_version = 9999'); c.commit()\"")
                            .c_str()),
            0);
  const Ran again = run_program("brimline-batch", {"export", "--database", "sqlite:" + file});
  EXPECT_EQ(again.exit_code, 2);
  EXPECT_EQ(again.out, "");
  EXPECT_EQ(std::count(again.err.begin(), again.err.end(), '\n'), 1) << again.err;
}

TEST(BadInput, AMissingInstrumentIsToldAndWaitedFor) {
  const Ran ran = run_program(
      "brimline-batch", {"listen", "--port", "/dev/no-such-port", "--profile", "bench_lines", "--for", "1"});
  EXPECT_EQ(ran.exit_code, 0) << ran.err;
  EXPECT_NE(ran.out.find("\"unplugged\""), std::string::npos) << ran.out;
}

}  // namespace
}  // namespace brimline
