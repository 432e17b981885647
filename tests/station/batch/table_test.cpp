// SPDX-License-Identifier: GPL-3.0-or-later
// The CSV commands as the contract has them: rows in order, faults with their line, files that appear only
// whole.
#include <fcntl.h>
#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <sys/resource.h>
#include <sys/stat.h>
#include <sys/wait.h>
#include <unistd.h>

#include <csignal>

#include <filesystem>
#include <fstream>
#include <sstream>

#include "station/batch/commands.h"
#include "station/batch/table.h"
#include "station/batch/water_command.h"

namespace brimline::batch {

int water_command(const Arguments& arguments);
int dose_command(const Arguments& arguments);

namespace {

namespace fs = std::filesystem;
using testing::HasSubstr;
using testing::StartsWith;

const std::string kHeader = "id,temperature_c,ph,total_alkalinity_mg_l_caco3,calcium_hardness_mg_l_caco3\n";
const std::string kGood = "a,25,7.5,100,250\n";

class TableCommands : public testing::Test {
 protected:
  TableCommands() { fs::create_directory(folder_); }
  ~TableCommands() override { fs::remove_all(folder_); }

  std::string path(const std::string& name) const { return (folder_ / name).string(); }
  std::string put(const std::string& name, const std::string& text) const {
    std::ofstream(path(name)) << text;
    return path(name);
  }
  static std::string get(const std::string& path) {
    std::ostringstream text;
    text << std::ifstream(path).rdbuf();
    return text.str();
  }
  // Exit code of `water` on a text; what it wrote, and said, is kept.
  int water(const std::string& text, std::vector<std::string> more = {}) {
    fs::remove(path("out.csv"));
    Arguments arguments = {"--in", put("in.csv", text), "--out", path("out.csv")};
    arguments.insert(arguments.end(), more.begin(), more.end());
    testing::internal::CaptureStderr();
    const int code = water_command(arguments);
    said_ = testing::internal::GetCapturedStderr();
    wrote_ = get(path("out.csv"));
    return code;
  }
  // One fault: the exit code, its line, its words, and no file.
  void expect_fault(const std::string& text, int line, const std::string& words) {
    EXPECT_EQ(water(text), kBadInput) << text;
    EXPECT_THAT(said_, StartsWith(path("in.csv") + ":" + std::to_string(line) + ": ")) << text;
    EXPECT_THAT(said_, HasSubstr(words));
    EXPECT_THAT(said_, HasSubstr("expected"));
    EXPECT_FALSE(fs::exists(path("out.csv")));
  }
  std::vector<std::string> lines() const {
    std::vector<std::string> out;
    std::istringstream in(wrote_);
    for (std::string line; std::getline(in, line);) out.push_back(line);
    return out;
  }

  fs::path folder_ = fs::temp_directory_path() / ("brimline-table-" + std::to_string(::getpid()));
  std::string said_, wrote_;
};

TEST_F(TableCommands, AnswersRowByRow) {
  ASSERT_EQ(water("# a comment\n" + kHeader + kGood + "# another\nb,25,7.5,100,\n"), kDone) << said_;
  ASSERT_EQ(lines().size(), 3u);
  EXPECT_THAT(lines()[0], StartsWith("id,si_calcite,si_factor_table,ionic_strength_mol_kgw,dic_mmol_kgw,"));
  EXPECT_THAT(lines()[0], testing::EndsWith(",refused"));
  EXPECT_THAT(lines()[1], StartsWith("a,0.04"));
  EXPECT_THAT(lines()[2], StartsWith("b,,"));  // calcium was not read: no index, not that of zero calcium
}

TEST_F(TableCommands, ColumnsAsAskedFor) {
  ASSERT_EQ(water(kHeader + kGood, {"--columns", "ccpp_mg_l_caco3,si_calcite"}), kDone);
  EXPECT_EQ(lines()[0], "id,ccpp_mg_l_caco3,si_calcite,refused");
  EXPECT_EQ(water(kHeader + kGood, {"--columns", "ph_of_the_moon"}), kBadInput);
  EXPECT_THAT(said_, HasSubstr("ph_of_the_moon"));
}

TEST_F(TableCommands, TheVesselsTemperatureAddsItsColumns) {
  const std::string header =
      "id,temperature_c,ph,total_alkalinity_mg_l_caco3,calcium_hardness_mg_l_caco3,vessel_temperature_c\n";
  ASSERT_EQ(
      water(header + "a,22,7.5,100,250,38\nb,22,7.5,100,250,22\n", {"--columns", "ph_vessel,si_calcite"}),
      kDone);
  EXPECT_THAT(lines()[2], StartsWith("b,7.5"));
  ASSERT_EQ(water(header + "a,22,7.5,100,250,38\n"), kDone);
  EXPECT_THAT(lines()[0], HasSubstr("ph_vessel,ph_at_calcite_equilibrium"));
}

TEST_F(TableCommands, WhatIsMoreIsGivenWhenAskedFor) {
  const std::string header =
      "id,temperature_c,ph,total_alkalinity_mg_l_caco3,calcium_hardness_mg_l_caco3,cyanuric_acid_mg_l,free_"
      "chlorine_mg_l_cl2,total_bromine_mg_l_br2,conductivity_us_cm,ph_sd,salt_mg_l_sd\n";
  ASSERT_EQ(
      water(header + "a,25,7.5,100,250,50,2,,2000,0.1,9\nb,25,7.5,100,250,,,5,,,\nc,25,7.5,100,,0,0,,,0.1,\n",
            {"--columns",
             "hocl_share,free_chlorine_to_stabilizer,hobr_mg_l_br2,ph_vessel,ph_vessel_sd,"
             "si_calcite_sd,background_from"}),
      kDone)
      << said_;
  EXPECT_EQ(lines()[0],
            "id,hocl_share,free_chlorine_to_stabilizer,hobr_mg_l_br2,ph_vessel,ph_vessel_sd,si_calcite_sd,"
            "background_from,refused");
  EXPECT_THAT(lines()[1], testing::MatchesRegex(
                              "a,0\\.007[^,]*,0\\.0(4|3999)[^,]*,,7\\.5[^,]*,0\\.(1|0999)[^,]*,0\\.09[^,]*,"
                              "\"the background salt follows from the conductivity, .*\",$"));
  EXPECT_THAT(lines()[2], testing::MatchesRegex("b,,,4\\.[67][^,]*,7\\.[^,]*,0,0,\"no salt, .* assumed\",$"));
  EXPECT_THAT(lines()[3], testing::MatchesRegex("c,,,,7\\.[^,]*,0\\.[^,]*,,\"no salt.*"));
}

TEST_F(TableCommands, AWaterThatCannotBeKeepsItsRow) {
  ASSERT_EQ(water(kHeader + "hot,60,7.5,100,250\n" + kGood), kDone);
  EXPECT_EQ(lines()[1], "hot,,,,,,,,,,,,the temperature is outside 0-45 C");
  EXPECT_THAT(lines()[2], StartsWith("a,"));
}

TEST_F(TableCommands, FaultsSayFileLineAndWhatWasExpected) {
  expect_fault("", 1, "nothing there");
  expect_fault("id,ph\n", 1, "temperature_c");
  expect_fault("id,id,temperature_c,ph,total_alkalinity_mg_l_caco3\n", 1, "twice");
  expect_fault(kHeader + kGood + "b,25,7.5,100\n", 3, "4 fields");
  expect_fault(kHeader + "b,25,7.5,100,250,9\n", 2, "6 fields");
  expect_fault(kHeader + "b,25,seven,100,250\n", 2, "`ph` is `seven`");
  expect_fault(kHeader + "b,25,14.5,100,250\n", 2, "from 0 to 14");
  expect_fault(kHeader + "b,25,7.5,-1,250\n", 2, "0 or more");
  expect_fault(kHeader + "b,25,7.5,nan,250\n", 2, "a number");
  expect_fault(kHeader + "b,25,7.5,1e999,250\n", 2, "a number");
  expect_fault(kHeader + "b,25,,100,250\n", 2, "missing");
  expect_fault(kHeader + "\"b,25,7.5,100,250\n", 2, "quotation");
  expect_fault(kHeader + "b,25,7.5,0x10,250\n", 2, "a number");
}

TEST_F(TableCommands, QuotesLineEndsAndBlanksAreUnderstood) {
  ASSERT_EQ(
      water(
          "id,temperature_c,ph,total_alkalinity_mg_l_caco3\r\n\"x, \"\"y\"\"\", 25 ,7.5,100\r\nb,25,7.5,100"),
      kDone)
      << said_;
  EXPECT_THAT(lines()[1], StartsWith("\"x, \"\"y\"\"\","));
  EXPECT_THAT(lines()[2], StartsWith("b,"));
}

TEST_F(TableCommands, AnyNumberOfThreadsGivesTheSameBytes) {
  std::string text = kHeader;
  for (int i = 0; i < 60000; ++i)
    text += std::to_string(i) + "," + std::to_string(5 + i % 40) + ",7." + std::to_string(i % 97) + ",100," +
            std::to_string(i % 900) + "\n";
  ASSERT_EQ(water(text), kDone);
  const std::string alone = wrote_;
  for (const char* threads : {"2", "5"}) {
    ASSERT_EQ(water(text, {"--threads", threads}), kDone);
    EXPECT_TRUE(wrote_ == alone) << threads;
  }
  text += "last,25,7.5\n";
  EXPECT_EQ(water(text, {"--threads", "3"}), kBadInput);
  EXPECT_THAT(said_, HasSubstr(":60002: 3 fields"));
}

TEST_F(TableCommands, BadUsage) {
  EXPECT_EQ(water(kHeader, {"--threads", "0"}), kBadInput);
  EXPECT_EQ(water(kHeader, {"--threads", "two"}), kBadInput);
  EXPECT_EQ(water(kHeader, {"--colour", "red"}), kBadInput);
  testing::internal::CaptureStderr();
  EXPECT_EQ(water_command({"--in", path("no-such-file")}), kBadInput);
  EXPECT_THAT(testing::internal::GetCapturedStderr(), HasSubstr("no-such-file"));
}

TEST_F(TableCommands, AFailureLeavesTheOldAnswer) {
  const std::string in = put("in.csv", kHeader + kGood + "bad\n"), out = put("kept.csv", "old\n");
  testing::internal::CaptureStderr();
  EXPECT_EQ(water_command({"--in", in, "--out", out}), kBadInput);
  testing::internal::GetCapturedStderr();
  EXPECT_EQ(get(out), "old\n");
  EXPECT_EQ(std::distance(fs::directory_iterator(folder_), {}), 2);  // nothing left lying about
}

// A table that never ends is being answered into a file when the signal comes.
TEST_F(TableCommands, ASignalLeavesNothingLyingAbout) {
  const std::string out = put("kept.csv", "old\n"), in = path("in.fifo");
  ASSERT_EQ(::mkfifo(in.c_str(), 0600), 0);
  for (const char* threads : {"1", "2"}) {
    for (const int number : {SIGTERM, SIGINT, SIGHUP}) {
      const pid_t child = ::fork();
      if (child == 0) ::_exit(water_command({"--in", in, "--out", out, "--threads", threads}));
      const int feed = ::open(in.c_str(), O_WRONLY);
      const std::string text = kHeader + kGood;
      ASSERT_EQ(::write(feed, text.data(), text.size()), static_cast<ssize_t>(text.size()));
      for (int i = 0; i < 2000 && std::distance(fs::directory_iterator(folder_), {}) < 3; ++i) ::usleep(5000);
      EXPECT_EQ(std::distance(fs::directory_iterator(folder_), {}), 3) << "no file was begun";
      ::kill(child, number);
      int status = 0;
      ASSERT_EQ(::waitpid(child, &status, 0), child);
      ::close(feed);
      EXPECT_TRUE(WIFSIGNALED(status) && WTERMSIG(status) == number) << number;
      EXPECT_EQ(std::distance(fs::directory_iterator(folder_), {}), 2) << number;
      EXPECT_EQ(get(out), "old\n");
    }
  }
}

TEST_F(TableCommands, AFileThatMayNotGrowIsAFault) {
  std::string text = kHeader;
  for (int i = 0; i < 2000; ++i) text += kGood;
  const std::string in = put("in.csv", text), out = path("out.csv");
  const pid_t child = ::fork();
  if (child == 0) {
    const rlimit limit{4096, 4096};
    ::setrlimit(RLIMIT_FSIZE, &limit);
    ::_exit(water_command({"--in", in, "--out", out}));
  }
  int status = 0;
  ASSERT_EQ(::waitpid(child, &status, 0), child);
  EXPECT_TRUE(WIFEXITED(status) && WEXITSTATUS(status) == kBadInput);
  EXPECT_EQ(std::distance(fs::directory_iterator(folder_), {}), 1);
}

TEST_F(TableCommands, OnlyAPlainFileIsReplaced) {
  const std::string in = put("in.csv", kHeader + kGood), file = put("kept.csv", "old\n");
  fs::create_symlink(file, path("link.csv"));
  EXPECT_EQ(water_command({"--in", in, "--out", path("link.csv")}), kDone);
  EXPECT_TRUE(fs::is_symlink(path("link.csv")));
  EXPECT_THAT(get(file), StartsWith("id,"));
  EXPECT_EQ(water_command({"--in", in, "--out", "/dev/null"}), kDone);
  EXPECT_TRUE(fs::is_character_file("/dev/null"));
  testing::internal::CaptureStderr();
  EXPECT_EQ(water_command({"--in", in, "--out", folder_.string()}), kBadInput);
  EXPECT_EQ(water_command({"--in", in, "--out", "/dev/full"}), kBadInput);
  testing::internal::GetCapturedStderr();
  EXPECT_TRUE(fs::is_directory(folder_));
}

TEST_F(TableCommands, DosesByEitherName) {
  const std::string header =
      "id,addition_1,amount_1_mmol_kgw,addition_2,amount_2_mmol_kgw,temperature_c,start_ph,"
      "start_total_alkalinity_mg_l_caco3,start_free_chlorine_mg_l_cl2\n";
  const auto dose = [&](const std::string& rows) {
    testing::internal::CaptureStderr();
    const int code = dose_command({"--in", put("in.csv", header + rows), "--out", path("out.csv")});
    said_ = testing::internal::GetCapturedStderr();
    wrote_ = get(path("out.csv"));
    return code;
  };
  ASSERT_EQ(dose("a,HCl,0.1,,,25,7.5,100,2\na,hydrochloric_acid,0.1,,,25,7.5,100,2\nb,aeration,,NaHCO3,0.2,"
                 "25,7.5,100,2\n"),
            kDone);
  EXPECT_EQ(lines()[1], lines()[2]);
  EXPECT_THAT(lines()[1], HasSubstr(",94.99"));  // 100 - 0.1 x 50.04
  EXPECT_EQ(dose("a,HCl,100,,,25,7.5,100,2\n"), kDone);
  EXPECT_THAT(lines()[1], StartsWith("a,,,,,,the pH is outside"));
  EXPECT_EQ(dose("a,vinegar,1,,,25,7.5,100,2\n"), kBadInput);
  EXPECT_THAT(said_, HasSubstr(":2: `addition_1` is `vinegar`"));
  EXPECT_EQ(dose("a,HCl,,,,25,7.5,100,2\n"), kBadInput);
  EXPECT_THAT(said_, HasSubstr("`amount_1_mmol_kgw` is missing"));
  EXPECT_EQ(dose("a,HCl,-1,,,25,7.5,100,2\n"), kBadInput);
  EXPECT_EQ(dose("a,,1,,,25,7.5,100,2\n"), kBadInput);
}

TEST_F(TableCommands, ADoseTellsTheAcidItsChlorineLeavesBehind) {
  const std::string in =
      put("in.csv",
          "id,addition_1,amount_1_mmol_kgw,temperature_c,start_ph,start_total_alkalinity_mg_l_"
          "caco3,start_free_chlorine_mg_l_cl2\na,trichlor,0.1,25,7.5,100,0\n"
          "b,sodium_hypochlorite,0.3,25,7.5,100,0\nc,NaCl,0.3,25,7.5,100,0\n");
  ASSERT_EQ(
      dose_command({"--in", in, "--out", path("out.csv"), "--columns",
                    "end_total_alkalinity_mg_l_caco3,acid_when_spent_mmol_kgw,spent_total_alkalinity_mg_l_"
                    "caco3,spent_ph"}),
      kDone);
  wrote_ = get(path("out.csv"));
  // Trichlor: alkalinity unchanged at first, 3 equivalents of acid a mole once spent. Hypochlorite spent is
  // salt, which moves pH by its ions alone.
  EXPECT_THAT(lines()[1],
              testing::MatchesRegex("a,(100|99\\.99|100\\.00).*,0\\.3[^,]*,84\\.98[^,]*,6\\.[^,]*,$"));
  EXPECT_THAT(lines()[2],
              testing::MatchesRegex("b,115\\.01.*,0\\.3[^,]*,(100|99\\.99|100\\.00)[^,]*,7\\.499[^,]*,$"));
  EXPECT_THAT(lines()[3], testing::MatchesRegex("c,.*,0,.*"));
  testing::internal::CaptureStderr();
  EXPECT_EQ(dose_command({"--in", in, "--columns", "ph_of_the_moon"}), kBadInput);
  EXPECT_THAT(testing::internal::GetCapturedStderr(), HasSubstr("ph_of_the_moon"));
}

// The reference tables go in as they are; columns that the commands do not know are ignored.
TEST_F(TableCommands, TheReferenceTablesGoInAsTheyAre) {
  const std::string tables = std::string(BRIMLINE_SOURCE_DIR) + "/tests/data/reference/";
  for (const auto& [name, rows] :
       {std::pair{"calcite_saturation_open.csv", 288u}, {"free_chlorine_speciation_open.csv", 246u}}) {
    ASSERT_EQ(water_command({"--in", tables + name, "--out", path("out.csv")}), kDone);
    wrote_ = get(path("out.csv"));
    EXPECT_EQ(lines().size(), rows + 1) << name;
    for (size_t i = 1; i < lines().size(); ++i) EXPECT_THAT(lines()[i], testing::EndsWith(",")) << "refused";
  }
  ASSERT_EQ(dose_command({"--in", tables + "dosing_response_open.csv", "--out", path("out.csv")}), kDone);
  wrote_ = get(path("out.csv"));
  EXPECT_EQ(lines().size(), 236u);
}

}  // namespace
}  // namespace brimline::batch
