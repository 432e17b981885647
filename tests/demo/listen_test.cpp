// SPDX-License-Identifier: GPL-3.0-or-later
// `brimline-batch listen` and `profiles`, as other programs use them.
#include <gtest/gtest.h>

#include <nlohmann/json.hpp>

#include "tests/demo/emulator.h"

namespace brimline::demo {
namespace {

using Json = nlohmann::json;

struct Listener {
  explicit Listener(const QStringList& words) {
    application();
    QObject::connect(&program, &QProcess::readyReadStandardOutput, [this] {
      while (program.canReadLine()) lines.push_back(Json::parse(program.readLine().toStdString()));
    });
    program.start(BRIMLINE_BIN_DIR "/brimline-batch", QStringList{"listen"} + words);
  }
  ~Listener() {
    program.kill();
    program.waitForFinished();
  }
  QProcess program;
  std::vector<Json> lines;
};

TEST(Listen, PrintsALineForEachHappeningAndEndsOnSigterm) {
  Emulator emulator({"--pause", "0", "--speed", "100", "--fault", "over_range", "--fault", "out_of_range",
                     "--fault", "unknown_method", "--fault", "garbled"});
  Listener listener(
      {"--port", emulator.link(), "--profile", "bench_lines", "--record", emulator.link() + ".log"});
  ASSERT_TRUE(wait_until([&] { return listener.lines.size() >= 7; }));
  emulator.command("unplug");
  ASSERT_TRUE(wait_until([&] { return listener.lines.size() >= 8; }));
  emulator.command("replug");
  ASSERT_TRUE(wait_until([&] { return listener.lines.size() >= 9; }));
  const Json& first = listener.lines[0];
  EXPECT_EQ(first["kind"], "reading");
  EXPECT_EQ(first["analyte"], "free_chlorine");
  EXPECT_EQ(first["clipped"], "above");
  EXPECT_EQ(first["sample"], "B-1012");
  EXPECT_EQ(first["serial"], "000001");
  EXPECT_EQ(first["unit"], "mg/L Cl2");
  for (const char* key : {"at", "value", "sd"}) EXPECT_TRUE(first.contains(key)) << key;
  EXPECT_EQ(listener.lines[1]["what"], "out_of_range");
  EXPECT_EQ(listener.lines[2]["what"], "unknown_method");
  EXPECT_EQ(listener.lines[3]["what"], "garbled");
  EXPECT_EQ(listener.lines[4]["clipped"], nullptr);
  EXPECT_EQ(listener.lines[7]["what"], "unplugged");
  EXPECT_EQ(listener.lines[8]["kind"], "back");
  listener.program.terminate();
  ASSERT_TRUE(listener.program.waitForFinished());
  EXPECT_EQ(listener.program.exitStatus(), QProcess::NormalExit);
  EXPECT_EQ(listener.program.exitCode(), 0);

  // The recording tells the same again.
  Listener again({"--port", emulator.link() + ".log", "--profile", "bench_lines"});
  ASSERT_TRUE(wait_until([&] { return again.program.state() == QProcess::NotRunning; }));
  EXPECT_EQ(again.program.exitCode(), 0);
  ASSERT_GE(again.lines.size(), 8u);
  for (size_t i = 0; i < 8; ++i) {
    Json told = listener.lines[i], retold = again.lines[i];
    told.erase("at");
    retold.erase("at");
    EXPECT_EQ(told, retold) << i;
  }
}

int exit_code(const QStringList& words, QByteArray* error = nullptr) {
  application();
  QProcess program;
  program.start(BRIMLINE_BIN_DIR "/brimline-batch", words);
  program.waitForFinished();
  EXPECT_EQ(program.readAllStandardOutput(), QByteArray());
  if (error) *error = program.readAllStandardError();
  return program.exitCode();
}

TEST(Listen, RefusesWhatItCannotRead) {
  QByteArray error;
  EXPECT_EQ(exit_code({"listen"}), 2);
  EXPECT_EQ(exit_code({"listen", "--port", "/tmp/x"}), 2);
  EXPECT_EQ(exit_code({"listen", "--port", "/tmp/x", "--profile", "nobody"}, &error), 2);
  EXPECT_TRUE(error.startsWith("nobody:0: ")) << error.toStdString();
  EXPECT_EQ(exit_code({"listen", "--port", "/tmp/x", "--profile", "bench_lines", "--for", "soon"}), 2);
  EXPECT_EQ(exit_code({"profiles", "--check", BRIMLINE_SOURCE_DIR "/demo/bottles/plaster_pool.toml"}, &error),
            2);
  EXPECT_GT(error.count('\n'), 3);
}

}  // namespace
}  // namespace brimline::demo
